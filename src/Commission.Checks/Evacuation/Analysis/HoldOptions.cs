namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What the analysis of a hold needs besides log and gauge.</summary>
/// <param name="AllowedRise">Rise that the limit allows over the hold, Pa (decay limit less the level at isolation); null without a limit:
/// then only the gauge's resolution says from where on a rise counts.</param>
/// <param name="SkipSeconds">Time left out after isolation, s, while pressures even out; null for a tenth of the hold, 30 to 60 s.</param>
/// <param name="TemperatureDrift">Half-width of the change of the system's temperature over the hold, K, rectangular. It moves
/// the pressure of the gas inside in proportion and is part of the interval of the slope. Default 1 K (common practice, no source).</param>
public sealed record HoldOptions(double? AllowedRise, double? SkipSeconds = null, double TemperatureDrift = 1);
