using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Instruments;

/// <summary>
/// Ice, warm and boiling points and pairs. Bounds: within 1 °F good, up to 2 °F correct it, beyond 2 °F replace (California Residential Appendix
/// RA3.2, p. RA3-12, published); the same bounds at other points are common practice.
/// </summary>
public sealed class ThermometerChecksTests
{
    private static string Clamp(string checks) => $"{{id: clamp, kind: pipe clamp, sensor: thermocouple K class 2, resolution: 0.1 °F, checks: {{{checks}}}}}";

    [Theory]
    [InlineData("ice point: {read: 32.6 °F}", Verdict.Pass, 0.6, "taken off its readings")]
    [InlineData("ice point: {read: 33.6 °F}", Verdict.Pass, 1.6, "corrected for it")]
    [InlineData("ice point: {read: 33.4 °F, adjusted: 32.1 °F}", Verdict.Pass, 1.4, "was adjusted")]
    [InlineData("ice point: {read: 34.3 °F}", Verdict.Fail, 2.3, "more than may be corrected")]
    [InlineData("ice point: {read: 29.6 °F}", Verdict.Fail, 2.4, "salt")]
    public void Ice_point(string check, Verdict verdict, double error, string word)
    {
        var f = InstrumentJob.One("instrument.ice-point", Clamp(check));
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(error, f.Measured!.Value.Si * 1.8, 1e-6);
        Assert.Contains(word, f.Statement, StringComparison.Ordinal);
        Assert.Equal(verdict == Verdict.Fail || word == "corrected for it", f.NextStep is not null);
    }

    [Fact]
    public void The_ice_points_uncertainty_is_the_bath_and_one_step()
    {
        // Bath ± 0.05 K rectangular, step 0.1 °F rectangular: u = √((0.05/√3)² + (0.0556/√12)²) = 0.0330 K; k = 2.00 for known figures.
        var f = InstrumentJob.One("instrument.ice-point", Clamp("ice point: {read: 32.6 °F}"));
        Assert.Equal(0.0330, f.Measured!.StandardUncertaintySi!.Value, 0.00005);
    }

    [Fact]
    public void An_instrument_without_a_check_gives_no_finding() =>
        Assert.Empty(InstrumentJob.All("instrument.ice-point", "elevation: 0 ft", "{id: clamp, kind: pipe clamp}"));

    [Theory]
    [InlineData("warm point: {applied: 110.0 °F +/- 0.5, read: 111.2 °F}", Verdict.Pass)]
    [InlineData("warm point: {applied: 110.0 °F +/- 0.5, read: 112.4 °F}", Verdict.Fail)]
    [InlineData("warm point: {applied: 110.0 °F, read: 110.4 °F}", Verdict.Conditional)]
    public void Warm_point(string check, Verdict verdict)
    {
        var f = InstrumentJob.One("instrument.warm-point", Clamp(check));
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(verdict == Verdict.Pass, f.NextStep is null);
    }

    [Fact]
    public void A_lukewarm_bath_is_remarked_on() =>
        Assert.Contains("outside", InstrumentJob.One("instrument.warm-point", Clamp("warm point: {applied: 84.0 °F +/- 0.5, read: 84.2 °F}")).Statement, StringComparison.Ordinal);

    // Water boils at 212.0 °F at 14.696 psia and at 202.2 °F at 12.10 psia (IAPWS steam tables; 5280 ft of standard atmosphere).
    [Theory]
    [InlineData("elevation: 0 ft", "212.4 °F", Verdict.Pass)]
    [InlineData("elevation: 5280 ft", "202.6 °F", Verdict.Pass)]
    [InlineData("elevation: 5280 ft", "212.0 °F", Verdict.Fail)]
    public void Boiling_point_at_the_sites_pressure(string site, string read, Verdict verdict) =>
        Assert.Equal(verdict, InstrumentJob.One("instrument.boiling-point", Clamp($"boiling point: {{read: {read}}}"), site).Verdict);

    [Fact]
    public void Without_the_sites_pressure_the_boiling_point_is_not_evaluated()
    {
        // The job reader asks for an elevation; a job made another way may lack it.
        var job = JobText.Read(InstrumentJob.Yaml("elevation: 0 ft", Clamp("boiling point: {read: 212.0 °F}")));
        job = job with { Identity = job.Identity with { Site = job.Identity.Site with { Elevation = null } } };
        var f = Assert.Single(CheckCatalogue.Find("instrument.boiling-point")!.Evaluate(new CheckContext(job, new CheckSettings(job.Identity.Date.Value))));
        Assert.Equal(Verdict.NotEvaluated, f.Verdict);
        Assert.NotNull(f.NextStep);
    }

    [Theory]
    [InlineData("45.3 °F", "45.9 °F", Verdict.Pass, 0.6)]
    [InlineData("45.3 °F", "46.5 °F", Verdict.Fail, 1.2)]
    [InlineData("46.5 °F", "45.3 °F", Verdict.Fail, 1.2)]
    public void Pair_at_one_place(string first, string second, Verdict verdict, double difference)
    {
        var f = Assert.Single(InstrumentJob.All(
            "instrument.pair-agreement", "elevation: 0 ft", Clamp($"pair: {{with: other, read: {first}, other: {second}}}"), "{id: other, kind: pipe clamp, resolution: 0.1 °F}"));
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(difference, f.Measured!.Value.Si * 1.8, 1e-6);
        Assert.Equal(["clamp", "other"], f.Instruments);
    }
}
