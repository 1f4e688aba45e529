using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether a cylinder that refrigerant went into still has room for it to expand.</summary>
internal sealed class CylinderFillCheck : ICheck
{
    public string Id => "refrigerant.cylinder-fill";

    public string Phase => Phases.Refrigerant;

    public string Title => "Cylinder fill";

    public CheckHelp Help { get; } = new(
        "Is the recovery cylinder filled no more than it may be? Liquid that fills a cylinder has nowhere to expand, and the cylinder bursts.",
        "fill = (gross mass − tare) / water capacity, by mass",
        "US transport rules for recovery cylinders: 80 % (from memory). Dense refrigerants may need less: the supplier says.",
        "Do not warm or move an overfilled cylinder in the sun. Take refrigerant out into another cylinder until the fill is below the limit.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var ledger = context.Get<RefrigerantLedger>();
        var recovered = ledger.Movements.FirstOrDefault(m => m is { Name: "recovered" });
        var into = recovered is null ? null : ledger.CylinderOf(recovered);
        if (recovered is not null && into is null && context.Job.Recovery is { } recovery)
            yield return context.Finding(this, recovered.Cylinder).Use("cylinder", recovery.Cylinder).NotEvaluated("tare and water capacity of the recovery cylinder are not written", "Describe it under cylinders: {id, water capacity, tare, after}.");
        foreach (var cylinder in context.Job.Cylinders)
        {
            if (ReferenceEquals(cylinder, into) || cylinder.Contents?.Value == CylinderContents.Recovered || cylinder.After?.Value.Si > cylinder.Before?.Value.Si)
                yield return Judge(context, cylinder, ReferenceEquals(cylinder, into) ? recovered : null);
        }
    }

    private Finding Judge(CheckContext context, Cylinder cylinder, Movement? recovered)
    {
        var name = cylinder.Id.Value;
        var finding = context.Finding(this, name).Use($"{name}: water capacity", cylinder.WaterCapacity).Use($"{name}: tare", cylinder.Tare).Use($"{name}: contents", cylinder.Contents);
        if (cylinder.WaterCapacity is not { } capacity || capacity.Value.Si <= 0)
            return finding.NotEvaluated("the water capacity is not written", "Write the water capacity (WC) stamped on the cylinder.");
        if (Holds(context, finding, cylinder, recovered) is not { } content)
            return finding.NotEvaluated("what the cylinder holds cannot be known", "Write its tare and its gross mass after.");
        var limit = context.Limits.Require(LimitIds.RefrigerantCylinderFill);
        var fill = content / capacity.Value.Si;
        var present = context.Present;
        finding.Step("f", "fill", "refrigerant / water capacity", $"{present.Text(content.Value, DisplayKind.Mass)} / {capacity.Text}", present.Text(fill, DisplayKind.Percentage), limit.Source)
            .Judge(fill, DisplayKind.Percentage, context.State(limit));
        return finding.ConcludeOrDanger(
            $"{name} holds {present.Text(content.Value, DisplayKind.Mass)}, {present.Text(fill.Value, DisplayKind.Percentage)} of its water capacity.",
            $"{name} holds {present.Text(content.Value, DisplayKind.Mass)}, {present.Text(fill.Value, DisplayKind.Percentage)} of its water capacity.",
            Help.WhenItFails);
    }

    private static Uncertain? Holds(CheckContext context, FindingBuilder finding, Cylinder cylinder, Movement? recovered)
    {
        var after = cylinder.After ?? (recovered is null ? null : context.Job.Recovery?.Scale?.After);
        if (cylinder.Tare is { } tare && after is not null)
        {
            var gross = context.Readings.Plain($"{cylinder.Id.Value}: after", ReadingName.Charge, after, DisplayKind.Mass);
            finding.Use(gross);
            return gross.Value - tare.Value.Si;
        }

        // An empty cylinder holds what went into it.
        if (cylinder.Contents?.Value != CylinderContents.Empty || recovered?.Mass is not { } mass)
            return null;
        mass.UseIn(finding);
        return mass.Value;
    }
}
