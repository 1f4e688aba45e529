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

    // Within 1 °F good, up to 2 °F correct it (RA3.2, p. RA3-12); salt lowers the bath, so that a low reading beyond 0.5 K (0.9 °F) may be the bath's.
    [Theory]
    [InlineData("32.6", "clamp read 0.6 °F high in ice water; taken off its readings.", false)]
    [InlineData("31.4", "clamp read 0.6 °F low in ice water; taken off its readings.", false)]
    [InlineData("32.9", "clamp read 0.9 °F high in ice water; taken off its readings.", false)]
    [InlineData("33.1", "clamp read 1.1 °F high in ice water; the readings are corrected for it.", false)]
    [InlineData("31.2", "clamp read 0.8 °F low in ice water; taken off its readings.", false)]
    [InlineData("31.0", "clamp read 1.0 °F low in ice water; taken off its readings.", true)]
    [InlineData("30.8", "clamp read 1.2 °F low in ice water; the readings are corrected for it.", true)]
    public void What_the_ice_point_shows_is_said(string read, string said, bool salt)
    {
        var f = InstrumentJob.One("instrument.ice-point", Clamp($"ice point: {{read: {read} °F}}"));
        Assert.StartsWith(said, f.Statement, StringComparison.Ordinal);
        Assert.Equal(salt, f.Statement.Contains("salt", StringComparison.Ordinal));
        Assert.Equal(said.Contains("corrected", StringComparison.Ordinal) ? "Adjust the instrument as its maker says." : null, f.NextStep);
        Assert.DoesNotContain(f.Trace, s => s.Symbol == "r");
        Assert.Equal($"{read} °F − 32.0 °F", f.Trace.Single(s => s.Symbol == "e").Substitution);
    }

    [Fact]
    public void An_adjusted_thermometer_is_judged_as_found_and_keeps_its_residual()
    {
        var f = InstrumentJob.One("instrument.ice-point", Clamp("ice point: {read: 33.6 °F, adjusted: 32.1 °F}"));
        Assert.Equal("clamp read 1.6 °F high in ice water and was adjusted; 0.1 °F is left and taken off its readings.", f.Statement);
        Assert.Equal("0.1 °F", f.Trace.Single(s => s.Symbol == "r").Result);
        Assert.Null(f.NextStep);
        Assert.Equal(2, f.Readings.Length);
    }

    // Liquid lines run from 100 to 120 °F (common practice, no source).
    [Theory]
    [InlineData("99.9", true)]
    [InlineData("100.1", false)]
    [InlineData("119.9", false)]
    [InlineData("120.1", true)]
    public void A_bath_beside_the_range_of_liquid_lines_is_remarked_on(string applied, bool remarked) => Assert.Equal(
        remarked,
        InstrumentJob.One("instrument.warm-point", Clamp($"warm point: {{applied: {applied} °F +/- 0.5, read: {applied} °F}}")).Statement.Contains("outside", StringComparison.Ordinal));

    [Fact]
    public void What_the_warm_point_shows_is_said()
    {
        Assert.Equal("clamp was 1.2 °F off at 110.0 ± 0.5 °F.", InstrumentJob.One("instrument.warm-point", Clamp("warm point: {applied: 110.0 °F +/- 0.5, read: 111.2 °F}")).Statement);
        var low = InstrumentJob.One("instrument.warm-point", Clamp("warm point: {applied: 110.0 °F +/- 0.5, read: 107.6 °F}"));
        Assert.Equal(("clamp was 2.4 °F off at 110.0 ± 0.5 °F: more than may be corrected.", "Repeat the check; if it stays, replace the sensor."), (low.Statement, low.NextStep));
        Assert.Equal("State the uncertainty of the reference, 113 °F +/- 0.5.", InstrumentJob.One("instrument.warm-point", Clamp("warm point: {applied: 110.0 °F, read: 110.4 °F}")).NextStep);
    }

    // Water boils at 99.974 °C, 211.95 °F, under one standard atmosphere (IAPWS-95).
    [Fact]
    public void What_the_boiling_point_shows_is_said()
    {
        var good = InstrumentJob.One("instrument.boiling-point", Clamp("boiling point: {read: 213.9 °F, adjusted: 212.4 °F}"), "station pressure: 14.696 psia +/- 0.005");
        Assert.Equal("clamp was 0.4 °F off in boiling water.", good.Statement);
        Assert.Equal(0.4, good.Measured!.Value.Si * 1.8, 0.05);
        Assert.StartsWith("211.95", good.Trace.Single(s => s.Symbol == "T_b").Result, StringComparison.Ordinal);
        Assert.Equal("212.4 °F − 212.0 °F", good.Trace.Single(s => s.Symbol == "e").Substitution);
        Assert.Contains(good.Readings, r => r.Name == "station pressure");
        var low = InstrumentJob.One("instrument.boiling-point", Clamp("boiling point: {read: 209.0 °F}"), "station pressure: 14.696 psia +/- 0.005");
        Assert.Equal("clamp was 3.0 °F off in boiling water: more than may be corrected.", low.Statement);
        Assert.StartsWith("Repeat the check with a rolling boil", low.NextStep, StringComparison.Ordinal);
    }

    // One step of 0.1 °F each: 0.1/1.8/√12 K, twice.
    [Fact]
    public void A_pair_has_the_steps_of_both()
    {
        var f = Assert.Single(InstrumentJob.All("instrument.pair-agreement", "elevation: 0 ft", Clamp("pair: {with: other, read: 45.3 °F, other: 45.9 °F}"), "{id: other, kind: pipe clamp, resolution: 0.1 °F}"));
        Assert.Equal(Math.Sqrt(2) * 0.1 / 1.8 / Math.Sqrt(12), f.Measured!.StandardUncertaintySi!.Value, 1e-9);
        Assert.Equal("clamp and other differ by 0.6 °F at one place.", f.Statement);
        Assert.Null(f.NextStep);
    }

    [Fact]
    public void A_pair_apart_is_swapped_and_only_thermometers_are_paired_here()
    {
        var apart = Assert.Single(InstrumentJob.All("instrument.pair-agreement", "elevation: 0 ft", Clamp("pair: {with: other, read: 45.3 °F, other: 47.0 °F}"), "{id: other, kind: pipe clamp}"));
        Assert.StartsWith("Swap them and read again", apart.NextStep, StringComparison.Ordinal);
        Assert.Empty(InstrumentJob.All("instrument.pair-agreement", "elevation: 0 ft", Clamp("ice point: {read: 32.0 °F}")));
    }
}
