using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

public sealed class SeriesSegmentationTests
{
    private const double Micron = 0.133322;

    /// <summary>A triple pull: over range, pull, break at 24 min, pull, break at 45 min, pull, isolated at 71 min, end at 93 min.</summary>
    private static VacuumSeries Triple(bool gap = false, bool hold = true, double riseMicronPerMinute = 8, int seed = 1)
    {
        var random = new Random(seed);
        var times = new List<double>();
        var pressures = new List<double>();
        var over = new List<bool>();
        for (var t = 0.0; t <= 93 * 60; t += 5)
        {
            if (gap && t is > 40 * 60 and < 52 * 60)
                continue;
            var m = t / 60;
            var p = m switch
            {
                < 24 => Pull(m, 200_000, 1900),
                < 27 => 110_000,
                < 45 => Pull(m - 27, 110_000, 900),
                < 47 => 105_000,
                < 71 => Pull(m - 47, 105_000, 58),
                _ => hold ? 60 + riseMicronPerMinute * Micron * (m - 71) : Pull(m - 47, 105_000, 58),
            };
            p *= 1 + 0.01 * (random.NextDouble() - 0.5);
            var above = p > 3333;
            times.Add(t);
            pressures.Add(above ? double.NaN : Math.Round(p / Micron) * Micron);
            over.Add(above);
        }

        return VacuumSeries.From(times, pressures, over);

        // Minutes since the pump began: 2.2 decades a quarter hour down to the bottom.
        static double Pull(double minutes, double from, double bottom) => bottom + from * Math.Pow(10, -minutes / 2.2);
    }

    [Fact]
    public void Given_events_cut_the_log_where_they_say()
    {
        VacuumEvent[] events =
        [
            new(24 * 60, VacuumEventKind.NitrogenBreak), new(45 * 60, VacuumEventKind.NitrogenBreak),
            new(71 * 60, VacuumEventKind.Isolated), new(93 * 60, VacuumEventKind.Ended),
        ];
        var cut = SeriesSegmentation.Cut(Triple(), events, Micron);
        Assert.Equal(71 * 60, cut.Isolation!.Value);
        Assert.Equal(SegmentBasis.Given, cut.IsolationBasis);
        Assert.Equal(93 * 60, cut.HoldEnd!.Value);
        Assert.Equal(2, cut.Breaks);
        Assert.Equal(
            [SegmentKind.Pull, SegmentKind.Break, SegmentKind.Pull, SegmentKind.Break, SegmentKind.Pull, SegmentKind.Hold],
            cut.Segments.Select(s => s.Kind));
        Assert.DoesNotContain(cut.Remarks, r => r.Said().Contains("no event", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(8, 1)]
    [InlineData(8, 2)]
    [InlineData(25, 3)]
    public void Without_events_breaks_and_isolation_are_found_and_said(double rise, int seed)
    {
        var cut = SeriesSegmentation.Cut(Triple(riseMicronPerMinute: rise, seed: seed), [], Micron);
        Assert.Equal(2, cut.Breaks);
        Assert.Equal(SegmentBasis.FoundInData, cut.IsolationBasis);
        Assert.InRange(cut.Isolation!.Value, 70.5 * 60, 73 * 60);
        Assert.Contains(cut.Remarks, r => r.Said().StartsWith("No isolation is written; the log rises from 7", StringComparison.Ordinal));
        Assert.Equal(2, cut.Remarks.Count(r => r.Said().Contains("no event says so", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_log_that_never_rises_has_no_isolation_and_asks_for_it()
    {
        var cut = SeriesSegmentation.Cut(Triple(hold: false), [], Micron);
        Assert.Null(cut.Isolation);
        Assert.Contains(cut.Remarks, r => r.Said().Contains("write when the valve was closed", StringComparison.Ordinal));
    }

    [Fact]
    public void A_flat_hold_is_cut_by_its_event()
    {
        var cut = SeriesSegmentation.Cut(Triple(riseMicronPerMinute: 0), [new(71 * 60, VacuumEventKind.Isolated)], Micron);
        Assert.Equal(71 * 60, cut.Hold!.From);
        Assert.Equal(22 * 60, cut.Hold.Length);
    }

    [Fact]
    public void An_event_that_disagrees_with_the_log_stands_and_is_remarked_upon()
    {
        var cut = SeriesSegmentation.Cut(Triple(), [new(80 * 60, VacuumEventKind.Isolated)], Micron);
        Assert.Equal(80 * 60, cut.Isolation!.Value);
        Assert.Contains(cut.Remarks, r => r.Said().StartsWith("Isolation is written at 80 min; the log rises from 7", StringComparison.Ordinal));
    }

    [Fact]
    public void A_break_that_falls_into_a_gap_is_kept_and_the_gap_is_named()
    {
        VacuumEvent[] events = [new(45 * 60, VacuumEventKind.NitrogenBreak), new(71 * 60, VacuumEventKind.Isolated)];
        var log = Triple(gap: true);
        var gap = Assert.Single(log.Gaps);
        Assert.InRange(gap.Length, 11.9 * 60, 12.2 * 60);
        var cut = SeriesSegmentation.Cut(log, events, Micron);
        Assert.Contains(cut.Segments, s => s is { Kind: SegmentKind.Break, Basis: SegmentBasis.Given } && s.From <= 45 * 60 && s.To >= 45 * 60);
        Assert.Contains(cut.Remarks, r => r.Said().Contains("gap", StringComparison.Ordinal));
    }

    [Fact]
    public void Segments_follow_each_other_without_overlap()
    {
        foreach (var seed in (int[])[1, 2, 3, 4, 5])
        {
            var segments = SeriesSegmentation.Cut(Triple(seed: seed), [], Micron).Segments;
            for (var i = 1; i < segments.Length; i++)
                Assert.Equal(segments[i - 1].To, segments[i].From);
        }
    }

    [Fact]
    public void A_first_hold_that_failed_is_kept_and_the_last_is_judged()
    {
        var times = Enumerable.Range(0, 361).Select(i => 10.0 * i).ToArray();
        var pressures = times.Select(t => t switch
        {
            < 900 => 60 + 3000 * Math.Exp(-t / 100),
            < 1500 => 60 + 0.5 * (t - 900),
            < 2400 => 50 + 310 * Math.Exp(-(t - 1500) / 120),
            _ => 50 + 0.03 * (t - 2400),
        }).ToArray();
        var cut = SeriesSegmentation.Cut(VacuumSeries.From(times, pressures), [], Micron);
        Assert.Equal(2, cut.Segments.Count(s => s.Kind == SegmentKind.Hold));
        Assert.InRange(cut.Isolation!.Value, 2350, 2480);
    }

    [Fact]
    public void Unusable_rows_are_left_out_and_counted()
    {
        var log = VacuumSeries.From([0, 10, 10, double.NaN, 20, 30], [1, 2, 3, 4, -5, 6]);
        Assert.Equal(3, log.Count);
        Assert.Equal(1, log.OutOfOrderRows);
        Assert.Equal(2, log.UnreadableRows);
        Assert.Equal([0, 1, 5], log.SourceRows);
        Assert.Throws<ArgumentException>(() => VacuumSeries.From([0, 1], [1]));
    }
}
