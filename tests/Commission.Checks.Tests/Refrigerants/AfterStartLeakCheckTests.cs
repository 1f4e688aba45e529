using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>
/// Regulation (EC) 1516/2007, article 6(2): a detector sees 5 g a year [published]. Regulation (EU) 2024/573, articles 4(5) and 5(1): equipment of 5 t CO2e
/// and more (hermetic and labelled 10 t) is checked again after a repair, not before 24 h of operation and within a month [published].
/// </summary>
public sealed class AfterStartLeakCheckTests
{
    private const string Check = "refrigerant.leak-check";
    private const string Detector = "instruments: [{id: sniffer, kind: leak detector, sensitivity: 3 g/yr, calibrated: 2026-01-10}]\n";

    [Theory]
    [InlineData("result: none, method: bubble solution", Verdict.Pass)]
    [InlineData("result: none, method: electronic, sensitivity: 5 g/yr", Verdict.Pass)]
    [InlineData("result: none, method: electronic, sensitivity: 6 g/yr", Verdict.Fail)]
    [InlineData("result: none, method: electronic", Verdict.Conditional)]
    [InlineData("result: none, method: electronic, with: sniffer", Verdict.Pass)]
    [InlineData("result: none, kind: indirect", Verdict.Conditional)]
    [InlineData("result: none", Verdict.NotEvaluated)]
    [InlineData("result: leak, method: electronic", Verdict.Fail)]
    [InlineData("result: leak repaired, method: bubble solution", Verdict.Conditional)]
    public void The_search_itself(string written, Verdict verdict) => Assert.Equal(verdict, JobLines.Findings(Detector + JobLines.Of($"leak check: {{date: 2026-06-18, {written}}}"), Check)[0].Verdict);

    [Theory]
    [InlineData("2026-07-18", "running for: 24 h", Verdict.Pass)]
    [InlineData("2026-07-19", "running for: 24 h", Verdict.Fail)]
    [InlineData("2026-06-17", "running for: 24 h", Verdict.Fail)]
    [InlineData("2026-06-20", "kind: direct", Verdict.Conditional)]
    public void After_a_repair_it_is_checked_again(string day, string written, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(European($"result: none, method: bubble solution, after repair: yes, {written}", day), Check, "after repair").Verdict);

    // 6.26 t: demanded with its date whether a search was written or not; too early a second look leaves it owed.
    [Theory]
    [InlineData("leak check: {date: 2026-06-18, method: bubble solution, result: none}", "leak repair", true)]
    [InlineData("", "leak repair", true)]
    [InlineData("leak check: {date: 2026-06-20, method: bubble solution, result: none, after repair: yes, running for: 20 h}", "leak repair", true)]
    [InlineData("leak check: {date: 2026-06-20, method: bubble solution, result: none, running for: 20 h}", "leak repair", true)]
    [InlineData("leak check: {date: 2026-06-20, method: bubble solution, result: none, running for: 24 h}", "leak repair", false)]
    [InlineData("leak check: {date: 2026-06-18, method: bubble solution, result: none}", "opened circuit", false)]
    [InlineData("leak check: {date: 2026-06-18, method: bubble solution, result: leak repaired}", "seasonal check", true)]
    [InlineData("leak check: {date: 2026-06-18, method: bubble solution, result: leak}", "leak repair", false)]
    public void A_repaired_leak_is_looked_at_again_within_the_month(string check, string work, bool isToCome)
    {
        var findings = JobLines.Findings(Repaired("3 kg", check, work), Check);
        var owed = findings.Where(f => f.Verdict == Verdict.Conditional).ToList();
        Assert.Equal(isToCome, owed.Count == 1);
        if (!isToCome)
            return;
        Assert.Contains("2026-07-18", owed[0].NextStep, StringComparison.Ordinal);
        Assert.Contains("24 h", owed[0].NextStep, StringComparison.Ordinal);
        Assert.DoesNotContain(findings, f => f.Verdict is Verdict.Pass or Verdict.Fail);
    }

