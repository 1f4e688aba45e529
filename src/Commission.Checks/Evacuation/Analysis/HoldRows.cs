namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Which rows of a hold were used.</summary>
/// <param name="InHold">Rows from isolation to the end of the hold.</param>
/// <param name="Skipped">Left out right after isolation, while pressures even out.</param>
/// <param name="OverRange">Left out because the gauge was over range.</param>
/// <param name="Outliers">Left out as lone spikes, more than six deviations from their neighbours.</param>
/// <param name="Used">Rows used.</param>
/// <param name="From">Time of the first used row, s; null without rows.</param>
/// <param name="To">Time of the last used row, s; null without rows.</param>
public sealed record HoldRows(int InHold, int Skipped, int OverRange, int Outliers, int Used, double? From, double? To);
