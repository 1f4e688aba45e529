using Commission.Fluids.Water;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>Whether it was warm enough for water to leave: ice gives off so little vapour that a vacuum does not see it.</summary>
internal sealed class EvacuationConditionsCheck : ICheck
{
    public string Id => "evacuation.conditions";

    public string Phase => Phases.Evacuation;

    public string Title => "Temperature during evacuation";

    public CheckHelp Help { get; } = new(
        "Was the circuit warm enough while it was pumped down? Below freezing water is ice, and ice gives off too little vapour to be seen or pumped.",
        "temperature around the circuit, and of its coldest part where written ≥ limit",
        "35 °F: US guide specification 15182, evacuation (published). Vapour pressure of ice: IAPWS R14-08 (published).",
        "Warm the cold parts with heat lamps or by running indoor heat, never with a flame; break with warm dry nitrogen; pull down and hold again when all of it is above freezing.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var finding = context.Finding(this).Use("ambient", evacuation.Ambient).Use("coldest part", evacuation.ColdestPart).Use("coldest part at the end", evacuation.ColdestPartAtEnd);
        if (context.Limits.Find("evacuation.ambient") is not { Lower: not null } limit)
        {
            yield return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
            yield break;
        }

        var statement = context.State(limit);
        var coldest = new[] { ("around the circuit", evacuation.Ambient), ("at the coldest part", evacuation.ColdestPart), ("at the coldest part", evacuation.ColdestPartAtEnd) }
            .Where(t => t.Item2 is not null).OrderBy(t => t.Item2!.Value.Si).FirstOrDefault();
        if (coldest.Item2 is not { } given)
        {
            yield return finding.Show(statement).NotEvaluated("no temperature of the circuit is written", "Write ambient: 72 °F, and coldest part: 66 °F.");
            yield break;
        }

        finding.Judge(Reading(context, given), DisplayKind.Temperature, statement);
        if (WaterVapor.SaturationPressure(given.Value.Si) is { Ok: true, Value: var vapour })
        {
            finding.Step(
                "p_s", given.Value.Si < WaterSaturation.TripleTemperature ? "vapour pressure of ice at that temperature" : "vapour pressure of water at that temperature", "p_sat(T)", given.Text,
                VacuumText.Level(context.Present, vapour), given.Value.Si < WaterSaturation.TripleTemperature ? "IAPWS R14-08 (published)" : "IAPWS-95, Wagner and Pruß 2002");
        }

        yield return finding.Passes
            ? finding.Say($"{given.Text} {coldest.Item1}: water could leave.").Build()
            : finding.Say($"{given.Text} {coldest.Item1}: water may have stayed as ice.").Next(Help.WhenItFails).Build();
    }

    private static Uncertain Reading(CheckContext context, Given<Temperature> given)
    {
        if (given.Stated is { } stated)
        {
            return context.Scope.Reading(given.Value.Si, 1.0 * context.Causes.Enter(
                RootCause.FromExpanded("temperature during evacuation", "written with the reading", stated.HalfWidthSi, stated.CoverageFactor), DisplayKind.TemperatureDifference));
        }

        return given.Step is { } step and > 0
            ? context.Scope.Reading(given.Value.Si, 1.0 * context.Causes.Enter(RootCause.FromResolution("temperature during evacuation: resolution", "smallest step of the indication", step), DisplayKind.TemperatureDifference))
            : Uncertain.Exact(given.Value.Si);
    }
}
