using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>Temperature differences that say what else is wrong: approach, condensing over ambient, evaporator difference, drier.</summary>
public sealed class DifferenceCheckTests
{
    private static Finding One(string yaml, string check) => Assert.Single(JobText.Evaluate(yaml, check));

    private static string Limits(string limits) => ChargeJobs.FenRow.With("instruments:", limits + "\ninstruments:");

    private static string Drier(string after) => ChargeJobs.FenRow.With("liquid line: 95.0", $"liquid line: 95.0, liquid after drier: {after}");

    [Theory]
    [InlineData("94.0", Verdict.Pass)]
    [InlineData("91.5", Verdict.Fail)]
    public void Drop_across_the_drier_is_at_most_3_degrees(string after, Verdict verdict) => Assert.Equal(verdict, One(Drier(after), "charge.drier-drop").Verdict);

    [Fact]
    public void Drop_across_the_drier_needs_a_settled_reading() =>
        Assert.Equal(Verdict.NotEvaluated, One(Drier("94.0").With("compressor started: \"10:00\"", "compressor started: \"10:25\""), "charge.drier-drop").Verdict);

    // Two places behind the drier say nothing of it: a blocked one would read the same.
    [Theory]
    [InlineData("metering device", true)]
    [InlineData("after drier", true)]
    [InlineData("liquid service valve", false)]
    public void A_liquid_line_read_behind_the_drier_shows_no_drop_across_it(string place, bool behind)
    {
        var finding = One(Drier("94.0").With("compressor started: \"10:00\"", $"read at: {{liquid line: {place}}}\n  compressor started: \"10:00\""), "charge.drier-drop");
        Assert.Equal(behind, finding.Verdict == Verdict.NotEvaluated);
    }

    [Fact]
    public void No_reading_after_the_drier_no_word() => Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow, "charge.drier-drop"));

    [Fact]
    public void The_approach_is_information_without_the_makers_figure()
    {
        var finding = One(ChargeJobs.FenRow, "charge.approach");
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Equal(0.0, finding.Measured!.Value.Si, 1e-9);
    }

    [Theory]
    [InlineData("limits: {approach: {target: 1 °F, tolerance: 2 °F, from: manual}}", Verdict.Pass)]
    [InlineData("limits: {approach: {target: 8 °F, tolerance: 2 °F, from: manual}}", Verdict.Fail)]
    public void The_makers_approach_is_judged(string limits, Verdict verdict) => Assert.Equal(verdict, One(Limits(limits), "charge.approach").Verdict);

    [Fact]
    public void An_approach_is_no_limit_for_a_system_charged_by_weight()
    {
        var finding = One(Limits("limits: {approach: {target: 8 °F, tolerance: 2 °F, from: manual}}").With("system: split", "system: multi-split"), "charge.approach");
        Assert.Equal((Verdict.Information, "a multi-split is charged by weight"), (finding.Verdict, finding.Reason));
        Assert.Equal("no maker's figure is recorded", One(ChargeJobs.FenRow, "charge.approach").Reason);
        Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow.With("liquid line: 95.0, ", ""), "charge.approach"));
    }

    [Fact]
    public void The_makers_approach_waits_for_air() =>
        Assert.Equal(Verdict.NotEvaluated, One(Limits("limits: {approach: {target: 1 °F, tolerance: 2 °F, from: manual}}").With("filter: clean", "filter: dirty"), "charge.approach").Verdict);

    // R-410A at 341.88 psig: bubble 105.0 °F, dew 105.2 °F (340.86 psig is the dew point at 105 °F, slope 4.8 psi/°F): middle 105.1 °F.
    [Theory]
    [InlineData("95.0", Verdict.Information, 10.1)]
    [InlineData("74.0", Verdict.Information, 31.1)]
    public void The_condenser_split_of_no_maker_is_told_with_its_usual_band(string outdoor, Verdict verdict, double difference)
    {
        var finding = One(ChargeJobs.FenRow.With("outdoor dry bulb: 95.0", $"outdoor dry bulb: {outdoor}"), "charge.condensing-over-ambient");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(difference, finding.Measured!.Value.Si * 1.8, 0.05);
        Assert.Contains("usual is 10 to 30 °F", finding.Reason!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_variable_speed_compressor_condenses_as_it_likes() =>
        Assert.Equal(Verdict.Information, One(ChargeJobs.FenRow.With("compressor: fixed", "compressor: variable speed"), "charge.condensing-over-ambient").Verdict);

    [Fact]
    public void A_cold_room_is_measured_by_its_own_air()
    {
        // Air coolers are rated by the air onto them over the dew point (EN 328, DT1, from memory): a box at 52 °F over 40.0 °F makes 12.0 °F.
        var finding = One(
            ChargeJobs.FenRow.With("system: split", "system: refrigeration, application: medium temperature").With("return dry bulb: 80.0", "box temperature: 52.0 °F, return dry bulb: 80.0").With("reads: [outdoor air,", "reads: [box temperature, outdoor air,"),
            "charge.evaporator-difference");
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Equal(12.0, finding.Measured!.Value.Si * 1.8, 0.02);
    }
}
