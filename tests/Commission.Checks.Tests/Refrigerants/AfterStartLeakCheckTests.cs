using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>Regulation (EC) 1516/2007: 5 g a year, detector checked yearly (from memory); a month after repair published, 24 h of running from memory.</summary>
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
    [InlineData("2025-06-18", Verdict.Pass)]
    [InlineData("2025-06-17", Verdict.Fail)]
    [InlineData("2026-06-19", Verdict.Fail)]
    public void The_detector_was_checked_within_a_year(string day, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(European($"result: none, method: electronic, sensitivity: 3 g/yr, detector checked: {day}"), Check, "detector").Verdict);

    [Theory]
    [InlineData("2026-07-18", "running for: 24 h", Verdict.Pass)]
    [InlineData("2026-07-19", "running for: 24 h", Verdict.Fail)]
    [InlineData("2026-06-20", "running for: 20 h", Verdict.Fail)]
    [InlineData("2026-06-20", "kind: direct", Verdict.Conditional)]
    public void After_a_repair_it_is_checked_again(string day, string written, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(European($"result: none, method: bubble solution, after repair: yes, {written}", day), Check, "after repair").Verdict);

    [Theory]
    [InlineData("date: 2026-06-18, result: none", "leak repair", true)]
    [InlineData("date: 2026-06-18, result: none", "opened circuit", false)]
    [InlineData("date: 2026-06-18, result: leak", "leak repair", false)]
    [InlineData("date: 2026-06-20, result: none", "leak repair", false)]
    public void A_repair_checked_on_its_own_day_is_checked_again_within_the_month(string check, string work, bool isToCome)
    {
        var job = "limits: {packs: [eu-f-gas]}\n" + JobLines.Of($"leak check: {{{check}, method: bubble solution}}", work);
        var finding = JobLines.Findings(job, Check).SingleOrDefault(f => f.Subject == "after repair");
        Assert.Equal(isToCome, finding is { Verdict: Verdict.Conditional });
        if (isToCome)
            Assert.Contains("2026-07-18", finding!.NextStep, StringComparison.Ordinal);
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

    private static string European(string written, string day = "2026-06-18", string charge = "3 kg") =>
        JobLines.Of($"limits: {{packs: [eu-f-gas]}}\ncharging: {{unit arrived: recovered and evacuated, added: {charge}}}\nleak check: {{date: {day}, {written}}}");
}
