using System.Globalization;
using Commission.Checks.Readings;
using Commission.Checks.Refrigerants;
using Commission.Checks.Tables;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Safety;

/// <summary>How much of a refrigerant that does not burn would be in the room's air. Information: the limit known here is from memory and unconfirmed.</summary>
internal sealed class ConcentrationLimitCheck : ICheck
{
    public string Id => "safety.concentration-limit";

    public string Phase => Phases.Safety;

    public string Title => "Concentration in the room";

    public CheckHelp Help { get; } = new(
        "If the whole charge leaked into the smallest occupied room, how much would be in its air, and what does the standard allow?",
        $"concentration = charge / volume; {ConcentrationCharge.ConcentrationFormula}, F_occ = 0.5 where people cannot leave by themselves",
        "ASHRAE 15 section 7 with ASHRAE 34, both from memory. The limits themselves are unconfirmed, so this is information and never a pass.",
        "Look the refrigerant's concentration limit up in the standard. Above it: ventilation, detection, a larger space or a machinery room, as the local code asks.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        if (circuit.Info?.SafetyGroup?.Value is not ("A1" or "B1") || RoomCase.All(context) is not { IsEmpty: false } rooms)
            yield break;
        var charge = context.Get<CircuitCharge>();
        var finding = context.Finding(this).Use("refrigerant", context.Job.Equipment.Refrigerant);
        foreach (var use in rooms.SelectMany(r => r.Uses))
            finding.Use(use);
        if (rooms.FirstOrDefault(r => r.Volume is null) is { } unknown)
        {
            yield return finding.NotEvaluated($"the volume of {unknown.Name} is not written", "Write its volume, or its ceiling height beside its area.");
            yield break;
        }

        if (charge.Total is not { } total)
        {
            yield return finding.NotEvaluated($"the charge cannot be known: {charge.WhyNot}", "Write how the unit arrived, its factory charge and what was weighed in.");
            yield break;
        }

        total.UseIn(finding);
        var smallest = rooms.MinBy(r => r.Volume!.Value)!;
        var concentration = total.Value / smallest.Volume!;
        finding.Measure(concentration, DisplayKind.Density).Step(
            "c", "concentration should all of it leak", "charge / volume",
            string.Create(CultureInfo.InvariantCulture, $"{context.Present.Text(total.Value.Value, DisplayKind.Mass)} / ({smallest.VolumeText})"), Grams(concentration.Value), "definition");
        var said = $"Should all of it leak into {smallest.Name}, {Grams(concentration.Value)} of {circuit.Designation} would be in the air";
        if (context.Limits.Find("safety.concentration") is { } rule)
            finding.Show(context.State(rule));
        if (circuit.Info.ConcentrationLimit is not { } limit)
        {
            yield return finding.Information($"{said}; its concentration limit is not known here.", "look the limit up in the standard");
            yield break;
        }

        var allowed = limit.Value * ConcentrationCharge.OccupancyFactor(smallest.IsInstitutional);
        finding.Step("RCL", "concentration limit", "RCL × F_occ", string.Create(CultureInfo.InvariantCulture, $"{Grams(limit.Value)} × {ConcentrationCharge.OccupancyFactor(smallest.IsInstitutional):0.0}"), Grams(allowed), $"{limit.Source} ({limit.Mark})");
        if (concentration.Value > allowed)
            finding.Next(Help.WhenItFails);
        yield return finding.Information(
            $"{said}; the limit remembered here is {Grams(allowed)}, {(concentration.Value > allowed ? "less than that" : "more than that")}.",
            "the concentration limit is from memory and unconfirmed: the standard decides");
    }

    private static string Grams(double kilogramsPerCubicMetre) => string.Create(CultureInfo.InvariantCulture, $"{1000 * kilogramsPerCubicMetre:0} g/m³");
}
