namespace Commission.Measurement.Uncertainty;

/// <summary>What one cause adds to a result: signed, in the unit of the result.</summary>
internal readonly record struct Contribution(RootCause Cause, double Amount);
