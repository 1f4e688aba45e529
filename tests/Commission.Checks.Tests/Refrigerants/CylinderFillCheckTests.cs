using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>80 % of the volume by liquid at 25 °C (AHRI Guideline K-2004 as the trade press reports it); in Europe the filling ratio of ADR P200, from memory.</summary>
public sealed class CylinderFillCheckTests
{
    private const string Check = "refrigerant.cylinder-fill";

    // Shares of the water capacity by mass that are 80 % of the volume: R-290 39.5, R-410A 84.9, R-22 95.5 % (trade tables of the guideline).
    [Theory]
    [InlineData("R-290", "21.8 lb", Verdict.Pass)] // with a tare of 10 lb, 39.3 %
    [InlineData("R-290", "21.95 lb", Verdict.Fail)] // 39.8 %: half as dense as water
    [InlineData("R-410A", "35.4 lb", Verdict.Pass)] // 84.7 %
    [InlineData("R-410A", "35.6 lb", Verdict.Fail)] // 85.3 %
    [InlineData("R-22", "38.5 lb", Verdict.Pass)] // 95.0 %: denser than water
    [InlineData("R-22", "38.8 lb", Verdict.Fail)] // 96.0 %
    public void Eighty_per_cent_of_the_volume_whatever_the_mass(string refrigerant, string after, Verdict verdict)
    {
        var finding = JobLines.Finding(Job($"refrigerant: {refrigerant}, tare: 10 lb, before: 12 lb, after: {after} +/- 0.001, water capacity: 30 lb", refrigerant), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal("R1", finding.Subject);
        Assert.Equal(verdict == Verdict.Fail, finding.IsDanger);
    }

    [Fact]
    public void More_than_liquid_that_fits_cannot_be()
    {
        // Liquid propane of 25 °C weighs 49 % of the water: 14.8 lb in 30 lb.
        var finding = JobLines.Finding(Job("refrigerant: R-290, tare: 10 lb, before: 12 lb, after: 26 lb, water capacity: 30 lb", "R-290"), Check);
        Assert.True(finding.IsDanger);
        Assert.Contains("cannot be", finding.Statement, StringComparison.Ordinal);
        Assert.DoesNotContain("cannot be", JobLines.Finding(Job("refrigerant: R-290, tare: 10 lb, before: 12 lb, after: 24 lb, water capacity: 30 lb", "R-290"), Check).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Different_refrigerants_in_one_cylinder_count_as_the_lightest()
    {
        // 26 lb in 30 lb, 87 %: right for R-22, too much for the R-410A that went in on top.
        var finding = JobLines.Finding(Job("refrigerant: R-22, tare: 10 lb, before: 30 lb, after: 36 lb, water capacity: 30 lb"), Check);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("R-22 and R-410A in one cylinder", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_recovered_is_what_was_in_the_unit_before_a_change()
    {
        // 28 lb in 30 lb, 93 %: R-22 may, R-410A, now in the circuit, may not.
        const string Lines = "refrigerant change: {from: R-22, to: R-410A}\ncylinders: [{id: R1, tare: 10 lb, before: 30 lb, after: 38 lb, water capacity: 30 lb}]\nrecovery: {to: 0 psig, mass: 8 lb, cylinder: R1}";
        Assert.Equal(Verdict.Pass, JobLines.Finding(JobLines.Of(Lines, "refrigerant change"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(JobLines.Of(Lines[(Lines.IndexOf('\n', StringComparison.Ordinal) + 1)..], "opened circuit"), Check).Verdict);
    }

    [Theory]
    [InlineData("zone: Europe/Brussels", "", true)]
    [InlineData("zone: \"-06:00\"", "limits: {packs: [eu-f-gas]}\n", true)]
    [InlineData("zone: America/Chicago", "", false)]
    public void In_Europe_the_filling_ratio_is_the_rule(string zone, string limits, bool isEuropean)
    {
        // Propane, 0.410 kg for each litre: ADR allows 0.42 to 0.43, 80 % of the volume are 0.394.
        var job = (limits + Job("refrigerant: R-290, tare: 5 kg, before: 6 kg, after: 9.10 kg +/- 0.001, water capacity: 10 L", "R-290")).Replace("zone: \"-06:00\"", zone, StringComparison.Ordinal);
        var finding = JobLines.Finding(job, Check);
        Assert.Equal(isEuropean ? Verdict.Pass : Verdict.Fail, finding.Verdict);
        Assert.Equal(isEuropean, finding.Statement.Contains("keep it cool", StringComparison.Ordinal));
    }

    [Fact]
    public void An_empty_cylinder_holds_what_was_recovered()
    {
        // 6 lb of R-410A in 30 lb of water: 20 / 84.9 · 80 % = 18.8 % of the volume.
        var finding = JobLines.Finding(Job("contents: empty, water capacity: 30 lb"), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("18.8 %", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_is_said()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("contents: recovered"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("water capacity: 30 lb"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("recovery: {to: 0 psig, mass: 6 lb, cylinder: R9}", "opened circuit"), Check).Verdict);
        // Carbon dioxide is above its critical temperature a little above 25 °C and has no table here in Europe: the 80 % stay.
        Assert.DoesNotContain("water capacity by mass", JobLines.Finding("limits: {packs: [eu-f-gas]}\n" + Job("contents: empty, water capacity: 30 lb", "R-744"), Check).Statement, StringComparison.Ordinal);
        // A cylinder that refrigerant only left is the supplier's business.
        Assert.Empty(JobLines.Findings(JobLines.Of("cylinders: [{id: C1, before: 30 lb, after: 20 lb}]"), Check));
    }

    private static string Job(string cylinder, string refrigerant = "R-410A") => JobLines.Of($"cylinders: [{{id: R1, {cylinder}}}]\nrecovery: {{to: 0 psig, mass: 6 lb, cylinder: R1}}", "opened circuit", refrigerant: refrigerant);
}
