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

    // A step of 0.1 psi is a rectangle, u = 0.1/√12 psi (JCGM 100, F.2.2.1); as a share of 500 psi.
    [Theory]
    [InlineData("zero: 0.2 psig", "0.2 psig", 0.2)]
    [InlineData("zero: -0.3 psig", "-0.3 psig", 0.3)]
    [InlineData("zero: {read: 6.0 psig, adjusted: 0.1 psig}", "0.1 psig", 0.1)]
    public void The_zero_is_a_share_of_full_scale_and_taken_off(string check, string shown, double psi)
    {
        var f = InstrumentJob.One("instrument.zero-pressure", Gauge(check));
        Assert.Equal($"low shows {shown} open to air; taken off its readings.", f.Statement.Replace('−', '-'));
        Assert.Equal(psi / 500, f.Measured!.Value.Si, 1e-9);
        Assert.Equal(0.1 / Math.Sqrt(12) / 500, f.Measured.StandardUncertaintySi!.Value, 1e-9);
        Assert.Null(f.NextStep);
        Assert.Equal(check.Contains("adjusted", StringComparison.Ordinal) ? 3 : 2, f.Readings.Length);
    }

    [Fact]
    public void A_gauge_far_off_at_zero_is_replaced()
    {
        var f = InstrumentJob.One("instrument.zero-pressure", Gauge("zero: 6.0 psig"));
        Assert.Contains("far off for its range.", f.Statement, StringComparison.Ordinal);
        Assert.StartsWith("Replace or repair the gauge", f.NextStep, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kind: pressure gauge, zeroed at site: no, reads: [vapor pressure]", true)]
    [InlineData("kind: pressure gauge, reference: vented, reads: [vapor pressure]", true)]
    [InlineData("kind: pressure gauge", false)]
    [InlineData("kind: vacuum gauge, reads: [evacuation]", false)]
    public void A_gauge_that_reads_something_is_asked_for_its_zero(string gauge, bool asked)
    {
        var found = InstrumentJob.All("instrument.zero-pressure", "elevation: 0 ft", $"{{id: low, {gauge}}}");
        Assert.Equal(asked ? 1 : 0, found.Count);
        if (asked)
            Assert.Equal((Verdict.NotEvaluated, "instruments: [{checks: {zero: 0.0 psig}}]"), (found[0].Verdict, found[0].InFile));
    }

    // U 0.6 psi is two standard uncertainties; one step for the reading, one more where a zero was read: 0.3, 0.0289 and 0.0289 psi.
    [Theory]
    [InlineData("known pressure: {applied: 300.0 psig +/- 0.6, read: 301.1 psig}", 1.1, "301.1 psig − (0) − 300.0 ± 0.6 psig", 0.30139)]
    [InlineData("zero: -0.3 psig, known pressure: {applied: 300.0 psig +/- 0.6, read: 301.1 psig}", 1.4, "301.1 psig − (-0.3 psig) − 300.0 ± 0.6 psig", 0.30277)]
    [InlineData("zero: {read: 2.0 psig, adjusted: 0.2 psig}, known pressure: {applied: 300.0 psig +/- 0.6, read: 305.0 psig, adjusted: 299.2 psig}", -1.0, "299.2 psig − (0.2 psig) − 300.0 ± 0.6 psig", 0.30277)]
    public void The_error_at_a_known_pressure_has_the_doubt_of_reference_reading_and_zero(string check, double psi, string substitution, double u)
    {
        var f = InstrumentJob.One("instrument.known-pressure", Gauge(check));
        Assert.Equal(Math.Abs(psi) / 300, f.Measured!.Value.Si, 1e-6);
        Assert.Equal(u / 300, f.Measured.StandardUncertaintySi!.Value, 1e-6);
        Assert.Equal(substitution, f.Trace.Single(s => s.Symbol == "e").Substitution.Replace("(−", "(-", StringComparison.Ordinal));
        Assert.Equal(FormattableString.Invariant($"low is off by {psi:0.0} psi at 300.0 ± 0.6 psig; readings are corrected in proportion."), f.Statement.Replace("−", "-", StringComparison.Ordinal));
    }

    [Fact]
    public void A_reference_of_unknown_doubt_corrects_nothing_and_a_poor_gauge_is_replaced()
    {
        var unknown = InstrumentJob.One("instrument.known-pressure", Gauge("known pressure: {applied: 300.0 psig, read: 301.1 psig}"));
        Assert.Equal(("low is off by 1.1 psi at 300.0 psig.", "State the reference's uncertainty with the applied pressure."), (unknown.Statement, unknown.NextStep));
        var poor = InstrumentJob.One("instrument.known-pressure", Gauge("known pressure: {applied: 300.0 psig +/- 0.6, read: 310.0 psig}"));
        Assert.Contains("beyond what a service gauge may be.", poor.Statement, StringComparison.Ordinal);
        Assert.StartsWith("Recalibrate or replace", poor.NextStep, StringComparison.Ordinal);
        Assert.StartsWith("Apply a pressure near", InstrumentJob.One("instrument.known-pressure", Gauge("known pressure: {applied: 0.0 psig, read: 0.1 psig}")).NextStep, StringComparison.Ordinal);
    }

    private const string Good = "rested: 5 h, virgin: yes, liquid present: yes";

    private static string Cylinder(string refrigerant, string read, string temperature, string more = Good) =>
        Gauge($"zero: 0.0 psig, cylinder: {{refrigerant: {refrigerant}, read: {read}, temperature: {temperature}, {more}}}");

    [Fact]
    public void A_cylinder_is_as_sure_as_its_temperature()
    {
        // R-134a rises from 63.9 psig at 65 °F to 78.6 at 75 °F (printed pressure-temperature chart, from memory), 1.47 psi for each °F: ± 1 °F, rectangular, is 0.849 psi, ± 0.1 with k = 2 0.0735 psi.
        var unknown = InstrumentJob.One("instrument.cylinder", Cylinder("R-134a", "71.4 psig", "70.0 °F")).Budget.Single(b => b.Cause == "low: cylinder temperature");
        Assert.Equal(0.849 / 85.8, Math.Abs(unknown.ContributionSi), 0.0002);
        var stated = InstrumentJob.One("instrument.cylinder", Cylinder("R-134a", "71.4 psig", "70.0 °F +/- 0.1")).Budget.Single(b => b.Cause == "low: cylinder temperature");
        Assert.Equal(0.0735 / 85.8, Math.Abs(stated.ContributionSi), 0.00002);
    }

    [Fact]
    public void What_a_cylinder_shows_is_said()
    {
        var good = InstrumentJob.One("instrument.cylinder", Cylinder("R-134a", "71.4 psig", "70.0 °F"));
        Assert.Equal("low agrees with the rested cylinder: no gross error.", good.Statement);
        Assert.Equal("71.1 psig", good.Trace.Single(s => s.Symbol == "p_b").Result);
        Assert.Equal("71.4 psig against 71.1 psig", good.Trace.Single(s => s.Symbol == "e").Substitution);
        // 79.0 − 71.1 = 7.9 of 85.8 psia: 9.2 %.
        var bad = InstrumentJob.One("instrument.cylinder", Cylinder("R-134a", "79.0 psig", "70.0 °F"));
        Assert.Contains("disagrees with the rested cylinder by 9.2", bad.Statement, StringComparison.Ordinal);
        Assert.StartsWith("Make sure that the cylinder is rested", bad.NextStep, StringComparison.Ordinal);
        Assert.Equal(0.092, bad.Measured!.Value.Si, 0.001);
        var low = InstrumentJob.One("instrument.cylinder", Cylinder("R-134a", "63.2 psig", "70.0 °F"));
        Assert.Equal(0.092, low.Measured!.Value.Si, 0.001);
    }

    [Theory]
    [InlineData("R-134a", "70.0 °F", "liquid present: no", "without liquid in the cylinder there is no saturation pressure")]
    [InlineData("R-410A", "170.0 °F", Good, "")] // critical temperature 160.4 °F (Lemmon 2003)
    public void A_cylinder_that_can_show_nothing_is_not_evaluated(string refrigerant, string temperature, string more, string why)
    {
        var f = InstrumentJob.One("instrument.cylinder", Cylinder(refrigerant, "71.4 psig", temperature, more));
        Assert.Equal(Verdict.NotEvaluated, f.Verdict);
        Assert.NotNull(f.NextStep);
        if (why.Length > 0)
            Assert.Equal(why, f.Reason);
    }

    [Theory]
    [InlineData("rested: 4 h", null)]
    [InlineData("rested: 5 h, virgin: no", "Use a cylinder of virgin refrigerant, or check against nitrogen on a test gauge.")]
    [InlineData("rested: 3 h", "Let the cylinder rest longer out of the sun, or check against nitrogen on a test gauge.")]
    [InlineData("rested: 3 h, virgin: no", "Use a cylinder of virgin refrigerant, or check against nitrogen on a test gauge.")]
    public void What_a_cylinder_lacks_is_a_condition(string more, string? next)
    {
        var f = InstrumentJob.One("instrument.cylinder", Cylinder("R-134a", "71.4 psig", "70.0 °F +/- 0.1", more));
        Assert.Equal(next is null ? Verdict.Pass : Verdict.Conditional, f.Verdict);
        Assert.Equal(next, f.NextStep);
    }
}
