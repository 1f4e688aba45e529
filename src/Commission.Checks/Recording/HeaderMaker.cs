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

/// <summary>The cautions that belong to this work and this refrigerant. Every one defers to local code and licensed practice.</summary>
internal static class CautionMaker
{
    public static ImmutableArray<Caution> Make(Job job, string? safetyGroup)
    {
        var cautions = ImmutableArray.CreateBuilder<Caution>();
        var opened = job.PressureTest is not null || job.Evacuation is not null || job.Recovery is not null
            || job.Identity.Work.Value is not (WorkKind.ChargeAdjustment or WorkKind.SeasonalCheck);
        if (safetyGroup is "A2L" or "A2" or "A3" or "B2L" or "B2" or "B3")
        {
            cautions.Add(new Caution(
                "flammable refrigerant",
                $"The refrigerant burns (safety group {safetyGroup}). Keep flames, sparks and switched loads away, ventilate, watch the air near the floor with a detector made for this gas, keep a dry-powder or carbon-dioxide extinguisher at hand, recover and purge before any brazing, and never search for leaks with a flame.{(safetyGroup.EndsWith('3') ? " It lights from a spark of static: bond cylinders, hoses and machines before the valves are opened." : "")}"));
        }

        if (safetyGroup is null)
            cautions.Add(new Caution("unknown refrigerant", "The safety group of the refrigerant is not known here. Until cylinder or nameplate say otherwise, treat it as flammable and toxic."));
        if (job.PressureTest is not null)
        {
            cautions.Add(new Caution(
                "pressure",
                "Test gas under pressure can burst a coil or throw a fitting. Use dry nitrogen only, through a regulator with a relief device set below the weakest part; never oxygen, acetylene or compressed air: with oil they explode. Raise the pressure in steps, stand clear of joints, vent outdoors."));
        }

        if (job.Evacuation is not null)
            cautions.Add(new Caution("vacuum", "Never energise a compressor or test its insulation while the circuit is under vacuum: its terminals arc. Break a vacuum with dry nitrogen, not with refrigerant. Keep the pump's exhaust outdoors, and away from ignition where the refrigerant burns."));
        if (opened || job.Charging is not null)
        {
            cautions.Add(new Caution("frostbite and eyes", "Liquid refrigerant freezes skin and eyes. Wear goggles and gloves; open valves slowly; keep caps on ports that are not in use."));
            cautions.Add(new Caution("asphyxiation", "Refrigerant and nitrogen displace air and collect low. Ventilate pits, cellars and plant rooms before and during the work, and leave at the first dizziness."));
        }

        if (safetyGroup?.StartsWith('B') == true)
            cautions.Add(new Caution("toxic refrigerant", "The refrigerant is toxic. Work with the breathing protection, detection and second person that the local code asks for."));
        if (job.Equipment.Refrigerant.Value.Contains("744", StringComparison.Ordinal))
            cautions.Add(new Caution("carbon dioxide", "Standing pressure exceeds that of other refrigerants by far, and liquid below 5.2 bar absolute turns to dry ice that can block a line. Charge vapour first, never trap liquid between closed valves, watch the concentration in the room."));
        cautions.Add(new Caution("electricity", "Mains voltage and charged capacitors kill. Disconnect, lock out, prove dead with a meter proved live before and after, and discharge capacitors before touching terminals; some readings here are taken live by qualified people only."));
        if (job.Recovery is not null || job.Cylinders.Length > 0)
            cautions.Add(new Caution("cylinders", "A cylinder full of liquid bursts when it warms. Let liquid fill no more than 80 % of a recovery cylinder; how much mass that is depends on the refrigerant, and flammable ones weigh little. Never mix refrigerants, and keep cylinders upright, in date, and out of the sun."));
        if (job.PressureTest?.Brazing is not null || job.PressureTest?.Joints.Any(j => j.Kind?.Value == JointKind.Brazed) == true)
            cautions.Add(new Caution("burns and fire", "Brazing and compressor discharge lines burn. Flow nitrogen while brazing, let no refrigerant near the flame (it decomposes into corrosive and toxic gases), shield what can burn, keep an extinguisher at hand, watch the place afterwards."));
        if (job.Charging is { Readings.IsEmpty: false })
            cautions.Add(new Caution("hot and moving parts", "Discharge lines burn skin, and fans start without warning. Keep hands, sleeves and hoses clear, and put guards and panels back before the unit is left."));
        cautions.Add(new Caution("law and licence", "This record does not replace the local code, the maker's instructions or the judgement of a licensed person. Where they differ from a limit shown here, they govern."));
        return cautions.ToImmutable();
    }
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
