using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Whether the unit was proved dead and locked out before covers were opened.</summary>
internal sealed class ProvedDeadCheck : ICheck
{
    public string Id => "electrical.proved-dead";

    public string Phase => Phases.Electrical;

    public string Title => "Proved dead";

    public CheckHelp Help { get; } = new(
        "Was the unit locked out and proved dead before hands went in, with a meter proved live before and after?",
        "meter proved on a live source, then dead at the unit, then live again; locked out",
        "Usual safe-isolation practice (common practice, no source); local electrical safety rules govern.",
        "Lock out, prove dead, and only then open covers or touch terminals. Let capacitors discharge.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical?.ProvedDead is not { } dead)
            yield break;
        var finding = context.Finding(this).Use("meter proved live, dead, live", dead.LiveDeadLive).Use("locked out", dead.LockedOut);
        if (dead.LiveDeadLive is null && dead.LockedOut is null)
        {
            yield return finding.NotEvaluated("nothing is written of how", "Write live-dead-live: yes, locked out: yes.");
            yield break;
        }

        finding.Decide(dead.LiveDeadLive?.Value != false && dead.LockedOut?.Value != false);
        if (dead.LiveDeadLive is null)
            finding.Reserve("it is not written that the meter was proved before and after").Next("Write both: live-dead-live, locked out.");
        if (dead.LockedOut is null)
            finding.Reserve("it is not written that the unit was locked out").Next("Write both: live-dead-live, locked out.");
        yield return finding.Passes
            ? finding.Say("The unit was proved dead before covers were opened.").Build()
            : finding.Say("The unit was not proved dead and locked out.").Next(Help.WhenItFails).Build();
    }
}
