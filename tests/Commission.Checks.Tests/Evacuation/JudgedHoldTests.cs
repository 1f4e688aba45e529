using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;
using static Commission.Checks.Tests.Evacuation.HoldJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>
/// What of a hold can be judged: 1000 micron after 10 min (common practice, no source), the valve closed at 20 min. Where a log has a gap at that
/// moment, a closed vacuum only rises, so that the next reading bounds it.
/// </summary>
public sealed class JudgedHoldTests
{
    private const double Micron = 0.133322387415;

    private static bool GapAt30(double t) => t is > 1700 and < 1860;

    // The next reading stands for the stated time only while it says that the limit was kept, and only while the valve was still closed.
    [Theory]
    [InlineData(900, null, Verdict.Conditional)]
    [InlineData(1000, null, Verdict.Conditional)]
    [InlineData(1001, null, Verdict.NotEvaluated)]
    [InlineData(double.NaN, null, Verdict.NotEvaluated)]
    [InlineData(900, "31 min", Verdict.Conditional)]
    [InlineData(900, "30.5 min", Verdict.NotEvaluated)]
    [InlineData(900, "30 min", Verdict.NotEvaluated)]
    public void A_gap_at_the_stated_time_is_bridged_by_a_reading_below_the_limit(double later, string? end, Verdict verdict)
    {
        var found = Hold(Logged(end: end), Every5Seconds(2100, t => t < 1800 ? 700 : later, GapAt30));
        Assert.Equal(verdict, found.Verdict);
        if (verdict == Verdict.Conditional)
        {
            Assert.Equal(["hold-gap-bridged(later 60 s)"], Reserved(found));
            Assert.Equal("hold-read-at-time-next", Next(found));
            Assert.Equal(later * Micron, found.Measured!.Value.Si, 1e-9);
        }
        else
        {
            Assert.Equal("hold-gap", Why(found));
            Assert.Equal("hold-gap-next", Next(found));
        }
    }

    // The doubt belongs to the reading that is judged, by its time; one that is no higher than the last before the gap is not it.
    [Theory]
    [InlineData(701, 701, "vacuum at 31 min")]
    [InlineData(700, 700, "vacuum at 20.1 min")]
    [InlineData(699, 700, "vacuum at 20.1 min")]
    public void The_higher_reading_beside_a_gap_is_judged(double later, double judged, string reading)
    {
        var found = Hold(Logged(), Every5Seconds(1890, t => t < 1800 ? 700 : later, GapAt30));
        Assert.Equal(judged * Micron, found.Measured!.Value.Si, 1e-9);
        Assert.Contains(found.Budget, line => line.Cause.StartsWith($"{reading}:", StringComparison.Ordinal));
    }

    // The end that is written counts; a log that goes on says nothing of the hold.
    [Theory]
    [InlineData("28 min", "hold-too-short(lasted 8 min, asked 10 min)")]
    [InlineData("29.9 min", "hold-too-short(lasted 9.9 min, asked 10 min)")]
    public void A_hold_ended_early_is_too_short(string end, string why)
    {
        var found = Hold(Logged(end: end), Every5Seconds(2100, _ => 500));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.Equal(why, Why(found));
        Assert.Equal("hold-too-short-next(asked 10 min)", Next(found));
    }

    [Fact]
    public void A_hold_ended_within_one_step_of_its_log_has_lasted()
    {
        // 29 min 55 s of a log with a row every 5 s.
        var found = Hold(Logged(end: "1795 s"), Every5Seconds(2100, _ => 500));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Equal(500 * Micron, found.Measured!.Value.Si, 1e-9);
        Assert.Equal(["t_d", "p_max"], found.Trace.Select(s => s.Symbol));
    }

    // A gauge that has shown the limit itself is above it when it shows nothing; one that has not says nothing.
    [Theory]
    [InlineData(999, Verdict.NotEvaluated)]
    [InlineData(1000, Verdict.Fail)]
    public void Over_range_is_above_the_limit_where_the_gauge_has_shown_it(double shown, Verdict verdict)
    {
        var found = Hold(Logged(), Log(5, 2100, t => t switch { < 600 => double.NaN, 600 => shown, < 1440 => 400, _ => double.NaN }));
        Assert.Equal(verdict, found.Verdict);
        if (verdict == Verdict.Fail)
        {
            Assert.Equal(["hold-failed-over-range-crossed(after 10 min, limit 1000 micron, crossed 4 min)"], Said(found));
        }
        else
        {
            Assert.Equal("hold-over-range", Why(found));
            Assert.Equal("hold-over-range-next", Next(found));
        }
    }

