using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>The charge by weight: what the scale shows against what the maker's figures ask for.</summary>
internal sealed class ByWeightCheck : ICheck
{
    public string Id => "charge.by-weight";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Charging is not { } charging || context.Job.Identity.Work.Value == WorkKind.Decommissioning)
            yield break;
        var weighed = context.Get<WeighedCharge>();
        var opensCircuit = context.Job.Identity.Work.Value is not (WorkKind.ChargeAdjustment or WorkKind.SeasonalCheck);
        if (weighed.Put is null && charging.UnitArrived is null && charging.LineAdjustment is null && !opensCircuit)
            yield break;
        var finding = context.Finding(this).Use(ReadingsMessages.UnitArrived, charging.UnitArrived);
        weighed.Put?.UseIn(finding);
        if (weighed.Put is { } put)
            finding.Measure(put.Value, DisplayKind.Mass);
        yield return Unweighable(context, finding, weighed) ?? charging.UnitArrived?.Value switch
        {
            null when !opensCircuit && weighed.Put is { } change => finding.Information(
                WeightMessages.WentIn(context.Present.InMessage(change.Value, DisplayKind.Mass)), WeightMessages.BeforeNotKnown),
            null => finding.NotEvaluated(CircuitMessages.ArrivalNotWritten, WeightMessages.HowItArrivedNext, "charging: {unit arrived: charged}"),
            ArrivalCharge.Unknown => finding.NotEvaluated(CircuitMessages.ArrivalUnknown, WeightMessages.ArrivalUnknownNext),
            _ => Judge(context, finding, weighed),
        };
    }

    // Where the mass cannot be judged whatever was asked for: nobody knows on which scale it was read, or nothing asks for a mass of this refrigerant.
    private static Finding? Unweighable(CheckContext context, FindingBuilder finding, WeighedCharge weighed)
    {
        if (weighed.Put is not { } put)
            return null;
        var present = context.Present;
        if (context.Get<InstrumentKit>().Rivals(ReadingName.Charge, context.Job.Charging!.With) is { IsEmpty: false } scales && put.Readings.Any(r => r.Instrument == scales[0].Id))
        {
            foreach (var scale in scales)
                finding.Use(WeightMessages.AccuracyOfScale(new(scale.Id)), scale.Described.Accuracy);
            return finding.NotEvaluated(WeightMessages.ByWeightWhichScale(new ListValue([.. scales.Select(s => new TextValue(s.Id))])), WeightMessages.ByWeightWhichScaleNext, "charging: {with: scale}");
        }

        var plate = context.Get<PlateRefrigerant>();
        if (!plate.IsAnother)
            return null;
        foreach (var use in plate.Uses)
            finding.Use(use);
        finding.Use(ReadingsMessages.FactoryCharge, plate.Guide);
        var (mass, gas) = (present.InMessage(put.Value.Value, DisplayKind.Mass), new NameValue(context.Get<CircuitRefrigerant>().Designation));
        return finding.Information(
            plate.Guide is { } guide
                ? WeightMessages.ByWeightGuide(mass, gas, present.InMessage(guide.Value.Si, DisplayKind.Mass), new NameValue(plate.Designation!), present.InMessage(put.Value.Value / guide.Value.Si, DisplayKind.Percentage))
                : WeightMessages.ByWeightChanged(mass, gas),
            WeightMessages.ByWeightGuideWhy);
    }

    private static Finding Judge(CheckContext context, FindingBuilder finding, WeighedCharge weighed)
    {
        var required = weighed.Required;
        if (required.Adjustment is not { } adjustment)
            return finding.NotEvaluated(required.WhyNot!, required.Todo!);
        adjustment.UseIn(finding);
        var present = context.Present;
        var factory = context.Get<PlateRefrigerant>().FactoryCharge;
        finding.Use(ReadingsMessages.FactoryCharge, factory);
        var target = adjustment.Value;
        if (weighed.SawWholeCharge)
        {
            if (factory is null)
                return finding.NotEvaluated(WeightMessages.FactoryChargeMissing, WeightMessages.FactoryChargeMissingNext);
            target += factory.Value.Si;
            finding.Step("m_asked", WeightMessages.ChargeAsked, WeightMessages.ChargeAskedFormula, $"{factory.Text} + {present.Text(adjustment.Value.Value, DisplayKind.Mass)}", present.Text(target, DisplayKind.Mass), CircuitMessages.Definition);
        }

        var whole = (factory?.Value.Si ?? 0) + adjustment.Value.Value;
        if (Tolerance(context, whole) is not var (half, tolerance))
            return finding.NotEvaluated(WeightMessages.NoTolerance, CommonMessages.NameAPackNext);
        var limit = new LimitStatement(
            LimitKind.Target, present.Text(target.Value, half, DisplayKind.Mass), target.Value - half, target.Value + half, target.Value,
            "maker", tolerance.Pack, present.Text(OperatingStateMessages.TargetAndTolerance(new(required.Source), new(tolerance.Source))), tolerance.Mark, tolerance.Rule)
        { Quantity = present.Text(tolerance.Definition.Means) };
        if (weighed.Put is not { } put)
        {
            // A unit whose factory charge fits as it came needs no scale.
            if (weighed.CameCharged && Math.Abs(target.Value) <= half)
                return finding.Decide(true, limit).Say(WeightMessages.FactoryChargeFits(context.Job.Equipment.Piping.IsDefaultOrEmpty ? WeightMessages.FactoryChargeFitsLines.None : WeightMessages.FactoryChargeFitsLines.Some)).Build();
            return finding.Show(limit).NotEvaluated(
                target.Value < 0 ? WeightMessages.NothingRemoved(present.InMessage(-target.Value, DisplayKind.Mass)) : CircuitMessages.NothingWeighed,
                WeightMessages.WeighCylinderNext);
        }

        var missing = target.Value - put.Value.Value;
        var sentence = target.Value < 0
            ? WeightMessages.WasRecovered(present.InMessage(-put.Value, DisplayKind.Mass), present.InMessage(-target.Value, DisplayKind.Mass))
            : WeightMessages.WentInAsked(
                present.InMessage(put.Value, DisplayKind.Mass), present.InMessage(target.Value, DisplayKind.Mass), weighed.CameCharged ? WeightMessages.WentInAskedBeyond.Factory : WeightMessages.WentInAskedBeyond.Whole);
        return finding.Remark(tolerance.Remark(present.Units)).JudgeCharge(
            context, new(put.Value, DisplayKind.Mass, put.Readings) { Target = target, WhenTooCoarse = MostlyHose(put.Value - target, put) ? WeightMessages.ByWeightHoseNext : null }, limit, new ChargeGates(), sentence,
            missing > 0 ? WeightMessages.AddNext(present.InMessage(missing, DisplayKind.Mass)) : WeightMessages.RecoverNext(present.InMessage(-missing, DisplayKind.Mass)));
    }

    private static bool MostlyHose(Uncertain y, MassNumber put) => y.Budget is [var largest, ..] && put.Hoses.Contains(largest.Cause);

    /// <summary>How far a charge by weight may be off: the maker's mass, else the larger of a share of the whole charge and a least mass.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="wholeCharge">The whole charge asked for, kg.</param>
    /// <returns>Half the width, kg, and whose it is; null when nobody sets one.</returns>
    internal static (double Half, Limit Tolerance)? Tolerance(CheckContext context, double wholeCharge)
    {
        if (context.Limits.Find(LimitIds.ChargeWeightToleranceMass) is { Upper: { } mass } own)
            return (mass.Si, own);
        var share = context.Limits.Find(LimitIds.ChargeWeightTolerance);
        var least = context.Limits.Find(LimitIds.ChargeWeightToleranceMinimum);
        var byShare = (share?.Upper?.Si ?? 0) * Math.Abs(wholeCharge);
        var byMass = least?.Upper?.Si ?? 0;
        return (share, least) switch
        {
            ({ } s, _) when byShare >= byMass => (byShare, s),
            (_, { } m) => (byMass, m),
            _ => null,
        };
    }
}

