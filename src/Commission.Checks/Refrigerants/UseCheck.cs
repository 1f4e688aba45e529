using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether the refrigerant that went in may be used in service, where the European pack is named.</summary>
internal sealed class UseCheck : ICheck
{
    // The product is kept colder than this: article 13(3) and (5).
    private const double DeepCold = 273.15 - 50;

    public string Id => "refrigerant.use";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        // The first charge of a new system is no maintenance or servicing, article 3 point 18.
        var isService = context.Job.Identity.Work.Value is not (WorkKind.NewInstallation or WorkKind.Decommissioning);
        if (context.Limits.Find(LimitIds.RefrigerantUse) is not { } limit || !isService || context.Get<WeighedCharge>().Put is not { Value.Value: > 0 })
            yield break;
        var cylinders = RefrigerantIdentityCheck.Charged(context.Job).ToList();
        if (cylinders.Count == 0)
        {
            if (Judge(context, limit, null) is { } alone)
                yield return alone;
            yield break;
        }

        foreach (var cylinder in cylinders)
        {
            if (Judge(context, limit, cylinder) is { } finding)
                yield return finding;
        }
    }

    private Finding? Judge(CheckContext context, Limit limit, Cylinder? cylinder)
    {
        var job = context.Job;
        var written = cylinder?.Refrigerant ?? job.Equipment.Refrigerant;
        if (RefrigerantCatalogue.Find(written.Value) is not { } gas || EuropeanWarming.Of(gas) is not { } warming || !warming.IsFluorinated)
            return null;
        var isRefrigeration = job.Equipment.System.Value == SystemKind.Refrigeration;
        var date = job.Identity.Date.Value;
        var finding = context.Finding(this, cylinder?.Id.Value).Show(context.State(limit)).Use(cylinder is null ? ReadingsMessages.Refrigerant : RefrigerantMessages.ReadingCylinderRefrigerant(new(cylinder.Id.Value)), written)
            .Use(CommonMessages.ReadingSystem, job.Equipment.System).Use(ReadingsMessages.DateOfJob, job.Identity.Date).Use(ReadingsMessages.Work, job.Identity.Work)
            .Use(RefrigerantMessages.ReadingExemption, job.Equipment.UseExemption).Use(ReadingsMessages.BoxTemperature, job.Equipment.BoxTemperature);
        if (cylinder is not null)
        {
            var id = new TextValue(cylinder.Id.Value);
            finding.Use(RefrigerantMessages.ReadingCylinderContents(id), cylinder.Contents).Use(RefrigerantMessages.ReadingCylinderBatch(id), cylinder.Batch).Use(RefrigerantMessages.ReadingCylinderSupplier(id), cylinder.Supplier);
        }

        finding.Step("GWP_EU", RefrigerantMessages.Co2eStepPotential, RefrigerantMessages.Co2eStepPotentialFormula, warming.Formula, warming.Potential.ToString("0.#", CultureInfo.InvariantCulture), EuropeanWarming.Source).Decide(true);
        var ban = FluorinatedGasUse.InForce(isRefrigeration, context.Get<EuropeanDuties>().AnnexOneTonnes, date).FirstOrDefault(b => warming.Potential >= b.FromPotential);
        var name = new NameValue(gas.Designation);
        var potential = WarmingPotentials.Printed(warming.Potential);
        if (ban is null)
            return Cleaned(finding.Say(RefrigerantMessages.UseFree(name, potential)), cylinder).Build();
        var reach = WarmingPotentials.Printed(ban.FromPotential);
        finding.Step("", RefrigerantMessages.UseStepBan, "", RefrigerantMessages.UseStepBanFrom(reach, ban.From), RefrigerantMessages.UseStepBanArticle(new(ban.Paragraph)), ban.Citation);
        if (IsExempt(job.Equipment, ban))
            return Cleaned(finding.Say(RefrigerantMessages.UseExempt(name, potential, reach)), cylinder).Build();
        if (cylinder?.Contents is not { } contents)
            return finding.NotEvaluated(cylinder is null ? RefrigerantMessages.UseNoCylinder : RefrigerantMessages.UseKindUnknown(new TextValue(cylinder.Id.Value)), RefrigerantMessages.UseKindUnknownNext, "contents: reclaimed");
        if (contents.Value is CylinderContents.Reclaimed or CylinderContents.Recycled or CylinderContents.Recovered && ban.SparesUsedGas(date))
            return SecondHand(finding, ban, name, cylinder, contents);
        return finding.Decide(false).Say(ban.UsedGasUntil is { } until && date < until
            ? RefrigerantMessages.UseBannedUntil(name, potential, reach, ban.From, until)
            : RefrigerantMessages.UseBanned(name, potential, reach, ban.From)).Next(RefrigerantMessages.UseBannedNext).Build();
    }

    // Article 12(7): the label of reclaimed gas names batch and facility. Recycled gas stays with those who recovered it.
    private static Finding SecondHand(FindingBuilder finding, UseBan ban, NameValue gas, Cylinder cylinder, Given<CylinderContents> contents)
    {
        var id = new TextValue(cylinder.Id.Value);
        finding.Say(ban.UsedGasUntil is { } until
            ? RefrigerantMessages.UseSecondHand(gas, id, contents.Value switch
            {
                CylinderContents.Reclaimed => RefrigerantMessages.UseSecondHandKind.Reclaimed,
                CylinderContents.Recycled => RefrigerantMessages.UseSecondHandKind.Recycled,
                _ => RefrigerantMessages.UseSecondHandKind.Recovered,
            }, until)
            : RefrigerantMessages.UseSecondHandAlways(gas, id, contents.Value switch
            {
                CylinderContents.Reclaimed => RefrigerantMessages.UseSecondHandAlwaysKind.Reclaimed,
                CylinderContents.Recycled => RefrigerantMessages.UseSecondHandAlwaysKind.Recycled,
                _ => RefrigerantMessages.UseSecondHandAlwaysKind.Recovered,
            }));
        if (contents.Value == CylinderContents.Reclaimed)
            return cylinder is { Batch: not null, Supplier: not null } ? finding.Build() : finding.Reserve(RefrigerantMessages.UseLabel).Next(RefrigerantMessages.UseLabelNext).Build();
        // What is said of its supplier tells that it was bought and not recovered by the crew.
        if (contents.Value == CylinderContents.Recycled && cylinder.Supplier is not null)
            finding.Reserve(RefrigerantMessages.UseOwn(gas)).Next(RefrigerantMessages.UseOwnNext);
        return Cleaned(finding, cylinder).Build();
    }

    // Article 8(6).
    private static FindingBuilder Cleaned(FindingBuilder finding, Cylinder? cylinder) => cylinder is { Contents.Value: CylinderContents.Recovered }
        ? finding.Reserve(RefrigerantMessages.UseRecovered(new TextValue(cylinder.Id.Value))).Next(RefrigerantMessages.UseRecoveredNext, "cylinders: [{contents: recycled}]")
        : finding;

    private static bool IsExempt(Equipment equipment, UseBan ban) =>
        (equipment.UseExemption is { } written && ban.Exempt.Contains(written.Value))
        || (ban.Exempt.Contains(UseExemption.DeepCold) && equipment.BoxTemperature?.Value.Si < DeepCold);
}
