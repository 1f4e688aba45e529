namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// Legs of falling and rising pressure in a log, found as a zigzag on the logarithm of the pressure:
/// a leg ends where the pressure has turned back by 8 % and by five steps of the gauge.
/// </summary>
internal static class TurningPoints
{
    private const double LeastPressure = 0.05;
    private const double ReversalRatio = 1.08;

    /// <summary>A leg from row <paramref name="From"/> to row <paramref name="To"/>, rising or falling.</summary>
    internal readonly record struct Leg(int From, int To, bool Rising);

    /// <summary>Legs of the series, in order. Over-range rows count as at the upper end of the gauge or above.</summary>
    internal static List<Leg> Find(VacuumSeries series, double resolution)
    {
        var legs = new List<Leg>();
        var p = Smoothed(series);
        if (p.Length < 2)
            return legs;

        var low = 0;
        var high = 0;
        var start = 0;
        int direction = 0;
        for (var i = 1; i < p.Length; i++)
        {
            if (p[i] < p[low])
                low = i;
            if (p[i] > p[high])
                high = i;
            if (direction <= 0 && Turned(p[low], p[i], resolution))
            {
                // The pressure may have lain at its low for long: the leg starts when it leaves it.
                var leaves = LastAtOrBelow(p, low, i, Math.Max(1.01 * p[low], p[low] + 2 * resolution));
                if (direction < 0 && leaves > start)
                    legs.Add(new Leg(start, leaves, Rising: false));
                start = direction < 0 ? leaves : 0;
                direction = 1;
                high = i;
                low = i;
            }
            else if (direction >= 0 && Turned(p[i], p[high], resolution))
            {
                var leaves = LastAtOrAbove(p, high, i, Math.Min(0.98 * p[high], p[high] - 2 * resolution));
                if (direction > 0 && leaves > start)
                    legs.Add(new Leg(start, leaves, Rising: true));
                start = direction > 0 ? leaves : 0;
                direction = -1;
                low = i;
                high = i;
            }
        }

        if (start < p.Length - 1 && direction != 0)
            legs.Add(new Leg(start, p.Length - 1, direction > 0));
        return legs;
    }

    /// <summary>The log under a running median of five, so that single spikes and single over-range rows turn nothing.</summary>
    internal static double[] Smoothed(VacuumSeries series)
    {
        var n = series.Count;
        var raw = new double[n];
        var ceiling = LeastPressure;
        foreach (var p in series.Pressures)
        {
            if (p > ceiling)
                ceiling = p;
        }

        for (var i = 0; i < n; i++)
        {
            var p = series.OverRange[i] ? ceiling : series.Pressures[i];
            raw[i] = Math.Max(p, LeastPressure);
        }

        var smooth = new double[n];
        Span<double> window = stackalloc double[5];
        for (var i = 0; i < n; i++)
        {
            var half = Math.Min(2, Math.Min(i, n - 1 - i));
            var part = window[..(2 * half + 1)];
            raw.AsSpan(i - half, 2 * half + 1).CopyTo(part);
            part.Sort();
            smooth[i] = part[half];
        }

        return smooth;
    }

    private static bool Turned(double low, double high, double resolution) =>
        high >= ReversalRatio * low && high - low >= 5 * resolution;

    private static int LastAtOrBelow(double[] p, int from, int to, double level)
    {
        for (var i = to; i > from; i--)
        {
            if (p[i] <= level)
                return i;
        }

        return from;
    }

    private static int LastAtOrAbove(double[] p, int from, int to, double level)
    {
        for (var i = to; i > from; i--)
        {
            if (p[i] >= level)
                return i;
        }

        return from;
    }
}
