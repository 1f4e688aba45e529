namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What is known about the vacuum gauge, as far as it matters for a hold.</summary>
/// <param name="Resolution">Smallest step of the display or log, Pa, ≥ 0. Where the log itself moves in larger steps, those count.</param>
/// <param name="GainHalfWidth">Half-width of the gain error, relative (0.10 for ±10 % of reading), rectangular. It does not average out.</param>
/// <param name="ZeroHalfWidth">Half-width of the zero error, Pa, rectangular. It cancels in a rise and counts in a level.</param>
public sealed record GaugeCharacter(double Resolution, double GainHalfWidth, double ZeroHalfWidth);
