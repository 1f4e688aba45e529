using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether the stages of the auxiliary heat work, and its lockout.</summary>
internal sealed class AuxiliaryHeatCheck : ICheck
{
    public string Id => "functional.auxiliary-heat";

    public string Phase => Phases.Functional;

    public string Title => "Auxiliary heat";

    public CheckHelp Help { get; } = new(
        "Does each stage of the auxiliary heat come on when it is called, and is it locked out above its setting?",
        "each stage called and felt or measured; locked out above the setting",
        "Start-up lists of installation manuals (common practice, no source).",
        "Disconnect, prove dead, then check elements, sequencers, limit switches and the outdoor thermostat. Heating elements are work for a qualified person.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("auxiliary heat", functional.AuxiliaryHeat, true), new Trial("auxiliary heat lockout", functional.AuxiliaryHeatLockout)) is { } finding)
            yield return finding;
    }
}
