using Commission.Checks.Formulas;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>
/// Air-free carbon monoxide, ANSI Z21.47 (from memory): CO · 20.9 / (20.9 − O2), or CO · CO2max / CO2 with 12.2 % for natural gas and
/// 14.0 % for propane. Worked by hand.
/// </summary>
public sealed class CombustionCheckTests
{
    private const string Check = "safety.combustion";

    [Theory]
    [InlineData(310, 12.6, 780.6)] // 310 · 20.9 / 8.3
    [InlineData(24, 8.4, 40.1)] // 24 · 20.9 / 12.5
    [InlineData(50, 0, 50)]
    public void Air_is_counted_out_by_oxygen(double read, double oxygen, double free) =>
        Assert.Equal(free, 1e6 * AirFree.ByOxygen(read * 1e-6, oxygen / 100), 0.05);

    [Theory]
    [InlineData(Fuel.NaturalGas, 122)] // 60 · 12.2 / 6
    [InlineData(Fuel.Propane, 140)]
    [InlineData(Fuel.Oil, 155)]
    public void Air_is_counted_out_by_carbon_dioxide(Fuel fuel, double free) =>
        Assert.Equal(free, 1e6 * AirFree.ByCarbonDioxide(60e-6, 0.06, AirFree.UltimateOf(fuel)!.Value), 0.05);

    [Theory]
    [InlineData("CO: 310 ppm, O2: 12.6 %", Verdict.Fail, true)]
    [InlineData("CO: 24 ppm, O2: 8.4 %", Verdict.Pass, false)]
    [InlineData("fuel: propane, CO: 240 ppm, CO2: 7.0 %", Verdict.Fail, true)] // 480 ppm
    [InlineData("fuel: natural gas, CO: 150 ppm, CO2: 6.1 %", Verdict.Pass, false)] // 300 ppm
    [InlineData("CO: 150 ppm, CO2: 6.1 %", Verdict.NotEvaluated, false)] // which fuel is not written
    [InlineData("CO: 150 ppm", Verdict.NotEvaluated, false)]
    [InlineData("CO: 150 ppm, O2: 20.9 %", Verdict.NotEvaluated, false)] // that is air
    [InlineData("CO: 900 ppm", Verdict.Fail, true)] // too much however much air was with it
    public void A_reading_counts_without_the_air_that_thins_it(string read, Verdict verdict, bool isDanger)
    {
        var finding = JobLines.Finding(JobLines.Of($"gas heat: {{{read}}}", "seasonal check", "packaged"), Check, "carbon monoxide free of air");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(isDanger, finding.IsDanger);
    }

    [Fact]
    public void A_stricter_figure_of_the_maker_counts()
    {
        var job = JobLines.Of("limits: {gas heat: {CO: {maximum: 100 ppm, from: manual}}}\ngas heat: {CO: 80 ppm, O2: 9.0 %}", "seasonal check", "packaged");
        Assert.Equal(Verdict.Fail, JobLines.Finding(job, Check, "carbon monoxide free of air").Verdict); // 80 · 20.9 / 11.9 = 140.5 ppm
        Assert.Contains("100 ppm", Assert.Single(JobLines.Finding(job, Check, "carbon monoxide free of air").Limits).Text, StringComparison.Ordinal);
    }
}
