using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Safety;

/// <summary>The steps that go before and along with work on a circuit whose refrigerant burns.</summary>
internal sealed class FlammableStepsCheck : ICheck
{
    public string Id => "safety.flammable-steps";

    public string Phase => Phases.Safety;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var gas = context.Get<FlammableRefrigerant>();
        var isSeasonal = context.Job.Identity.Work.Value == WorkKind.SeasonalCheck;
        var steps = context.Job.Safety?.Flammable;
        if (gas.Group is null)
        {
            if (steps is not null || !isSeasonal)
                yield return context.Finding(this).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant).NotEvaluated(SafetyMessages.GroupUnknown(new(gas.Designation)), SafetyMessages.GroupUnknownNext);
            yield break;
        }

        if (!gas.Burns || (steps is null && isSeasonal))
            yield break;
        var finding = context.Finding(this).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant);
        if (steps is null)
            yield return finding.NotEvaluated(SafetyMessages.StepsNotWritten(new(gas.Designation), new(gas.Group.Value)), SafetyMessages.FlammableStepsNext, "safety: {flammable: {area checked with: …, ignition sources removed: yes, ventilated: yes, extinguisher: …}}");
        else
            yield return Judge(context, finding, gas, steps);
    }

    private Finding Judge(CheckContext context, FindingBuilder finding, FlammableRefrigerant gas, FlammableSteps steps)
    {
        List<MessageValue> taken = [], refused = [], unwritten = [];
        // Signs, bonding and the pump's exhaust are asked after only where somebody says that they were left out.
        void WhenWritten(Message name, Given<bool>? given)
        {
            if (given is not null)
                Step(name, given);
        }

        void Step(Message name, Given<bool>? given)
        {
            finding.Use(name, given);
            (given is null ? unwritten : given.Value ? taken : refused).Add(name);
        }

        if (steps.AreaCheckedWith.IsEmpty)
            unwritten.Add(SafetyMessages.StepAreaChecked);
        else
            Detectors(context, finding, gas, steps, taken, refused);
        Step(SafetyMessages.StepIgnition, steps.IgnitionSourcesRemoved);
        Distance(context, finding, steps.Within, refused);
        Step(SafetyMessages.StepVentilated, steps.Ventilated);
        finding.Use(SafetyMessages.StepExtinguisher, steps.Extinguisher);
        (steps.Extinguisher is null ? unwritten : steps.Extinguisher.Value == Extinguisher.None ? refused : taken).Add(SafetyMessages.StepExtinguisher);
        Step(SafetyMessages.StepMachines, steps.MachinesRated);
        if (context.Job.Evacuation is { } evacuation)
        {
            WhenWritten(SafetyMessages.StepExhaust, steps.PumpExhaustOutdoors ?? evacuation.Pump?.ExhaustOutdoors);
            if (evacuation.Pump?.RatedForFlammable is { Value: false } rated)
            {
                finding.Use(SafetyMessages.ReadingPumpRated, rated);
                refused.Add(SafetyMessages.StepPumpRated);
            }
        }

        WhenWritten(SafetyMessages.StepSigns, steps.Signs);
        WhenWritten(SafetyMessages.StepBonded, steps.Bonded);
        if (steps.LeftHandThread is { } thread)
        {
            finding.Use(SafetyMessages.ReadingThread, thread);
            if (!thread.Value)
                finding.Remark(SafetyMessages.ThreadRemark);
        }

        if (refused.Count > 0)
            return finding.Danger(SafetyMessages.StepsRefused(Listed(refused)), this.WhenItFails());
        if (unwritten.Count > 0)
            return finding.NotEvaluated(SafetyMessages.StepsNotTold(Listed(unwritten)), SafetyMessages.FlammableStepsOpenNext, "safety: {flammable: {ignition sources removed: yes, ventilated: yes}}");
        return finding.Decide(true).Say(SafetyMessages.StepsTaken(Listed(taken))).Build();
    }

    private static ListValue Listed(List<MessageValue> steps) => new([.. steps], ListJoin.Comma);

    private static void Detectors(CheckContext context, FindingBuilder finding, FlammableRefrigerant gas, FlammableSteps steps, List<MessageValue> taken, List<MessageValue> refused)
    {
        foreach (var named in steps.AreaCheckedWith)
        {
            // The reader knows no other name than an instrument's.
            var detector = context.Get<InstrumentKit>().Find(named.Value)!;
            finding.Use(SafetyMessages.ReadingAreaChecked, named, detector.Id);
            var described = detector.Described;
            foreach (var detected in described.Detects)
                finding.Use(SafetyMessages.ReadingDetects(new(detector.Id)), detected, detector.Id);
            finding.Use(SafetyMessages.ReadingKind(new(detector.Id)), described.Kind, detector.Id).Use(SafetyMessages.ReadingRated(new(detector.Id)), described.RatedForFlammable, detector.Id);
            if (described.Kind.Value != InstrumentKind.LeakDetector)
                refused.Add(SafetyMessages.DetectorIsNone(new(detector.Id)));
            else if (described.RatedForFlammable?.Value == false)
                refused.Add(SafetyMessages.DetectorNotRated(new(detector.Id)));
            else if (!described.Detects.IsEmpty && !described.Detects.Any(d => Detects(gas, d.Value)))
                refused.Add(SafetyMessages.DetectorOtherGas(new(detector.Id), new(gas.Designation)));
            else
                taken.Add(SafetyMessages.StepAreaCheckedWith(new(detector.Id)));
        }

        if (steps.AlarmAt is not { } alarm || context.Limits.Find(LimitIds.SafetyFlammableLeakSearch) is not { Upper: { } most } limit)
            return;
        finding.Use(SafetyMessages.ReadingAlarm, alarm).Show(context.State(limit));
        if (alarm.Value.Si > most.Si)
            refused.Add(SafetyMessages.DetectorAlarm(new(alarm.Text)));
    }

    private static bool Detects(FlammableRefrigerant gas, string written)
    {
        var name = RefrigerantCatalogue.Find(written)?.Designation ?? written;
        return string.Equals(name, gas.Designation, StringComparison.OrdinalIgnoreCase)
            || string.Equals(name, gas.Group!.Value, StringComparison.OrdinalIgnoreCase)
            || gas.Components.Contains(name, StringComparer.OrdinalIgnoreCase);
    }

    private static void Distance(CheckContext context, FindingBuilder finding, Given<Length>? within, List<MessageValue> refused)
    {
        if (within is null || context.Limits.Find(LimitIds.SafetyFlammableIgnitionDistance) is not { Lower: { } least } limit)
            return;
        finding.Use(SafetyMessages.ReadingWithin, within).Show(context.State(limit));
        if (within.Value.Si < least.Si)
            refused.Add(SafetyMessages.StepWithinOnly(new(within.Text)));
    }
}

