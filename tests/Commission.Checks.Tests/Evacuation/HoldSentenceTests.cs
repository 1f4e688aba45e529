using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;
using static Commission.Checks.Tests.Evacuation.HoldJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>
/// What is said of a hold and what comes next, by the names of the messages and their values: 1000 micron after 10 min (common practice, no source), the
/// valve closed at 20 min. What a rise asks for is common practice, no source: heat where it slows down, the leak search where it is steady, the rig first.
/// </summary>
public sealed class HoldSentenceTests
{
    private static bool GapAt20(double t) => t is > 1100 and < 1300;

    [Theory]
    [InlineData(800, "peak at-end, highest 800 micron")]
    [InlineData(800.3, "peak at-end, highest 800 micron")]
    [InlineData(801, "peak before, highest 801 micron")]
    public void A_peak_before_the_stated_time_is_told_where_it_prints_higher(double before, string peak) => Assert.Equal(
        [$"hold-passed(level 400 micron, end 800 micron, after 10 min, {peak}, limit 1000 micron)"],
        Said(Hold(Levels(("10:00", 400), ("10:05", before), ("10:10", 800.1)))));

    // 320 at 10:25 and 410 at 10:36: 401.8 on the straight line 10 min after. A level that was read then, and a log with its rows, lie on no line.
    [Fact]
    public void A_level_between_two_readings_is_said_to_be_that()
    {
        var between = Hold(Levels(("10:25", 320), ("10:36", 410)));
        Assert.Equal(Verdict.Pass, between.Verdict);
        Assert.Contains("hold-interpolated(level 402 micron, after 10 min)", Said(between));
        Assert.DoesNotContain(Said(Hold(Levels(("10:25", 320), ("10:35", 402), ("10:36", 410)))), s => s.StartsWith("hold-interpolated", StringComparison.Ordinal));
        Assert.DoesNotContain(Said(Hold(Logged(), Rows((0, 9000), (1190, 400), (1201, 402), (1500, 440), (1797, 470), (1809, 480), (1900, 490)))), s => s.StartsWith("hold-interpolated", StringComparison.Ordinal));
    }

    // The logger was off while the valve was closed: where the hold began is not known.
    [Theory]
    [InlineData(500, 500, "hold-passed-start-unknown(end 500 micron, after 10 min, peak at-end, highest 500 micron, limit 1000 micron)")]
    [InlineData(540, 500, "hold-passed-start-unknown(end 500 micron, after 10 min, peak before, highest 540 micron, limit 1000 micron)")]
    [InlineData(1100, 1050, "hold-failed-start-unknown-crossed(highest 1100 micron, after 10 min, limit 1000 micron, crossed 1.7 min)")]
    public void A_hold_whose_start_nobody_read_says_so(double first, double later, string sentence) => Assert.Equal(
        [sentence],
        Said(Hold(Logged(), Log(5, 1800, t => t <= 1100 ? 900 - (t / 2) : t < 1500 ? first : later, GapAt20))));

    [Fact]
    public void A_limit_passed_between_two_rows_only_is_not_timed()
    {
        // Closed at 20 min 10 s, ended at 30 min 40 s: the stated time lies between 30 min (990) and 30 min 50 s (1400): 990 + 410·10/50 = 1072.
        var found = Hold(
            Logged(closed: "1210 s", end: "1840 s"),
            Log(50, 2000, t => t switch { <= 1000 => 900 - (t / 2), < 1800 => 400, 1800 => 990, _ => 1400 }, t => t is > 1000 and < 1400));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal(["hold-failed-start-unknown(highest 1072 micron, after 10 min)"], Said(found));
    }

    // Closed between 1500 micron at 19 min 50 s and 500 at 20 min 30 s, a quarter of the way: 1250. No row of the hold is above the limit, one after its end is.
    [Theory]
    [InlineData(null, 1900)]
    [InlineData("1850 s", 2100)]
    public void A_limit_passed_at_isolation_only_is_not_timed(string? end, double last)
    {
        var found = Hold(Logged(end: end), Log(10, (int)last, t => t switch { <= 1190 => 13_400 - (10 * t), <= 1900 => 500, _ => 1200 }, t => t is > 1190 and < 1230));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal("hold-failed(level 1250 micron, highest 1250 micron, after 10 min)", Said(found)[0]);
    }

