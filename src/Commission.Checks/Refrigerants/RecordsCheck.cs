using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
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
            var wanted = new WantedItems(context);
            var items = pack.Name switch
            {
                "eu-f-gas" => wanted.Europe(),
                "us-epa-608" => wanted.UnitedStates(),
                "en-378" => wanted.Standard(),
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
        var finding = context.Finding(this, context.Present.Text(pack.Title)).Use(RefrigerantMessages.ReadingPack, name);
        context.Get<EuropeanDuties>().UseIn(finding);
        return finding.Information(RefrigerantMessages.RecordsNotPrescribed(free.Because), RefrigerantMessages.RecordsKind);
    }

    private Finding Tell(CheckContext context, Given<string> name, LimitPack pack, LimitEntry entry, List<RecordItem> items)
    {
        var finding = context.Finding(this, context.Present.Text(pack.Title)).Use(RefrigerantMessages.ReadingPack, name).Use(ReadingsMessages.Work, context.Job.Identity.Work);
        foreach (var use in items.SelectMany(i => i.Uses).OfType<ReadingUse>())
            finding.Use(use);
        var missing = items.Where(i => !i.IsWritten).ToList();
        finding.Step(
            "", RefrigerantMessages.RecordsStep, entry.Statement is { } statement ? statement : "", RefrigerantMessages.RecordsItems(Names(items.Where(i => i.IsWritten))),
            RefrigerantMessages.RecordsStepResult(items.Count - missing.Count, items.Count), Cited.As(entry.SourceText(context.Present.Text), entry.Mark));
        return missing.Count == 0
            ? finding.Information(RefrigerantMessages.RecordsComplete(Names(items)), RefrigerantMessages.RecordsKind)
            : finding.Next(this.WhenItFails()).Information(RefrigerantMessages.RecordsMissing(Names(missing)), RefrigerantMessages.RecordsKind);
    }

    private static ListValue Names(IEnumerable<RecordItem> items) => new([.. items.Select(i => i.What)], ListJoin.Comma);
}

/// <summary>What each regulation wants of a job.</summary>
/// <param name="context">The job and everything derived from it.</param>
internal sealed class WantedItems(CheckContext context)
{
    private readonly Job _job = context.Job;

    private ReadingUse? Charge => Of(RefrigerantMessages.ReadingTotalOnLabel, _job.Label?.Total) ?? Of(ReadingsMessages.FactoryCharge, _job.Equipment.Nameplate?.FactoryCharge) ?? Added;

    private ReadingUse? Added =>
        Of(RefrigerantMessages.ReadingAdded, _job.Charging?.Added) ?? Of(ReadingsMessages.ScaleBefore, _job.Charging?.Scale.FirstOrDefault()?.Before)
        ?? Of(RefrigerantMessages.ReadingAdded, _job.Charging?.Events.FirstOrDefault(e => e.Added is not null)?.Added);

    private ReadingUse? Recovered =>
        Of(ReadingsMessages.MassRecovered, _job.Recovery?.Mass) ?? Of(RefrigerantMessages.ReadingRecoveryAfter, _job.Recovery?.Scale?.After) ?? Of(ReadingsMessages.ChargeRecovered, _job.AsFound?.ChargeRecovered);

    private bool Opens => _job.Identity.Work.Value is not (WorkKind.NewInstallation or WorkKind.ChargeAdjustment or WorkKind.SeasonalCheck);

