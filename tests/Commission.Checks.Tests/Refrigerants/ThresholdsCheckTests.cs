using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>40 CFR 82.157: 50 lb of an ozone-depleting refrigerant; 40 CFR 84.106: 15 lb of a substitute with GWP above 53, from 2026 (published).</summary>
public sealed class ThresholdsCheckTests
{
    private const string Check = "refrigerant.thresholds";

    [Theory]
    [InlineData("R-22", "split", "60 lb", "40 CFR 82.157")]
    [InlineData("R-22", "split", "40 lb", "no leak-repair rule")]
    [InlineData("R-404A", "refrigeration", "16 lb", "40 CFR 84.106")]
    [InlineData("R-404A", "refrigeration", "14 lb", "no leak-repair rule")]
    [InlineData("R-410A", "split", "100 lb", "no leak-repair rule")] // residential and light-commercial air conditioning
    [InlineData("R-744", "refrigeration", "200 lb", "no leak-repair rule")]
    public void Which_rule(string refrigerant, string system, string charge, string rule)
    {
        var finding = JobLines.Finding(Job(refrigerant, system, $", nameplate: {{factory charge: {charge}}}"), Check);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains(rule, finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_charge_and_other_countries()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("R-22", "split", ""), Check).Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of(refrigerant: "R-22", equipment: ", nameplate: {factory charge: 60 lb}"), Check));
    }

    private static string Job(string refrigerant, string system, string equipment) => JobLines.Of("limits: {packs: [us-epa-608]}", "seasonal check", system, refrigerant, equipment);
}
