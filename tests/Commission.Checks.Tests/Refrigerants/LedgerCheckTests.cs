using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>Sums and differences worked out by hand.</summary>
public sealed class LedgerCheckTests
{
    private const string Check = "refrigerant.ledger";
    private const string Scale = "instruments: [{id: scale, kind: scale, accuracy: 0.5 oz, resolution: 0.1 oz, reads: [charge]}]\n";

    [Fact]
    public void Every_pound_in_and_out()
    {
        // In 24.86 − 23.84 = 1.02 lb and 5 lb; out 6.10 lb: net −0.08 lb = −1.3 oz.
        var finding = JobLines.Finding(JobLines.Of("recovery: {to: 0 psig, mass: 6.10 lb, cylinder: R1}\ncharging: {unit arrived: recovered and evacuated, scale: [{cylinder: C1, before: 24.86 lb, after: 23.84 lb}, {cylinder: C2, before: 15 lb, after: 10 lb}]}", "opened circuit"), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal("In 6 lb 0.3 oz, out 6 lb 1.6 oz: net −1.3 oz out of the cylinders.", finding.Statement.Replace("-", "−", StringComparison.Ordinal));
        Assert.Contains(finding.Readings, r => r.Text == "23.84 lb");
    }

    [Fact]
    public void A_movement_without_a_mass_is_not_evaluated()
    {
        var yaml = JobLines.Of("recovery: {to: 0 psig, cylinder: R1}", "opened circuit");
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(yaml, Check).Verdict);
        Assert.Contains(JobLines.Record(yaml).Missing, m => m.Checks.Contains("refrigerant.ledger"));
        Assert.Empty(JobLines.Findings(JobLines.Of(work: "seasonal check"), Check));
    }

    [Theory]
    [InlineData("23.84 lb", Verdict.Pass)]
    [InlineData("23.86 lb", Verdict.Pass)] // 0.3 oz apart on a scale of half an ounce
    [InlineData("23.60 lb", Verdict.Fail)] // 3.8 oz apart
    public void Scale_and_cylinder_say_the_same(string after, Verdict verdict)
    {
        var finding = JobLines.Finding(Scale + JobLines.Of($"cylinders: [{{id: C1, contents: virgin, before: 24.86 lb, after: {after}}}]\ncharging: {{unit arrived: charged, scale: {{cylinder: C1, before: 24.86 lb, after: 23.84 lb}}}}"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Contains(finding.Trace, s => s.Symbol == "E_n");
    }

    [Fact]
    public void Events_count_when_no_scale_was_read()
    {
        var finding = JobLines.Finding(JobLines.Of("charging: {events: [{at: \"11:00\", added: 8 oz}, {at: \"11:20\", removed: 3 oz}]}", "charge adjustment"), Check);
        Assert.StartsWith("In 8.0 oz, out 3.0 oz: net 5.0 oz", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("No cylinder is named", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_refrigerant_counts_by_itself()
    {
        var finding = JobLines.Finding(JobLines.Of("refrigerant change: {from: R-22, to: R-438A}\nrecovery: {to: 0 psig, mass: 5 lb, cylinder: R1}\ncharging: {unit arrived: recovered and evacuated, scale: {cylinder: C1, before: 24 lb, after: 17 lb}}", "refrigerant change", refrigerant: "R-438A"), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.StartsWith("In 7 lb 0.0 oz of R-438A; out 5 lb 0.0 oz of R-22.", finding.Statement, StringComparison.Ordinal);
        Assert.Equal(7 * 0.45359237, finding.Measured!.Value.Si, 1e-6);
    }

    [Theory]
    [InlineData("before: 25.30 lb, after: 18.10 lb", Verdict.Pass)] // weighed for charging alone
    [InlineData("before: 18.10 lb, after: 25.30 lb", Verdict.Pass)] // for recovery alone
    [InlineData("before: 18.10 lb, after: 18.10 lb", Verdict.Pass)] // for both
    [InlineData("before: 25.30 lb, after: 19.10 lb", Verdict.Fail)] // a pound more stayed in it than went out of it
    public void A_cylinder_that_was_filled_and_charged_from_is_weighed_for_one_or_for_both(string weighed, Verdict verdict)
    {
        var finding = JobLines.Finding(Scale + JobLines.Of($"cylinders: [{{id: R1, contents: recovered, {weighed}}}]\nrecovery: {{to: 0 psig, mass: 7.20 lb, scale: {{cylinder: R1, before: 18.10 lb, after: 25.30 lb}}, cylinder: R1}}\ncharging: {{unit arrived: recovered and evacuated, scale: {{cylinder: R1, before: 25.30 lb, after: 18.10 lb}}}}", "leak repair"), Check);
        Assert.Equal(verdict, finding.Verdict);
    }

    [Fact]
    public void The_table_shows_each_cylinder()
    {
        var record = JobLines.Record(JobLines.Of("cylinders: [{id: C1}, {id: R1, refrigerant: R-410A, contents: recovered, water capacity: 30 lb}]\nrecovery: {at: \"08:00\", to: 0 psig, mass: 6 lb +/- 0.1, cylinder: R1}\ncharging: {unit arrived: recovered and evacuated, scale: {cylinder: C1, before: 24 lb +/- 0.1, after: 18 lb +/- 0.1}}", "opened circuit"));
        var table = Assert.Single(record.Tables, t => t.Id == "refrigerant-ledger");
        Assert.Equal(["charged", "recovered"], table.Rows.Select(r => r[1]));
        Assert.Equal(["", "C1", "", "24 ± 0.1 lb", "18 ± 0.1 lb"], table.Rows[0].Where((_, i) => i is 0 or 2 or 3 or 4 or 5));
        Assert.Equal(["08:00", "R1", "R-410A, recovered", "", ""], table.Rows[1].Where((_, i) => i is 0 or 2 or 3 or 4 or 5));
        Assert.Matches(@"^6 lb 0\.0 oz ± ", table.Rows[0][6]);
        Assert.Equal("", table.Rows[0][7]);
        Assert.Matches(@"^6 lb 0\.0 oz ± ", table.Rows[1][7]);
        Assert.All(table.Rows, r => Assert.Equal(table.Columns.Length, r.Length));
    }
}
