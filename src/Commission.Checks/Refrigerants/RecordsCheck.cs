using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>What the regulations whose packs are named want in the record, and what of it is not there.</summary>
internal sealed class RecordsCheck : ICheck
{
    private const string LimitId = LimitIds.RefrigerantRecords;

    public string Id => "refrigerant.records";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var name in context.Job.Limits?.Packs ?? [])
        {
            if (context.Settings.Library.Find(name.Value) is not { } pack || pack.Find(LimitId, context.Limits.Situation) is not { } entry)
                continue;
            var items = pack.Name switch
            {
                "eu-f-gas" => Europe(context.Job),
                "us-epa-608" => UnitedStates(context.Job),
                "en-378" => Standard(context.Job),
                _ => [],
            };
            if (pack.Name == "eu-f-gas" && context.Get<EuropeanDuties>().Plan is { Months: null } free)
                yield return NotPrescribed(context, name, pack, free);
            else if (items.Count > 0)
                yield return Tell(context, name, pack, entry, items);
        }
    }

    // Article 7(1) asks it of equipment that has to be checked for leaks, and of no other.
    private Finding NotPrescribed(CheckContext context, Given<string> name, LimitPack pack, LeakCheckPlan free)
    {
        var finding = context.Finding(this, pack.Title).Use("pack", name);
        context.Get<EuropeanDuties>().UseIn(finding);
        return finding.Information(RefrigerantMessages.RecordsNotPrescribed(new TextValue(free.Because)), "what a regulation wants kept");
    }

    private Finding Tell(CheckContext context, Given<string> name, LimitPack pack, LimitEntry entry, List<RecordItem> items)
    {
        var finding = context.Finding(this, pack.Title).Use("pack", name).Use("work", context.Job.Identity.Work);
        foreach (var use in items.SelectMany(i => i.Uses).OfType<ReadingUse>())
            finding.Use(use);
        var missing = items.Where(i => !i.IsWritten).Select(i => i.What).ToList();
        finding.Step("", "what is kept", entry.Statement ?? "", string.Join(", ", items.Where(i => i.IsWritten).Select(i => i.What)), $"{items.Count - missing.Count} of {items.Count} in this record", $"{entry.Source} ({entry.Mark})");
        return missing.Count == 0
            ? finding.Information($"Everything looked for is in this record: {string.Join(", ", items.Select(i => i.What))}.", "what a regulation wants kept")
            : finding.Next(this.WhenItFails()).Information($"Not in this record: {string.Join(", ", missing)}.", "what a regulation wants kept");
    }

    // Point by point of article 7(1).
    private static List<RecordItem> Europe(Job job)
    {
        var people = job.Identity.People;
        var isNew = job.Identity.Work.Value == WorkKind.NewInstallation;
        var items = new List<RecordItem> { new("(a) quantity and type of gas", Charge(job)) };
        if (job.Charging is not null)
            items.Add(isNew ? new("(a) quantity added during installation", Added(job)) : new("(b) quantity added, with its date", Added(job)));
        if (Opens(job))
            items.Add(new("(c) quantity recovered", Recovered(job)));
        if (job.Charging is not null && !isNew)
        {
            items.Add(new("(d) whether the gas is virgin, recycled or reclaimed", [.. job.Cylinders.Select(c => Of("contents", c.Contents))]));
            if (job.Cylinders.Where(c => c.Contents?.Value == CylinderContents.Reclaimed || (c.Contents?.Value == CylinderContents.Recycled && c.Supplier is not null)).ToList() is { Count: > 0 } used)
            {
                items.Add(new("(d) name and address of the recycling or reclamation facility", [.. used.Select(c => Of("supplier", c.Supplier))]));
                items.Add(new("(d) its certificate number", [.. used.Select(c => Of("certificate", c.Certificate))]));
            }
        }

        items.Add(new("(e) undertaking", Of("installer", people?.Installer)));
        items.Add(new("(e) certificate of the undertaking", Of("company certificate", people?.CompanyCertificate)));
        items.Add(new("(e) person who did the work", Of("technician", people?.Technician)));
        items.Add(new("(e) certificate of the person", Of("person certificate", people?.PersonCertificate)));
        if (job.Identity.Work.Value != WorkKind.Decommissioning)
            items.Add(new("(f) leak check with date and result", Of("leak check", job.LeakCheck?.Date), Of("result", job.LeakCheck?.Result)));
        if (job.Identity.Work.Value == WorkKind.LeakRepair)
            items.Add(new("(f) leak repair: where the leak was", Of("leak place", job.AsFound?.LeakPlace)));
        if (job.Identity.Work.Value == WorkKind.Decommissioning)
            items.Add(new("(g) where the recovered gas goes", Of("facility", job.Recovery?.Facility)));
        return items;
    }

    private static List<RecordItem> UnitedStates(Job job)
    {
        var people = job.Identity.People;
        var items = new List<RecordItem>
        {
            new("owner or operator", Of("owner", people?.Owner)),
            new("appliance", Of("outdoor serial", job.Equipment.Outdoor?.Serial), Of("outdoor model", job.Equipment.Outdoor?.Model)),
            new("its location", Of("address", job.Identity.Site.Address), Of("site", job.Identity.Site.Name)),
            new("full charge and how it was determined", Charge(job)),
            new("person who did the work", Of("technician", people?.Technician)),
            new("verification of the repair or leak check", Of("leak check", job.LeakCheck?.Date), Of("tightness hold", job.PressureTest?.Tightness?.To?.Pressure)),
            new("date of installation", Of("start-up date", job.Equipment.StartUpDate), job.Identity.Work.Value == WorkKind.NewInstallation ? Of("date of the job", job.Identity.Date) : null),
        };
        if (job.Charging is not null || job.Recovery is not null)
            items.Add(new("amount added or removed", Added(job), Recovered(job)));
        if (job.Identity.Work.Value is WorkKind.LeakRepair or WorkKind.CompressorReplacement)
            items.Add(new("parts serviced", Of("leak place", job.AsFound?.LeakPlace), Of("failed part", job.AsFound?.FailedPart?.What), Of("notes", job.Identity.Notes)));
        if (job.Charging is not null && job.Identity.Work.Value is not (WorkKind.NewInstallation or WorkKind.RefrigerantChange))
            items.Add(new("date of the last addition, for the leak rate", Of("previous addition", job.Charging.PreviousAddition)));
        return items;
    }

    private static List<RecordItem> Standard(Job job)
    {
        var plate = job.Equipment.Nameplate;
        var items = new List<RecordItem>
        {
            new("installer", Of("installer", job.Identity.People?.Installer)),
            new("model", Of("outdoor model", job.Equipment.Outdoor?.Model)),
            new("serial number", Of("outdoor serial", job.Equipment.Outdoor?.Serial)),
            new("charge", Charge(job)),
            new("allowable pressure, low side", Of("design pressure low", plate?.DesignPressure?.Low)),
            new("allowable pressure, high side", Of("design pressure high", plate?.DesignPressure?.High)),
            new("electrical data", Of("voltage", plate?.Voltage), Of("MCA", plate?.MCA), Of("RLA", plate?.CompressorRLA), Of("rated current", plate?.RatedCurrent)),
            new("log-book", Of("logbook", job.Equipment.Logbook)),
        };
        if (job.Identity.Work.Value is WorkKind.NewInstallation || Opens(job))
        {
            items.Add(new("strength test", Of("strength", job.PressureTest?.Strength?.Pressure)));
            items.Add(new("tightness test", Of("tightness hold", job.PressureTest?.Tightness?.To?.Pressure), Of("tightness log", job.PressureTest?.Tightness?.Series?.File)));
            items.Add(new("vacuum", Of("evacuation started", job.Evacuation?.Started), Of("evacuation log", job.Evacuation?.Series?.File)));
            items.Add(new("test of safety devices", [.. (job.Safety?.Devices ?? []).SelectMany(d => new[] { Of("tripped at", d.TrippedAt), Of("tested", d.Tested) })]));
        }

        return items;
    }

    private static bool Opens(Job job) => job.Identity.Work.Value is not (WorkKind.NewInstallation or WorkKind.ChargeAdjustment or WorkKind.SeasonalCheck);

    private static ReadingUse? Charge(Job job) => Of("total on the label", job.Label?.Total) ?? Of("factory charge", job.Equipment.Nameplate?.FactoryCharge) ?? Added(job);

    private static ReadingUse? Added(Job job) =>
        Of("refrigerant added", job.Charging?.Added) ?? Of("scale before", job.Charging?.Scale.FirstOrDefault()?.Before) ?? Of("refrigerant added", job.Charging?.Events.FirstOrDefault(e => e.Added is not null)?.Added);

    private static ReadingUse? Recovered(Job job) => Of("mass recovered", job.Recovery?.Mass) ?? Of("recovery cylinder after", job.Recovery?.Scale?.After) ?? Of("charge recovered", job.AsFound?.ChargeRecovered);

    private static ReadingUse? Of<T>(string name, Given<T>? given) => given is null ? null : given.Use(name);
}

