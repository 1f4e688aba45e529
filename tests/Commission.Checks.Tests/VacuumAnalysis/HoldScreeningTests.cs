using Commission.Checks.Tests.Coverage;
using Commission.Checks.VacuumAnalysis;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

/// <summary>Which rows of a hold are analysed, and what is found in them before any curve is fitted. Facts of the trade: common practice, no source.</summary>
public sealed class HoldScreeningTests
{
    private const double Micron = 0.133322368421;

    [Theory]
    [InlineData(3, true)]
    [InlineData(2, false)]
    public void Falls_within_half_a_minute_count_from_three_on(int teeth, bool counted)
    {
        // 8 micron a minute up, and every 200 s back down by 26 within 10 s.
        var rows = Of(200 * (teeth + 1) - 20, 10, t => 400 + (8 / 60.0 * (t % 200)));
        Assert.Equal(counted ? teeth : 0, rows.Teeth.Count);
        if (counted)
            Assert.InRange(rows.Drop / Micron, 15 * teeth, 27 * teeth);
    }

    // A crew that looks into its log has to find there what is told of it: the rows themselves, not a mean.
    [Fact]
    public void A_fall_is_told_by_rows_of_the_log()
    {
        var rows = Of(900, 15, t => t <= 360 ? 380 + (73 / 60.0 * t) : t < 450 ? 818 - (5.34 * (t - 360)) : 337 + (73 / 60.0 * (t - 450)), Math.Round);
        Assert.Equal((360, 450), (rows.Fall!.From, rows.Fall.To));
        Assert.Equal(818, rows.Fall.High / Micron, 0.6);
        Assert.Equal(337, rows.Fall.Low / Micron, 0.6);
    }

    [Fact]
    public void What_rises_as_suddenly_as_it_falls_is_a_gauge_that_hops() => Assert.Equal(0, Of(1800, 10, t => 400 + (t % 400 < 200 ? 0 : 30)).Teeth.Count);

    [Theory]
    [InlineData(900, 8, true)] // stood for half of it, then 8 micron a minute
    [InlineData(0, 8, false)] // from the first minute on
    [InlineData(1800, 8, false)] // never
    public void A_rise_that_begins_late_stands_out(double from, double rate, bool late)
    {
        var rows = Of(1800, 10, t => 400 + (rate / 60 * Math.Max(0, t - from)));
        Assert.Equal(late ? rate : 0, (rows.Late?.Rate ?? 0) / Micron * 60, 1);
        if (rows.Late is { From: var began })
            Assert.InRange(began, from, from + 60);
    }

    [Fact]
    public void A_quick_source_at_the_start_is_no_spike_and_a_lone_row_is_one()
    {
        // Time constant 70 s, a row a minute, then level: the first rows come nearer one by one.
        var settles = Of(3600, 60, t => 1000 - (700 * Math.Exp(-t / 70)));
        Assert.Equal((0, 60.0), (settles.Rows.Outliers, settles.Times[0]));
        var spike = Of(3600, 60, t => t == 60 ? 1300 : 1000 + (t / 60 % 2));
        Assert.Equal((1, 120.0), (spike.Rows.Outliers, spike.Times[0]));
    }

    [Fact]
    public void The_step_that_counts_is_that_of_the_range_in_which_the_hold_begins()
    {
        var rows = Of(1800, 5, t => 900 + (t / 3), p => p < 1000 ? Math.Round(p) : Math.Round(p / 10) * 10);
        Assert.Equal(1, rows.ResolutionAtStart / Micron, 1e-3);
        Assert.Equal(10, rows.Resolution / Micron, 1e-3);
    }

    [Fact]
    public void Rows_that_all_rise_by_the_same_are_no_steps_of_a_display()
    {
        // 100 micron a minute, a row a minute, on a display of 0.1 micron.
        Assert.True(Of(1800, 60, t => 400 + (100.04 * t / 60), p => Math.Round(p * 10) / 10).Resolution < Micron);
    }

    [Fact]
    public void Where_the_display_is_coarser_than_what_counts_its_rows_are_left_out()
    {
        // 1 micron below 1000, 50 above; what counts is 30. The range is found to a quarter of a doubling.
        var rows = Of(1800, 5, t => 400 + (t / 2) + (t / 5 % 3), p => p < 1000 ? Math.Round(p) : Math.Round(p / 50) * 50, counting: 30 * Micron);
        Assert.InRange(rows.Pressures[^1] / Micron, 999, 1151);
        Assert.InRange(rows.Rows.OverRange, 50, 80);
    }

    [Fact]
    public void The_steepest_minute_of_a_fall()
    {
        // Two minutes' time constant: after the first minute e^(−1/2) of 300 are left above 300.
        var fall = Of(1800, 5, t => t < 600 ? 600 : 300 + (300 * Math.Exp(-(t - 600) / 120))).Fall!;
        Assert.Equal((300 + (300 * Math.Exp(-0.5))) / 600, fall.SteepestMinute, 0.03);
    }

    [Fact]
    public void A_straight_line_through_three_points()
    {
        // Through (0, 0), (1, 1), (2, 5): slope 2.5, residuals 0.5, −1, 0.5; s² = 1.5/1. Worked by hand.
        var line = StraightLine.Through([0, 1, 2], [0, 1, 5]);
        Assert.Equal((2.5, Math.Sqrt(1.5), 1), (line.Slope, line.Scatter, line.Farthest));
    }

    private static HoldScreening Of(double length, double interval, Func<double, double> micron, Func<double, double>? shown = null, double counting = double.PositiveInfinity)
    {
        var times = Enumerable.Range(0, (int)(length / interval) + 1).Select(i => i * interval).ToArray();
        shown ??= Math.Round;
        return HoldScreening.Of(VacuumSeries.From(times, [.. times.Select(t => shown(micron(t)) * Micron)]), 0, length, 60, 0, counting);
    }
}
