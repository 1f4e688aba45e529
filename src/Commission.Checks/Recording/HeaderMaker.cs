using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Fluids.Mixtures;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Corrections;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>Makes the head of the record: which job, where, by whom, on what.</summary>
internal static class HeaderMaker
{
    private const string IsoDay = "yyyy-MM-dd";

    /// <param name="job">The job.</param>
    /// <param name="asOf">The moment the record speaks for, ISO 8601; its day is that of the issue.</param>
    public static JobHeader Make(Job job, string asOf)
    {
        var identity = job.Identity;
        var equipment = job.Equipment;
        return new JobHeader
        {
            Id = identity.Id.Value,
            Work = identity.Work.Text,
            Date = identity.Date.Value.ToString(IsoDay, CultureInfo.InvariantCulture),
            Issued = asOf[..IsoDay.Length],
            Issuer = new IssuerNote(
                identity.People?.Installer?.Value ?? identity.People?.Technician?.Value ?? "",
                identity.People?.Address?.Value ?? "",
                identity.People?.CompanyCertificate?.Value ?? "",
                identity.People?.Logo?.Value ?? ""),
            Revision = identity.Revision is { } revision ? new RevisionNote((int)revision.Number.Value, revision.Replaces.Value, revision.Reason.Value) : null,
            Site = identity.Site.Name?.Value ?? identity.Site.Address?.Value ?? "not named",
            System = string.Join(", ", new[] { Capital(equipment.System.Text), equipment.Refrigerant.Value, equipment.Capacity?.Text, equipment.Circuit is { } c ? "circuit " + c.Value : null }.OfType<string>()),
            Notes = identity.Notes?.Value ?? "",
            Groups = [.. Groups(job).Where(g => g.Rows.Length > 0)],
        };
    }

    private static IEnumerable<HeaderGroup> Groups(Job job)
    {
        var site = job.Identity.Site;
        yield return Group("Site", ("Name", site.Name?.Value), ("Address", site.Address?.Value), ("Elevation", site.Elevation?.Text), ("Station pressure", site.StationPressure?.Text), ("Time zone", job.Identity.Zone?.Value));
        if (job.Identity.People is { } people)
        {
            yield return Group(
                "People",
                ("Installer", people.Installer?.Value),
                ("Address", people.Address?.Value),
                ("Company certificate", people.CompanyCertificate?.Value),
                ("Technician", people.Technician?.Value),
                ("Person certificate", people.PersonCertificate?.Value),
                ("Category", people.Category?.Value),
                ("Authorised by", people.ApprovedBy?.Value),
                ("Customer", people.Customer?.Value),
                ("Contact", people.Contact?.Value),
                ("Owner", people.Owner?.Value),
                ("Witness", people.Witness?.Value));
        }

        var equipment = job.Equipment;
        if (equipment.Outdoor is { } outdoor)
            yield return Group("Outdoor unit", ("Maker", outdoor.Maker?.Value), ("Model", outdoor.Model?.Value), ("Serial", outdoor.Serial?.Value));
        foreach (var indoor in equipment.Indoor)
        {
            var title = indoor.Id is { } id ? $"Indoor unit {id.Value}" : "Indoor unit";
            yield return Group(title, ("Maker", indoor.Maker?.Value), ("Model", indoor.Model?.Value), ("Serial", indoor.Serial?.Value), ("Capacity", indoor.Capacity?.Text), ("Room", indoor.Room?.Value));
        }

        yield return Group(
            "Circuit",
            ("Refrigerant", equipment.Refrigerant.Value),
            ("Compressor", Parts(equipment.Compressor?.Kind.Text, equipment.Compressor?.Maker?.Value, equipment.Compressor?.Model?.Value, equipment.Compressor?.Serial?.Value)),
            ("Metering", Joined(equipment.Metering?.Kind.Text, equipment.Metering?.Size?.Text)),
            ("Capacity", equipment.Capacity?.Text),
            ("Lines", Lines(equipment)),
            ("Covered by factory charge", Sole(equipment.Piping.Select(p => p.CoveredByFactoryCharge?.Text))));
        if (equipment.Nameplate is { } plate)
        {
            yield return Group(
                "Nameplate",
                ("Factory charge", plate.FactoryCharge?.Text),
                ("Design pressure low", plate.DesignPressure?.Low?.Text),
                ("Design pressure high", plate.DesignPressure?.High?.Text),
                ("Voltage", plate.Voltage?.Text),
                ("Phases", plate.Phases?.Text),
                ("Compressor RLA", plate.CompressorRLA?.Text),
                ("MCA", plate.MCA?.Text),
                ("MOP", plate.MOP?.Text),
                ("Fan FLA", plate.FanFLA?.Text),
                ("Run capacitor", plate.RunCapacitor?.Text),
                ("Max static", plate.MaxStatic?.Text));
        }
    }

