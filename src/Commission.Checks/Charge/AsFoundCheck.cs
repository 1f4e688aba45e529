using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>What the readings were before any work.</summary>
internal sealed class AsFoundCheck : ICheck
{
    public string Id => "charge.as-found";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        var found = context.Job.AsFound;
        if (analysis.AsFound.LastOrDefault() is { } row)
            yield return Tell(context, found!, row);
        else if (context.Job.Identity.Work.Value == WorkKind.ChargeAdjustment)
            yield return context.Finding(this).NotEvaluated(ChargeMessages.AsFoundNotRead, ChargeMessages.AsFoundNotReadNext, "as found: {readings: […]}");
    }

    private Finding Tell(CheckContext context, AsFound found, ChargeRow row)
    {
        var finding = context.Finding(this, row.Time);
        var circuit = context.Get<CircuitRefrigerant>();
        if (found.Refrigerant is { } other && Fluids.RefrigerantCatalogue.Find(other.Value)?.Designation != circuit.Designation)
            return finding.Use("refrigerant found", other).Information($"The circuit was found with {other.Text}; its readings are listed and not worked out.", "the refrigerant was changed");
        var parts = new List<string>();
        foreach (var (name, number) in new[] { ("superheat", row.Superheat), ("subcooling", row.Subcooling) })
        {
            if (number.Value is not { } value)
                continue;
            finding.Use(number).Measure(value, DisplayKind.TemperatureDifference);
            parts.Add($"{name} {context.Present.Text(value, DisplayKind.TemperatureDifference)}");
        }

        if (found.ChargeRecovered is { } recovered)
        {
            finding.Use("charge recovered", recovered);
            parts.Add($"{recovered.Text} recovered");
        }

        return parts.Count == 0
            ? finding.NotEvaluated(row.Superheat.WhyNot ?? row.Subcooling.WhyNot!, "Read pressure and line temperature of a side together.")
            : finding.Information($"As found at {row.Time}: {string.Join(", ", parts)}.", "before any work");
    }
}

/// <summary>A start-up in weather that does not let the charge be judged: weighed in, and a visit in the season arranged.</summary>
internal sealed class ReturnVisitCheck : ICheck
{
    public string Id => "charge.return-visit";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Charging is not { } charging)
            yield break;
        if (charging.ReturnVisit is { } visit)
        {
            var finding = context.Finding(this).Use("return visit", visit.What).Use("outdoor at least", visit.OutdoorAtLeast).Use("by", visit.By);
            if (context.Limits.Find(LimitIds.ChargeReturnVisitOutdoor) is { } warm)
                finding.Show(context.State(warm));
            if (visit.OutdoorAtLeast is { } least && context.Limits.Find(LimitIds.ChargeValidityOutdoor)?.Lower is { } lower && least.Value.Si < lower.Si)
                finding.Remark($"At {least.Text} outdoors the charge cannot be judged by readings yet: {lower.Text} at the least.");
            yield return finding.Information(
                $"A return visit is due: {visit.What.Text}{(visit.OutdoorAtLeast is { } at ? $", when it is at least {at.Text} outdoors" : "")}{(visit.By is { } by ? $", by {by.Text}" : "")}.",
                "a condition of this record until it is done; the charge stands on its weight, judged beside");
            yield break;
        }

        if (Missing(context, analysis) is { } why)
            yield return context.Finding(this).NotEvaluated(why, "Weigh the charge in and write the return visit, or read in cooling when the weather allows it.");
    }

    // Only where readings would have shown the charge, and none could.
    private static string? Missing(CheckContext context, ChargeAnalysis analysis)
    {
        if (analysis.ByWeightOnly is not null || analysis.HasReceiver || analysis.IsRefrigeration || analysis.IsLeftSealed || analysis.Rows.IsEmpty)
            return null;
        if (analysis.Last(OperatingMode.Cooling, _ => true) is not { } row)
            return "the system was read in heating alone, and no return visit is written";
        var validity = MethodValidity.Of(context, row, analysis.HasFixedMetering ? ChargeCriterion.Superheat : ChargeCriterion.Subcooling);
        return validity.Block is { } block ? $"{block}, and no return visit is written" : null;
    }
}
