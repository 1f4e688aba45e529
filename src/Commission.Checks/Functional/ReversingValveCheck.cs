using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether the reversing valve changes over both ways.</summary>
internal sealed class ReversingValveCheck : ICheck
{
    public string Id => "functional.reversing-valve";

    public string Phase => Phases.Functional;

    public string Title => "Reversing valve";

    public CheckHelp Help { get; } = new(
        "Does the reversing valve change over from cooling to heating and back?",
        "changed over both ways with the compressor running",
        "Start-up lists of installation manuals (common practice, no source).",
        "Check the voltage at the coil and the board's setting. A valve that sticks half-way shows nearly equal temperatures at its ports; it may free itself when it is changed over at a high pressure difference, otherwise it is replaced.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("reversing valve", functional.ReversingValve)) is { } finding)
            yield return finding;
    }
}
