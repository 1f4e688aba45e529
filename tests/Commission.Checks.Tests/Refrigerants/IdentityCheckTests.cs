using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>US EPA SNAP on flammable retrofits and ASHRAE 15 section 9 on the high side's pressure, both from memory; the rest common practice.</summary>
public sealed class IdentityCheckTests
{
    private const string Check = "refrigerant.identity";

    [Theory]
    [InlineData("R-454B", "R-410A", "", true)] // A2L into A1
    [InlineData("R-290", "R-22", "", true)] // A3 into A1
    [InlineData("R-290", "R-32", "", true)] // A3 into A2L
    [InlineData("R-454B", "R-32", "", false)] // A2L into A2L
    [InlineData("R-438A", "R-22", "", false)] // A1 into A1
    [InlineData("R-410A", "R-32", "", false)] // A1 into A2L
    [InlineData("R-32", "R-32", ", safety class: A1", true)] // the plate says A1 whatever else it says
    public void Nothing_that_burns_more_easily_than_the_unit_is_built_for(string charged, string plate, string more, bool isDanger)
    {
        var finding = Plate(charged, plate, more);
        Assert.Equal(isDanger, finding.IsDanger);
        Assert.Equal(isDanger ? Verdict.Fail : Verdict.Pass, finding.Verdict == Verdict.Conditional ? Verdict.Pass : finding.Verdict);
    }

    // Saturation at 125 °F (suppliers' tables, from memory): R-22 280, R-407C 320 bubble and 275 dew, R-410A 446 psig.
    [Theory]
    [InlineData("R-410A", "R-22", ", design pressure: {high: 300 psig}", Verdict.Fail)]
    [InlineData("R-410A", "R-22", "", Verdict.Fail)] // without a rating by the plate's own refrigerant
    [InlineData("R-407C", "R-22", "", Verdict.Conditional)] // a tenth of it more
    [InlineData("R-407C", "R-22", ", design pressure: {high: 285 psig}", Verdict.Conditional)]
    [InlineData("R-407C", "R-22", ", design pressure: {high: 250 psig}", Verdict.Fail)]
    [InlineData("R-407C", "R-22", ", design pressure: {high: 310 psig}", Verdict.Pass)]
    [InlineData("R-22", "R-407C", "", Verdict.Pass)]
    [InlineData("R-744", "R-134a", "", Verdict.Fail)] // above its critical temperature
    public void Nothing_of_a_pressure_that_the_unit_is_not_built_for(string charged, string plate, string more, Verdict verdict)
    {
        var finding = Plate(charged, plate, more);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Fail, finding.IsDanger);
    }

    [Fact]
    public void Another_refrigerant_than_the_plates_needs_a_change_that_is_written()
    {
        var finding = JobLines.Finding(JobLines.Of(equipment: ", nameplate: {refrigerant: R-32}"), Check);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.False(finding.IsDanger);
        Assert.Contains("refrigerant change", finding.InFile, StringComparison.Ordinal);
        var other = JobLines.Finding(JobLines.Of("refrigerant change: {from: R-22, to: R-438A}", "refrigerant change", refrigerant: "R-407C"), Check, "plate");
        Assert.Equal(Verdict.Fail, other.Verdict);
        Assert.Contains("R-438A", other.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_says_what_the_unit_is_built_for_it_is_asked()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of(work: "refrigerant change"), Check).Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of(), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of(work: "decommissioning", equipment: ", nameplate: {refrigerant: R-32}"), Check));
    }

    [Fact]
    public void A_cylinder_of_another_refrigerant_is_not_accepted()
    {
        const string Cylinders = "cylinders: [{id: C1, refrigerant: R-22, before: 24 lb, after: 23 lb}, {id: C2, refrigerant: R-410A, before: 24 lb, after: 23 lb}, {id: R1, refrigerant: R-22, before: 10 lb, after: 12 lb}]\n";
        var job = JobLines.Of(Cylinders + "charging: {unit arrived: charged, scale: {cylinder: C1, before: 24 lb, after: 23 lb}}");
        Assert.Equal(["C1", "C2"], JobLines.Findings(job, Check).Select(f => f.Subject));
        Assert.Equal([Verdict.Fail, Verdict.Pass], JobLines.Findings(job, Check).Select(f => f.Verdict));
        Assert.Equal(Outcome.NotAccepted, JobLines.Record(job).Outcome);
        // Propane from the cylinder is a danger to a unit of class A1, whatever the job says the circuit holds.
        Assert.True(JobLines.Finding(JobLines.Of(Cylinders.Replace("R-22, before: 24", "R-290, before: 24", StringComparison.Ordinal) + "charging: {unit arrived: charged, scale: {cylinder: C1, before: 24 lb, after: 23 lb}}", equipment: ", nameplate: {refrigerant: R-410A}"), Check, "C1").IsDanger);
    }

    [Theory]
    [InlineData("acid test: bad", "recovered", Verdict.Fail)]
    [InlineData("acid test: bad", "recycled", Verdict.Conditional)]
    [InlineData("acid test: marginal", "recovered", Verdict.Conditional)]
    [InlineData("acid test: good", "recovered", Verdict.Pass)]
    [InlineData("complaint: hums", "recovered", Verdict.Conditional)] // a compressor died, and nobody tested
    public void Gas_of_an_acid_circuit_does_not_go_back(string found, string contents, Verdict verdict)
    {
        var finding = JobLines.Finding(JobLines.Of(Back(found, contents, "R1"), "compressor replacement"), Check, "R1, charged back");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Fail, finding.IsDanger);
    }

    [Fact]
    public void The_recovery_cylinder_is_known_by_its_name_too()
    {
        Assert.True(JobLines.Finding(JobLines.Of(Back("acid test: bad", "virgin", "R1"), "compressor replacement"), Check, "R1, charged back").IsDanger);
        Assert.DoesNotContain(JobLines.Findings(JobLines.Of(Back("acid test: bad", "virgin", "R9"), "compressor replacement"), Check), f => f.IsDanger);
        Assert.Equal(Verdict.Pass, JobLines.Finding(JobLines.Of(Back("complaint: weak", "recovered", "R1"), "leak repair"), Check, "R1, charged back").Verdict);
    }

    private static string Back(string found, string contents, string recovery) =>
        $"as found: {{{found}}}\nrecovery: {{to: 0 psig, mass: 6 lb, cylinder: {recovery}}}\ncylinders: [{{id: R1, refrigerant: R-410A, contents: {contents}}}, {{id: R9}}]\ncharging: {{unit arrived: recovered and evacuated, scale: {{cylinder: R1, before: 30 lb, after: 24 lb}}}}";

    private static Finding Plate(string charged, string plate, string more) => JobLines.Finding(
        JobLines.Of($"refrigerant change: {{from: {plate}, to: {charged}}}", "refrigerant change", refrigerant: charged, equipment: $", nameplate: {{refrigerant: {plate}{more}}}"), Check, "plate");
}
