using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using QuantityValue = Commission.Messages.QuantityValue;

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
            return finding.Use(OperatingStateMessages.ReadingFound, other).Information(OperatingStateMessages.FoundOther(new(other.Text)), OperatingStateMessages.FoundOtherWhy);
        var parts = new List<MessageValue>();
        foreach (var (number, said) in new (RowNumber, Func<QuantityValue, Message>)[] { (row.Superheat, OperatingStateMessages.FoundSuperheat), (row.Subcooling, OperatingStateMessages.FoundSubcooling) })
        {
            if (number.Value is not { } value)
                continue;
            finding.Use(number).Measure(value, DisplayKind.TemperatureDifference);
            parts.Add(said(context.Present.InMessage(value, DisplayKind.TemperatureDifference)));
        }

        if (found.ChargeRecovered is { } recovered)
        {
            finding.Use(ReadingsMessages.ChargeRecovered, recovered);
            parts.Add(OperatingStateMessages.FoundRecovered(new(recovered.Text)));
        }

        return parts.Count == 0
            ? finding.NotEvaluated(row.Superheat.WhyNot ?? row.Subcooling.WhyNot!, OperatingStateMessages.FoundNothingNext)
            : finding.Information(OperatingStateMessages.Found(new(row.Time), new([.. parts], ListJoin.Comma)), OperatingStateMessages.FoundWhy);
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
            var finding = context.Finding(this).Use(OperatingStateMessages.ReadingVisit, visit.What).Use(OperatingStateMessages.ReadingVisitOutdoor, visit.OutdoorAtLeast).Use(OperatingStateMessages.ReadingVisitBy, visit.By);
            if (context.Limits.Find(LimitIds.ChargeReturnVisitOutdoor) is { } warm)
                finding.Show(context.State(warm));
            if (visit.OutdoorAtLeast is { } least && context.Limits.Find(LimitIds.ChargeValidityOutdoor)?.Lower is { } lower && least.Value.Si < lower.Si)
                finding.Remark(OperatingStateMessages.VisitTooCold(context.Present.InMessage(least.Value.Si, DisplayKind.Temperature), context.Present.InMessage(lower.Si, DisplayKind.Temperature)));
            var terms = new List<MessageValue> { new TextValue(visit.What.Text) };
            if (visit.OutdoorAtLeast is { } at)
                terms.Add(OperatingStateMessages.VisitOutdoor(new(at.Text)));
            if (visit.By is { } by)
                terms.Add(OperatingStateMessages.VisitBy(new(by.Text)));
            yield return finding.Information(OperatingStateMessages.VisitDue(new([.. terms], ListJoin.Comma)), OperatingStateMessages.VisitWhy);
            yield break;
        }

        if (Missing(context, analysis) is { } why)
            yield return context.Finding(this).NotEvaluated(why, OperatingStateMessages.VisitNoneNext);
    }

    // Only where readings would have shown the charge, and none could.
    private static Message? Missing(CheckContext context, ChargeAnalysis analysis)
    {
        if (analysis.ByWeightOnly is not null || analysis.HasReceiver || analysis.IsRefrigeration || analysis.IsLeftSealed || analysis.Rows.IsEmpty)
            return null;
        if (analysis.Last(OperatingMode.Cooling, _ => true) is not { } row)
            return OperatingStateMessages.VisitNoneHeating;
        var validity = MethodValidity.Of(context, row, analysis.HasFixedMetering ? ChargeCriterion.Superheat : ChargeCriterion.Subcooling);
        return validity.Block is { } block ? OperatingStateMessages.VisitNone(block) : null;
    }
}
