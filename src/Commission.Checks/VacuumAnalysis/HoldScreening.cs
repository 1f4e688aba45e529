namespace Commission.Checks.VacuumAnalysis;

/// <summary>Chooses the rows of a hold that are analysed: after the equalisation, numbered, and no lone spikes.</summary>
internal sealed class HoldScreening
{
    private const int HalfWindow = 5;
    private const double OutlierDeviations = 6;
    private const double OverRangeAtEnd = 0.05;

    // A closed vacuum does not deepen: a fall beyond scatter and this share of the level is a pump that pulls again, a part that is cut off, or a gauge that drifts.
    private const double FallShare = 0.1;
    private const double Neighbours = 0.15;

    private const double MostStepsOfRow = 3;

    // Below two steps a display may only have changed its last digit.
    internal const double LeastStepsSeen = 2;

    // What evens out right after the valve was closed is told from this share of the level on (common practice, no source).
    private const double LeastFirstShare = 0.05;
    private const int FewestBelowCoarse = 20;

    private readonly DisplaySteps _steps;

    private HoldScreening(double[] times, double[] pressures, double interval, DisplaySteps steps, HoldRows rows, bool endsOverRange)
    {
        _steps = steps;
        Times = times;
        Pressures = pressures;
        Interval = interval;
        Resolution = steps.Largest;
        Rows = rows;
        EndsOverRange = endsOverRange;
    }

    /// <summary>Times of the used rows, s.</summary>
    internal double[] Times { get; }

    /// <summary>Pressures of the used rows, Pa.</summary>
    internal double[] Pressures { get; }

    /// <summary>Median time between used rows, s.</summary>
    internal double Interval { get; }

    /// <summary>The stated resolution, or the smallest step the readings really make, whichever is larger, Pa: where it is coarsest.</summary>
    internal double Resolution { get; }

    /// <summary>The same where the hold begins, Pa.</summary>
    internal double ResolutionAtStart { get; private init; }

    /// <summary>The step of the display at a level, Pa.</summary>
    internal double StepAt(double pascals) => _steps.At(pascals);

    /// <summary>Steps of the display that the readings went through, of each row no more than a few, because those of a quick start say nothing of a slow end.</summary>
    internal double StepsTaken { get; private init; }

    internal HoldRows Rows { get; }

    /// <summary>True when the hold ends above the gauge's range.</summary>
    internal bool EndsOverRange { get; }

    /// <summary>The largest fall that is more than scatter and a tenth of the level; null where there is none.</summary>
    internal PressureFall? Fall { get; private init; }

    /// <summary>Falls within half a minute again and again, and what they took away together, Pa.</summary>
    internal (int Count, double Taken) Teeth { get; private init; }

    /// <summary>The largest fall, whatever its share of the level, that is more than scatter, Pa; zero where there is none. A rise of as much may hide behind it.</summary>
    internal double Drop { get; private init; }

    /// <summary>Mean of the last tenth of the used rows less that of the first tenth, Pa.</summary>
    internal double NetChange
    {
        get
        {
            var tenth = Math.Max(1, Pressures.Length / 10);
            return Pressures.AsSpan(Pressures.Length - tenth).ToArray().Average() - Pressures.AsSpan(0, tenth).ToArray().Average();
        }
    }

    /// <summary>The net change where anybody sees it on the display as a rise, Pa: two steps at least, and half of all that the readings moved by; zero where nobody does.</summary>
    internal double RiseShown => NetChange is var net && net >= LeastStepsSeen * Resolution && 2 * net >= Pressures.Max() - Pressures.Min() ? net : 0;

    /// <summary>The reading at isolation, Pa; null where none was taken then or it was over range.</summary>
    internal double? AtIsolation { get; private init; }

    /// <summary>How much it rose from isolation to where the used rows begin, Pa; null where that is no more than scatter, the display's steps and a small share of the level.</summary>
    /// <param name="scatter">Scatter of the used rows, Pa.</param>
    internal double? FirstRise(double scatter) => AtIsolation is { } level && Pressures[0] - level is var rise
        && rise >= Math.Max(LeastStepsSeen * ResolutionAtStart, LeastFirstShare * level) && rise >= OutlierDeviations * scatter ? rise : null;