    private static HeaderGroup Group(string title, params (string Label, string? Value)[] rows) =>
        new(title, [.. rows.Where(r => !string.IsNullOrEmpty(r.Value)).Select(r => new LabelValue(r.Label, r.Value!))]);

    private static string? Lines(Equipment equipment)
    {
        var runs = equipment.Piping.Select(run => string.Join(", ", new[] { Line("liquid", run.Liquid), Line("vapor", run.Vapor) }.OfType<string>())).Where(t => t.Length > 0).ToImmutableArray();
        return runs.Length switch
        {
            0 => null,
            1 => runs[0],
            _ => string.Create(CultureInfo.InvariantCulture, $"{runs.Length} runs"),
        };
    }

    private static string? Line(string name, Tube? tube) => tube is null ? null : $"{name} {tube.Od.Text} × {tube.Length.Text}";

    private static string? Parts(params string?[] parts) => parts.Any(p => p is not null) ? string.Join(", ", parts.OfType<string>()) : null;

    private static string? Joined(string? first, string? second) => first is null ? null : second is null ? first : $"{first}, {second}";

    private static string? Sole(IEnumerable<string?> texts) => texts.OfType<string>().Distinct(StringComparer.Ordinal).ToArray() is [var only] ? only : null;

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}

/// <summary>The instruments as page 2 shows them: identity, calibration, field checks, corrections, what each allows to be judged.</summary>
internal static class InstrumentRows
{
    public static ImmutableArray<InstrumentRow> Make(CheckContext context, IReadOnlyList<Finding> findings) =>
        [.. context.Get<InstrumentKit>().All.Select(i => Row(i.Described, findings))];

    // A calibration in date is a column of the table and needs no sentence.
    private const string CalibrationCheck = "instrument.calibration-current";

    private static InstrumentRow Row(Instrument instrument, IReadOnlyList<Finding> findings)
    {
        var id = instrument.Id.Value;
        var used = findings.Where(f => f.Instruments.Contains(id, StringComparer.Ordinal)).ToList();
        return new InstrumentRow
        {
            Id = id,
            Kind = instrument.Kind.Text,
            Maker = instrument.Maker?.Value ?? "",
            Model = instrument.Model?.Value ?? "",
            Serial = instrument.Serial?.Value ?? "",
            Certificate = instrument.Certificate?.Value ?? "",
            IsOverdue = used.Any(f => f.Check == CalibrationCheck && f.Subject == id && f.Verdict is not (Verdict.Pass or Verdict.Information or Verdict.NotEvaluated)),
            Accuracy = instrument.Accuracy?.Text ?? instrument.Sensor?.Text ?? "",
            Resolution = StepsOf(instrument),
            Calibrated = Joined(instrument.Calibrated?.Text, instrument.Interval?.Text),
            Reads = [.. instrument.Reads.Select(r => r.Text)],
            FieldChecks = [.. used.Where(f => f.Phase == Phases.Instruments && f.Subject == id && (f.Check != CalibrationCheck || f.Verdict != Verdict.Pass)).Select(f => f.Statement)],
            Corrections = [.. used.SelectMany(f => f.Trace).Where(s => s.Instrument == id).Select(s => s.Correction).OfType<CorrectionKind>().Select(Short).Distinct(StringComparer.Ordinal)],
            Judges = [.. used.Where(f => f.Phase != Phases.Instruments).Select(f => f.Title).Distinct(StringComparer.Ordinal)],
        };
    }

