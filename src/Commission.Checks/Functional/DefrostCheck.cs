using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether a defrost starts and ends.</summary>
internal sealed class DefrostCheck : ICheck
{
    public string Id => "functional.defrost";

    public string Phase => Phases.Functional;

    public string Title => "Defrost";

    public CheckHelp Help { get; } = new(
        "Does a defrost start, and does it end by itself?",
        "started by the board's test, ended by the coil sensor and not by the time limit alone",
        "Start-up lists of installation manuals (common practice, no source).",
        "Check the coil sensor and its place, the outdoor fan relay and the board's setting. A defrost that ends only by time leaves ice on the coil.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var begun = context.Finding(this).Use("defrosts per day", functional.DefrostsPerDay).Use("defrost terminates at", functional.DefrostTerminatesAt);
        if (functional.DefrostsPerDay is { } count)
            begun.Remark($"Defrosts a day: {count.Text}.");
        if (functional.DefrostTerminatesAt is { } end)
            begun.Remark($"It is set to end at {end.Text}.");
        if (Trials.Judge(begun, functional.Witnessed, Help.WhenItFails, new Trial("defrost starts", functional.DefrostStarts, true), new Trial("defrost ends", functional.DefrostEnds, true)) is { } finding)
            yield return finding;
    }
}