    // Over range at the stated time, and one row later.
    [Theory]
    [InlineData(1800, Verdict.Fail)]
    [InlineData(1805, Verdict.Pass)]
    public void Over_range_counts_until_the_stated_time(double from, Verdict verdict)
    {
        var found = Hold(Logged(), Every5Seconds(2100, t => t < from ? 400 : double.NaN));
        Assert.Equal(verdict, found.Verdict);
        Assert.Single(Said(found));
    }

    // Levels far apart: 320 at 0 and the given one at 25 min; a rise that slows down may have passed the limit before.
    [Theory]
    [InlineData(999, false)]
    [InlineData(1000, false)]
    [InlineData(1001, true)]
    public void A_later_level_above_the_limit_is_a_condition(double micron, bool reserved)
    {
        var found = Hold(Levels(("10:25", 320), ("10:50", micron)));
        Assert.Equal(reserved ? Verdict.Conditional : Verdict.Pass, found.Verdict);
        Assert.Equal(reserved ? ["hold-between-readings(later 15 min)"] : [], Reserved(found));
        Assert.Equal(reserved ? "hold-read-at-time-next" : null, Next(found));
    }

    [Fact]
    public void A_level_at_the_stated_time_stands_for_itself()
    {
        var found = Hold(Levels(("10:25", 320), ("10:35", 600), ("10:50", 1300)));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Empty(Reserved(found));
    }

    [Fact]
    public void A_log_has_no_room_between_its_rows()
    {
        // Closed at 20 min 10 s: the stated time lies between the rows at 30 min (990) and 30 min 50 s (1030): 990 + 40·10/50 = 998.
        var found = Hold(Logged(closed: "1210 s"), Log(50, 2000, t => t switch { <= 1200 => 20_000 - (16.4 * t), < 1800 => 400, 1800 => 990, _ => 1030 }));
        Assert.Equal(998 * Micron, found.Measured!.Value.Si, 1e-9);
        Assert.Empty(Reserved(found));

        // It passed the limit 40 s after its time: kept, and to be looked at.
        Assert.Equal("hold-went-past(limit 1000 micron, time 10.7 min)", Next(found));
        Assert.True(found.IsToLookAt);
    }

    private const string PlaceUnknown = "section: line set and indoor\nisolated at: valve on the service port\nstarted: \"09:00\"";

    // What is not written of the gauge, each alone and both.
    [Theory]
    [InlineData(Placed, ", accuracy: 10 % of reading", "")]
    [InlineData(Placed, "", "gauge-accuracy-not-written(gauge vacuum)")]
    [InlineData(PlaceUnknown, ", accuracy: 10 % of reading", "gauge-place-not-written")]
    [InlineData(PlaceUnknown, "", "gauge-place-not-written gauge-accuracy-not-written(gauge vacuum)")]
    public void What_is_not_written_of_the_gauge_is_a_condition(string placed, string accuracy, string reservations)
    {
        var found = One("evacuation.hold", Job(Logged(placed: placed), $"sensor: thermal{accuracy}, resolution: 1 micron"), Every5Seconds(1800, _ => 500));
        Assert.Equal(reservations.Length == 0 ? Verdict.Pass : Verdict.Conditional, found.Verdict);
        Assert.Equal(reservations, string.Join(' ', Reserved(found)));
        Assert.Equal(reservations.Length == 0 ? null : "hold-describe-gauge-next", Next(found));
    }

    [Fact]
    public void The_reading_that_is_missing_comes_before_the_gauge()
    {
        var found = One("evacuation.hold", Job(Logged(), "sensor: thermal, resolution: 1 micron"), Every5Seconds(2100, _ => 500, GapAt30));
        Assert.Equal(["gauge-accuracy-not-written(gauge vacuum)", "hold-gap-bridged(later 60 s)"], Reserved(found));
        Assert.Equal("hold-read-at-time-next", Next(found));
    }
}