    // 2.39 kg of R-410A are 4.99 t, 4.79 kg 9.999 t (2087.5 by mass shares of annex I).
    [Theory]
    [InlineData("2.39 kg", "", false)]
    [InlineData("2.40 kg", "", true)]
    [InlineData("4.79 kg", ", hermetically sealed: yes", false)]
    [InlineData("4.80 kg", ", hermetically sealed: yes", true)]
    public void Smaller_equipment_owes_no_second_look(string charge, string equipment, bool isOwed)
    {
        foreach (var check in new[] { "", "leak check: {date: 2026-06-18, method: bubble solution, result: none}" })
        {
            var findings = JobLines.Findings(Repaired(charge, check, "leak repair", equipment), Check);
            Assert.Equal(isOwed, findings.Any(f => f.Verdict == Verdict.Conditional));
            Assert.Equal(!isOwed, findings.Any(f => f is { Subject: "after repair", Verdict: Verdict.Information }));
        }
    }

    // A detector that is fine enough is no condition; the second look alone is.
    [Fact]
    public void The_condition_is_the_second_look_and_nothing_else() => Assert.Contains(
        "Leak check after start: the repair was not checked again yet.",
        JobLines.Record(Repaired("3 kg", "leak check: {date: 2026-06-18, method: electronic, sensitivity: 3 g/yr, result: none}", "leak repair")).Reasons);

    [Fact]
    public void A_charge_that_is_not_known_does_not_free_from_it()
    {
        var finding = JobLines.Finding(JobLines.Of("limits: {packs: [eu-f-gas]}", "leak repair"), Check);
        Assert.Equal(Verdict.Conditional, finding.Verdict);
        Assert.Contains("is not known", finding.Reservation, StringComparison.Ordinal);
    }

    // 517/2014 article 3(3) asked for the month and for no hours of operation.
    [Fact]
    public void Before_March_2024_no_running_time_was_asked()
    {
        string Dated(string day) => Repaired("3 kg", $"leak check: {{date: {day}, method: bubble solution, result: none, after repair: yes, running for: 1 h}}", "leak repair").Replace("2026-06-18", "2024-03-10", StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Dated("2024-03-10"), Check, "after repair").Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Dated("2024-04-11"), Check, "after repair").Verdict);
        Assert.DoesNotContain("24 h", JobLines.Finding(Repaired("3 kg", "", "leak repair").Replace("2026-06-18", "2024-03-10", StringComparison.Ordinal), Check).NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_check_follows_from_the_tonnes()
    {
        // 3 kg of R-410A: 3 × 2087.5 / 1000 = 6.26 t, from 5 t every 12 months.
        Assert.Equal(Verdict.Pass, JobLines.Finding(European("result: none, method: bubble solution, next due: 2027-06-18"), Check, "next check").Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(European("result: none, method: bubble solution, next due: 2027-06-19"), Check, "next check").Verdict);
        var open = JobLines.Finding(European("result: none, method: bubble solution"), Check, "next check");
        Assert.Equal(Verdict.Information, open.Verdict);
        Assert.Contains("2027-06-18", open.Statement, StringComparison.Ordinal);
        var small = JobLines.Finding(European("result: none, method: bubble solution", charge: "2 kg"), Check, "next check");
        Assert.StartsWith("No regular leak check is prescribed", small.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_european_pack_nothing_european_is_said()
    {
        Assert.Null(Assert.Single(JobLines.Findings(JobLines.Of("leak check: {date: 2026-06-18, result: none, method: bubble solution, after repair: yes, detector checked: 2020-01-01}"), Check)).Subject);
        Assert.Empty(JobLines.Findings(JobLines.Of(), Check));
    }

    private static string Repaired(string charge, string check, string work, string equipment = "") => JobLines.Of(
        $"limits: {{packs: [eu-f-gas]}}\ncharging: {{unit arrived: recovered and evacuated, added: {charge} +/- 0.0001, left in hoses: 0 kg +/- 0.0001}}\n{check}", work, equipment: equipment, units: "si");

    private static string European(string written, string day = "2026-06-18", string charge = "3 kg") =>
        JobLines.Of($"limits: {{packs: [eu-f-gas]}}\ncharging: {{unit arrived: recovered and evacuated, added: {charge}}}\nleak check: {{date: {day}, {written}}}");
}
