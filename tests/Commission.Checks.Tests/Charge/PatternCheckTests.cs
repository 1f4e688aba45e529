using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

public sealed class PatternCheckTests
{
    private static Finding Judge(string yaml) => Assert.Single(JobText.Evaluate(yaml, "charge.pattern"));

    private static string Lines(double vapor, double liquid) => ChargeJobs.FenRow
        .With("vapor line: 52.0", FormattableString.Invariant($"vapor line: {vapor:0.0}"))
        .With("liquid line: 95.0", FormattableString.Invariant($"liquid line: {liquid:0.0}"));

    // Superheat 12 ± 5 °F, subcooling usually 5 to 20 °F: the dew point is 40.0 and the bubble point 105.0 °F.
    [Theory]
    [InlineData(62, 103, "too little refrigerant", "then add by weight")]
    [InlineData(62, 95, "a restriction, a starved valve or low load", "Do not add refrigerant")]
    [InlineData(62, 80, "a restriction, a starved valve or low load", "Do not add refrigerant")]
    [InlineData(45, 80, "too much refrigerant", "Recover by weight")]
    [InlineData(45, 95, "too large an orifice or low airflow", "Do not remove refrigerant")]
    [InlineData(45, 103, "too large an orifice or low airflow", "Do not remove refrigerant")]
    [InlineData(52, 95, "nothing wrong with the charge", null)]
    public void Both_sides_together(double vapor, double liquid, string meaning, string? next)
    {
        var finding = Judge(Lines(vapor, liquid));
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains(meaning, finding.Statement, StringComparison.Ordinal);
        if (next is null)
            Assert.Null(finding.NextStep);
        else
            Assert.Contains(next, finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void High_subcooling_with_a_high_condensing_temperature_asks_for_the_standing_test_first()
    {
        // The condensing middle of about 105 °F over 70 °F outdoors is 35 °F: above 10 to 30 °F. Return air and target are kept valid at 70 °F.
        var finding = Judge(Lines(62, 80).With("outdoor dry bulb: 95.0", "outdoor dry bulb: 70.0"));
        Assert.Contains("something that does not condense", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("standing test", finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_hinted_while_the_air_side_is_not_shown()
    {
        var finding = Judge(Lines(62, 103).With("air: {filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes}", "air: {filter: clean}"));
        Assert.StartsWith("No hint to add or remove anything", finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void Low_airflow_forbids_it_altogether() =>
        Assert.Equal(Verdict.NotEvaluated, Judge(Lines(45, 95).With("filter: clean", "filter: dirty")).Verdict);

    [Fact]
    public void A_valve_that_still_makes_up_hides_a_low_charge_from_the_superheat()
    {
        var finding = Judge(Lines(52, 103).With("metering: fixed orifice", "metering: TXV").With("instruments:", "limits: {subcooling: {target: 10 °F, from: plate}}\ninstruments:"));
        Assert.Contains("too little refrigerant that the valve still makes up for", finding.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ChargeLevel.Normal, ChargeLevel.High, ChargeLevel.Normal, true, "too much refrigerant behind a valve")]
    [InlineData(ChargeLevel.Normal, ChargeLevel.Normal, ChargeLevel.High, true, "gets rid of its heat badly")]
    [InlineData(ChargeLevel.Low, ChargeLevel.Normal, ChargeLevel.Normal, true, "a valve that overfeeds")]
    internal void Patterns_with_a_valve(ChargeLevel superheat, ChargeLevel subcooling, ChargeLevel condensing, bool hasValve, string meaning) =>
        Assert.Contains(meaning, ChargePattern.Of(superheat, subcooling, condensing, hasValve).Meaning, StringComparison.Ordinal);
}
