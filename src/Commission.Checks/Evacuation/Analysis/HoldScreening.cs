namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Chooses the rows of a hold that are analysed: after the equalisation, numbered, and no lone spikes.</summary>
internal sealed class HoldScreening
{
    private const int HalfWindow = 5;
    private const double OutlierDeviations = 6;
    private const double OverRangeAtEnd = 0.05;

    private HoldScreening(double[] times, double[] pressures, double interval, double resolution, HoldRows rows, bool endsOverRange)
    {
        Times = times;
        Pressures = pressures;
        Interval = interval;
        Resolution = resolution;
        Rows = rows;
        EndsOverRange = endsOverRange;
    }

    /// <summary>Times of the used rows, s.</summary>
    internal double[] Times { get; }

    /// <summary>Pressures of the used rows, Pa.</summary>
    internal double[] Pressures { get; }

    /// <summary>Median time between used rows, s.</summary>
    internal double Interval { get; }

    /// <summary>The stated resolution, or the smallest step the readings really make, whichever is larger, Pa.</summary>
    internal double Resolution { get; }

    internal HoldRows Rows { get; }

    /// <summary>True when the hold ends above the gauge's range.</summary>
    internal bool EndsOverRange { get; }

    internal static HoldScreening Of(VacuumSeries series, double isolation, double end, double skip, double statedResolution)
    {
        var from = series.IndexAtOrAfter(isolation);
        var to = series.IndexAtOrAfter(end);
        if (to < series.Count && series.Times[to] == end)
            to++;
        to = Math.Max(to, from);
        var times = new List<double>(to - from);
        var pressures = new List<double>(to - from);
        var skipped = 0;
        var over = 0;
        for (var i = from; i < to; i++)
        {
            if (series.Times[i] < isolation + skip)
            {
                skipped++;
            }
            else if (series.OverRange[i])
            {
                over++;
            }
            else
            {
                times.Add(series.Times[i]);
                pressures.Add(series.Pressures[i]);
            }
        }

        var resolution = Math.Max(statedResolution, SmallestStep(pressures));
        var outliers = RemoveSpikes(times, pressures, resolution);
        var rows = new HoldRows(
            to - from, skipped, over, outliers, times.Count,
            times.Count > 0 ? times[0] : null, times.Count > 0 ? times[^1] : null);
        return new HoldScreening([.. times], [.. pressures], SampledMedian.OfSteps([.. times]), resolution, rows, EndsAbove(series, from, to));
    }

    private static double MedianSlope(List<double> times, List<double> p, int start, int length)
    {
        Span<double> slopes = stackalloc double[HalfWindow];
        for (var k = 0; k < HalfWindow; k++)
        {
            var (a, b) = (start + k, start + length - HalfWindow + k);
            slopes[k] = (p[b] - p[a]) / (times[b] - times[a]);
        }

        slopes.Sort();
        return slopes[HalfWindow / 2];
    }

    private static bool EndsAbove(VacuumSeries series, int from, int to)
    {
        var last = Math.Max(3, (int)(OverRangeAtEnd * (to - from)));
        if (to - from < last)
            return to > from && series.OverRange[to - 1];
        var above = 0;
        for (var i = to - last; i < to; i++)
            above += series.OverRange[i] ? 1 : 0;
        return above == last;
    }

    // The step of a digital gauge shows as the smallest difference between neighbours, provided it repeats:
    // a log written in double precision has no such step.
    private static double SmallestStep(List<double> p)
    {
        var steps = new List<double>();
        for (var i = 1; i < p.Count && steps.Count < 4000; i++)
        {
            var d = Math.Abs(p[i] - p[i - 1]);
            if (d > 0)
                steps.Add(d);
        }

        if (steps.Count < 3)
            return 0;
        steps.Sort();
        var smallest = steps[0];
        var near = steps.Count(d => Math.Abs(d / smallest - Math.Round(d / smallest)) < 0.02);
        return near >= 0.98 * steps.Count ? smallest : 0;
    }

    private static int RemoveSpikes(List<double> times, List<double> p, double resolution)
    {
        if (p.Count < 2 * HalfWindow + 1)
            return 0;
        var distance = new double[p.Count];
        Span<double> window = stackalloc double[2 * HalfWindow + 1];
        for (var i = 0; i < p.Count; i++)
        {
            // The rise across the window is taken out first: at the ends the window lies to one side, and on a steep rise the middle
            // row is always the median, which would make the yardstick of a spike vanish for the flat part.
            var start = Math.Clamp(i - HalfWindow, 0, p.Count - window.Length);
            var slope = MedianSlope(times, p, start, window.Length);
            for (var k = 0; k < window.Length; k++)
                window[k] = p[start + k] - slope * (times[start + k] - times[i]);
            window.Sort();
            distance[i] = Math.Abs(p[i] - window[HalfWindow]);
        }

        var limit = Math.Max(OutlierDeviations * 1.4826 * SampledMedian.Of(distance), 3 * resolution);
        // Without scatter and without resolution there is no yardstick for a spike.
        if (limit <= 0)
            return 0;
        var kept = 0;
        for (var i = 0; i < distance.Length; i++)
        {
            if (distance[i] > limit)
                continue;
            times[kept] = times[i];
            p[kept++] = p[i];
        }

        var removed = p.Count - kept;
        times.RemoveRange(kept, removed);
        p.RemoveRange(kept, removed);
        return removed;
    }
}
