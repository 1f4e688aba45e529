using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether the board's fault memory was read, and what stood in it.</summary>
internal sealed class FaultCodesCheck : ICheck
{
    public string Id => "functional.fault-codes";

    public string Phase => Phases.Functional;

    public string Title => "Fault codes";

    public CheckHelp Help { get; } = new(
        "Was the board's fault memory read at the end, and what stood in it?",
        "memory read at the end of the work; no code left in it",
        "Start-up lists of installation manuals (common practice, no source).",
        "Look each code up in the maker's manual, remove its cause, clear the memory, run the system and read it again.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional?.FaultCodes is not { } codes)
            yield break;
        var finding = context.Finding(this).Use("fault codes read", codes.Read).Use("fault codes cleared", codes.Cleared);
        foreach (var code in codes.Codes)
            finding.Use("fault code", code);
        var list = string.Join(", ", codes.Codes.Select(c => c.Value));
        if (!codes.Read.Value)
            yield return finding.NotEvaluated("the fault memory was not read", "Read it at the board or the controller and write the codes.");
        else if (codes.Codes.IsEmpty)
            yield return finding.Decide(true).Say("The fault memory was read; no code stood in it.").Build();
        else if (codes.Cleared?.Value == true)
            yield return finding.Decide(true).Say($"Found and cleared: {list}.").Remark("What was cleared comes back when its cause is still there.").Build();
        else
            yield return finding.Decide(false).Say($"In the fault memory: {list}.").Next(Help.WhenItFails).Build();
    }
}
