using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>80 % of the water capacity by mass: US transport rules, from memory.</summary>
public sealed class CylinderFillCheckTests
{
    private const string Check = "refrigerant.cylinder-fill";

    [Theory]
    [InlineData("47.8 lb", Verdict.Pass)] // (47.8 − 24) / 30 = 79.3 %
    [InlineData("48.1 lb", Verdict.Fail)] // 80.3 %, the last digit of the gross mass being 0.1 lb of U
    [InlineData("50.0 lb", Verdict.Fail)] // 86.7 %
    public void Never_more_than_eighty_per_cent(string after, Verdict verdict)
    {
        var finding = JobLines.Finding(Job($"tare: 24 lb, before: 40 lb, after: {after} +/- 0.2, water capacity: 30 lb"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal("R1", finding.Subject);
        if (verdict == Verdict.Fail)
            Assert.StartsWith("DANGER", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_cylinder_holds_what_was_recovered()
    {
        // 6 lb in 30 lb of water: 20 %.
        var finding = JobLines.Finding(Job("contents: empty, water capacity: 30 lb"), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("20.0 %", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_is_said()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("contents: recovered"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("water capacity: 30 lb"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("recovery: {to: 0 psig, mass: 6 lb, cylinder: R9}", "opened circuit"), Check).Verdict);
        // A cylinder that refrigerant only left is the supplier's business.
        Assert.Empty(JobLines.Findings(JobLines.Of("cylinders: [{id: C1, before: 30 lb, after: 20 lb}]"), Check));
    }

    private static string Job(string cylinder) => JobLines.Of($"cylinders: [{{id: R1, {cylinder}}}]\nrecovery: {{to: 0 psig, mass: 6 lb, cylinder: R1}}", "opened circuit");
}
