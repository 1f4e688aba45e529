using System.Collections.Immutable;
using Commission.Messages;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>
/// Cuts a vacuum log into pulls, breaks and holds: by the events the crew wrote down, and where they are silent by the
/// shape of the log, which is then said in a remark.
/// </summary>
internal static class SeriesSegmentation
{
    // Common practice, no source: a break lets gas in within a minute or two and ends far above any hold.
    private const double BreakPressure = 5_000;
    private const double BreakDecadesPerSecond = 1.0 / 180;
    private const double LeastDecades = 0.15;
    private const double ShortestHold = 120;
    private const double Disagreement = 120;
    private const double BreakSearch = 600;

    private readonly record struct Boundary(double Time, SegmentKind Kind, SegmentBasis Basis);

    /// <summary>Cuts the log.</summary>
    /// <param name="series">The log.</param>
    /// <param name="events">Events on the same clock; may be empty.</param>
    /// <param name="resolution">Smallest step of the gauge, Pa, ≥ 0.</param>
    /// <returns>The parts in time order; empty when the log has fewer than two rows.</returns>
    public static SegmentedSeries Cut(VacuumSeries series, IReadOnlyList<VacuumEvent> events, double resolution)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(events);
        var remarks = ImmutableArray.CreateBuilder<Message>();
        RemarkOnRows(series, remarks);
        if (series.Count < 2)
            return new SegmentedSeries([], Isolation: null, IsolationBasis: null, HoldEnd: null, remarks.ToImmutable());