    /// <summary>Regulation (EU) 2024/573, point by point of article 7(1).</summary>
    public List<RecordItem> Europe()
    {
        var people = _job.Identity.People;
        var isNew = _job.Identity.Work.Value == WorkKind.NewInstallation;
        var items = new List<RecordItem> { new(RefrigerantMessages.RecordEuQuantity, Charge) };
        if (_job.Charging is not null)
            items.Add(new(isNew ? RefrigerantMessages.RecordEuAddedNew : RefrigerantMessages.RecordEuAdded, Added));
        if (Opens)
            items.Add(new(RefrigerantMessages.RecordEuRecovered, Recovered));
        if (_job.Charging is not null && !isNew)
        {
            items.Add(new(RefrigerantMessages.RecordEuOrigin, [.. _job.Cylinders.Select(c => Of(RefrigerantMessages.ReadingContents, c.Contents))]));
            if (_job.Cylinders.Where(c => c.Contents?.Value == CylinderContents.Reclaimed || (c.Contents?.Value == CylinderContents.Recycled && c.Supplier is not null)).ToList() is { Count: > 0 } used)
            {
                items.Add(new(RefrigerantMessages.RecordEuFacility, [.. used.Select(c => Of(RefrigerantMessages.ReadingSupplier, c.Supplier))]));
                items.Add(new(RefrigerantMessages.RecordEuFacilityCertificate, [.. used.Select(c => Of(RefrigerantMessages.ReadingCertificate, c.Certificate))]));
            }
        }

        items.Add(new(RefrigerantMessages.RecordEuUndertaking, Of(RefrigerantMessages.ReadingInstaller, people?.Installer)));
        items.Add(new(RefrigerantMessages.RecordEuUndertakingCertificate, Of(RefrigerantMessages.ReadingCompanyCertificate, people?.CompanyCertificate)));
        items.Add(new(RefrigerantMessages.RecordEuPerson, Of(ReadingsMessages.Technician, people?.Technician)));
        items.Add(new(RefrigerantMessages.RecordEuPersonCertificate, Of(RefrigerantMessages.ReadingPersonCertificate, people?.PersonCertificate)));
        if (_job.Identity.Work.Value != WorkKind.Decommissioning)
            items.Add(new(RefrigerantMessages.RecordEuLeakCheck, Of(ReadingsMessages.LeakCheck, _job.LeakCheck?.Date), Of(RefrigerantMessages.ReadingResult, _job.LeakCheck?.Result)));
        if (_job.Identity.Work.Value == WorkKind.LeakRepair)
            items.Add(new(RefrigerantMessages.RecordEuLeakPlace, Of(RefrigerantMessages.ReadingLeakPlace, _job.AsFound?.LeakPlace)));
        if (_job.Identity.Work.Value == WorkKind.Decommissioning)
            items.Add(new(RefrigerantMessages.RecordEuDestination, Of(RefrigerantMessages.ReadingFacility, _job.Recovery?.Facility)));
        return items;
    }

    /// <summary>The leak-repair rules of the United States.</summary>
    public List<RecordItem> UnitedStates()
    {
        var people = _job.Identity.People;
        var items = new List<RecordItem>
        {
            new(RefrigerantMessages.RecordOwner, Of(RefrigerantMessages.ReadingOwner, people?.Owner)),
            new(RefrigerantMessages.RecordAppliance, Of(RefrigerantMessages.ReadingOutdoorSerial, _job.Equipment.Outdoor?.Serial), Of(RefrigerantMessages.ReadingOutdoorModel, _job.Equipment.Outdoor?.Model)),
            new(RefrigerantMessages.RecordLocation, Of(RefrigerantMessages.ReadingAddress, _job.Identity.Site.Address), Of(RefrigerantMessages.ReadingSite, _job.Identity.Site.Name)),
            new(RefrigerantMessages.RecordFullCharge, Charge),
            new(RefrigerantMessages.RecordPerson, Of(ReadingsMessages.Technician, people?.Technician)),
            new(RefrigerantMessages.RecordVerification, Of(ReadingsMessages.LeakCheck, _job.LeakCheck?.Date), Of(RefrigerantMessages.ReadingTightness, _job.PressureTest?.Tightness?.To?.Pressure)),
            new(RefrigerantMessages.RecordInstalled, Of(RefrigerantMessages.ReadingStartUp, _job.Equipment.StartUpDate), _job.Identity.Work.Value == WorkKind.NewInstallation ? Of(ReadingsMessages.DateOfJob, _job.Identity.Date) : null),
        };
        if (_job.Charging is not null || _job.Recovery is not null)
            items.Add(new(RefrigerantMessages.RecordAmount, Added, Recovered));
        if (_job.Identity.Work.Value is WorkKind.LeakRepair or WorkKind.CompressorReplacement)
            items.Add(new(RefrigerantMessages.RecordParts, Of(RefrigerantMessages.ReadingLeakPlace, _job.AsFound?.LeakPlace), Of(RefrigerantMessages.ReadingFailedPart, _job.AsFound?.FailedPart?.What), Of(RefrigerantMessages.ReadingNotes, _job.Identity.Notes)));
        if (_job.Charging is not null && _job.Identity.Work.Value is not (WorkKind.NewInstallation or WorkKind.RefrigerantChange))
            items.Add(new(RefrigerantMessages.RecordLastAddition, Of(RefrigerantMessages.ReadingPreviousAddition, _job.Charging.PreviousAddition)));
        return items;
    }

