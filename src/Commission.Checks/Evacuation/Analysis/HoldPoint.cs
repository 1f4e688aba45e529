namespace Commission.Checks.EvacuationAnalysis;

/// <summary>One averaged reading of a hold and its distance from the chosen curve.</summary>
/// <param name="Time">Mean time of the block on the clock of the log, s.</param>
/// <param name="Pressure">Mean pressure of the block, Pa.</param>
/// <param name="Residual">Mean pressure less the chosen curve, Pa.</param>
public readonly record struct HoldPoint(double Time, double Pressure, double Residual);
