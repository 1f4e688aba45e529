using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>Superheat held by a valve, and the floor that holds whatever the target is.</summary>
public sealed class ValveAndFloorCheckTests
{
    private static Finding One(string yaml, string check) => Assert.Single(JobText.Evaluate(yaml, check));

    private static string Metered(string kind, string line = "52.0", string limits = "") => ChargeJobs.FenRow
        .With("metering: fixed orifice", $"metering: {kind}").With("vapor line: 52.0", $"vapor line: {line}").With("instruments:", $"{limits}\ninstruments:");

    // Dew point 40.0 °F: a line at 47 °F has 7, at 43 °F 3, at 66 °F 26 °F of superheat; 4 to 25 °F (California Residential Appendix RA3.2, published).
    [Theory]
    [InlineData("47.0", Verdict.Pass)]
    [InlineData("43.0", Verdict.Fail)]
    [InlineData("66.0", Verdict.Fail)]
    public void A_thermostatic_valve_holds_4_to_25_degrees(string line, Verdict verdict) => Assert.Equal(verdict, One(Metered("TXV", line), "charge.metering-superheat").Verdict);

    [Theory]
    [InlineData("limits: {superheat: {minimum: 8 °F, maximum: 12 °F, from: manual}}")]
    [InlineData("limits: {superheat: {target: 10 °F, tolerance: 2 °F, from: manual}}")]
    public void The_makers_range_or_target_comes_first(string limits)
    {
        var finding = One(Metered("TXV", "53.5", limits), "charge.metering-superheat");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Equal("maker", finding.Limits[0].Basis);
    }

    [Fact]
    public void An_electronic_valve_is_information_unless_the_maker_gives_a_range()
    {
        Assert.Equal(Verdict.Information, One(Metered("EEV"), "charge.metering-superheat").Verdict);
        Assert.Equal(Verdict.Pass, One(Metered("EEV", "52.0", "limits: {superheat: {minimum: 8 °F, maximum: 14 °F, from: manual}}"), "charge.metering-superheat").Verdict);
    }

    [Fact]
    public void Without_a_saturation_temperature_nothing_is_judged()
    {
        // R-410A has its critical point near 4.9 MPa, 711 psia (Lemmon 2003).
        var finding = One(Metered("TXV").With("vapor pressure: 118.35", "vapor pressure: 740.0").With("liquid pressure: 341.88", "liquid pressure: 745.0"), "charge.metering-superheat");
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
    }

    [Theory]
    [InlineData("fixed orifice", "45.1", Verdict.PassWithinUncertainty)]
    [InlineData("fixed orifice", "44.9", Verdict.Fail)]
    [InlineData("TXV", "44.1", Verdict.PassWithinUncertainty)]
    [InlineData("TXV", "43.9", Verdict.Fail)]
    public void The_floor_is_5_degrees_for_an_orifice_and_4_for_a_valve(string metering, string line, Verdict verdict)
    {
        var finding = One(Metered(metering, line), "charge.superheat-floor");
        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Fail)
            Assert.StartsWith("Do not leave it running", finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void A_target_of_8_plus_or_minus_5_does_not_excuse_3_degrees()
    {
        var yaml = Metered("fixed orifice", "43.5", "limits: {superheat: {target: 8 °F, tolerance: 5 °F, from: plate}}");
        Assert.Equal(Verdict.PassWithinUncertainty, One(yaml, "charge.superheat").Verdict);
        Assert.Equal(Verdict.Fail, One(yaml, "charge.superheat-floor").Verdict);
    }

    [Theory]
    [InlineData("44.6", "below the floor: liquid may reach the compressor.", true)]
    [InlineData("52.0", "is required, whatever the target.", false)]
    public void What_is_said_of_the_floor_follows_the_verdict(string line, string said, bool advised)
    {
        var finding = One(Metered("fixed orifice", line), "charge.superheat-floor");
        Assert.EndsWith(said, finding.Statement, StringComparison.Ordinal);
        Assert.Equal(advised, finding.NextStep is not null);
    }

    [Fact]
    public void The_floor_waits_for_a_settled_reading_and_for_one_that_can_be()
    {
        Assert.Equal(Verdict.NotEvaluated, One(Metered("TXV").With("compressor started: \"10:00\"", "compressor started: \"10:25\""), "charge.superheat-floor").Verdict);
        var beyond = One(Metered("TXV").With("vapor pressure: 118.35", "vapor pressure: 740.0").With("liquid pressure: 341.88", "liquid pressure: 745.0"), "charge.superheat-floor");
        Assert.Equal((Verdict.NotEvaluated, "Check the reading and the refrigerant's name."), (beyond.Verdict, beyond.NextStep));
    }

    [Fact]
    public void A_system_charged_by_weight_has_no_floor_and_its_valve_is_told()
    {
        var weighed = Metered("TXV").With("system: split", "system: multi-split");
        Assert.Empty(JobText.Evaluate(weighed, "charge.superheat-floor"));
        var valve = One(weighed, "charge.metering-superheat");
        Assert.Equal((Verdict.Information, "a multi-split is charged by weight"), (valve.Verdict, valve.Reason));
        Assert.Equal(12, valve.Measured!.Value.Si * 1.8, 0.05);
        Assert.Contains(One(Metered("TXV"), "charge.metering-superheat").Readings, r => r.Text == "10:00");
    }

    // 3 °F and 26 °F of superheat, as above.
    [Theory]
    [InlineData("43.0", "The valve overfeeds.")]
    [InlineData("66.0", "The evaporator is starved.")]
    public void Too_little_and_too_much_have_causes_of_their_own(string line, string advice) =>
        Assert.StartsWith(advice, One(Metered("TXV", line), "charge.metering-superheat").NextStep, StringComparison.Ordinal);

    [Fact]
    public void A_valve_is_judged_in_steady_running_only_and_an_orifice_not_at_all()
    {
        var early = One(Metered("TXV").With("compressor started: \"10:00\"", "compressor started: \"10:25\""), "charge.metering-superheat");
        Assert.Equal(Verdict.NotEvaluated, early.Verdict);
        Assert.Contains("and is not judged: ", early.Statement, StringComparison.Ordinal);
        Assert.Empty(JobText.Evaluate(Metered("fixed orifice"), "charge.metering-superheat"));
        Assert.Empty(JobText.Evaluate(Metered("TXV").With("vapor line: 52.0, ", ""), "charge.metering-superheat"));
    }

    // Refrigeration has ranges of its own by application: without the maker's nothing is said.
    [Fact]
    public void In_refrigeration_the_makers_range_alone_judges_a_valve()
    {
        static string Cooler(string limits) => Metered("TXV", "47.0", limits).With("system: split", "system: refrigeration, application: medium temperature");
        Assert.Empty(JobText.Evaluate(Cooler(""), "charge.metering-superheat"));
        Assert.Equal(Verdict.Pass, One(Cooler("limits: {superheat: {minimum: 4 °F, maximum: 10 °F, from: manual}}"), "charge.metering-superheat").Verdict);
    }

    [Fact]
    public void The_makers_floor_comes_first() =>
        Assert.Equal(Verdict.Fail, One(Metered("TXV", "48.0", "limits: {superheat floor: {minimum: 10 °F, from: manual}}"), "charge.superheat-floor").Verdict);

    [Fact]
    public void Without_the_metering_device_there_is_no_floor() =>
        Assert.Equal(Verdict.NotEvaluated, One(ChargeJobs.FenRow.With(", metering: fixed orifice", ""), "charge.superheat-floor").Verdict);
}
