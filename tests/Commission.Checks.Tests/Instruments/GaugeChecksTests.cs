using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Instruments;

/// <summary>Pressure gauges: zero, known pressure, rested cylinder.</summary>
public sealed class GaugeChecksTests
{
    private static string Gauge(string checks, string more = "full scale: 500 psig") => $"{{id: low, kind: pressure gauge, resolution: 0.1 psi, {more}, reads: [vapor pressure], checks: {{{checks}}}}}";

    // 1 % of 500 psi is 5 psi (common practice).
    [Theory]
    [InlineData("zero: 0.2 psig", Verdict.Pass)]
    [InlineData("zero: -0.3 psig", Verdict.Pass)]
    [InlineData("zero: 6.0 psig", Verdict.Fail)]
    [InlineData("zero: {read: 6.0 psig, adjusted: 0.0 psig}", Verdict.Pass)]
    public void Zero(string check, Verdict verdict) => Assert.Equal(verdict, InstrumentJob.One("instrument.zero-pressure", Gauge(check)).Verdict);

    [Fact]
    public void A_zero_without_full_scale_is_information() =>
        Assert.Equal(Verdict.Information, InstrumentJob.One("instrument.zero-pressure", Gauge("zero: 0.2 psig", "serial: G-1")).Verdict);

    [Fact]
    public void A_gauge_nobody_opened_to_the_air_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, InstrumentJob.One("instrument.zero-pressure", "{id: low, kind: pressure gauge, reads: [vapor pressure]}").Verdict);

    [Fact]
    public void A_gauge_zeroed_on_site_is_information() =>
        Assert.Equal(Verdict.Information, InstrumentJob.One("instrument.zero-pressure", "{id: low, kind: pressure gauge, zeroed at site: yes, reads: [vapor pressure]}").Verdict);

    [Fact]
    public void An_absolute_gauge_has_no_zero_in_air() =>
        Assert.Empty(InstrumentJob.All("instrument.zero-pressure", "elevation: 0 ft", "{id: low, kind: pressure gauge, reference: absolute, reads: [vapor pressure]}"));

    // ± 3 % (RA3.2.2.2.3, from memory). 301.1 − 300 = 1.1 psi is 0.37 %; 310 − 300 = 10 psi is 3.3 %.
    [Theory]
    [InlineData("known pressure: {applied: 300.0 psig +/- 0.6, read: 301.1 psig}", Verdict.Pass)]
    [InlineData("known pressure: {applied: 300.0 psig, read: 301.1 psig}", Verdict.Conditional)]
    [InlineData("known pressure: {applied: 300.0 psig +/- 0.6, read: 310.0 psig}", Verdict.Fail)]
    [InlineData("known pressure: {applied: 0.0 psig, read: 0.1 psig}", Verdict.NotEvaluated)]
    public void Known_pressure(string check, Verdict verdict)
    {
        var f = InstrumentJob.One("instrument.known-pressure", Gauge(check));
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(verdict == Verdict.Pass, f.NextStep is null);
    }

    [Fact]
    public void The_zero_is_taken_off_before_the_error()
    {
        // 301.1 − (−0.3) − 300.0 = 1.4 psi, 0.467 % of 300.
        var f = InstrumentJob.One("instrument.known-pressure", Gauge("zero: -0.3 psig, known pressure: {applied: 300.0 psig +/- 0.6, read: 301.1 psig}"));
        Assert.Equal(1.4 / 300, f.Measured!.Value.Si, 1e-9);
        Assert.Equal(3, f.Readings.Length);
    }

    // R-134a at 70 °F: 85.8 psia, 71.1 psig at sea level (published equation of state, Tillner-Roth and Baehr 1994; handbook table).
    [Theory]
    [InlineData("71.4 psig", "rested: 5 h, virgin: yes, liquid present: yes", Verdict.Pass)]
    [InlineData("71.4 psig", "liquid present: yes", Verdict.Conditional)]
    [InlineData("71.4 psig", "rested: 2 h, virgin: yes", Verdict.Conditional)]
    [InlineData("71.4 psig", "rested: 5 h, virgin: no", Verdict.Conditional)]
    [InlineData("79.0 psig", "rested: 5 h, virgin: yes", Verdict.Fail)]
    [InlineData("71.4 psig", "rested: 5 h, liquid present: no", Verdict.NotEvaluated)]
    public void Rested_cylinder(string read, string more, Verdict verdict)
    {
        var f = InstrumentJob.One("instrument.cylinder", Gauge($"zero: 0.0 psig, cylinder: {{refrigerant: R-134a, read: {read}, temperature: 70.0 °F, {more}}}"));
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(verdict == Verdict.Pass, f.NextStep is null);
    }
}
