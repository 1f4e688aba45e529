using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether the system answers the thermostat.</summary>
internal sealed class ThermostatCallsCheck : ICheck
{
    public string Id => "functional.thermostat-calls";

    public string Phase => Phases.Functional;

    public string Title => "Thermostat calls";

    public CheckHelp Help { get; } = new(
        "Does the system do what the thermostat asks: cool, heat, run the fan alone? Is the thermostat set up for this kind of system?",
        "each call tried works; a heat pump is tried in cooling and in heating",
        "Start-up lists of installation manuals (common practice, no source).",
        "Check the control wiring terminal by terminal against the maker's diagram, the setting of the reversing-valve terminal and the thermostat's kind of system; then call again.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var isHeatPump = context.Job.Equipment.System.Value == SystemKind.HeatPump;
        var finding = Trials.Judge(
            context.Finding(this).Use("system", context.Job.Equipment.System),
            functional.Witnessed,
            Help.WhenItFails,
            new Trial("cooling call", functional.CoolingCall, isHeatPump),
            new Trial("heating call", functional.HeatingCall, isHeatPump),
            new Trial("fan call", functional.FanCall),
            new Trial("thermostat set up", functional.ThermostatSetUp));
        if (finding is not null)
            yield return finding;
    }
}
