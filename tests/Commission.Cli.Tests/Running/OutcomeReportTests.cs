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
        Assert.Contains(printed ? "1 listed above" : "0 listed above", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void What_was_taken_back_says_what_to_do_although_nobody_required_it(bool takenBack, bool printed)
    {
        var text = Printed(Found("charge", Verdict.NotEvaluated) with { Reason = "a reading cannot be", NextStep = "Read again.", IsTakenBack = takenBack });
        Assert.Contains("a reading cannot be", text, StringComparison.Ordinal);
        Assert.Equal(printed, text.Contains("Next: Read again.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("rig check: {pump alone: 45 micron}", true)]
    [InlineData(null, false)]
    public void How_it_is_written_in_the_file_stands_on_a_line_of_its_own(string? written, bool printed)
    {
        var text = Printed(Found("evacuation", Verdict.NotEvaluated) with { Reason = "not checked", NextStep = "Blank the rig off.", InFile = written, Required = true });
        Assert.Contains("Next: Blank the rig off.", text, StringComparison.Ordinal);
        Assert.Equal(printed, text.Contains("In the file: rig check:", StringComparison.Ordinal));
    }

    private static Finding Found(string phase, Verdict verdict) =>
        new() { Check = $"{phase}.repeated", Phase = phase, Title = "Repeated readings", Verdict = verdict, Statement = "Two rows agree in every digit." };

    private static string Printed(Finding finding)
    {
        using var output = new StringWriter();
        OutcomeReport.Write(
            new CommissioningRecord { Header = new JobHeader { Id = "T-1", Date = "2026-06-18", Site = "Tarn Lane", Work = "seasonal check" }, Outcome = Outcome.Accepted, Findings = [finding], Program = "test", AsOf = "2026-06-18" }, output);
        return output.ToString();
    }
}