/// <summary>Something a regulation wants in the record.</summary>
/// <param name="What">What it is, in the words of the trade.</param>
/// <param name="Uses">Where the job says it; empty when it does not.</param>
internal sealed record RecordItem(string What, params ReadingUse?[] Uses)
{
    /// <summary>Whether the job says it.</summary>
    public bool IsWritten => Uses.Any(u => u is not null);
}

/// <summary>Whether what is written on the unit is what the circuit holds.</summary>
internal sealed class LabelCheck : ICheck
{
    public string Id => "refrigerant.label";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Label is { } label)
            yield return Judge(context, label);
    }

    private Finding Judge(CheckContext context, ChargeLabel label)
    {
        var finding = context.Finding(this).Use("label: refrigerant", label.Refrigerant).Use("label: factory", label.Factory).Use("label: added", label.Added).Use("label: total", label.Total)
            .Use("label: GWP", label.GWP).Use("label: t CO2e", label.CO2Equivalent).Use("label: on unit", label.OnUnit);
        var wrong = new List<string>();
        Words(context, finding, label, wrong);
        // The law asks nothing of the label of a gas that it does not know.
        var law = context.Get<EuropeanDuties>().Warming is { IsFluorinated: false } ? null : context.Limits.Find(LimitIds.RefrigerantLabel);
        var compared = Masses(context, finding, label, law, wrong);
        if (law is not null)
            finding.Show(context.State(law));
        if (wrong.Count > 0)
            return finding.Decide(false).Say($"The label does not fit: {string.Join("; ", wrong)}.").Next(this.WhenItFails()).Build();
        if (compared is null)
            return finding.NotEvaluated(context.Get<CircuitCharge>() is { IsWeighed: false, WhyNot: { } why } ? $"there is nothing to compare the label with: {why}" : "no mass is written on the label", "Write factory charge, charge added and total on the label and here.");
        finding.Decide(true).Say($"The label fits: {compared}.");
        foreach (var name in law is null ? [] : NotOn(label, IsAdded(context)))
            finding.Reserve($"{name} is not on the label").Next("Complete the label and photograph it.");
        return finding.Build();
    }

    // Quantity, potential and tonnes are asked of every label; the charge from the factory and what was added to it only where something was.
    private static IEnumerable<string> NotOn(ChargeLabel label, bool isAdded) =>
        new[] { ("factory charge", !isAdded || label.Factory is not null), ("charge added", !isAdded || label.Added is not null), ("total", label.Total is not null || (!isAdded && label.Factory is not null)), ("GWP", label.GWP is not null), ("t CO2e", label.CO2Equivalent is not null) }
            .Where(part => !part.Item2)
            .Select(part => part.Item1);

    // Whether gas was added to the charge from the factory; a charge that was weighed in whole was added to nothing.
    private static bool IsAdded(CheckContext context) => context.Get<WeighedCharge>() is { SawWholeCharge: false, Put.Value.Value: > 0 };

    private static void Words(CheckContext context, FindingBuilder finding, ChargeLabel label, List<string> wrong)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        if (label.Refrigerant is { } written && !string.Equals(RefrigerantCatalogue.Find(written.Value)?.Designation, circuit.Designation, StringComparison.Ordinal))
            wrong.Add($"it says {written.Value}, the circuit holds {circuit.Designation}");
        if (label.OnUnit?.Value == false)
            wrong.Add("it is not on the unit");
        finding.Use("refrigerant", context.Job.Equipment.Refrigerant);
        if (label.GWP is not { } potential || circuit.Info is not { } info)
            return;
        var european = EuropeanWarming.Of(info)?.Potential;
        double?[] known = [info.GwpAr4?.Value, info.GwpAr5?.Value, info.GwpAr6?.Value, european];
        // Lists print whole numbers, and whoever writes them rounds once more.
        if (known.Any(k => k is not null) && !known.Any(k => k is { } gwp && Math.Abs(gwp - potential.Value) <= 1))
            wrong.Add(string.Create(CultureInfo.InvariantCulture, $"GWP {potential.Text}, known are {string.Join(", ", known.OfType<double>().Select(k => k.ToString("0.#", CultureInfo.InvariantCulture)).Distinct(StringComparer.Ordinal))}"));
    }

    private static string? Masses(CheckContext context, FindingBuilder finding, ChargeLabel label, Limit? law, List<string> wrong)
    {
        var weighed = context.Get<WeighedCharge>();
        string? compared = null;
        foreach (var use in context.Get<PlateRefrigerant>().Uses)
            finding.Use(use);
        if (label.Factory is { } factory && context.Get<PlateRefrigerant>().FactoryCharge is { } plate)
        {
            finding.Use("factory charge", plate);
            var difference = Written.Value(context, "label: factory", factory, DisplayKind.Mass) - Written.Value(context, "factory charge", plate, DisplayKind.Mass);
            Compare(context, finding, "factory charge", factory.Text, plate.Text, difference, wrong);
            compared = $"factory charge {factory.Text}";
        }

        if (label.Added is { } added && Beyond(context, weighed, label.Factory) is { } put)
        {
            put.UseIn(finding);
            Compare(context, finding, "charge added", added.Text, context.Present.Text(put.Value, DisplayKind.Mass), Written.Value(context, "label: added", added, DisplayKind.Mass) - put.Value, wrong);
            compared = $"{added.Text} added";
        }

        if (label.Total is { } total && weighed.Total is { } whole)
        {
            whole.UseIn(finding);
            Compare(context, finding, "total", total.Text, context.Present.Text(whole.Value, DisplayKind.Mass), Written.Value(context, "label: total", total, DisplayKind.Mass) - whole.Value, wrong);
            compared = $"total {total.Text}";
        }
        else if (label is { Total: { } sum, Factory: { } part, Added: { } more })
        {
            var difference = Written.Value(context, "label: total", sum, DisplayKind.Mass) - Written.Value(context, "label: factory", part, DisplayKind.Mass) - Written.Value(context, "label: added", more, DisplayKind.Mass);
            Compare(context, finding, "total on the label", sum.Text, $"{part.Text} + {more.Text}", difference, wrong);
            compared ??= $"total {sum.Text}";
        }

        if (label is { CO2Equivalent: { } tonnes, Total: { } mass, GWP: { } gwp })
            Equivalent(context, finding, law, tonnes, mass, gwp, wrong);
        return compared;
    }

    // Where all of it went in anew, "added" is all of it, or what lies beyond the factory charge when the label writes that too.
    private static MassNumber? Beyond(CheckContext context, WeighedCharge weighed, Given<Mass>? factory)
    {
        if (!weighed.SawWholeCharge || factory is null || weighed.Put is not { } all)
            return weighed.Put;
        var beyond = all.Value - Written.Value(context, "label: factory", factory, DisplayKind.Mass);
        var step = new TraceStep("m_add", "charge beyond the factory charge", "put in − factory charge", $"{context.Present.Text(all.Value.Value, DisplayKind.Mass)} − {factory.Text}", context.Present.Text(beyond, DisplayKind.Mass), "definition");
        return new MassNumber(beyond, all.Readings, all.Uses, [.. all.Steps, step]);
    }

    private static void Equivalent(CheckContext context, FindingBuilder finding, Limit? law, Given<Mass> tonnes, Given<Mass> mass, Given<double> potential, List<string> wrong)
    {
        var expected = CarbonDioxideEquivalent.Tonnes(1, potential.Value) * 1000 * Written.Value(context, "label: total", mass, DisplayKind.Mass);
        finding.Step("CO2e", "carbon-dioxide equivalent on the label", CarbonDioxideEquivalent.Formula, $"{mass.Text} × {potential.Text}", $"{Tonnes(expected.Value)}, label {tonnes.Text}", law?.Source ?? "");
        var difference = Written.Value(context, "label: t CO2e", tonnes, DisplayKind.Mass) - expected;
        if (Math.Abs(difference.Value) > Math.Max(difference.Expanded, 0.005 * expected.Value))
            wrong.Add($"{tonnes.Text} CO2e, its own total and GWP make {Tonnes(expected.Value)}");
    }

    private static void Compare(CheckContext context, FindingBuilder finding, string what, string labelled, string weighed, Uncertain difference, List<string> wrong)
    {
        var present = context.Present;
        finding.Measure(difference, DisplayKind.Mass)
            .Step("d", $"{what}: label against weighed", "label − weighed", $"{labelled} − {weighed}", present.Text(difference, DisplayKind.Mass), "agreement within U: common practice, no source");
        if (Math.Abs(difference.Value) > difference.Expanded + 1e-9)
            wrong.Add($"{what} {labelled} on the label, {weighed} by weight");
    }


    private static string Tonnes(double kilograms) => string.Create(CultureInfo.InvariantCulture, $"{kilograms / 1000:0.00} t");
}
