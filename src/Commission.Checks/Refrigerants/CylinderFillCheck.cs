using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether a cylinder that refrigerant went into still has room for it to expand.</summary>
internal sealed class CylinderFillCheck : ICheck
{
    public string Id => "refrigerant.cylinder-fill";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var ledger = context.Get<RefrigerantLedger>();
        var recovered = ledger.Movements.FirstOrDefault(m => m.Kind == MovementKind.Recovered);
        var into = recovered is null ? null : ledger.CylinderOf(recovered);
        if (recovered is not null && into is null && context.Job.Recovery is { } recovery)
            yield return context.Finding(this, recovered.Cylinder).Use(RefrigerantMessages.ReadingCylinder, recovery.Cylinder).NotEvaluated(RefrigerantMessages.FillCylinderUnknown, RefrigerantMessages.FillCylinderUnknownNext, "cylinders: [{id: …, water capacity: …, tare: …, after: …}]");
        foreach (var cylinder in context.Job.Cylinders)
        {
            if (ReferenceEquals(cylinder, into) || cylinder.Contents?.Value == CylinderContents.Recovered || cylinder.After?.Value.Si > cylinder.Before?.Value.Si)
                yield return Judge(context, cylinder, ReferenceEquals(cylinder, into) ? recovered : null);
        }
    }

    private Finding Judge(CheckContext context, Cylinder cylinder, Movement? recovered)
    {
        var name = cylinder.Id.Value;
        var written = new TextValue(name);
        var finding = context.Finding(this, name)
            .Use(RefrigerantMessages.ReadingCylinderCapacity(written), cylinder.WaterCapacity).Use(RefrigerantMessages.ReadingCylinderTare(written), cylinder.Tare)
            .Use(RefrigerantMessages.ReadingCylinderContents(written), cylinder.Contents).Use(RefrigerantMessages.ReadingCylinderRefrigerant(written), cylinder.Refrigerant);
        if (cylinder.WaterCapacity is not { } capacity)
            return finding.NotEvaluated(RefrigerantMessages.FillCapacityUnknown, RefrigerantMessages.FillCapacityUnknownNext);
        if (Holds(context, finding, cylinder, recovered) is not { } content)
            return finding.NotEvaluated(RefrigerantMessages.FillContentUnknown, RefrigerantMessages.FillContentUnknownNext);
        var gases = Gases(context, cylinder, recovered);
        if (recovered is not null)
        {
            finding.Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant).Use(RefrigerantMessages.ReadingChangedFrom, context.Job.RefrigerantChange?.From)
                .Use(RefrigerantMessages.ReadingFound, context.Job.AsFound?.Refrigerant);
        }

        if (Lightest(gases) is not { } lightest)
            return finding.NotEvaluated(RefrigerantMessages.FillDensityUnknown(Names(gases)), RefrigerantMessages.FillDensityUnknownNext);
        return Judge(context, finding, new(name, content, capacity.Text, capacity.Value.Si), lightest, gases);
    }

    // What a cylinder holds, kg, and the water that would fill it.
    private sealed record Content(string Cylinder, Uncertain Mass, string CapacityText, double Capacity);

    // A refrigerant with its liquid's density over that of water, at 25 °C.
    private sealed record Gas(Refrigerant Fluid, double Gravity);

    private Finding Judge(CheckContext context, FindingBuilder finding, Content content, Gas gas, string[] gases)
    {
        var present = context.Present;
        var limit = context.Limits.Require(LimitIds.RefrigerantCylinderFill);
        var designation = new NameValue(gas.Fluid.Info.Designation);
        var mass = present.InMessage(content.Mass.Value, DisplayKind.Mass);
        var full = content.Capacity * gas.Gravity;
        var fill = content.Mass / full;
        finding.Step("f", RefrigerantMessages.FillStepVolume, CylinderFill.VolumeFormula,
            string.Create(CultureInfo.InvariantCulture, $"{present.Text(content.Mass.Value, DisplayKind.Mass)} / ({content.CapacityText} × {gas.Gravity:0.0000})"), present.Text(fill, DisplayKind.Percentage), limit.Source);
        if (gases.Length > 1)
            finding.Remark(RefrigerantMessages.FillMixed(Names(gases), designation));
        if (fill.Value > 1)
        {
            finding.Judge(fill, DisplayKind.Percentage, context.State(limit));
            return finding.Danger(RefrigerantMessages.FillCannotBe(new TextValue(content.Cylinder), mass, present.InMessage(full, DisplayKind.Mass), designation), RefrigerantMessages.FillCannotBeNext);
        }

        var share = present.InMessage(fill.Value, DisplayKind.Percentage);
        if (Transport(context, finding, content, gas.Fluid) is { } ratio)
        {
            if (fill.Value > limit.Most.Si)
                finding.Remark(RefrigerantMessages.FillAboveEighty(share, present.InMessage(limit.Most.Si, DisplayKind.Percentage)));
            var said = RefrigerantMessages.FillRatio(new TextValue(content.Cylinder), mass, designation, present.InMessage(content.Mass.Value / content.Capacity, DisplayKind.Percentage), present.InMessage(ratio, DisplayKind.Percentage));
            return finding.ConcludeOrDanger(said, said, this.WhenItFails());
        }

        finding.Judge(fill, DisplayKind.Percentage, context.State(limit));
        var sentence = RefrigerantMessages.FillVolume(new TextValue(content.Cylinder), mass, designation, share);
        return finding.ConcludeOrDanger(sentence, sentence, this.WhenItFails());
    }

    // Judges by the filling ratio where the European transport rules hold; null where they do not, or where the ratio hangs on the cylinder's test pressure.
    private static double? Transport(CheckContext context, FindingBuilder finding, Content content, Refrigerant fluid)
    {
        if (!IsEuropean(context, finding) || context.Limits.Find(LimitIds.RefrigerantCylinderFillingRatio) is not { } limit || CylinderFill.FillingRatio(fluid, limit.Most.Si) is not { } ratio)
            return null;
        var present = context.Present;
        var filled = content.Mass / content.Capacity;
        finding.Step("FR", RefrigerantMessages.FillStepRatio, CylinderFill.RatioFormula, fluid.Info.Designation, present.Text(ratio, DisplayKind.Percentage), CylinderFill.RatioSource)
            .Judge(filled, DisplayKind.Percentage, context.State(limit) with { Text = present.Text(RefrigerantMessages.FillLimitRatio(present.InMessage(ratio, DisplayKind.Percentage))), UpperSi = ratio });
        return ratio;
    }

    // Where a site lies its zone tells; the packs of European law tell it, too. Units do not.
    private static bool IsEuropean(CheckContext context, FindingBuilder finding)
    {
        var zone = context.Job.Identity.Zone;
        var packs = context.Job.Limits?.Packs ?? [];
        finding.Use(RefrigerantMessages.ReadingZone, zone);
        foreach (var pack in packs)
            finding.Use(RefrigerantMessages.ReadingPack, pack);
        return zone?.Value.StartsWith("Europe/", StringComparison.Ordinal) == true || packs.Any(p => p.Value is "eu-f-gas" or "en-378");
    }

    private static ListValue Names(string[] gases) => new([.. gases.Select(g => new NameValue(g))]);

    private static string[] Gases(CheckContext context, Cylinder cylinder, Movement? recovered) =>
    [
        .. new[] { cylinder.Refrigerant is { } written ? RefrigerantCatalogue.Find(written.Value)?.Designation ?? written.Value : null, recovered is null && cylinder.Refrigerant is not null ? null : context.Get<RecoveredRefrigerant>().Designation }
            .OfType<string>().Distinct(StringComparer.Ordinal),
    ];

    private static Gas? Lightest(string[] gases)
    {
        var known = gases.Select(Of).ToList();
        return known.Any(g => g is null) ? null : known.MinBy(g => g!.Gravity);

        static Gas? Of(string designation) => RefrigerantCatalogue.Find(designation) is { IsComputable: true } info && Refrigerant.Load(info.Designation) is var fluid && CylinderFill.SpecificGravity(fluid) is { } gravity
            ? new Gas(fluid, gravity)
            : null;
    }

    private static Uncertain? Holds(CheckContext context, FindingBuilder finding, Cylinder cylinder, Movement? recovered)
    {
        var after = cylinder.After ?? (recovered is null ? null : context.Job.Recovery?.Scale?.After);
        if (cylinder.Tare is { } tare && after is not null)
        {
            var gross = context.Readings.Plain(context.Present.Text(RefrigerantMessages.ReadingCylinderAfter(new(cylinder.Id.Value))), ReadingName.Charge, after, DisplayKind.Mass);
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