/// <summary>In which order a circuit with a refrigerant that burns was emptied before it was opened.</summary>
internal sealed class OpeningSequenceCheck : ICheck
{
    private static readonly FlammableStep[] Order = [FlammableStep.Recovered, FlammableStep.Purged, FlammableStep.Evacuated, FlammableStep.PurgedAgain, FlammableStep.Opened];

    public string Id => "safety.opening-sequence";

    public string Phase => Phases.Safety;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (!context.Get<FlammableRefrigerant>().Burns)
            yield break;
        var work = context.Job.Identity.Work;
        var opens = work.Value is WorkKind.OpenedCircuit or WorkKind.LeakRepair or WorkKind.CompressorReplacement or WorkKind.RefrigerantChange;
        var sequence = context.Job.Safety?.Flammable is { } steps ? steps.Sequence : [];
        if (sequence.IsEmpty && !opens)
            yield break;
        var finding = context.Finding(this).Use(ReadingsMessages.Work, work);
        foreach (var step in sequence)
            finding.Use(SafetyMessages.ReadingSequence, step);
        if (context.Limits.Find(LimitIds.SafetyFlammableOpening) is { } limit)
            finding.Show(context.State(limit));
        if (sequence.IsEmpty)
        {
            yield return finding.NotEvaluated(SafetyMessages.FlammableOrderNotWritten, SafetyMessages.FlammableOrderNotWrittenNext, "safety: {flammable: {sequence: [recovered, purged, evacuated, purged again, opened]}}");
            yield break;
        }

        var written = new ListValue([.. sequence.Select(s => new TextValue(s.Text))], ListJoin.Comma);
        var done = sequence.Select(s => s.Value).ToList();
        // Work that ends before the circuit is opened, such as taking a unit away whole, has no last step.
        var due = done.Contains(FlammableStep.Opened) || opens ? Order : Order[..^1];
        var missing = due.Where(s => !done.Contains(s)).ToList();
        var places = done.Select(s => Array.IndexOf(Order, s)).ToList();
        var isRightOrder = places.SequenceEqual(places.Order());
        if (missing.Count > 0)
            yield return finding.Danger(SafetyMessages.OpeningMissing(new([.. missing.Select(Named)], ListJoin.Comma)), this.WhenItFails());
        else if (!isRightOrder)
            yield return finding.Danger(SafetyMessages.OpeningOrder(written), this.WhenItFails());
        else
            yield return finding.Decide(true).Say(SafetyMessages.OpeningInOrder(written)).Build();
    }

    private static Message Named(FlammableStep step) => step switch
    {
        FlammableStep.Recovered => SafetyMessages.OpeningRecovered,
        FlammableStep.Purged => SafetyMessages.OpeningPurged,
        FlammableStep.Evacuated => SafetyMessages.OpeningEvacuated,
        FlammableStep.PurgedAgain => SafetyMessages.OpeningPurgedAgain,
        _ => SafetyMessages.OpeningOpened,
    };
}

/// <summary>Whether the refrigerant burns, and how easily.</summary>
internal sealed class FlammableRefrigerant : IAnalysis<FlammableRefrigerant>
{
    private FlammableRefrigerant(CircuitRefrigerant circuit)
    {
        Designation = circuit.Designation;
        Group = circuit.Info?.SafetyGroup;
        LowerFlammabilityLimit = circuit.Info?.LowerFlammabilityLimit;
        Components = circuit.Info is { } info ? [.. info.Composition.Select(c => c.Designation)] : [];
    }

    public string Designation { get; }

    /// <summary>Safety group with its mark; null when it is not known here.</summary>
    public SourcedText? Group { get; }

    /// <summary>Lower flammability limit, kg/m³; null when it is not known here.</summary>
    public SourcedValue? LowerFlammabilityLimit { get; }

    /// <summary>Designations of what it is mixed from.</summary>
    public IReadOnlyList<string> Components { get; }

    /// <summary>Whether it burns: group 2L, 2 or 3.</summary>
    public bool Burns => Group is { Value: [_, '2' or '3', ..] };

    /// <summary>Whether it burns slowly only.</summary>
    public bool IsA2L => Group?.Value == "A2L";

    /// <inheritdoc/>
    public static FlammableRefrigerant Create(CheckContext context) => new(context.Get<CircuitRefrigerant>());
}
