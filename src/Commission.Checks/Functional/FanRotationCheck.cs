using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether the fans turn the right way.</summary>
internal sealed class FanRotationCheck : ICheck
{
    public string Id => "functional.fan-rotation";

    public string Phase => Phases.Functional;

    public string Title => "Fan rotation";

    public CheckHelp Help { get; } = new(
        "Do the fans turn the right way? A fan that turns backwards moves air, only too little of it.",
        "seen to turn as the arrow or the blade asks",
        "Start-up lists of installation manuals (common practice, no source).",
        "Disconnect and prove dead; on three phases exchange two conductors at the fan, on one phase follow the motor's diagram.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("fan rotation", functional.FanRotation)) is { } finding)
            yield return finding;
    }
}