    /// <summary>EN 378.</summary>
    public List<RecordItem> Standard()
    {
        var plate = _job.Equipment.Nameplate;
        var items = new List<RecordItem>
        {
            new(RefrigerantMessages.RecordInstaller, Of(RefrigerantMessages.ReadingInstaller, _job.Identity.People?.Installer)),
            new(RefrigerantMessages.RecordModel, Of(RefrigerantMessages.ReadingOutdoorModel, _job.Equipment.Outdoor?.Model)),
            new(RefrigerantMessages.RecordSerial, Of(RefrigerantMessages.ReadingOutdoorSerial, _job.Equipment.Outdoor?.Serial)),
            new(RefrigerantMessages.RecordCharge, Charge),
            new(RefrigerantMessages.RecordAllowableLow, Of(RefrigerantMessages.ReadingDesignLow, plate?.DesignPressure?.Low)),
            new(RefrigerantMessages.RecordAllowableHigh, Of(CommonMessages.ReadingDesignHigh, plate?.DesignPressure?.High)),
            new(RefrigerantMessages.RecordElectrical, Of(RefrigerantMessages.ReadingVoltage, plate?.Voltage), Named("MCA", plate?.MCA), Named("RLA", plate?.CompressorRLA), Of(ReadingsMessages.RatedCurrent, plate?.RatedCurrent)),
            new(RefrigerantMessages.RecordLogbook, Of(RefrigerantMessages.ReadingLogbook, _job.Equipment.Logbook)),
        };
        if (_job.Identity.Work.Value is WorkKind.NewInstallation || Opens)
        {
            items.Add(new(RefrigerantMessages.RecordStrength, Of(RefrigerantMessages.ReadingStrength, _job.PressureTest?.Strength?.Pressure)));
            items.Add(new(RefrigerantMessages.RecordTightness, Of(RefrigerantMessages.ReadingTightness, _job.PressureTest?.Tightness?.To?.Pressure), Of(RefrigerantMessages.ReadingTightnessLog, _job.PressureTest?.Tightness?.Series?.File)));
            items.Add(new(RefrigerantMessages.RecordVacuum, Of(RefrigerantMessages.ReadingEvacuationStarted, _job.Evacuation?.Started), Of(ReadingsMessages.EvacuationLog, _job.Evacuation?.Series?.File)));
            items.Add(new(RefrigerantMessages.RecordDevices, [.. (_job.Safety?.Devices ?? []).SelectMany(d => new[] { Of(RefrigerantMessages.ReadingDeviceTripped, d.TrippedAt), Of(RefrigerantMessages.ReadingDeviceTested, d.Tested) })]));
        }

        return items;
    }

    private ReadingUse? Of<T>(Message name, Given<T>? given) => Named(context.Present.Text(name), given);

    private static ReadingUse? Named<T>(string name, Given<T>? given) => given?.Use(name);
}

