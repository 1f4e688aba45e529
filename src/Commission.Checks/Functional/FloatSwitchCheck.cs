using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether the float switch stops the cooling.</summary>
internal sealed class FloatSwitchCheck : ICheck
{
    public string Id => "functional.float-switch";

    public string Phase => Phases.Functional;

    public string Title => "Float switch";

    public CheckHelp Help { get; } = new(
        "Does the float switch trip when the pan fills, and does cooling stop?",
        "switch lifted or pan filled: cooling stops",
        "Model mechanical codes ask for it where an overflow would do damage (from memory).",
        "Check that the switch breaks the circuit that calls for cooling, and that it is level and free. Do not leave a unit above a ceiling without it.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("float switch", functional.FloatSwitch)) is { } finding)
            yield return finding;
    }
}