    /// <summary>A rise that began late; null where there is none.</summary>
    internal LateRise? Late => LateRise.Of(Times, Pressures, Resolution);

    internal static HoldScreening Of(VacuumSeries series, double isolation, double end, double skip, double statedResolution, double counting)
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

        var steps = new DisplaySteps(pressures, statedResolution);
        var outliers = RemoveSpikes(times, pressures, steps);
        if (TooCoarseFrom(pressures, steps, counting) is var coarse && coarse < pressures.Count)
        {
            over += pressures.Count - coarse;
            times.RemoveRange(coarse, times.Count - coarse);
            pressures.RemoveRange(coarse, pressures.Count - coarse);
            steps = new DisplaySteps(pressures, statedResolution);
        }

        var rows = new HoldRows(
            to - from, skipped, over, outliers, times.Count,
            times.Count > 0 ? times[0] : null, times.Count > 0 ? times[^1] : null);
        var interval = SampledMedian.OfSteps([.. times]);
        var fall = LargestFall(times, pressures, steps);
        var teeth = SuddenFalls.Of(times, pressures, steps);
        return new HoldScreening([.. times], [.. pressures], interval, steps, rows, EndsAbove(series, from, to))
        {
            ResolutionAtStart = pressures.Count > 0 ? steps.At(pressures[0]) : steps.Largest,
            StepsTaken = StepsThrough(pressures, steps),
            AtIsolation = from < to && series.Times[from] == isolation && !series.OverRange[from] ? series.Pressures[from] : null,
            Teeth = teeth,
            Drop = Math.Max(fall?.Size ?? 0, teeth.Taken),
            Fall = fall is not null && fall.Size > fall.Scatter + (FallShare * fall.High) ? AsRead(fall, series) : null,
        };
    }

    private static double StepsThrough(List<double> pressures, DisplaySteps steps)
    {
        var sum = 0.0;
        for (var i = 1; i < pressures.Count; i++)
            sum += steps.At(pressures[i]) is > 0 and var step ? Math.Min(MostStepsOfRow, Math.Round(Math.Abs(pressures[i] - pressures[i - 1]) / step)) : 1;
        return sum;
    }

    // From where on the display's own step is larger than what counts, its rows tell nothing, provided that enough of the hold lies before.
    private static int TooCoarseFrom(List<double> pressures, DisplaySteps steps, double counting)
    {
        var last = pressures.FindLastIndex(p => steps.At(p) <= counting) + 1;
        return last >= FewestBelowCoarse ? last : pressures.Count;
    }

    // The highest before each row against it; single rows are smoothed away, so that scatter is what stays between neighbours.
    private static PressureFall? LargestFall(List<double> times, List<double> raw, DisplaySteps steps)
    {
        if (raw.Count < 2 * HalfWindow)
            return null;
        var p = RunningMedian.OfFive([.. raw]);
        var differences = new double[p.Length - 1];
        for (var i = 1; i < raw.Count; i++)
            differences[i - 1] = Math.Abs(raw[i] - raw[i - 1]);
        var scatter = OutlierDeviations * 1.4826 / Math.Sqrt(2) * SampledMedian.Of(differences);
        PressureFall? largest = null;
        var top = 0;
        for (var i = 1; i < p.Length; i++)
        {
            if (p[i] > p[top])
                top = i;
            var fall = p[top] - p[i];
            var least = Math.Max(scatter, 3 * steps.At(p[top]));
            if (fall > least && !(fall <= largest?.Size))
                largest = new PressureFall(times[top], times[i], p[top], p[i], least, 1);
        }

        return largest is null ? null : largest with { SteepestMinute = SteepestMinute(times, p, largest) };
    }

    // Found on smoothed rows, told by the rows of the log: from the highest to the lowest that follows, a window beyond the fall on either side. What no neighbour comes near is a spike.
    private static PressureFall AsRead(PressureFall fall, VacuumSeries series)
    {
        var (from, to) = (Math.Max(series.IndexAtOrAfter(fall.From) - HalfWindow, 1), Math.Min(series.IndexAtOrAfter(fall.To) + HalfWindow, series.Count - 2));
        var (top, low, high, deepest) = (-1, -1, -1, 0.0);
        var p = series.Pressures;
        for (var i = from; i <= to; i++)
        {
            if (series.OverRange[i] || Math.Min(Math.Abs(p[i] - p[i - 1]), Math.Abs(p[i] - p[i + 1])) > Neighbours * p[i])
                continue;
            if (high < 0 || p[i] > p[high])
                high = i;
            if (p[high] - p[i] > deepest)
                (top, low, deepest) = (high, i, p[high] - p[i]);
        }

        return top < 0 ? fall : fall with { From = series.Times[top], To = series.Times[low], High = p[top], Low = p[low] };
    }

    // The smallest share of its level that a minute of the fall left, rows further apart than that from one to the next.
    private static double SteepestMinute(List<double> times, double[] p, PressureFall fall)
    {
        var share = 1.0;
        var from = 0;
        for (var i = 1; i < p.Length && times[i] <= fall.To; i++)
        {
            while (from < i - 1 && times[i] - times[from] > PressureFall.Minute)
                from++;
            if (times[from] >= fall.From && p[from] > 0)
                share = Math.Min(share, p[i] / p[from]);
        }

        return share;
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

    private static int RemoveSpikes(List<double> times, List<double> p, DisplaySteps steps)
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
            distance[i] = p[i] - window[HalfWindow];
        }

        // Without scatter and without resolution there is no yardstick for a spike.
        var scatter = OutlierDeviations * 1.4826 * SampledMedian.Of([.. distance.Select(Math.Abs)]);
        if (scatter <= 0 && steps.Largest <= 0)
            return 0;
        bool IsFar(int i) => Math.Abs(distance[i]) > Math.Max(scatter, 3 * steps.At(p[i]));

        // What comes nearer row by row from the first on settles: a quick source seen by a slow logger, and no spike. What lies in its window is measured by its slope.
        var settling = 0;
        while (settling < HalfWindow && IsFar(settling) && (settling == 0 || distance[settling] / distance[settling - 1] is > 0 and < 1))
            settling++;
        var kept = settling > 1 ? 2 * HalfWindow + 1 : 0;
        for (var i = kept; i < distance.Length; i++)
        {
            if (IsFar(i))
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

/// <summary>
/// A rise over the last third of a hold that stands out: three times what the first half rose at, and five times the scatter about the straight line through that half.
/// What begins late has no curve, and in few independent readings no statistics.
/// </summary>
/// <param name="Rate">Pa/s, over the last third.</param>
/// <param name="From">When the readings left that straight line for good, s.</param>
internal sealed record LateRise(double Rate, double From)
{
    private const int FewestRows = 30;
    private const double Ends = 0.1;
    private const double Deviations = 5;
    private const double Leaves = 3;
    private const double Times = 3;

    /// <summary>Looks for it; null where there is none.</summary>
    /// <param name="times">Times of the used rows, s, one at least.</param>
    /// <param name="pressures">Pressures of the same rows, Pa.</param>
    /// <param name="resolution">Step of the gauge, Pa.</param>
    public static LateRise? Of(double[] times, double[] pressures, double resolution)
    {
        var (begin, span) = (times[0], times[^1] - times[0]);
        var half = FirstAfter(begin + (span / 2));
        if (times.Length < FewestRows || half < FewestRows / 3)
            return null;
        var first = StraightLine.Through(times.AsSpan(0, half), pressures.AsSpan(0, half));
        var scatter = Math.Max(first.Scatter, resolution);
        var (from, to) = (Mean(2.0 / 3, Ends), Mean(1 - (Ends / 2), Ends));
        var rise = to.Pressure - from.Pressure;
        var rate = rise / (to.Time - from.Time);
        if (!(rise > Deviations * scatter && rate > Times * first.Slope))
            return null;
        var left = times.Length - 1;
        while (left > 0 && pressures[left - 1] - first.At(times[left - 1]) > Leaves * scatter)
            left--;
        return new LateRise(rate, times[left]);

        int FirstAfter(double time) => Array.BinarySearch(times, time) is var at && at >= 0 ? at : ~at;

        (double Time, double Pressure) Mean(double middle, double width)
        {
            var (low, high) = (FirstAfter(begin + ((middle - (width / 2)) * span)), FirstAfter(begin + ((middle + (width / 2)) * span)));
            (low, high) = (Math.Min(low, times.Length - 1), Math.Clamp(high, low + 1, times.Length));
            var (time, pressure) = (0.0, 0.0);
            for (var i = low; i < high; i++)
                (time, pressure) = (time + (times[i] / (high - low)), pressure + (pressures[i] / (high - low)));
            return (time, pressure);
        }
    }
}

/// <summary>A fall of the pressure.</summary>
/// <param name="From">Time of the highest, s.</param>
/// <param name="To">Time of the lowest, s.</param>
/// <param name="High">Pa.</param>
/// <param name="Low">Pa.</param>
/// <param name="Scatter">What a fall has to exceed to be one, Pa.</param>
/// <param name="SteepestMinute">What its steepest minute left of the level, as a share of 1.</param>
internal sealed record PressureFall(double From, double To, double High, double Low, double Scatter, double SteepestMinute)
{
    /// <summary>A minute, s.</summary>
    public const double Minute = 60;

    /// <summary>Pa.</summary>
    public double Size => High - Low;
}

/// <summary>
/// Falls within half a minute that are far beyond what the readings do in any other half minute, where as many rises do not face them: somebody who opens the
/// valve to the pump again and again. A gauge that swings or hops does both.
/// </summary>
internal static class SuddenFalls
{
    private const double Window = 30;
    private const double Deviations = 6 * 1.4826;
    private const int Fewest = 3;

    /// <summary>How many there are and what they took away together, Pa; none where there are too few of them.</summary>
    public static (int Count, double Taken) Of(List<double> times, List<double> pressures, DisplaySteps steps)
    {
        var n = pressures.Count;
        if (n < 2)
            return (0, 0);
        var changes = new double[n - 1];
        for (int i = 0, j = 1; i < n - 1; i++)
        {
            j = Math.Max(j, i + 1);
            while (j < n - 1 && times[j + 1] - times[i] <= Window)
                j++;
            changes[i] = pressures[j] - pressures[i];
        }

        var middle = SampledMedian.Of(changes);
        var far = Deviations * SampledMedian.Of([.. changes.Select(c => Math.Abs(c - middle))]);
        var (falls, rises, taken, inOne, deepest) = (0, 0, 0.0, 0, 0.0);
        for (var i = 0; i < changes.Length; i++)
        {
            // Far from what is usual, and more than the display's own flicker.
            var flicker = 3 * steps.At(pressures[i]);
            var sign = Math.Abs(changes[i]) > flicker && Math.Abs(changes[i] - middle) > Math.Max(far, flicker) && changes[i] * (changes[i] - middle) > 0 ? Math.Sign(changes[i]) : 0;
            if (sign != inOne)
            {
                (falls, rises) = (falls + (sign < 0 ? 1 : 0), rises + (sign > 0 ? 1 : 0));
                (taken, deepest, inOne) = (taken + deepest, 0, sign);
            }

            if (sign < 0)
                deepest = Math.Max(deepest, -changes[i]);
        }

        return falls >= Fewest * Math.Max(rises, 1) ? (falls, taken + deepest) : (0, 0);
    }
}

/// <summary>
/// The steps of a display by range, found in the readings: a gauge of 1 micron below 1000 and of 10 above shows both. Within each quarter of a doubling of the level the
/// smallest difference between neighbours counts, provided that it repeats: a log written in double precision has no such step.
/// </summary>
internal sealed class DisplaySteps
{
    private const int Most = 4000;
    private const int Fewest = 3;
    private const double Whole = 0.02;
    private const double Repeats = 0.98;

    private readonly SortedDictionary<int, double> _byOctave = [];
    private readonly double _stated;

    /// <param name="pressures">Readings, Pa.</param>
    /// <param name="stated">Stated resolution, Pa; never undercut.</param>
    public DisplaySteps(List<double> pressures, double stated)
    {
        _stated = stated;
        var differences = new SortedDictionary<int, List<double>>(Comparer<int>.Create((a, b) => b.CompareTo(a)));
        Dictionary<int, (bool Stood, bool Rose, bool Fell)> lived = [];
        for (var i = 1; i < pressures.Count; i++)
        {
            var (octave, d) = (Octave(pressures[i]), pressures[i] - pressures[i - 1]);
            if (octave != Octave(pressures[i - 1]))
                continue;
            var life = lived.GetValueOrDefault(octave);
            lived[octave] = (life.Stood || d == 0, life.Rose || d > 0, life.Fell || d < 0);
            if (d != 0 && Of(octave) is { Count: < Most } of)
                of.Add(Math.Abs(d));
        }

        // From the top down: a display does not become finer upwards.
        var above = double.PositiveInfinity;
        foreach (var (octave, steps) in differences)
        {
            if (steps.Count < Fewest)
                continue;
            steps.Sort();
            var smallest = steps[0];

            // Rows that all rise by the same tell the rise and not the display.
            if (lived[octave] is not ({ Stood: true } or { Rose: true, Fell: true }) && steps[^1] < 1.5 * smallest)
                continue;
            if (steps.Count(d => Math.Abs((d / smallest) - Math.Round(d / smallest)) < Whole) < Repeats * steps.Count)
                continue;
            above = Math.Min(above, smallest);
            _byOctave.Add(octave, above);
        }

        Largest = Math.Max(_stated, _byOctave.Values.DefaultIfEmpty().Max());

        List<double> Of(int octave)
        {
            if (!differences.TryGetValue(octave, out var list))
                differences.Add(octave, list = []);
            return list;
        }
    }

    /// <summary>The coarsest step that the readings show or the gauge states, Pa.</summary>
    public double Largest { get; }

    /// <summary>The step at a level, Pa: that of its range, else of the nearest range below, else of the one above.</summary>
    public double At(double pascals)
    {
        var octave = Octave(pascals);
        double? step = null;
        foreach (var (at, found) in _byOctave)
        {
            if (at > octave && step is not null)
                break;
            step = found;
            if (at > octave)
                break;
        }

        return Math.Max(_stated, step ?? 0);
    }

    // The ranges of a display change at round numbers of its own unit; a quarter of a doubling is fine enough to keep two ranges apart.
    private static int Octave(double pascals) => pascals > 0 ? (int)Math.Floor(4 * Math.Log2(pascals)) : int.MinValue;
}

/// <summary>A straight line by least squares.</summary>
/// <param name="Middle">Mean time, s.</param>
/// <param name="Mean">Its value there.</param>
/// <param name="Slope">Per second.</param>
/// <param name="Scatter">Standard deviation about it.</param>
/// <param name="Farthest">Largest distance from it.</param>
internal readonly record struct StraightLine(double Middle, double Mean, double Slope, double Scatter, double Farthest)
{
    /// <summary>Its value at a time, s.</summary>
    public double At(double time) => Mean + (Slope * (time - Middle));

    /// <summary>The line through so many points, three at least.</summary>
    public static StraightLine Through(ReadOnlySpan<double> times, ReadOnlySpan<double> values)
    {
        var n = times.Length;
        var (t, y) = (0.0, 0.0);
        for (var i = 0; i < n; i++)
            (t, y) = (t + (times[i] / n), y + (values[i] / n));
        var (tt, ty) = (0.0, 0.0);
        for (var i = 0; i < n; i++)
            (tt, ty) = (tt + ((times[i] - t) * (times[i] - t)), ty + ((times[i] - t) * (values[i] - y)));
        var slope = ty / tt;
        var (rss, farthest) = (0.0, 0.0);
        for (var i = 0; i < n; i++)
        {
            var off = values[i] - y - (slope * (times[i] - t));
            (rss, farthest) = (rss + (off * off), Math.Max(farthest, Math.Abs(off)));
        }

        return new StraightLine(t, y, slope, Math.Sqrt(rss / (n - 2)), farthest);
    }
}

/// <summary>A median of five neighbours, so that single rows turn nothing.</summary>
internal static class RunningMedian
{
    /// <summary>The values under a running median of five, of fewer at the ends.</summary>
    public static double[] OfFive(ReadOnlySpan<double> raw)
    {
        var n = raw.Length;
        var smooth = new double[n];
        Span<double> window = stackalloc double[5];
        for (var i = 0; i < n; i++)
        {
            var half = Math.Min(2, Math.Min(i, n - 1 - i));
            var part = window[..((2 * half) + 1)];
            raw.Slice(i - half, (2 * half) + 1).CopyTo(part);
            part.Sort();
            smooth[i] = part[half];
        }

        return smooth;
    }
}