/// <summary>Something a regulation wants in the record.</summary>
/// <param name="What">What it is.</param>
/// <param name="Uses">Where the job says it; empty when it does not.</param>
internal sealed record RecordItem(Message What, params ReadingUse?[] Uses)
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
        var finding = context.Finding(this).Use(RefrigerantMessages.ReadingLabelRefrigerant, label.Refrigerant).Use(RefrigerantMessages.ReadingLabelFactory, label.Factory).Use(RefrigerantMessages.ReadingLabelAdded, label.Added)
            .Use(RefrigerantMessages.ReadingLabelTotal, label.Total).Use(RefrigerantMessages.ReadingLabelPotential, label.GWP).Use(RefrigerantMessages.ReadingLabelEquivalent, label.CO2Equivalent).Use(RefrigerantMessages.ReadingLabelOnUnit, label.OnUnit);
        var wrong = new List<Message>();
        Words(context, finding, label, wrong);
        // The law asks nothing of the label of a gas that it does not know.
        var law = context.Get<EuropeanDuties>().Warming is { IsFluorinated: false } ? null : context.Limits.Find(LimitIds.RefrigerantLabel);
        var compared = Masses(context, finding, label, law, wrong);
        if (law is not null)
            finding.Show(context.State(law));
        if (wrong.Count > 0)
            return finding.Decide(false).Say(RefrigerantMessages.LabelWrong(wrong.Aggregate(RefrigerantMessages.LabelFaults))).Next(this.WhenItFails()).Build();
        if (compared is null)
            return finding.NotEvaluated(context.Get<CircuitCharge>() is { IsWeighed: false, WhyNot: { } why } ? RefrigerantMessages.LabelNothingToCompare(why) : RefrigerantMessages.LabelNothingWritten, RefrigerantMessages.LabelNothingNext);
        finding.Decide(true).Say(compared);
        foreach (var part in law is null ? [] : NotOn(label, IsAdded(context)))
            finding.Reserve(RefrigerantMessages.LabelLacks(part)).Next(RefrigerantMessages.LabelLacksNext);
        return finding.Build();
    }

    // Quantity, potential and tonnes are asked of every label; the charge from the factory and what was added to it only where something was.
    private static IEnumerable<RefrigerantMessages.LabelLacksPart> NotOn(ChargeLabel label, bool isAdded) =>
        new[]
        {
            (RefrigerantMessages.LabelLacksPart.Factory, !isAdded || label.Factory is not null), (RefrigerantMessages.LabelLacksPart.Added, !isAdded || label.Added is not null),
            (RefrigerantMessages.LabelLacksPart.Total, label.Total is not null || (!isAdded && label.Factory is not null)),
            (RefrigerantMessages.LabelLacksPart.Potential, label.GWP is not null), (RefrigerantMessages.LabelLacksPart.Equivalent, label.CO2Equivalent is not null),
        }.Where(part => !part.Item2).Select(part => part.Item1);

    // Whether gas was added to the charge from the factory; a charge that was weighed in whole was added to nothing.
    private static bool IsAdded(CheckContext context) => context.Get<WeighedCharge>() is { SawWholeCharge: false, Put.Value.Value: > 0 };

    private static void Words(CheckContext context, FindingBuilder finding, ChargeLabel label, List<Message> wrong)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        if (label.Refrigerant is { } written && !string.Equals(RefrigerantCatalogue.Find(written.Value)?.Designation, circuit.Designation, StringComparison.Ordinal))
            wrong.Add(RefrigerantMessages.LabelOtherGas(new(written.Value), new(circuit.Designation)));
        if (label.OnUnit?.Value == false)
            wrong.Add(RefrigerantMessages.LabelNotOnUnit);
        finding.Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant);
        if (label.GWP is not { } potential || circuit.Info is not { } info)
            return;
        var european = EuropeanWarming.Of(info)?.Potential;
        double?[] known = [info.GwpAr4?.Value, info.GwpAr5?.Value, info.GwpAr6?.Value, european];
        // Lists print whole numbers, and whoever writes them rounds once more.
        if (known.Any(k => k is not null) && !known.Any(k => k is { } gwp && Math.Abs(gwp - potential.Value) <= 1))
            wrong.Add(RefrigerantMessages.LabelOtherPotential(new(potential.Text), new([.. known.OfType<double>().Select(WarmingPotentials.Printed).Distinct()], ListJoin.Comma)));
    }

    private static Message? Masses(CheckContext context, FindingBuilder finding, ChargeLabel label, Limit? law, List<Message> wrong)
    {
        var present = context.Present;
        var weighed = context.Get<WeighedCharge>();
        Message? compared = null;
        foreach (var use in context.Get<PlateRefrigerant>().Uses)
            finding.Use(use);
        if (label.Factory is { } factory && context.Get<PlateRefrigerant>().FactoryCharge is { } plate)
        {
            finding.Use(ReadingsMessages.FactoryCharge, plate);
            var difference = Labelled(context, RefrigerantMessages.ReadingLabelFactory, factory) - Labelled(context, ReadingsMessages.FactoryCharge, plate);
            Compare(context, finding, new(RefrigerantMessages.LabelStepWhat.Factory, RefrigerantMessages.LabelStepFormulaWhat.Factory, $"{factory.Text} − {plate.Text}", difference, RefrigerantMessages.LabelOtherFactory(new(factory.Text), new(plate.Text))), wrong);
            compared = RefrigerantMessages.LabelFitsFactory(new(factory.Text));
        }

        if (label.Added is { } added && Beyond(context, weighed, label.Factory) is { } put)
        {
            put.UseIn(finding);
            var difference = Labelled(context, RefrigerantMessages.ReadingLabelAdded, added) - put.Value;
            Compare(context, finding, new(RefrigerantMessages.LabelStepWhat.Added, RefrigerantMessages.LabelStepFormulaWhat.Added, $"{added.Text} − {present.Text(put.Value, DisplayKind.Mass)}", difference, RefrigerantMessages.LabelOtherAdded(new(added.Text), present.InMessage(put.Value, DisplayKind.Mass))), wrong);
            compared = RefrigerantMessages.LabelFitsAdded(new(added.Text));
        }

        if (label.Total is { } total && weighed.Total is { } whole)
        {
            whole.UseIn(finding);
            var difference = Labelled(context, RefrigerantMessages.ReadingLabelTotal, total) - whole.Value;
            Compare(context, finding, new(RefrigerantMessages.LabelStepWhat.Total, RefrigerantMessages.LabelStepFormulaWhat.Total, $"{total.Text} − {present.Text(whole.Value, DisplayKind.Mass)}", difference, RefrigerantMessages.LabelOtherTotal(new(total.Text), present.InMessage(whole.Value, DisplayKind.Mass))), wrong);
            compared = RefrigerantMessages.LabelFitsTotal(new(total.Text));
        }
        else if (label is { Total: { } sum, Factory: { } part, Added: { } more })
        {
            var difference = Labelled(context, RefrigerantMessages.ReadingLabelTotal, sum) - Labelled(context, RefrigerantMessages.ReadingLabelFactory, part) - Labelled(context, RefrigerantMessages.ReadingLabelAdded, more);
            Compare(context, finding, new(RefrigerantMessages.LabelStepWhat.Sum, RefrigerantMessages.LabelStepFormulaWhat.Sum, $"{sum.Text} − ({part.Text} + {more.Text})", difference, RefrigerantMessages.LabelOtherSum(new(sum.Text), new(part.Text), new(more.Text))), wrong);
            compared ??= RefrigerantMessages.LabelFitsTotal(new(sum.Text));
        }

        if (label is { CO2Equivalent: { } tonnes, Total: { } mass, GWP: { } gwp })
            Equivalent(context, finding, law, tonnes, mass, gwp, wrong);
        return compared;
    }

    private static Uncertain Labelled(CheckContext context, Message name, Given<Mass> mass) => Written.Value(context, context.Present.Text(name), mass, DisplayKind.Mass);

    // Where all of it went in anew, "added" is all of it, or what lies beyond the factory charge when the label writes that too.
    private static MassNumber? Beyond(CheckContext context, WeighedCharge weighed, Given<Mass>? factory)
    {
        if (!weighed.SawWholeCharge || factory is null || weighed.Put is not { } all)
            return weighed.Put;
        var beyond = all.Value - Labelled(context, RefrigerantMessages.ReadingLabelFactory, factory);
        var present = context.Present;
        var step = new TraceStep(
            "m_add", present.Text(RefrigerantMessages.LabelStepBeyond), present.Text(RefrigerantMessages.LabelStepBeyondFormula), $"{present.Text(all.Value.Value, DisplayKind.Mass)} − {factory.Text}",
            present.Text(beyond, DisplayKind.Mass), present.Text(RefrigerantMessages.StepDefinition));
        return new MassNumber(beyond, all.Readings, all.Uses, [.. all.Steps, step]);
    }

    private static void Equivalent(CheckContext context, FindingBuilder finding, Limit? law, Given<Mass> tonnes, Given<Mass> mass, Given<double> potential, List<Message> wrong)
    {
        var expected = CarbonDioxideEquivalent.Tonnes(1, potential.Value) * 1000 * Labelled(context, RefrigerantMessages.ReadingLabelTotal, mass);
        var made = new NumberValue(expected.Value / 1000, 2);
        finding.Step("CO2e", RefrigerantMessages.LabelStepEquivalent, CarbonDioxideEquivalent.Formula, $"{mass.Text} × {potential.Text}", RefrigerantMessages.LabelStepEquivalentResult(made, new(tonnes.Text)), law?.Source ?? "");
        var difference = Labelled(context, RefrigerantMessages.ReadingLabelEquivalent, tonnes) - expected;
        if (Math.Abs(difference.Value) > Math.Max(difference.Expanded, 0.005 * expected.Value))
            wrong.Add(RefrigerantMessages.LabelOtherEquivalent(new(tonnes.Text), made));
    }

    // A mass on the label against the same from elsewhere: what is compared, the numbers, and what is said when they differ.
    private sealed record Comparison(RefrigerantMessages.LabelStepWhat What, RefrigerantMessages.LabelStepFormulaWhat Formula, string Numbers, Uncertain Difference, Message Fault);

    private static void Compare(CheckContext context, FindingBuilder finding, Comparison compared, List<Message> wrong)
    {
        var difference = compared.Difference;
        finding.Measure(difference, DisplayKind.Mass)
            .Step("d", RefrigerantMessages.LabelStep(compared.What), RefrigerantMessages.LabelStepFormula(compared.Formula), compared.Numbers, context.Present.Text(difference, DisplayKind.Mass), RefrigerantMessages.LabelStepSource);
        if (Math.Abs(difference.Value) > difference.Expanded + 1e-9)
            wrong.Add(compared.Fault);
    }
}
