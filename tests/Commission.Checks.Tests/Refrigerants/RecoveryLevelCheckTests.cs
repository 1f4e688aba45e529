using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>
/// 40 CFR 82.156 table 1 (published): high pressure below 200 lb 0, from 200 lb 10 inHg vac; medium 10 and 15 inHg vac; low 25 mmHg
/// absolute. Classes by liquid saturation at 104 °F: R-410A about 351 psia high, R-134a 147.5 psia medium (both from memory).
/// </summary>
public sealed class RecoveryLevelCheckTests
{
    private const string Check = "refrigerant.recovery-level";

    [Theory]
    [InlineData("R-410A", "0 psig", "10 lb", Verdict.PassWithinUncertainty)]
    [InlineData("R-410A", "2 inHg vac", "10 lb", Verdict.Pass)]
    [InlineData("R-410A", "3 psig", "10 lb", Verdict.Fail)]
    [InlineData("R-410A", "9 inHg vac", "200 lb", Verdict.Fail)]
    [InlineData("R-410A", "11 inHg vac", "200 lb", Verdict.Pass)]
    [InlineData("R-134a", "9 inHg vac", "10 lb", Verdict.Fail)]
    [InlineData("R-134a", "11 inHg vac", "10 lb", Verdict.Pass)]
    [InlineData("R-134a", "14 inHg vac", "250 lb", Verdict.Fail)]
    [InlineData("R-134a", "16 inHg vac", "250 lb", Verdict.Pass)]
    [InlineData("R-744", "0 psig", "10 lb", Verdict.PassWithinUncertainty)]
    [InlineData("R-123", "30 mbar(a)", "10 lb", Verdict.Pass)] // 25 mmHg is 33.3 mbar
    [InlineData("R-123", "36 mbar(a)", "10 lb", Verdict.Fail)]
    public void The_level_of_the_table(string refrigerant, string reached, string charge, Verdict verdict)
    {
        var finding = JobLines.Finding(JobLines.Of($"recovery: {{to: {reached}, held: 10 min}}", "opened circuit", refrigerant: refrigerant, equipment: $", nameplate: {{factory charge: {charge}}}"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal("published", finding.Limits[0].Mark);
        Assert.EndsWith("The level held for 10 min.", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_inches_are_counted_from_the_standard_atmosphere_wherever_the_site_is()
    {
        // 10 inHg vac is 19.92 inHg absolute, 67.5 kPa. At 5280 ft (83.4 kPa) that is 4.7 inHg below the air there.
        string Of(string depth) => JobLines.Of($"recovery: {{to: {depth}}}", "opened circuit", refrigerant: "R-134a", equipment: ", nameplate: {factory charge: 10 lb}", site: ", elevation: 5280 ft");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("6 inHg vac"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("3 inHg vac"), Check).Verdict);
    }

    [Fact]
    public void Old_machines_reach_less()
    {
        // Table 1, before 15 November 1993: medium pressure 4 inHg vac.
        string Of(string made) => JobLines.Of($"recovery: {{to: 5 inHg vac, machine made: {made}}}", "opened circuit", refrigerant: "R-134a", equipment: ", nameplate: {factory charge: 10 lb}");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("1992-03-01"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("1993-11-15"), Check).Verdict);
    }

    [Fact]
    public void A_circuit_that_leaks_is_not_pulled_into_a_vacuum()
    {
        var finding = JobLines.Finding(JobLines.Of("recovery: {to: 0 psig, leaking: yes}", "leak repair", refrigerant: "R-134a", equipment: ", nameplate: {factory charge: 10 lb}"), Check);
        Assert.Equal(Verdict.PassWithinUncertainty, finding.Verdict);
        Assert.Contains("leaks", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_is_said()
    {
        Assert.Contains("200 lb", JobLines.Finding(JobLines.Of("recovery: {to: 11 inHg vac}", "opened circuit", refrigerant: "R-134a"), Check).Reason, StringComparison.Ordinal);
        // The mass recovered stands in for the charge.
        Assert.Equal(Verdict.Pass, JobLines.Finding(JobLines.Of("recovery: {to: 11 inHg vac, mass: 8 lb}", "opened circuit", refrigerant: "R-134a"), Check).Verdict);
        // A mix with a part that has no equation has no class.
        var unknown = Commission.Fluids.RefrigerantCatalogue.All.First(r => !r.IsComputable).Designation;
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("recovery: {to: 11 inHg vac}", "opened circuit", refrigerant: unknown), Check).Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of(work: "opened circuit"), Check));
        Assert.Contains(JobLines.Record(JobLines.Of(work: "opened circuit")).Missing, m => m.Checks.Contains("refrigerant.recovery-level"));
    }

    [Fact]
    public void A_small_appliance_is_judged_by_the_share_recovered()
    {
        // 0.9 of 2 lb is 1.8 lb.
        string Of(string mass) => JobLines.Of($"limits: {{packs: [us-epa-608]}}\nrecovery: {{to: 3 psig, mass: {mass}}}", "decommissioning", "packaged", equipment: ", hermetically sealed: yes, nameplate: {factory charge: 2.00 lb}");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("1.85 lb"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("1.70 lb"), Check).Verdict);
    }
}
