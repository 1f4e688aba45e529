namespace Commission.Measurement.Units;

/// <summary>One term of an accuracy statement.</summary>
/// <param name="Kind">What the number is of.</param>
/// <param name="Amount">A fraction for the two percentages, steps for digits, an SI difference for an amount.</param>
internal sealed record AccuracyTerm(AccuracyTermKind Kind, double Amount);
