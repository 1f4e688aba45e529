namespace Commission.Measurement.Corrections;

/// <summary>A known value put to an instrument and what it read.</summary>
/// <param name="Applied">The known value, SI, from the instrument's own zero.</param>
/// <param name="Read">What the instrument read, SI, from its own zero.</param>
/// <param name="StandardUncertainty">Standard uncertainty of the known value, SI; nothing when the reference states none.</param>
/// <param name="Reference">What the known value came from.</param>
public sealed record KnownPoint(double Applied, double Read, double? StandardUncertainty, string Reference);
