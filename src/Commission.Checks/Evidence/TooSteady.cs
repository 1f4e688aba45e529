using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Evidence;

/// <summary>
/// A hold whose rows lie on a straight line to the last digit, from the closing of the valve on, behind a pull-down in which the same display went up and down: written by a
/// formula, hardly by a gauge.
/// </summary>
/// <param name="Rows">Rows of the hold.</param>
/// <param name="Scatter">How far a row lay from its neighbours before, Pa.</param>
internal sealed record TooSteady(int Rows, double Scatter)
{
    // Common practice, no source; tried against honest logs of many gauges (tests/run-long hold).
    private const int Fewest = 50;
    private const double StepsOfChange = 10;
    private const double StepsOffLine = 0.75;
    private const double Before = 600;
    private const int FewestBefore = 20;
    private const double StepsOfScatter = 0.7;
    private const double Turning = 0.2;

    /// <summary>Looks at an evacuation.</summary>
    /// <param name="run">The evacuation.</param>
    /// <returns>What was found; null where the hold is as lively as its gauge, or nothing can be compared.</returns>
    public static TooSteady? Of(EvacuationRun run)
    {
        if (run is not { Rows: { Log: not null, Series: var series }, Parts: { Isolation: { } isolation, HoldEnd: { } end } })
            return null;
        var (from, to) = (series.IndexAtOrAfter(isolation), series.IndexAtOrAfter(end));
        var begin = series.IndexAtOrAfter(isolation - Before);
        // The row at the closing still belongs to the pump.
        if (from < series.Count && series.Times[from] <= isolation)
            from++;
        if (to - from < Fewest || from - begin < FewestBefore || series.OverRange[begin..to].Contains(true))
            return null;
        var hold = series.Pressures[from..to];
        var step = new DisplaySteps([.. hold], 0).At(hold[^1]);
        if (step <= 0 || Math.Abs(hold[^1] - hold[0]) < StepsOfChange * step || StraightLine.Through(series.Times[from..to], hold).Farthest > StepsOffLine * step)
            return null;
        var (turns, off) = (0, 0.0);
        for (var i = begin + 1; i < from - 1; i++)
        {
            var (left, right) = (series.Pressures[i] - series.Pressures[i - 1], series.Pressures[i + 1] - series.Pressures[i]);
            turns += left * right < 0 ? 1 : 0;
            off += (right - left) * (right - left);
        }

        // A second difference of readings that scatter by σ scatters by √6·σ.
        var scatter = Math.Sqrt(off / 6 / (from - begin - 2));
        return scatter >= StepsOfScatter * step && turns >= Turning * (from - begin) ? new TooSteady(to - from, scatter) : null;
    }
}
