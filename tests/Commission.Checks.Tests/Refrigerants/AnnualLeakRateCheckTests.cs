using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>40 CFR 82.152 and 82.157: 4 lb added to 60 lb after 150 days is 4/60 · 365/150 = 16.2 % a year, above 10 % for comfort cooling.</summary>
public sealed class AnnualLeakRateCheckTests
{
    private const string Check = "refrigerant.leak-rate";

    [Fact]
    public void Four_pounds_in_a_hundred_and_fifty_days_of_sixty_is_16_2_per_cent_above_the_trigger()
    {
        // 2026-01-19 is 150 days before 2026-06-18.
        var finding = JobLines.Finding(Job("added: 4.0 lb, previous addition: 2026-01-19"), Check);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Equal("4 lb 0.0 oz in 150 days: 16.2 % of the charge in a year; that is above the trigger of 40 CFR 82.157.", finding.Statement);
        Assert.Contains("10 %", finding.Limits[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_pounds_stay_below() => Assert.Equal(Verdict.Pass, JobLines.Finding(Job("added: 2.0 lb, previous addition: 2026-01-19"), Check).Verdict); // 8.1 %

    [Fact]
    public void A_longer_span_than_a_year_counts_as_one() => Assert.Contains("6.7 % of the charge (more than a year counts as one)", JobLines.Finding(Job("added: 4.0 lb, previous addition: 2020-01-01"), Check).Statement, StringComparison.Ordinal); // 4/60

    [Fact]
    public void Outside_the_rules_it_is_information()
    {
        Assert.Equal(Verdict.Information, JobLines.Finding(Job("added: 4.0 lb, previous addition: 2026-01-19", refrigerant: "R-410A"), Check).Verdict);
        Assert.Equal(Verdict.Information, JobLines.Finding(Job("added: 4.0 lb, previous addition: 2026-01-19", charge: "40 lb"), Check).Verdict);
        Assert.Equal(Verdict.Information, JobLines.Finding(Job("added: 4.0 lb, previous addition: 2026-01-19", packs: ""), Check).Verdict);
        Assert.Equal(Verdict.Information, JobLines.Finding(Job("removed: 4.0 lb, previous addition: 2026-01-19"), Check).Verdict);
    }

    [Fact]
    public void Commercial_refrigeration_has_its_own_rule_and_trigger()
    {
        // R-404A (GWP 3922), 60 lb, from 2026: 40 CFR 84.106 with 20 % for commercial refrigeration.
        string Of(string added) => Job($"added: {added}, previous addition: 2026-01-19", refrigerant: "R-404A", system: "refrigeration", equipment: ", application: medium temperature");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("4.0 lb"), Check).Verdict);
        Assert.Contains("84.106", JobLines.Finding(Of("6.0 lb"), Check).Statement, StringComparison.Ordinal); // 24.3 %
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("6.0 lb"), Check).Verdict);
    }

    [Fact]
    public void What_is_missing_is_said()
    {
        Assert.Contains("last added", JobLines.Finding(Job("added: 4.0 lb"), Check).Reason, StringComparison.Ordinal);
        Assert.Contains("full charge", JobLines.Finding(Job("added: 4.0 lb, previous addition: 2026-01-19", charge: null), Check).Reason, StringComparison.Ordinal);
        Assert.Contains("mass added", JobLines.Finding(Job("previous addition: 2026-01-19"), Check).Reason, StringComparison.Ordinal);
        Assert.Contains("not before", JobLines.Finding(Job("added: 4.0 lb, previous addition: 2026-06-18"), Check).Reason, StringComparison.Ordinal);
        Assert.Empty(JobLines.Findings(Job("added: 4.0 lb, unit arrived: charged", work: "new installation"), Check));
    }

    private static string Job(
        string charging, string? charge = "60 lb", string refrigerant = "R-22", string packs = "limits: {packs: [us-epa-608]}\n", string work = "charge adjustment", string system = "split", string equipment = "") =>
        JobLines.Of($"{packs}charging: {{{charging}, left in hoses: 0 lb +/- 0.01}}", work, system, refrigerant, (charge is null ? "" : $", nameplate: {{factory charge: {charge}}}") + equipment);
}