        var ordered = events.OrderBy(e => e.Time).ToList();
        var found = FromShape(series, resolution);
        List<double> missed = [];
        var boundaries = Merge(series, found, ordered, remarks, missed);
        var segments = ToSegments(series, boundaries, ordered);
        var hold = segments.LastOrDefault(s => s.Kind == SegmentKind.Hold);
        RemarkOnHold(series, hold, ordered, remarks);
        return new SegmentedSeries(segments, hold?.From, hold?.Basis, hold?.To, remarks.ToImmutable()) { MissedBreaks = [.. missed] };
    }

    private static List<Boundary> FromShape(VacuumSeries series, double resolution)
    {
        var p = TurningPoints.Smoothed(series);
        var boundaries = new List<Boundary>();
        foreach (var leg in TurningPoints.Find(series, resolution))
        {
            var from = series.Times[leg.From];
            var kind = SegmentKind.Pull;
            if (leg.Rising)
            {
                var length = series.Times[leg.To] - from;
                if (IsBreak(series, p, leg))
                    kind = SegmentKind.Break;
                else if (length >= ShortestHold)
                    kind = SegmentKind.Hold;
                else
                    continue;
            }

            if (boundaries.Count == 0 || boundaries[^1].Kind != kind)
                boundaries.Add(new Boundary(from, kind, SegmentBasis.FoundInData));
        }

        return boundaries;
    }

    private static bool IsBreak(VacuumSeries series, double[] p, TurningPoints.Leg leg)
    {
        var top = p[leg.To];
        if (top < BreakPressure && !series.OverRange.Slice(leg.From, leg.To - leg.From + 1).Contains(value: true))
            return false;
        for (int i = leg.From, j = leg.From; i <= leg.To; i++)
        {
            // Fastest decade: the shortest time in which the pressure rose tenfold (or by the whole leg, if less).
            var want = Math.Min(10 * p[i], top);
            j = Math.Max(j, i);
            while (j < leg.To && p[j] < want)
                j++;
            var decades = Math.Log10(p[j] / p[i]);
            if (decades >= LeastDecades && decades >= (series.Times[j] - series.Times[i]) * BreakDecadesPerSecond)
                return true;
        }

        return false;
    }

    private static List<Boundary> Merge(VacuumSeries series, List<Boundary> found, List<VacuumEvent> events, ImmutableArray<Message>.Builder remarks, List<double> missed)
    {
        var all = new List<Boundary>();
        var spans = HoldSpans(series, events);
        foreach (var b in found)
        {
            if (!spans.Any(s => b.Time >= s.From - 1e-9 && b.Time < s.To))
                all.Add(b);
        }

        foreach (var e in events)
        {
            switch (e.Kind)
            {
                case VacuumEventKind.PumpStarted:
                    all.Add(new Boundary(e.Time, SegmentKind.Pull, SegmentBasis.Given));
                    break;
                case VacuumEventKind.NitrogenBreak:
                    if (!AddGivenBreak(series, all, e.Time, remarks))
                        missed.Add(e.Time);
                    break;
                case VacuumEventKind.Isolated:
                    AddGivenIsolation(all, found, e.Time, remarks);
                    break;
                case VacuumEventKind.Ended:
                default:
                    break;
            }
        }

        foreach (var b in all.Where(b => b is { Kind: SegmentKind.Break, Basis: SegmentBasis.FoundInData }).OrderBy(b => b.Time))
            remarks.Add(VacuumHoldMessages.CutBreakFound(TimeValue.After(b.Time)));

        all = [.. all.OrderBy(b => b.Time)];
        var first = series.Times[0];
        if (all.Count == 0 || all[0].Time > first)
            all.Insert(0, new Boundary(first, SegmentKind.Pull, SegmentBasis.FoundInData));
        return all;
    }

    private static List<(double From, double To)> HoldSpans(VacuumSeries series, List<VacuumEvent> events)
    {
        var spans = new List<(double From, double To)>();
        for (var i = 0; i < events.Count; i++)
        {
            if (events[i].Kind == VacuumEventKind.Isolated)
                spans.Add((events[i].Time, i + 1 < events.Count ? events[i + 1].Time : series.Times[^1] + 1));
        }

        return spans;
    }

    // Whether the log shows the break, or was blind at the time.
    private static bool AddGivenBreak(VacuumSeries series, List<Boundary> all, double time, ImmutableArray<Message>.Builder remarks)
    {
        var at = all.FindIndex(b => b.Kind == SegmentKind.Break && Math.Abs(b.Time - time) <= BreakSearch);
        if (at >= 0)
        {
            if (Math.Abs(all[at].Time - time) > Disagreement)
                remarks.Add(VacuumHoldMessages.CutBreakMoved(TimeValue.After(time), TimeValue.After(all[at].Time)));
            all[at] = new Boundary(all[at].Time, SegmentKind.Break, SegmentBasis.Given);
            return true;
        }

        // The gauge may have been taken off, or have shown nothing: then the break lasts until the rows come back.
        all.Add(new Boundary(time, SegmentKind.Break, SegmentBasis.Given));
        var gap = series.Gaps.FirstOrDefault(g => g.To > time && g.From < time + BreakSearch);
        var next = series.IndexAtOrAfter(time);
        var back = gap.Length > 0 ? gap.To : time;
        while (next < series.Count && series.OverRange[next])
            back = series.Times[next++];
        all.Add(new Boundary(Math.Max(back, time), SegmentKind.Pull, SegmentBasis.FoundInData));
        remarks.Add(VacuumHoldMessages.CutBreakNotSeen(TimeValue.After(time)));
        return gap.Length > 0 || back > time || time < series.Times[0] || time > series.Times[^1];
    }

    private static void AddGivenIsolation(List<Boundary> all, List<Boundary> found, double time, ImmutableArray<Message>.Builder remarks)
    {
        all.Add(new Boundary(time, SegmentKind.Hold, SegmentBasis.Given));
        var before = all.FindLastIndex(b => b is { Kind: SegmentKind.Hold, Basis: SegmentBasis.FoundInData } && b.Time < time);
        if (before >= 0 && !found.Any(b => b.Time > all[before].Time && b.Time < time))
        {
            // One rise, two starts: the crew's word stands, and a difference that matters is said.
            if (time - all[before].Time > Disagreement)
                remarks.Add(VacuumHoldMessages.CutIsolationMoved(TimeValue.After(time), TimeValue.After(all[before].Time)));
            all.RemoveAt(before);
        }
    }

    private static ImmutableArray<SeriesSegment> ToSegments(VacuumSeries series, List<Boundary> boundaries, List<VacuumEvent> events)
    {
        var end = series.Times[^1];
        var ended = events.FindLast(e => e.Kind == VacuumEventKind.Ended);
        if (ended.Kind == VacuumEventKind.Ended && ended.Time > series.Times[0])
            end = Math.Min(end, ended.Time);

        var segments = ImmutableArray.CreateBuilder<SeriesSegment>();
        for (var i = 0; i < boundaries.Count; i++)
        {
            var from = Math.Max(boundaries[i].Time, series.Times[0]);
            var to = Math.Min(i + 1 < boundaries.Count ? boundaries[i + 1].Time : end, end);
            if (to <= from)
                continue;
            segments.Add(Describe(series, boundaries[i].Kind, from, to, boundaries[i].Basis));
        }

        return segments.ToImmutable();
    }

    private static SeriesSegment Describe(VacuumSeries series, SegmentKind kind, double from, double to, SegmentBasis basis)
    {
        double? first = null;
        double? last = null;
        double? low = null;
        double? high = null;
        var over = 0;
        for (var i = series.IndexAtOrAfter(from); i < series.Count && series.Times[i] <= to; i++)
        {
            if (series.OverRange[i])
            {
                over++;
                continue;
            }

            var p = series.Pressures[i];
            first ??= p;
            last = p;
            low = low is null ? p : Math.Min(low.Value, p);
            high = high is null ? p : Math.Max(high.Value, p);
        }

        return new SeriesSegment(kind, from, to, basis, first, last, low, high, over);
    }

    private static void RemarkOnRows(VacuumSeries series, ImmutableArray<Message>.Builder remarks)
    {
        if (series.UnreadableRows > 0)
            remarks.Add(VacuumHoldMessages.CutUnreadable(series.UnreadableRows));
        if (series.OutOfOrderRows > 0)
            remarks.Add(VacuumHoldMessages.CutOutOfOrder(series.OutOfOrderRows));
        if (series.Gaps.Length > 0)
        {
            var longest = series.Gaps.MaxBy(g => g.Length);
            remarks.Add(VacuumHoldMessages.CutGaps(series.Gaps.Length, new(longest.Length), TimeValue.After(longest.From)));
        }
    }

    private static void RemarkOnHold(VacuumSeries series, SeriesSegment? hold, List<VacuumEvent> events, ImmutableArray<Message>.Builder remarks)
    {
        if (hold is null)
        {
            var written = events.Any(e => e.Kind == VacuumEventKind.Isolated);
            remarks.Add(written
                ? VacuumHoldMessages.CutNoRowsAfter
                : VacuumHoldMessages.CutNoIsolation);
        }
        else if (hold.Basis == SegmentBasis.FoundInData)
        {
            remarks.Add(hold.From <= series.Times[0]
                ? VacuumHoldMessages.CutRisesFromStart
                : VacuumHoldMessages.CutIsolationFound(TimeValue.After(hold.From)));
        }
    }
}

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
        var direction = 0;
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

        return RunningMedian.OfFive(raw);
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