    // The limit itself is not above it: the crossing is the first reading above, the last one of the hold included.
    [Theory]
    [InlineData(1000, "10 min")]
    [InlineData(1001, "5 min")]
    public void The_limit_is_passed_by_the_first_reading_above_it(double micron, string crossed)
    {
        var found = Hold(Levels(("10:00", 400), ("10:05", micron), ("10:10", 1001)));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal([$"hold-failed-crossed(level 400 micron, highest 1001 micron, after 10 min, limit 1000 micron, crossed {crossed})"], Said(found));
    }

    [Fact]
    public void The_trace_names_the_moment_of_each_pressure()
    {
        var found = Hold(Logged(), Every5Seconds(1900, t => t == 1500 ? 700 : 600));
        Assert.Equal(
            [("t_d", "20 min + 10 min"), ("p_d", "at 30 min"), ("p_max", "at 25 min")],
            found.Trace.Select(s => (s.Symbol, s.Substitution)));
        Assert.StartsWith("600", found.Trace[1].Result, StringComparison.Ordinal);
        Assert.StartsWith("700", found.Trace[2].Result, StringComparison.Ordinal);
    }

    [Fact]
    public void The_trace_of_a_hold_ended_early_has_no_pressure_at_the_stated_time()
    {
        var found = Hold(Logged(end: "28 min"), Every5Seconds(1900, t => t == 1500 ? 1100 : 600));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal(["t_d", "p_max"], found.Trace.Select(s => s.Symbol));
    }

    // A hold of exactly ten minutes did not go on; what comes later is told by its highest where that is not its end.
    [Theory]
    [InlineData(1800, 500, 500, null)]
    [InlineData(1805, 500, 510, "hold-went-on(lasted 10.1 min, end 510 micron)")]
    [InlineData(2400, 1200, 1200, "hold-went-on(lasted 20 min, end 1200 micron)")]
    [InlineData(2400, 1300, 1200, "hold-went-on-highest(lasted 20 min, highest 1300 micron, end 1200 micron)")]
    public void What_came_after_the_stated_time_is_told(int last, double later, double end, string? remark)
    {
        var found = Hold(Logged(), Every5Seconds(last, t => t <= 1800 ? 500 : t == last ? end : later));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Equal(remark, Said(found).ElementAtOrDefault(1));
    }

    [Fact]
    public void What_came_after_a_failure_is_told_too()
    {
        var found = Hold(Logged(), Every5Seconds(2400, t => 300 + ((t - 1200) * 1.5)));
        Assert.Equal("hold-went-on(lasted 20 min, end 2100 micron)", Said(found)[1]);
    }

    // Hoses that stayed on the system's side of the valve are part of what was held.
    [Theory]
    [InlineData("valve on the service port", null)]
    [InlineData("manifold", "hoses-inside-hold")]
    [InlineData("pump valve", "hoses-and-manifold-inside-hold")]
    public void What_else_was_inside_the_hold_is_remarked(string closed, string? remark)
    {
        var found = Hold(Logged(placed: Placed.Replace("valve on the service port", closed, StringComparison.Ordinal)), Every5Seconds(1800, _ => 500));
        Assert.Equal(remark, Said(found).ElementAtOrDefault(1));
    }

    private const string Rig = "rig check: {pump alone: 40 micron, blanked off: 60 micron, rise: 5 micron, after: 5 min}\n";

    // A steady rise asks for the rig in its own words, one that slows down does not; where the rig was watched alone neither names it.
    [Theory]
    [InlineData(false, "", "rig-alone-next(inside gauge, next shape-steady-next(behind charged-unit))")]
    [InlineData(false, Rig, "shape-steady-next(behind charged-unit)")]
    [InlineData(true, "", "rig-alone-next(inside gauge, next shape-source-next(behind charged-unit))")]
    [InlineData(true, Rig, "shape-source-next(behind charged-unit)")]
    public void The_next_step_follows_the_shape_and_the_rig(bool slowing, string rig, string next)
    {
        var found = Hold(Logged(more: rig), Every5Seconds(2400, t => 300 + (slowing ? 900 * (1 - Math.Exp(-(t - 1200) / 240)) : (t - 1200) * 1.5)));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal(next, Next(found));
        Assert.Equal(rig.Length > 0, found.Readings.Any(r => r is { Name: "rig: rise", Text: "5 micron" }));
    }

    [Fact]
    public void A_level_above_the_limit_that_does_not_rise_has_no_shape()
    {
        var found = Hold(Logged(), Log(5, 2400, t => t <= 1200 ? 20_000 - (15 * t) : 2000 + (t % 100 == 0 ? 1 : 0)));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal("hold-failed-next", Next(found));
    }
}
