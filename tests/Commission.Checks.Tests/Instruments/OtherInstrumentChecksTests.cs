using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Instruments;

/// <summary>Calibration dates, scales, vacuum gauges.</summary>
public sealed class OtherInstrumentChecksTests
{
    // The job is of 2026-07-02.
    [Theory]
    [InlineData("calibrated: 2026-02-11, interval: 12 months", Verdict.Pass)]
    [InlineData("calibrated: 2025-07-02, interval: 12 months", Verdict.Pass)]
    [InlineData("calibrated: 2025-07-01, interval: 12 months", Verdict.Fail)]
    [InlineData("calibrated: 2025-07-01", Verdict.Fail)]
    [InlineData("calibrated: 2025-07-01, interval: 24 months", Verdict.Pass)]
    [InlineData("serial: M-4", Verdict.NotEvaluated)]
    public void Calibration(string dates, Verdict verdict) =>
        Assert.Equal(verdict, InstrumentJob.One("instrument.calibration-current", $"{{id: meter, kind: clamp meter, {dates}}}").Verdict);

    [Fact]
    public void A_calibration_soon_due_says_so() =>
        Assert.Contains("due soon", InstrumentJob.One("instrument.calibration-current", "{id: meter, kind: clamp meter, calibrated: 2025-07-15, interval: 12 months}").Statement, StringComparison.Ordinal);

    [Fact]
    public void An_ice_point_today_replaces_the_certificate() =>
        Assert.Empty(InstrumentJob.All("instrument.calibration-current", "elevation: 0 ft", "{id: clamp, kind: pipe clamp, checks: {ice point: {read: 32.2 °F}}}"));

    // Generic installation manuals ask a scale for 1 oz (published). 10.01 lb − 10 lb = 0.16 oz; 10.10 − 10 = 1.6 oz.
    [Theory]
    [InlineData("read: 10.01 lb", Verdict.Pass)]
    [InlineData("read: 9.95 lb", Verdict.Pass)]
    [InlineData("read: 10.10 lb", Verdict.Fail)]
    [InlineData("read: 10.10 lb, adjusted: 10.00 lb", Verdict.Pass)]
    public void Scale(string read, Verdict verdict) =>
        Assert.Equal(verdict, InstrumentJob.One("instrument.scale", $"{{id: scale, kind: scale, resolution: 0.1 oz, checks: {{check weight: {{applied: 10 lb, {read}}}}}}}").Verdict);

    // 2·|500 − 560|/1060 = 11.3 %; 2·|500 − 640|/1140 = 24.6 %; limit 20 % (two gauges of ± 10 %, common practice).
    [Theory]
    [InlineData("560 micron", Verdict.Pass, 0.1132)]
    [InlineData("640 micron", Verdict.Fail, 0.2456)]
    public void Two_vacuum_gauges(string other, Verdict verdict, double share)
    {
        var f = Assert.Single(InstrumentJob.All(
            "instrument.vacuum-gauge", "elevation: 0 ft",
            $"{{id: vacuum, kind: vacuum gauge, accuracy: 10 % of reading, checks: {{against second gauge: {{with: second, read: 500 micron, other: {other}}}}}}}",
            "{id: second, kind: vacuum gauge}"));
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(share, f.Measured!.Value.Si, 0.0001);
    }

    [Fact]
    public void Two_gauges_at_nothing_are_not_evaluated()
    {
        var f = Assert.Single(InstrumentJob.All(
            "instrument.vacuum-gauge", "elevation: 0 ft",
            "{id: vacuum, kind: vacuum gauge, checks: {against second gauge: {with: second, read: 0 micron, other: 0 micron}}}",
            "{id: second, kind: vacuum gauge}"));
        Assert.Equal(Verdict.NotEvaluated, f.Verdict);
    }

    [Theory]
    [InlineData("80 micron", Verdict.Pass)]
    [InlineData("900 micron", Verdict.Fail)]
    public void A_closed_rig_comes_down_to_the_target(string level, Verdict verdict) =>
        Assert.Equal(verdict, InstrumentJob.One("instrument.vacuum-gauge", $"{{id: vacuum, kind: vacuum gauge, accuracy: 10 % of reading, checks: {{rig blanked off: {{level: {level}}}}}}}").Verdict);
}
