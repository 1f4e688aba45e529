using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Checks.Tests.Limits;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>What is missing is told as a foreman tells it (common practice, no source): one cause once, in the order of the work, and nothing of what comes after a failed step.</summary>
public sealed class MissingWorkTests
{

    [Fact]
    public void What_one_step_owes_is_told_once()
    {
        var record = JobLines.Record(JobLines.Of(""));
        var tightness = Assert.Single(record.Missing, m => m.Checks.Contains("pressure-test.hold"));
        Assert.Superset(new HashSet<string> { "pressure-test.gas", "pressure-test.level", "pressure-test.hold", "pressure-test.joint-leak-check" }, tightness.Checks.ToHashSet());
        Assert.Contains("test gas, test pressure, nitrogen hold and joint leak check: not recorded", tightness.Brief, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(record.Missing, m => m != tightness && m.Checks.Any(c => c.StartsWith("pressure-test.", StringComparison.Ordinal)));
        Assert.Single(record.Missing, m => m.Checks.Contains("evacuation.hold") && m.Checks.Contains("evacuation.level"));
        Assert.DoesNotContain(record.Reasons, r => r.Contains("not recorded", StringComparison.Ordinal));
    }

    [Fact]
    public void What_comes_first_in_the_work_stands_first_and_is_the_first_step()
    {
        var record = JobLines.Record(JobLines.Of(""));
        var steps = record.Missing.Select(m => m.Checks[0]).ToList();
        Assert.True(steps.FindIndex(c => c.StartsWith("pressure-test.", StringComparison.Ordinal)) < steps.FindIndex(c => c.StartsWith("evacuation.", StringComparison.Ordinal)));
        Assert.True(steps.FindIndex(c => c.StartsWith("evacuation.", StringComparison.Ordinal)) < steps.FindIndex(c => c.StartsWith("charge.", StringComparison.Ordinal)));
        Assert.True(steps.IndexOf("evidence.signature") > steps.FindIndex(c => c.StartsWith("refrigerant.", StringComparison.Ordinal)));
        Assert.Equal(record.Missing[0].NextStep, record.FirstStep?.Text);
        Assert.NotNull(record.FirstStep);
    }

    [Fact]
    public void Checks_that_wait_for_the_same_thing_wait_in_one_line()
    {
        // A reading seven minutes after the start says nothing of superheat, subcooling or split alike.
        var record = JobLines.Record(JobLines.Of("""
            limits: {subcooling: {target: 10 °F, tolerance: 3 °F, from: plate}}
            charging: {compressor started: "14:05", running: full, readings: [{at: "14:12", vapor pressure: 131.0, liquid pressure: 361.0, vapor line: 58.0, liquid line: 99.0, outdoor dry bulb: 88.0, return dry bulb: 75.0, return wet bulb: 62.5, supply dry bulb: 56.0}]}
            """, work: "charge adjustment"));
        var reasons = record.Findings.Where(f => f.Verdict == Verdict.NotEvaluated && f.Required).GroupBy(f => f.Reason).Where(g => g.Count() > 1).ToList();
        Assert.All(record.Missing.GroupBy(m => m.Brief), group => Assert.Single(group));
        Assert.All(reasons, group => Assert.Single(record.Missing, m => m.Checks.Contains(group.First().Check)));
    }

    [Fact]
    public void A_visit_that_stopped_at_a_failed_hold_owes_nothing_of_what_comes_after()
    {
        var failed = JobLines.Record(JobLines.Of(Evacuated(1800)));
        var later = Assert.Single(failed.Missing, m => m.Checks.Contains("refrigerant.label"));
        Assert.Contains("charge.by-weight", later.Checks);
        Assert.Null(later.NextStep);
        Assert.Contains("stopped at the failed step, vacuum hold", later.Sentence, StringComparison.Ordinal);
        Assert.Contains(failed.Missing, m => m.Checks.Contains("pressure-test.hold"));

        // The same hold that passed stops nothing: the charge is owed with what to do about it.
        var passed = JobLines.Record(JobLines.Of(Evacuated(420)));
        Assert.DoesNotContain(passed.Missing, m => m.Sentence.Contains("stopped", StringComparison.Ordinal));

        // A crew that charges all the same owes everything.
        var charged = JobLines.Record(JobLines.Of(Evacuated(1800) + "\ncharging: {unit arrived: charged}"));
        Assert.DoesNotContain(charged.Missing, m => m.Sentence.Contains("stopped", StringComparison.Ordinal));
    }

    [Fact]
    public void A_danger_comes_before_everything_and_the_earlier_failure_before_the_later()
    {
        var danger = Found("electrical.ground", Phases.Electrical, "Switch it off.") with { IsDanger = true };
        var hold = Found("evacuation.hold", Phases.Evacuation, "Find the leak.");
        var superheat = Found("charge.superheat", Phases.Charge, "See the diagnosis.");
        var diagnosis = Found(Diagnosis.Check, Phases.Charge, "from the finding");
        var said = new Diagnosis { At = "11:00", Sentence = "Low charge.", NextStep = "Search the leak." };
        var tightness = new MissingPart(["pressure-test.hold"], "", "") { NextStep = "Test it." };
        Assert.Equal("Switch it off.", OutcomeMaker.FirstStep(LimitWords.Us, [superheat, hold, danger], [tightness], null)?.Text);
        Assert.Equal("Test it.", OutcomeMaker.FirstStep(LimitWords.Us, [superheat, hold], [tightness], null)?.Text);
        Assert.Equal("Find the leak.", OutcomeMaker.FirstStep(LimitWords.Us, [superheat, hold], [], null)?.Text);
        Assert.Equal("Search the leak.", OutcomeMaker.FirstStep(LimitWords.Us, [superheat, diagnosis], [], said)?.Text);
        Assert.Null(OutcomeMaker.FirstStep(LimitWords.Us, [Found("evacuation.hold", Phases.Evacuation, "x") with { Verdict = Verdict.Pass }], [], null));
    }

    private static string Evacuated(int end) =>
        $"evacuation: {{started: \"10:00\", gauge: \"at the system, beyond the isolation valve\", section: line set and indoor, levels: [{{at: \"10:40\", pressure: 350 micron, isolated: yes}}, {{at: \"10:50\", pressure: {end} micron}}]}}";

    private static Finding Found(string check, string phase, string next) =>
        new() { Check = check, Phase = phase, Title = check, Verdict = Verdict.Fail, Statement = "s", NextStep = next };
}
