using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>Lists of Regulation (EU) 517/2014 article 6 (published), 40 CFR 82.157(l) and EN 378 (from memory).</summary>
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

    [Fact]
    public void Taking_one_item_away_names_it()
    {
        var finding = JobLines.Finding(JobLines.Of("limits: {packs: [eu-f-gas]}", "seasonal check", equipment: ", nameplate: {factory charge: 3 kg}", job: ", people: {installer: Brackwater Mechanical, company certificate: F-1, person certificate: U-00417}"), Check);
        Assert.Equal("Not in this record: leak check with date and result.", finding.Statement);
        Assert.NotNull(finding.NextStep);
    }

    [Fact]
    public void Reclaimed_gas_names_its_facility()
    {
        var finding = JobLines.Finding(JobLines.Of("limits: {packs: [eu-f-gas]}\ncylinders: [{id: C1, contents: reclaimed}]\ncharging: {added: 1 kg}", "charge adjustment"), Check);
        Assert.Contains("name of the recycling or reclamation facility", finding.Statement, StringComparison.Ordinal);
    }
}
