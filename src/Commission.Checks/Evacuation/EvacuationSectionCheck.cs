using Commission.Checks.PressureTest;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>What was inside the vacuum: a closed valve leaves a part of the circuit wet and full of air.</summary>
internal sealed class EvacuationSectionCheck : ICheck
{
    public string Id => "evacuation.section";

    public string Phase => Phases.Evacuation;

    public string Title => "Section under vacuum";

    public CheckHelp Help { get; } = new(
        "Which part of the circuit was under vacuum, and how did its valves stand? A closed expansion valve, solenoid, check valve or service valve leaves a part that was never evacuated.",
        "section and valve positions as written, against what this kind of system can shut off",
        "Common practice, no source.",
        "Drive the expansion valve open, hold solenoids open with a magnet, open the service valves of the part, and pull down again from both sides; or name the section and do the rest as its own.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        yield return SectionStatement.Make(context, context.Finding(this), evacuation.Section, evacuation.SectionName, evacuation.Valves, "evacuated");
    }
}
