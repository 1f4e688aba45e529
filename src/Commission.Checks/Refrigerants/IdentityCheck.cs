using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether the refrigerant that went in is the one the unit is built for, and fit to go in.</summary>
internal sealed class RefrigerantIdentityCheck : ICheck
{
    public string Id => "refrigerant.identity";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var job = context.Job;
        if (job.Identity.Work.Value == WorkKind.Decommissioning)
            yield break;
        var plate = context.Get<PlateRefrigerant>();
        if (plate.Designation is not null || plate.SafetyClass is not null)
            yield return Plate(context, plate);
        else if (job.Identity.Work.Value == WorkKind.RefrigerantChange)
            yield return context.Finding(this, context.Present.Text(RefrigerantMessages.SubjectPlate)).Use(ReadingsMessages.Work, job.Identity.Work).NotEvaluated(RefrigerantMessages.IdentityFromUnknown, RefrigerantMessages.IdentityFromUnknownNext, "refrigerant change: {from: …, to: …}");
        foreach (var cylinder in Charged(job))
        {
            if (cylinder.Refrigerant is { } gas)
                yield return FromCylinder(context, plate, cylinder, gas);
            if (WentBack(job, cylinder))
                yield return Back(context, cylinder);
        }
    }

    private Finding Plate(CheckContext context, PlateRefrigerant plate)
    {
        var job = context.Job;
        var circuit = context.Get<CircuitRefrigerant>();
        var charged = new NameValue(circuit.Designation);
        var finding = context.Finding(this, context.Present.Text(RefrigerantMessages.SubjectPlate)).Use(ReadingsMessages.Refrigerant, job.Equipment.Refrigerant);
        if (Harm(context, finding, plate, circuit.Info, circuit.Designation) is { } danger)
            return danger;
        if (job.RefrigerantChange is { } change && RefrigerantCatalogue.Find(change.To.Value)?.Designation != circuit.Designation)
            return finding.Decide(false).Say(RefrigerantMessages.IdentityChangeDiffers(new NameValue(change.To.Value), charged)).Next(RefrigerantMessages.IdentityChangeDiffersNext).Build();
        if (!plate.IsAnother)
            return finding.Decide(true).Say(RefrigerantMessages.IdentitySame(charged)).Build();
        var built = new NameValue(plate.Designation!);
        return job.RefrigerantChange is null
            ? finding.Decide(false).Say(RefrigerantMessages.IdentityDiffers(built, charged)).Next(RefrigerantMessages.IdentityDiffersNext, "refrigerant change: {from: …, to: …}").Build()
            : finding.Say(RefrigerantMessages.IdentityChanged(built, charged)).Build();
    }

    private Finding FromCylinder(CheckContext context, PlateRefrigerant plate, Cylinder cylinder, Given<string> gas)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        var name = cylinder.Id.Value;
        var finding = context.Finding(this, name).Use(RefrigerantMessages.ReadingCylinderRefrigerant(new(name)), gas).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant);
        var info = RefrigerantCatalogue.Find(gas.Value);
        var designation = info?.Designation ?? gas.Value;
        if (designation == circuit.Designation)
            return finding.Decide(true).Say(RefrigerantMessages.IdentityCylinderSame(new TextValue(name), new NameValue(designation))).Build();
        return Harm(context, finding, plate, info, designation)
            ?? finding.Decide(false).Say(RefrigerantMessages.IdentityCylinderDiffers(new TextValue(name), new NameValue(designation), new NameValue(circuit.Designation))).Next(RefrigerantMessages.IdentityCylinderDiffersNext).Build();
    }

    // The danger of a refrigerant in a unit that is built for another; null where there is none, and then the finding passes so far.
    private static Finding? Harm(CheckContext context, FindingBuilder finding, PlateRefrigerant plate, RefrigerantInfo? gas, string designation)
    {
        foreach (var use in plate.Uses)
            finding.Use(use);
        finding.Decide(true);
        if (gas?.SafetyGroup is { } group && plate.SafetyClass is { } built && Flammability(group.Value) > Flammability(built))
            return finding.Danger(RefrigerantMessages.IdentityBurns(new NameValue(designation), new NameValue(group.Value), new NameValue(built)), RefrigerantMessages.IdentityBurnsNext);
        return plate.Designation is null || plate.Designation == designation ? null : Pressure(context, finding, plate, designation);
    }

    private static Finding? Pressure(CheckContext context, FindingBuilder finding, PlateRefrigerant plate, string designation)
    {
        var present = context.Present;
        var name = new NameValue(designation);
        var hot = context.Assume(LimitIds.AssumptionHotCondenser);
        var atmosphere = context.Get<SiteAtmosphere>();
        var rating = context.Job.Equipment.Nameplate?.DesignPressure?.High;
        finding.Use(CommonMessages.ReadingDesignHigh, rating);
        foreach (var use in atmosphere.Uses)
            finding.Use(use);
        var built = rating is { } high ? high.Value.ToGauge(atmosphere.Pressure).Si : Saturation(plate.Info, hot) - atmosphere.Value.Value;
        if (context.Limits.Find(LimitIds.RefrigerantIdentityPressure) is not { } limit || built is not { } bound || Saturation(RefrigerantCatalogue.Find(designation), hot) is not { } saturation)
        {
            finding.Reserve(RefrigerantMessages.IdentityPressureUnknown(name)).Next(RefrigerantMessages.IdentityPressureUnknownNext);
            return null;
        }

        var gauge = saturation - atmosphere.Value.Value;
        finding.Show(context.State(limit)).Step(
            "p_hot", RefrigerantMessages.IdentityStepHot, RefrigerantMessages.IdentityStepHotFormula(present.InMessage(hot, DisplayKind.Temperature)), designation,
            $"{present.Text(gauge, DisplayKind.Pressure)}, {present.Text(bound, DisplayKind.Pressure)}", limit.Source);
        if (gauge > limit.Most.Si * bound)
            return finding.Danger(RefrigerantMessages.IdentityBursts(name, present.InMessage(gauge, DisplayKind.Pressure), present.InMessage(hot, DisplayKind.Temperature), present.InMessage(bound, DisplayKind.Pressure)), RefrigerantMessages.IdentityBurstsNext);
        if (gauge > bound)
            finding.Reserve(RefrigerantMessages.IdentityPressureNear(name, present.InMessage(bound, DisplayKind.Pressure))).Next(RefrigerantMessages.IdentityPressureNearNext);
        return null;
    }

    // A blend condenses between its bubble and its dew point. Above its critical temperature a refrigerant has no saturation: its pressure is beyond every unit
    // for another one.
    private static double? Saturation(RefrigerantInfo? info, double kelvin)
    {
        if (info is not { IsComputable: true })
            return null;
        var fluid = Refrigerant.Load(info.Designation);
        if (fluid.CriticalPoint is { Ok: true, Value: var critical } && critical.Temperature <= kelvin)
            return critical.Pressure;
        return fluid.BubbleAtTemperature(kelvin) is { Ok: true, Value: var bubble } && fluid.DewAtTemperature(kelvin) is { Ok: true, Value: var dew } ? (bubble.Pressure + dew.Pressure) / 2 : null;
    }

    private Finding Back(CheckContext context, Cylinder cylinder)
    {
        var job = context.Job;
        var name = new TextValue(cylinder.Id.Value);
        var acid = job.AsFound?.AcidTest;
        var finding = context.Finding(this, context.Present.Text(RefrigerantMessages.SubjectChargedBack(name))).Use(RefrigerantMessages.ReadingAcid, acid)
            .Use(RefrigerantMessages.ReadingCylinderContents(name), cylinder.Contents).Use(ReadingsMessages.Work, job.Identity.Work)
            .Use(ReadingsMessages.RecoveryCylinder, job.Recovery?.Cylinder).Decide(true).Say(RefrigerantMessages.IdentityBack(name));
        switch (acid?.Value)
        {
            case AcidResult.Bad when cylinder.Contents?.Value != CylinderContents.Recycled:
                return finding.Danger(RefrigerantMessages.IdentityBackAcid(name), RefrigerantMessages.IdentityBackAcidNext);
            case AcidResult.Bad:
                return finding.Reserve(RefrigerantMessages.IdentityBackRecycled(name)).Next(RefrigerantMessages.IdentityBackRecycledNext).Build();
            case AcidResult.Marginal:
                return finding.Reserve(RefrigerantMessages.IdentityBackMarginal).Next(RefrigerantMessages.IdentityBackTestNext).Build();
            case AcidResult.Good:
                return finding.Remark(RefrigerantMessages.IdentityBackTested(new TextValue(acid.Text))).Build();
            default:
                // Nobody knows why a compressor died until its oil was tested.
                return job.Identity.Work.Value == WorkKind.CompressorReplacement
                    ? finding.Reserve(RefrigerantMessages.IdentityBackUntested).Next(RefrigerantMessages.IdentityBackTestNext).Build()
                    : finding.Build();
        }
    }

    /// <summary>Cylinders that refrigerant went into the circuit from: named with a weighing, or lighter after the work.</summary>
    public static IEnumerable<Cylinder> Charged(Job job)
    {
        var named = (job.Charging?.Scale ?? []).Select(s => s.Cylinder?.Value).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return job.Charging is null ? [] : job.Cylinders.Where(c => named.Contains(c.Id.Value) || c.After?.Value.Si < c.Before?.Value.Si);
    }

    /// <summary>Whether a cylinder holds what came out of a circuit before.</summary>
    public static bool WentBack(Job job, Cylinder cylinder) =>
        cylinder.Contents?.Value is CylinderContents.Recovered or CylinderContents.Recycled
        || string.Equals((job.Recovery?.Cylinder ?? job.Recovery?.Scale?.Cylinder)?.Value, cylinder.Id.Value, StringComparison.Ordinal);

    private static int Flammability(string group) => group[1..] switch
    {
        "1" => 0,
        "2L" => 1,
        "2" => 2,
        _ => 3,
    };
}
