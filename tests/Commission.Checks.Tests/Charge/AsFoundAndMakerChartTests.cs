using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>Readings before the work, and pressures or line temperatures the maker states directly.</summary>
public sealed class AsFoundAndMakerChartTests
{
    private static Finding One(string yaml, string check) => Assert.Single(JobText.Evaluate(yaml, check));

    private static string Adjustment(string found) => ChargeJobs.FenRow.With("work: seasonal check", "work: charge adjustment").With("instruments:", found + "\ninstruments:");

    private static string Limits(string limits) => ChargeJobs.FenRow.With("instruments:", limits + "\ninstruments:");

    [Fact]
    public void As_found_is_told_with_both_sides()
    {
        var finding = One(Adjustment("as found: {charge recovered: 3 oz, readings: [{at: \"09:10\", vapor pressure: 118.35, vapor line: 43.0, liquid pressure: 341.88, liquid line: 85.0}]}"), "charge.as-found");
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains("superheat 3.0", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("subcooling 20.0", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("3 oz recovered", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void An_adjustment_without_as_found_is_not_evaluated() => Assert.Equal(Verdict.NotEvaluated, One(Adjustment(""), "charge.as-found").Verdict);

    [Fact]
    public void Another_refrigerant_is_listed_and_not_worked_out()
    {
        var finding = One(Adjustment("as found: {refrigerant: R-22, readings: [{at: \"09:10\", vapor pressure: 68.0, vapor line: 50.0}]}"), "charge.as-found");
        Assert.Null(finding.Measured);
        Assert.Contains("R-22", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_work_needs_no_as_found() => Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow, "charge.as-found"));

    [Theory]
    [InlineData("340 psig", "15 psi", Verdict.Pass)]
    [InlineData("300 psig", "15 psi", Verdict.Fail)]
    [InlineData("356.6 psia", "5 psi", Verdict.Pass)]
    public void The_makers_liquid_pressure_is_judged_as_it_is_stated(string target, string tolerance, Verdict verdict)
    {
        var finding = One(Limits($"limits: {{liquid pressure: {{target: {target}, tolerance: {tolerance}, from: manual p. 30}}}}"), "charge.maker-chart");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal("liquid pressure, 10:30", finding.Subject);
    }

    [Theory]
    [InlineData("95.0", Verdict.Pass)]
    [InlineData("99.0", Verdict.Fail)]
    public void A_chart_of_the_liquid_line_over_liquid_pressure_is_judged(string line, Verdict verdict)
    {
        // 93 °F at 330 psig and 97 °F at 350 psig: at 341.88 psig 93 + 4 · 11.88/20 = 95.4 °F.
        var finding = One(
            Limits("limits: {charts: [{for: liquid line, across: {reading: liquid pressure, at: [330, 350]}, values: [[93, 97]], tolerance: 2 °F, from: plate}]}").With("liquid line: 95.0", $"liquid line: {line}"),
            "charge.maker-chart");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(95.376, (finding.Limits[0].TargetSi!.Value * 1.8) - 459.67, 1e-3);
    }

    [Fact]
    public void A_chart_without_a_tolerance_is_information() =>
        Assert.Equal(Verdict.Information, One(Limits("limits: {charts: [{for: liquid line, across: {reading: liquid pressure, at: [330, 350]}, values: [[93, 97]], from: plate}]}"), "charge.maker-chart").Verdict);

    [Fact]
    public void A_reading_the_chart_judges_must_be_there() =>
        Assert.Equal(
            Verdict.NotEvaluated,
            One(Limits("limits: {charts: [{for: discharge line, across: {reading: outdoor dry bulb, at: [85, 105]}, values: [[150, 170]], tolerance: 5 °F, from: plate}]}"), "charge.maker-chart").Verdict);
}
