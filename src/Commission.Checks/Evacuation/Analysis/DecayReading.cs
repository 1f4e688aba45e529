namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What a decay limit is judged by. Pressures in Pa, times in s on the clock of the log.</summary>
/// <param name="AtIsolation">Pressure at isolation, on a straight line between the rows around it (or the first row, when the log
/// begins within a minute after it); null when over range or without rows.</param>
/// <param name="Due">Isolation plus the stated time.</param>
/// <param name="AtDue">Pressure at that moment, interpolated; null when the hold ended earlier, in a gap, or over range.</param>
/// <param name="Highest">Highest of all readings from isolation to that moment, the interpolated ones included; null without any.</param>
/// <param name="HighestAt">When that was.</param>
/// <param name="OverRangeRows">Rows in that time above the gauge's range: the true highest is higher than <paramref name="Highest"/>.</param>
/// <param name="LongestGap">Longest time without a row from isolation to that moment, s.</param>
/// <param name="HoldLength">From isolation to the end of the hold, s.</param>
/// <param name="AtEnd">Pressure of the last numbered row of the hold; null without one.</param>
/// <param name="HighestAfter">Highest reading after the stated time, reported and not judged; null when there is none.</param>
public sealed record DecayReading(
    double? AtIsolation,
    double Due,
    double? AtDue,
    double? Highest,
    double? HighestAt,
    int OverRangeRows,
    double LongestGap,
    double HoldLength,
    double? AtEnd,
    double? HighestAfter)
{
    /// <summary>True when the hold lasted to the stated time and can be read there.</summary>
    public bool Reached => AtDue is not null;

    /// <summary>Rise from isolation to the stated time, Pa; null when either end is missing.</summary>
    public double? Rise => AtDue - AtIsolation;
}
