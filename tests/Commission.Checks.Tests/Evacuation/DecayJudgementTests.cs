using Commission.Checks.VacuumAnalysis;
using Xunit;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>
/// The rows of a hold as a decay limit reads them: highest until the stated time, what came later, what the gauge did not show. Numbers by hand:
/// straight lines between rows.
/// </summary>
public sealed class DecayJudgementTests
{
    [Fact]
    public void The_pressure_at_the_stated_time_lies_on_the_line_between_two_rows()
    {
        // Isolated at 90 s, limit after 10 min = 690 s: between 660 s (100 Pa) and 720 s (106 Pa) lies 103 Pa.
        var log = VacuumSeries.From([60, 120, 660, 720, 1200], [60, 62, 100, 106, 140]);
        var reading = DecayJudgement.Read(log, 90, 1200, 600, longestBridge: 600);
        Assert.Equal(690, reading.Due);
        Assert.Equal(103, reading.AtDue!.Value, 1e-12);
        Assert.Equal(103, reading.Highest!.Value, 1e-12);
        Assert.Equal(690, reading.HighestAt);
        Assert.Equal(140, reading.HighestAfter!.Value, 1e-12);
        Assert.Equal(1110, reading.HoldLength, 1e-12);
    }

    [Fact]
    public void The_pressure_at_isolation_counts_where_the_log_falls_after_it()
    {
        // Isolated at 90 s, half way from 140 to 100 Pa: 120 Pa, and no row of the hold is as high.
        var reading = DecayJudgement.Read(VacuumSeries.From([60, 120, 180], [140, 100, 90]), 90, 180, 60);
        Assert.Equal(120, reading.Highest!.Value, 1e-12);
        Assert.Equal(90, reading.HighestAt);
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
    public void The_peak_after_the_stated_time_is_told_beside_the_end()
    {
        var reading = DecayJudgement.Read(VacuumSeries.From([0, 60, 120, 180, 240], [60, 61, 80, 95, 70]), 0, 240, 60);
        Assert.Equal(61, reading.Highest);
        Assert.Equal(95, reading.HighestAfter);
        Assert.Equal(70, reading.AtEnd);
    }

    // A row at the very second of the stated time is judged; one a second later is told.
    [Theory]
    [InlineData(120, 90.0, null, 90.0)]
    [InlineData(121, 89.754, 90.0, 90.0)]
    public void A_row_at_the_stated_time_is_judged_and_not_later(int last, double highest, double? later, double end)
    {
        var reading = DecayJudgement.Read(VacuumSeries.From([0, 60, last], [60, 75, 90]), 0, last, 120);
        Assert.Equal(highest, reading.Highest!.Value, 0.001);
        Assert.Equal(later, reading.HighestAfter);
        Assert.Equal(end, reading.AtEnd);
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
    public void A_level_that_stays_is_the_highest_from_its_first_row_on()
    {
        var reading = DecayJudgement.Read(VacuumSeries.From([0, 60, 120, 180], [60, 80, 80, 80]), 0, 180, 180);
        Assert.Equal(80, reading.Highest);
        Assert.Equal(60, reading.HighestAt);
    }

    // The end that is written counts, not the end of the log.
    [Theory]
    [InlineData(120)]
    [InlineData(900)]
    public void A_hold_that_ended_early_has_no_reading_at_the_stated_time(int lastRow)
    {
        var log = VacuumSeries.From([0, 60, 120, lastRow == 120 ? 119.5 : 500, lastRow], [60, 61, 62, 300, 400]);
        var reading = DecayJudgement.Read(log, 0, 120, 300, longestBridge: 600);
        Assert.False(reading.Reached);
        Assert.Null(reading.AtDue);
        Assert.Equal(120, reading.HoldLength);
        Assert.Equal(62, reading.Highest);
        Assert.Equal(62, reading.AtEnd);
        Assert.Null(reading.HighestAfter);
    }

    [Fact]
    public void A_gap_is_not_bridged()
    {
        var log = VacuumSeries.From([0, 60, 900, 960], [60, 61, 90, 91]);
        Assert.Null(DecayJudgement.Read(log, 0, 960, 600).AtDue);
    }

    // Over range counts until the stated time, that second included; it is no reading.
    [Theory]
    [InlineData(60, 1, 63)]
    [InlineData(120, 1, 63)]
    [InlineData(180, 0, 62)]
    public void Rows_over_range_are_counted_until_the_stated_time(int over, int rows, double end)
    {
        double[] times = [0, 60, 120, 180];
        var log = VacuumSeries.From(times, [.. times.Select(t => t == over ? double.NaN : 60 + (t / 60))], [.. times.Select(t => t == over)]);
        var reading = DecayJudgement.Read(log, 0, 180, 120);
        Assert.Equal(rows, reading.OverRangeRows);
        Assert.Equal(over == 120 ? null : 62, reading.AtDue);
        Assert.Equal(end, reading.AtEnd);
    }
}
