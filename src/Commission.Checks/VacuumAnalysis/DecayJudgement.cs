namespace Commission.Checks.VacuumAnalysis;

/// <summary>
/// Reads a hold for a decay limit: the clock starts at isolation; what counts is every reading up to the stated time and the
/// pressure interpolated at that moment. A crew that holds longer is not judged by what comes later.
/// </summary>
internal static class DecayJudgement
{
    /// <summary>Reads the hold.</summary>
    /// <param name="series">The log.</param>
    /// <param name="isolation">Moment of isolation, s.</param>
    /// <param name="end">End of the hold, s.</param>
    /// <param name="after">Stated time, s after isolation.</param>
    /// <param name="longestBridge">Longest time between two rows that is bridged by a straight line, s.</param>
    public static DecayReading Read(VacuumSeries series, double isolation, double end, double after, double longestBridge = 120)
    {
        var due = isolation + after;
        var atDue = due <= end ? series.PressureAt(due, longestBridge) : null;
        double? highest = null;
        double? highestAt = null;
        double? atEnd = null;
        double? highestAfter = null;
        var over = 0;
        Consider(series.PressureAt(isolation, longestBridge), isolation);
        for (var i = series.IndexAtOrAfter(isolation); i < series.Count && series.Times[i] <= end; i++)
        {
            var t = series.Times[i];
            if (series.OverRange[i])
            {
                over += t <= due ? 1 : 0;
                continue;
            }

            atEnd = series.Pressures[i];
            if (t <= due)
                Consider(series.Pressures[i], t);
            else
                highestAfter = highestAfter is null ? series.Pressures[i] : Math.Max(highestAfter.Value, series.Pressures[i]);
        }

        Consider(atDue, due);
        return new DecayReading(due, atDue, highest, highestAt, over, end - isolation, atEnd, highestAfter);

        void Consider(double? pressure, double at)
        {
            if (pressure is { } p && !(p <= highest))
                (highest, highestAt) = (p, at);
        }
    }
}

/// <summary>What a decay limit is judged by. Pressures in Pa, times in s on the clock of the log.</summary>
/// <param name="Due">Isolation plus the stated time.</param>
/// <param name="AtDue">Pressure at that moment, interpolated; null when the hold ended earlier, in a gap, or over range.</param>
/// <param name="Highest">Highest of all readings from isolation to that moment, the interpolated ones included; null without any.</param>
/// <param name="HighestAt">When that was.</param>
/// <param name="OverRangeRows">Rows in that time above the gauge's range: the true highest is higher than <paramref name="Highest"/>.</param>
/// <param name="HoldLength">From isolation to the end of the hold, s.</param>
/// <param name="AtEnd">Pressure of the last numbered row of the hold; null without one.</param>
/// <param name="HighestAfter">Highest reading after the stated time, reported and not judged; null when there is none.</param>
internal sealed record DecayReading(
    double Due,
    double? AtDue,
    double? Highest,
    double? HighestAt,
    int OverRangeRows,
    double HoldLength,
    double? AtEnd,
    double? HighestAfter)
{
    /// <summary>True when the hold lasted to the stated time and can be read there.</summary>
    public bool Reached => AtDue is not null;
}
