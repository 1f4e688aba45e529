using Commission.Cli.Running;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Cli.Tests.Running;

/// <summary>What is printed at the tailgate. Copied, constant and impossible readings are told there, too: the project's own rule.</summary>
public sealed class OutcomeReportTests
{
    [Theory]
    [InlineData("evidence", Verdict.Information, "Look at both lines.", true, true)]
    [InlineData("evidence", Verdict.Information, "Look at both lines.", false, false)]
    [InlineData("air", Verdict.Information, "Look at both lines.", true, true)]
    [InlineData("evidence", Verdict.Pass, "Look at both lines.", false, false)]
    [InlineData("charge", Verdict.Fail, "Look at both lines.", false, true)]
    public void What_somebody_has_to_look_at_is_printed(string phase, Verdict verdict, string? next, bool toLookAt, bool printed)
    {
        var text = Printed(Found(phase, verdict) with { NextStep = next, IsToLookAt = toLookAt });
        Assert.Equal(printed, text.Contains("Two rows agree in every digit.", StringComparison.Ordinal));
        Assert.Equal(printed && next is not null, text.Contains("Next: Look at both lines.", StringComparison.Ordinal));
    }

    [Fact]
    public void What_nobody_asked_for_is_counted_and_not_told()
    {
        var text = Printed(Found("charge", Verdict.NotEvaluated) with { Reason = "a reading cannot be", NextStep = "Read again." });
        Assert.DoesNotContain("a reading cannot be", text, StringComparison.Ordinal);
        Assert.Contains("Not asked for here, and not judged: Repeated readings.", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rig check: {pump alone: 45 micron}", true)]
    [InlineData(null, false)]
    public void What_is_missing_is_told_with_what_to_do_and_how_it_is_written(string? written, bool printed)
    {
        var text = Printed(Found("evacuation", Verdict.NotEvaluated), record => record with { Missing = [new MissingPart(["evacuation.repeated"], "long", "Rig: not checked.") { NextStep = "Shut the rig off.", InFile = written }] });
        Assert.Contains("Rig: not checked.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("long", text, StringComparison.Ordinal);
        Assert.Contains("Next: Shut the rig off.", text, StringComparison.Ordinal);
        Assert.Equal(printed, text.Contains("In the file: rig check:", StringComparison.Ordinal));
        Assert.DoesNotContain("Not asked for", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_step_stands_under_the_outcome_and_no_step_twice()
    {
        var text = Printed(Found("charge", Verdict.Fail) with { NextStep = "Find the leak." }, record => record with { Outcome = Outcome.NotAccepted, FirstStep = new PunchItem("Find the leak.") });
        Assert.Equal("  Do first: Find the leak.", text.Split(Environment.NewLine)[1]);
        Assert.Single(text.Split("Find the leak."), part => part.StartsWith(Environment.NewLine, StringComparison.Ordinal));
    }

    [Fact]
    public void A_condition_that_is_the_first_step_says_it_there_and_not_again()
    {
        var text = Printed(
            Found("evacuation", Verdict.Conditional) with { Number = 1, NextStep = "Use a better gauge." },
            record => record with { Outcome = Outcome.AcceptedWithConditions, FirstStep = new PunchItem("Repeated readings: Use a better gauge.", 1) });
        Assert.Equal(2, text.Split("Use a better gauge.").Length);
    }

    // What fails is told below with its reason, what passes beside what is asked.
    [Theory]
    [InlineData(Verdict.Pass, true)]
    [InlineData(Verdict.PassWithinUncertainty, true)]
    [InlineData(Verdict.Fail, false)]
    [InlineData(Verdict.Conditional, false)]
    public void A_key_figure_that_holds_stands_under_the_outcome(Verdict verdict, bool printed)
    {
        var found = Found("evacuation", verdict) with
        {
            Number = 1,
            Measured = new MeasuredQuantity(new DisplayQuantity(53.3, "pressure", "micron", 400, 0, "400 micron"), 1, 2, 2, null, "400 ± 2 micron", "2 micron"),
            Limits = [new LimitStatement(LimitKind.AtMost, "at most 500 micron", null, 66.7, null, "pack", "house-pack", "p. 1", "job", DecisionRule.Simple)],
        };
        var text = Printed(found, record => record with { KeyFigures = [1] });
        Assert.Equal(printed, text.Contains("  repeated readings: 400 ± 2 micron (at most 500 micron, house-pack)", StringComparison.Ordinal));
    }

    private static Finding Found(string phase, Verdict verdict) =>
        new() { Check = $"{phase}.repeated", Phase = phase, Title = "Repeated readings", Verdict = verdict, Statement = "Two rows agree in every digit." };

    private static string Printed(Finding finding, Func<CommissioningRecord, CommissioningRecord>? change = null)
    {
        using var output = new StringWriter();
        var record = new CommissioningRecord { Header = new JobHeader { Id = "T-1", Date = "2026-06-18", Site = "Tarn Lane", Work = "seasonal check" }, Outcome = Outcome.Accepted, Findings = [finding], Program = "test", AsOf = "2026-06-18" };
        OutcomeReport.Write(change is null ? record : change(record), output);
        return output.ToString();
    }
}
