using Xunit;

namespace Commission.Jobs.Tests;

public sealed class TimeTests
{
    private const string Frame = "commission: 1\nunits: us\njob: {id: T, work: opened circuit, date: 2026-06-18, zone: ZONE, site: {elevation: 100 ft}}\nequipment: {system: split, refrigerant: R-410A}\n";

    [Theory]
    [InlineData("America/Denver", "2026-06-18T10:42:00-06:00")]
    [InlineData("Europe/Berlin", "2026-06-18T10:42:00+02:00")]
    [InlineData("Asia/Kolkata", "2026-06-18T10:42:00+05:30")]
    [InlineData("-07:00", "2026-06-18T10:42:00-07:00")]
    [InlineData("UTC+1", "2026-06-18T10:42:00+01:00")]
    [InlineData("\"+0530\"", "2026-06-18T10:42:00+05:30")]
    [InlineData("UTC", "2026-06-18T10:42:00+00:00")]
    public void A_clock_time_has_the_offset_of_its_zone(string zone, string expected) =>
        Assert.Equal(DateTimeOffset.Parse(expected, System.Globalization.CultureInfo.InvariantCulture), Started(zone, "\"10:42\""));

    [Fact]
    public void Without_a_zone_a_clock_time_is_what_the_wall_showed() =>
        Assert.Equal(new DateTimeOffset(2026, 6, 18, 10, 42, 0, TimeSpan.Zero), Reading.Of(Frame.Replace(" zone: ZONE,", "", StringComparison.Ordinal) + "evacuation: {started: \"10:42\"}\n").Reading.Job!.Evacuation!.Started!.Value.Clock);

    [Theory]
    [InlineData("10:42")]
    [InlineData("10:42:30")]
    [InlineData("2026-06-17 22:10")]
    [InlineData("2026-06-17T22:10:05")]
    [InlineData("9:05")]
    public void Ways_to_write_a_time(string text)
    {
        var (_, problems) = Reading.Of(Frame.Replace("ZONE", "UTC", StringComparison.Ordinal) + "evacuation: {started: " + text + "}\n");
        Assert.Empty(problems);
    }

    [Fact]
    public void An_hour_that_the_clock_skipped_does_not_exist()
    {
        // Clocks in Denver went from 02:00 to 03:00 on 8 March 2026 (second Sunday in March, US law since 2007).
        var yaml = Frame.Replace("ZONE", "America/Denver", StringComparison.Ordinal).Replace("2026-06-18", "2026-03-08", StringComparison.Ordinal) + "evacuation: {started: \"02:30\"}\n";
        Assert.Equal(["job.yaml:5:23: 02:30 does not exist on that day: the clock was put forward over it. Check the time and the zone."], Reading.Of(yaml).Problems);
    }

    [Fact]
    public void Midnight_passes_within_a_phase_and_between_phases()
    {
        var yaml = Frame.Replace("ZONE", "UTC", StringComparison.Ordinal) + """
            pressure test: {gas: dry nitrogen, tightness: {from: {at: "19:00", pressure: 400}, to: {at: "20:10", pressure: 400}}}
            evacuation:
              started: "22:40"
              events: [{at: "23:50", what: isolated}, {at: "00:15", what: end}]
            charging:
              compressor started: "01:10"
              readings: [{at: "01:30"}, {at: 45 min}]

            """;
        var (reading, problems) = Reading.Of(yaml);
        Assert.Empty(problems);
        var job = reading.Job!;
        Assert.Equal(new DateTimeOffset(2026, 6, 19, 0, 15, 0, TimeSpan.Zero), job.Evacuation!.Events[1].At.Value.Clock);
        Assert.Equal(95 * 60, job.Evacuation.Events[1].At.Value.Elapsed!.Value.Si);
        Assert.Equal(new DateTimeOffset(2026, 6, 19, 1, 30, 0, TimeSpan.Zero), job.Charging!.Readings[0].At.Value.Clock);
        Assert.Equal(new DateTimeOffset(2026, 6, 19, 1, 55, 0, TimeSpan.Zero), job.Charging.Readings[1].At.Value.Clock);
    }

    [Fact]
    public void After_work_dated_on_days_before_a_phase_begins_on_the_day_of_the_job()
    {
        var yaml = Frame.Replace("ZONE", "UTC", StringComparison.Ordinal) + """
            evacuation:
              started: 2026-06-17 15:50
              events: [{at: "17:40", what: isolated}, {at: "18:45", what: end}]
            charging:
              crankcase heater on since: 2026-06-17 19:00
              compressor started: "09:10"
              readings: [{at: "09:40"}]

            """;
        var (reading, problems) = Reading.Of(yaml);
        Assert.Empty(problems);
        var charging = reading.Job!.Charging!;
        Assert.Equal(new DateTimeOffset(2026, 6, 18, 9, 10, 0, TimeSpan.Zero), charging.CompressorStarted!.Value.Clock);
        Assert.Equal(new DateTimeOffset(2026, 6, 18, 9, 40, 0, TimeSpan.Zero), charging.Readings[0].At.Value.Clock);

        // Later the same day it is still that day.
        Assert.Equal(new DateTimeOffset(2026, 6, 17, 19, 30, 0, TimeSpan.Zero), Reading.Of(yaml.Replace("\"09:10\"", "\"19:30\"", StringComparison.Ordinal).Replace("\"09:40\"", "\"19:50\"", StringComparison.Ordinal)).Reading.Job!.Charging!.CompressorStarted!.Value.Clock);
    }

    [Fact]
    public void A_hold_over_night_takes_the_date()
    {
        var yaml = Frame.Replace("ZONE", "UTC", StringComparison.Ordinal)
            + "pressure test: {gas: dry nitrogen, tightness: {from: {at: \"16:00\", pressure: 400}, to: {at: 2026-06-19 15:30, pressure: 400}}}\n";
        Assert.Equal(23.5 * 3600, (Reading.Of(yaml).Reading.Job!.PressureTest!.Tightness!.To!.At.Value.Clock! - Reading.Of(yaml).Reading.Job!.PressureTest!.Tightness!.From!.At.Value.Clock!).Value.TotalSeconds);
    }

    [Theory]
    [InlineData("12 months", "2026-01-31", "2027-01-31")]
    [InlineData("1 month", "2026-01-31", "2026-02-28")]
    [InlineData("1 year", "2024-02-29", "2025-02-28")]
    [InlineData("6 weeks", "2026-01-01", "2026-02-12")]
    [InlineData("90 days", "2026-01-01", "2026-04-01")]
    public void A_calibration_interval_is_a_span_of_the_calendar(string interval, string calibrated, string due)
    {
        var yaml = Frame.Replace("ZONE", "UTC", StringComparison.Ordinal) + $"instruments: [{{id: a, kind: scale, calibrated: {calibrated}, interval: {interval}}}]\n";
        var instrument = Reading.Of(yaml).Reading.Job!.Instruments[0];
        Assert.Equal(DateOnly.Parse(due, System.Globalization.CultureInfo.InvariantCulture), instrument.Interval!.Value.After(instrument.Calibrated!.Value));
    }

    private static DateTimeOffset? Started(string zone, string time)
    {
        var (reading, problems) = Reading.Of(Frame.Replace("ZONE", zone, StringComparison.Ordinal) + "evacuation: {started: " + time + "}\n");
        Assert.Empty(problems);
        return reading.Job!.Evacuation!.Started!.Value.Clock;
    }
}
