using Commission.Checks.Findings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>What was inside a test or a vacuum, judged from the section and the valves that this kind of system has.</summary>
internal static class SectionStatement
{
    public static Finding Make(CheckContext context, FindingBuilder finding, Given<CircuitSection>? section, Given<string>? name, Valves? valves, string done)
    {
        finding.Use("section", section).Use("section's name", name)
            .Use("service valves", valves?.ServiceValves).Use("expansion valve", valves?.EEV).Use("solenoids", valves?.Solenoids)
            .Use("reversing valve", valves?.ReversingValve).Use("check valves", valves?.CheckValves).Use("isolation valves", valves?.IsolationValves);
        if (section is null)
            return finding.NotEvaluated("the section is not written", "Write section: line set and indoor, whole system, low side or high side.");
        var shut = Shut(valves).ToList();
        if (section.Value == CircuitSection.WholeSystem && shut.Count > 0)
        {
            return finding.Decide(false).Say($"The whole system is said to be {done}, but {string.Join(" and ", shut)} stood closed.")
                .Next("Open them, or name the section that was really inside and do the rest as its own section.").Build();
        }

        var unknown = Unknown(context.Job.Equipment, section.Value, valves).ToList();
        finding.Decide(true);
        if (unknown.Count > 0)
            finding.Reserve($"the position of {string.Join(" and ", unknown)} is not written").Next("Write how the valves stood.");
        return finding.Say($"{Capital(section.Text)}{(name is null ? "" : $", {name.Value}")} was {done}.").Build();
    }

    private static IEnumerable<string> Shut(Valves? valves)
    {
        if (valves?.EEV?.Value == ValveState.Closed)
            yield return "the expansion valve";
        if (valves?.Solenoids?.Value is ValveState.Closed or ValveState.NotEnergised)
            yield return "the solenoid valves";
        if (valves?.ServiceValves?.Value == ValveState.Closed)
            yield return "the service valves";
        if (valves?.IsolationValves?.Value == ValveState.Closed)
            yield return "isolation valves";
    }

    private static IEnumerable<string> Unknown(Equipment equipment, CircuitSection section, Valves? valves)
    {
        var several = equipment.System.Value is SystemKind.MultiSplit or SystemKind.VRF or SystemKind.Refrigeration;
        if ((equipment.Metering?.Kind.Value == MeteringKind.EEV || several) && valves?.EEV is null && section is not (CircuitSection.LineSet or CircuitSection.Indoor))
            yield return "the expansion valve";
        if (equipment.System.Value == SystemKind.Refrigeration && valves?.Solenoids is null)
            yield return "the solenoid valves";
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
