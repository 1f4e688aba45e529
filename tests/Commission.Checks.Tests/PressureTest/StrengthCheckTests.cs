using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.PressureTest;

/// <summary>The strength test: 1.1 times the allowable pressure, before the tightness test (EN 378-2, from memory). 1.1 × 400 psig are 440 psig.</summary>
public sealed class StrengthCheckTests
{
    private const string Id = "pressure-test.strength";
    private const string Asked = "limits: {packs: [en-378]}";

    private static string Job(string strength, string packs = Asked, string plate = ", nameplate: {design pressure: {low: 400 psig, high: 550 psig}}", string from = "08:30") => JobLines.Of(
        $$$"""
        {{{packs}}}
        instruments: [{id: gauge, kind: pressure gauge, accuracy: 0.01 psi, resolution: 0.001 psi, reads: [pressure test], checks: {zero: 0.000 psig}}]
        pressure test:
          gas: dry nitrogen
          section: low side
          {{{strength}}}
          tightness: {from: {at: "{{{from}}}", pressure: 390.0 psig, temperature: 70 °F}, to: {at: "10:30", pressure: 390.0 psig, temperature: 70 °F}}
        """, equipment: plate);

    [Fact]
    public void Where_a_pack_asks_for_one_it_is_missed_and_elsewhere_it_is_not()
    {
        var missed = JobLines.Finding(Job(""), Id);
        Assert.Equal((Verdict.NotEvaluated, "no strength test is written"), (missed.Verdict, missed.Reason));
        Assert.Equal("en-378", Assert.Single(missed.Limits).Pack);
        Assert.Empty(JobLines.Findings(Job("", packs: ""), Id));
        Assert.Empty(JobLines.Findings(JobLines.Of(Asked), Id));
    }

    [Theory]
    [InlineData("441.0", Verdict.Pass)]
    [InlineData("440.1", Verdict.Pass)]
    [InlineData("439.9", Verdict.Fail)]
    [InlineData("439.0", Verdict.Fail)]
    public void It_reaches_the_factor_of_the_design_pressure(string psig, Verdict verdict)
    {
        var found = JobLines.Finding(Job($"strength: {{pressure: {psig} psig, at: \"08:00\", held: 30 min, result: none}}"), Id);
        Assert.Equal(verdict, found.Verdict);
        var step = found.Trace.Single(s => s.Symbol == "p_min");
        Assert.Equal(("1.1 × 400 psig", "440.0 psig"), (step.Substitution, step.Result));
        Assert.Equal((LimitKind.AtLeast, "at least 440.0 psig", null), (found.Limits[0].Kind, found.Limits[0].Text, found.Limits[0].UpperSi));
        Assert.Equal(440 * 6894.757293168, found.Limits[0].LowerSi!.Value, 1);
        Assert.Equal(verdict == Verdict.Fail, found.NextStep is not null);
    }

    [Fact]
    public void A_leak_fails_whatever_the_pressure()
    {
        var found = JobLines.Finding(Job("strength: {pressure: 441.0 psig, result: leak}"), Id);
        Assert.Equal((Verdict.Fail, "The circuit leaked at the strength test."), (found.Verdict, found.Statement));
        Assert.StartsWith("Release the pressure", found.NextStep, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job("strength: {pressure: 441.0 psig}"), Id).Verdict);
    }

    [Theory]
    [InlineData("", ", nameplate: {design pressure: {low: 400 psig, high: 550 psig}}")]
    [InlineData(Asked, "")]
    public void Without_a_pack_or_a_design_pressure_it_is_told_and_not_judged(string packs, string plate)
    {
        var found = JobLines.Finding(Job("strength: {pressure: 300.0 psig, result: none}", packs, plate), Id);
        Assert.Equal((Verdict.Information, "Strength test at 300.0 psig."), (found.Verdict, found.Statement));
        Assert.Equal(300 * 6894.757293168, found.Measured!.Value.Si, 1);
    }

    // Strength before tightness: a joint that gives way under the higher pressure would leave the earlier hold worth nothing.
    [Theory]
    [InlineData("08:29", true)]
    [InlineData("08:30", true)]
    [InlineData("08:31", false)]
    public void It_comes_before_the_tightness_test(string at, bool passes)
    {
        var found = JobLines.Finding(Job($"strength: {{pressure: 441.0 psig, at: \"{at}\", result: none}}"), Id);
        Assert.Equal(passes ? Verdict.Pass : Verdict.Fail, found.Verdict);
        Assert.Equal(passes, found.Statement.StartsWith("Strength test at 441.0 psig, at least 440.0 psig asked.", StringComparison.Ordinal));
    }
}
