namespace Commission.Checks.EvacuationAnalysis;

/// <summary>A stretch of a pressure log in which the logger wrote nothing.</summary>
/// <param name="From">Time of the last row before the gap, s.</param>
/// <param name="To">Time of the first row after the gap, s.</param>
public readonly record struct SeriesGap(double From, double To)
{
    /// <summary>Length of the gap, s.</summary>
    public double Length => To - From;
}
