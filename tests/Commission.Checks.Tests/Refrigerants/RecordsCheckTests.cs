using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>Regulation (EU) 2024/573 article 7(1), points (a) to (g) (published), 40 CFR 82.157(l) and EN 378 (from memory).</summary>
public sealed class RecordsCheckTests
{
    private const string Check = "refrigerant.records";

    [Fact]
    public void Each_pack_tells_what_is_not_there()
    {
        var findings = JobLines.Findings(JobLines.Of("limits: {packs: [eu-f-gas, us-epa-608, en-378]}"), Check);
        Assert.Equal(3, findings.Length);
        Assert.All(findings, f => Assert.Equal(Verdict.Information, f.Verdict));
        Assert.Contains("certificate of the undertaking", findings[0].Statement, StringComparison.Ordinal);
        Assert.Contains("owner or operator", findings[1].Statement, StringComparison.Ordinal);
        Assert.Contains("test of safety devices", findings[2].Statement, StringComparison.Ordinal);
        Assert.Empty(JobLines.Findings(JobLines.Of(), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of("limits: {packs: [ashrae-15]}"), Check));
    }

    [Fact]
    public void A_complete_european_record_of_a_leak_repair()
    {
        var finding = JobLines.Finding(
            JobLines.Of(
                """
                limits: {packs: [eu-f-gas]}
                cylinders: [{id: C1, contents: reclaimed, supplier: Ostby Gases, certificate: Z-7}, {id: R1, contents: recovered, water capacity: 27 kg, tare: 14 kg, after: 17 kg}]
                recovery: {to: 0 bar(g), mass: 3.0 kg, cylinder: R1, facility: Ostby Gases}
                charging: {unit arrived: recovered and evacuated, scale: {cylinder: C1, before: 20.0 kg, after: 17.0 kg}}
                as found: {leak place: flare indoors}
                leak check: {date: 2026-06-20, method: bubble solution, result: none}
                """,
                "leak repair",
                equipment: ", nameplate: {factory charge: 3 kg}",
                job: ", people: {installer: Brackwater Mechanical, company certificate: F-1, technician: Mira Solend, person certificate: U-00417}",
                units: "si"),
            Check);
        Assert.StartsWith("Everything looked for is in this record", finding.Statement, StringComparison.Ordinal);
        Assert.Null(finding.NextStep);
    }

    // Point by point: what is taken out of a job is named under its letter.
    [Theory]
    [InlineData("", "", "new installation", "(a) quantity and type of gas")]
    [InlineData("charging: {unit arrived: charged, method: weight}\n", "3 kg", "new installation", "(a) quantity added during installation")]
    [InlineData("charging: {unit arrived: charged, method: weight}\n", "3 kg", "charge adjustment", "(b) quantity added, with its date")]
    [InlineData("", "3 kg", "opened circuit", "(c) quantity recovered")]
    [InlineData("charging: {unit arrived: charged, added: 1 kg}\n", "3 kg", "charge adjustment", "(d) whether the gas is virgin, recycled or reclaimed")]
    [InlineData("charging: {unit arrived: charged, added: 1 kg}\ncylinders: [{id: C1, contents: reclaimed}]\n", "3 kg", "charge adjustment", "(d) name and address of the recycling or reclamation facility")]
    [InlineData("", "3 kg", "seasonal check", "(e) undertaking")]
    [InlineData("", "3 kg", "seasonal check", "(e) person who did the work")]
    [InlineData("", "3 kg", "seasonal check", "(f) leak check with date and result")]
    [InlineData("", "3 kg", "leak repair", "(f) leak repair: where the leak was")]
    [InlineData("recovery: {to: 0 bar(g), mass: 3.0 kg}\n", "3 kg", "decommissioning", "(g) where the recovered gas goes")]
    public void An_item_that_is_missing_is_named_with_its_point(string lines, string factory, string work, string missing)
    {
        var plate = factory.Length == 0 ? "" : $", nameplate: {{factory charge: {factory}}}";
        var finding = JobLines.Finding(JobLines.Of($"{lines}limits: {{packs: [eu-f-gas]}}", work, equipment: plate, units: "si"), Check);
        Assert.StartsWith("Not in this record:", finding.Statement, StringComparison.Ordinal);
        Assert.Contains(missing, finding.Statement, StringComparison.Ordinal);
        Assert.NotNull(finding.NextStep);
    }

    [Fact]
    public void A_decommissioned_system_owes_no_leak_check() => Assert.DoesNotContain(
        "(f)", JobLines.Finding(JobLines.Of("limits: {packs: [eu-f-gas]}\nrecovery: {to: 0 bar(g), mass: 3.0 kg}", "decommissioning", equipment: ", nameplate: {factory charge: 3 kg}", units: "si"), Check).Statement, StringComparison.Ordinal);

    // Article 7(1) speaks of equipment that has to be checked for leaks: 2 kg of R-410A are 4.2 t.
    [Fact]
    public void Small_equipment_owes_no_records()
    {
        var finding = JobLines.Finding(JobLines.Of("limits: {packs: [eu-f-gas]}\ncharging: {unit arrived: recovered and evacuated, added: 2 kg}", "leak repair", units: "si"), Check);
        Assert.StartsWith("The law asks for no record of this equipment", finding.Statement, StringComparison.Ordinal);
    }
}
