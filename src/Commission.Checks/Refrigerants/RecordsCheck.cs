using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>What the regulations whose packs are named want in the record, and what of it is not there.</summary>
internal sealed class RecordsCheck : ICheck
{
    private const string LimitId = "refrigerant.records";

    public string Id => "refrigerant.records";

    public string Phase => Phases.Refrigerant;

    public string Title => "Records the law asks for";

    public CheckHelp Help { get; } = new(
        "Which of the things a regulation wants kept are in this record, and which are not?",
        "each item of the regulation is looked for in the job",
        "Regulation (EU) 517/2014 article 6 and 2024/573 article 7; 40 CFR 82.157(l); EN 378-2 clause 6 and EN 378-4 (lists partly from memory).",
        "Write what is missing; what the job file has no key for belongs into its notes or the operator's log-book.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var name in context.Job.Limits?.Packs ?? [])
        {
            if (context.Settings.Library.Find(name.Value) is not { } pack || pack.Find(LimitId, context.Limits.Situation) is not { } entry)
                continue;
            List<RecordItem> items = pack.Name switch
            {
                "eu-f-gas" => Europe(context.Job),
                "us-epa-608" => UnitedStates(context.Job),
                "en-378" => Standard(context.Job),
                _ => [],
            };
            if (items.Count > 0)
                yield return Tell(context, name, pack, entry, items);
        }
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
            : finding.Next(Help.WhenItFails).Information($"Not in this record: {string.Join(", ", missing)}.", "what a regulation wants kept");
    }

    private static List<RecordItem> Europe(Job job)
    {
        var people = job.Identity.People;
        var items = new List<RecordItem>
        {
            new("quantity and type of gas", Charge(job)),
            new("undertaking", Of("installer", people?.Installer)),
            new("certificate of the undertaking", Of("company certificate", people?.CompanyCertificate)),
            new("certificate of the person", Of("person certificate", people?.PersonCertificate)),
            new("leak check with date and result", Of("leak check", job.LeakCheck?.Date), Of("result", job.LeakCheck?.Result)),
        };
        if (job.Charging is not null)
            items.Add(new("quantity added", Added(job)));
        if (Opens(job))
        {
            items.Add(new("quantity recovered", Recovered(job)));
            items.Add(new("facility the recovered gas goes to", Of("facility", job.Recovery?.Facility)));
        }

        if (job.Charging is not null)
            items.Add(new("whether the gas is virgin, recycled or reclaimed", [.. job.Cylinders.Select(c => Of("contents", c.Contents))]));
        if (job.Cylinders.Where(c => c.Contents?.Value is CylinderContents.Recycled or CylinderContents.Reclaimed).ToList() is { Count: > 0 } used)
        {
            items.Add(new("name of the recycling or reclamation facility", [.. used.Select(c => Of("supplier", c.Supplier))]));
            items.Add(new("its certificate number", [.. used.Select(c => Of("certificate", c.Certificate))]));
        }

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

    private static ReadingUse? Of<T>(string name, Given<T>? given) => given is null ? null : new ReadingUse(name, given.Text, given.At, null);
}