/// <summary>What the circuit holds in the end: the number behind label, room size and leak-check duties.</summary>
internal sealed class TotalCheck : ICheck
{
    public string Id => "charge.total";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Charging is null || context.Job.Identity.Work.Value == WorkKind.Decommissioning)
            yield break;
        var weighed = context.Get<WeighedCharge>();
        var finding = context.Finding(this);
        if (weighed.Total is not { } total)
        {
            if (context.Job.Charging.UnitArrived is not null || context.Job.Identity.Work.Value is not (WorkKind.SeasonalCheck or WorkKind.ChargeAdjustment))
                yield return finding.Use(ReadingsMessages.UnitArrived, context.Job.Charging.UnitArrived).NotEvaluated(weighed.WhyNoTotal!, WeightMessages.TotalUnknownNext);
            yield break;
        }

        total.UseIn(finding);
        if (weighed.Put is null)
            finding.Remark(WeightMessages.NothingMoved);
        finding.Measure(total.Value, DisplayKind.Mass).Remark(WholeUnit(context, finding, total.Value));
        var mass = context.Present.InMessage(total.Value, DisplayKind.Mass);
        if (context.Limits.Find(LimitIds.ChargeTotal) is not { } limit)
        {
            var gas = context.Get<CircuitSaturation>().Designation;
            yield return finding.Information(weighed.Put is null ? WeightMessages.TotalOfPlate(mass, new NameValue(gas)) : WeightMessages.Total(mass, new NameValue(gas)), WeightMessages.TotalNoMaker);
            yield break;
        }

        var state = limit is { Lower: null, Upper: null, Target: { } target } && ByWeightCheck.Tolerance(context, target.Si) is var (half, tolerance)
            ? context.State(limit) with
            {
                Text = $"{target.Text} ± {context.Present.Text(half, DisplayKind.Mass)}",
                LowerSi = target.Si - half,
                UpperSi = target.Si + half,
                Source = context.Present.Text(OperatingStateMessages.TargetAndTolerance(new(limit.Source), new(tolerance.Source))),
            }
            : context.State(limit);
        yield return finding.Remark(limit.Remark(context.Present.Units)).JudgeCharge(
            context, new(total.Value, DisplayKind.Mass, total.Readings), state, new ChargeGates(),
            WeightMessages.TotalAsked(mass, new(state.Text), weighed.Put is null ? WeightMessages.TotalAskedBy.Plate : WeightMessages.TotalAskedBy.Scale), WeightMessages.TotalAskedNext);
    }

    // Several circuits of one unit: each has its record, the plate and the duties may ask for their sum.
    private static Message? WholeUnit(CheckContext context, FindingBuilder finding, Uncertain own)
    {
        var others = context.Job.Equipment.OtherCircuits;
        if (others.IsEmpty)
            return null;
        foreach (var circuit in others)
            finding.Use(circuit.Id is { } id ? WeightMessages.ChargeOfCircuit(new(id.Value)) : WeightMessages.ChargeOfCircuitBeside, circuit.Charge);
        return WeightMessages.WholeUnit(others.Length + 1, context.Present.InMessage(own.Value + others.Sum(c => c.Charge.Value.Si), DisplayKind.Mass));
    }
}
