using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

public sealed class DecayJudgementTests
{
    [Fact]
    public void The_pressure_at_the_stated_time_lies_on_the_line_between_two_rows()
    {
        // Isolated at 90 s, limit after 10 min = 690 s: between 660 s (100 Pa) and 720 s (106 Pa) lies 103 Pa.
        var log = VacuumSeries.From([60, 120, 660, 720, 1200], [60, 62, 100, 106, 140]);
        var reading = DecayJudgement.Read(log, 90, 1200, 600, longestBridge: 600);
        Assert.Equal(61, reading.AtIsolation!.Value, 1e-12);
        Assert.Equal(103, reading.AtDue!.Value, 1e-12);
        Assert.Equal(103, reading.Highest!.Value, 1e-12);
        Assert.Equal(140, reading.HighestAfter!.Value, 1e-12);
        Assert.Equal(42, reading.Rise!.Value, 1e-12);
        Assert.Equal(540, reading.LongestGap, 1e-12);
    }

    [Fact]
    public void A_later_rise_is_reported_and_not_judged()
    {
        // A crew that holds 22 min against a 10 min limit must not fail by its own care.
        var times = Enumerable.Range(0, 23).Select(i => 60.0 * i).ToArray();
        var log = VacuumSeries.From(times, [.. times.Select(t => 60 + 0.056 * t)]);
        var reading = DecayJudgement.Read(log, 0, 1320, 600);
        Assert.Equal(60 + 0.056 * 600, reading.Highest!.Value, 1e-9);
        Assert.Equal(60 + 0.056 * 1320, reading.AtEnd!.Value, 1e-9);
        Assert.True(reading.HighestAfter > 133);
    }

    [Fact]
    public void A_peak_before_the_stated_time_counts()
    {
        var log = VacuumSeries.From([0, 60, 120, 180, 240], [60, 150, 70, 65, 64]);
        var reading = DecayJudgement.Read(log, 0, 240, 200);
        Assert.Equal(150, reading.Highest);
        Assert.Equal(60, reading.HighestAt);
    }

    [Fact]
    public void A_hold_that_ended_early_has_no_reading_at_the_stated_time()
    {
        var log = VacuumSeries.From([0, 60, 120], [60, 61, 62]);
        var reading = DecayJudgement.Read(log, 0, 120, 600);
        Assert.False(reading.Reached);
        Assert.Null(reading.AtDue);
        Assert.Equal(120, reading.HoldLength);
    }

    [Fact]
    public void A_gap_is_not_bridged_and_over_range_rows_are_counted()
    {
        var log = VacuumSeries.From([0, 60, 900, 960], [60, 61, 90, 91]);
        Assert.Null(DecayJudgement.Read(log, 0, 960, 600).AtDue);
        var above = VacuumSeries.From([0, 60, 120, 180], [60, double.NaN, 62, 63], [false, true, false, false]);
        var reading = DecayJudgement.Read(above, 0, 180, 150);
        Assert.Equal(1, reading.OverRangeRows);
        Assert.Equal(62.5, reading.AtDue!.Value, 1e-12);
    }

    [Fact]
    public void A_log_that_begins_seconds_after_isolation_starts_with_its_first_row()
    {
        var log = VacuumSeries.From([20, 80, 140], [60, 61, 62]);
        Assert.Equal(60, DecayJudgement.Read(log, 0, 140, 100).AtIsolation);
        var late = VacuumSeries.From([90, 150, 210], [60, 61, 62]);
        Assert.Null(DecayJudgement.Read(late, 0, 210, 100).AtIsolation);
    }
}