    // 0.1 psi (≤ 100 psig), 1 psi (> 100 psig): signs, which every language reads.
    private static string StepsOf(Instrument instrument)
    {
        var steps = instrument.Resolution;
        return string.Join(", ", steps.Select((s, i) =>
        {
            string[] ends = [s.Above is { } above ? $"> {above.Text}" : "", (s.UpTo ?? (i + 1 < steps.Length ? steps[i + 1].Above : null)) is { } end ? $"≤ {end.Text}" : ""];
            var range = string.Join(", ", ends.Where(e => e.Length > 0));
            return range.Length == 0 ? s.Step.Text : $"{s.Step.Text} ({range})";
        }));
    }

    // The numbers stand in the traces; here it is enough which corrections the readings had.
    private static string Short(CorrectionKind correction) => correction switch
    {
        CorrectionKind.Zero => "zero offset taken off",
        CorrectionKind.KnownPoints => "along the line through the known pressure",
        CorrectionKind.IcePoint => "ice-point residual taken off",
        _ => "bias toward ambient taken off",
    };

    private static string Joined(string? date, string? interval) => date is null ? "" : interval is null ? date : $"{date}, every {interval}";
}

/// <summary>The constants, formulas and equations of state a record rests on, each with its paper.</summary>
internal static class SourceNotes
{
    public static ImmutableArray<SourceNote> Make(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var notes = ImmutableArray.CreateBuilder<SourceNote>();
        var refrigerant = context.Get<CircuitRefrigerant>();
        if (refrigerant is { IsLoaded: true, Fluid: { } fluid })
        {
            foreach (var paper in fluid.Papers)
                notes.Add(new SourceNote("equation of state", refrigerant.Designation, fluid.IsBlend ? refrigerant.Info!.CompositionText : "", paper.Citation, "published"));
            notes.Add(new SourceNote("constant", $"{refrigerant.Designation}: gas constant used", string.Create(CultureInfo.InvariantCulture, $"{fluid.GasConstant:0.#########} J/(mol·K)"), "of the equation of state above", "published"));
            if (fluid.EstimatedPairs.Length > 0)
                notes.Add(new SourceNote("equation of state", refrigerant.Designation, $"estimated pairs: {string.Join(", ", fluid.EstimatedPairs)}", $"no published parameters for these pairs: {string.Join(" and ", fluid.CombiningRules.Select(RuleText))}; the uncertainty is widened", "common practice"));
        }

        foreach (var step in findings.SelectMany(f => f.Trace).Where(s => s.Source.Length > 0).DistinctBy(s => s.Source).OrderBy(s => s.Source, StringComparer.Ordinal))
            notes.Add(new SourceNote("formula", step.Name, step.Formula, step.Source, MarkOf(step.Source)));
        notes.Add(new SourceNote("standard", "uncertainty", "law of propagation, k = t95.45(ν)", "JCGM 100:2008 (GUM), 5.1, G.3 and G.4", "from memory"));
        notes.Add(new SourceNote("standard", "statements of conformity", "guarded acceptance w = U; probability of conformity", "ILAC-G8:09/2019; JCGM 106:2012, 7 and 8", "from memory"));
        return notes.ToImmutable();
    }

    private static string RuleText(CombiningRule rule) => rule switch
    {
        CombiningRule.LorentzBerthelot => "Lorentz–Berthelot combination",
        _ => "the published parameters of the related pairs that are named",
    };

    private static string MarkOf(string source) =>
        source.Contains("common practice", StringComparison.OrdinalIgnoreCase) ? "common practice"
        : source.Contains("from memory", StringComparison.OrdinalIgnoreCase) ? "from memory"
        : "published";
}
