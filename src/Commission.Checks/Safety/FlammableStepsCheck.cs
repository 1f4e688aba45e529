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
                yield return context.Finding(this).Use("refrigerant", context.Job.Equipment.Refrigerant).NotEvaluated($"the safety group of {gas.Designation} is not known here", "Take it from the cylinder or the nameplate; where it says A2L, A2 or A3, take the steps for flammable refrigerant and write them in the notes.");
            yield break;
        }

        if (!gas.Burns || (steps is null && isSeasonal))
            yield break;
        var finding = context.Finding(this).Use("refrigerant", context.Job.Equipment.Refrigerant);
        if (steps is null)
            yield return finding.NotEvaluated($"{gas.Designation} burns (safety group {gas.Group.Value}), and no steps are written", SafetyMessages.FlammableStepsNext, "safety: {flammable: {area checked with: …, ignition sources removed: yes, ventilated: yes, extinguisher: …}}");
        else
            yield return Judge(context, finding, gas, steps);
    }

    private Finding Judge(CheckContext context, FindingBuilder finding, FlammableRefrigerant gas, FlammableSteps steps)
    {
        List<string> taken = [], refused = [], unwritten = [];
        // Signs, bonding and the pump's exhaust are asked after only where somebody says that they were left out.
        void WhenWritten(string name, Given<bool>? given)
        {
            if (given is not null)
                Step(name, given);
        }

        void Step(string name, Given<bool>? given)
        {
            finding.Use(name, given);
            (given is null ? unwritten : given.Value ? taken : refused).Add(name);
        }

        if (steps.AreaCheckedWith.IsEmpty)
            unwritten.Add("area checked with a detector");
        else
            Detectors(context, finding, gas, steps, taken, refused);
        Step("ignition sources removed", steps.IgnitionSourcesRemoved);
        Distance(context, finding, steps.Within, refused);
        Step("ventilated", steps.Ventilated);
        finding.Use("extinguisher", steps.Extinguisher);
        (steps.Extinguisher is null ? unwritten : steps.Extinguisher.Value == Extinguisher.None ? refused : taken).Add("extinguisher");
        Step("machines rated for flammable refrigerant", steps.MachinesRated);
        if (context.Job.Evacuation is { } evacuation)
        {
            WhenWritten("pump exhaust outdoors", steps.PumpExhaustOutdoors ?? evacuation.Pump?.ExhaustOutdoors);
            if (evacuation.Pump?.RatedForFlammable is { Value: false } rated)
            {
                finding.Use("vacuum pump rated for flammable", rated);
                refused.Add("vacuum pump rated for flammable refrigerant");
            }
        }

        WhenWritten("signs", steps.Signs);
        WhenWritten("bonded", steps.Bonded);
        if (steps.LeftHandThread is { } thread)
        {
            finding.Use("left-hand thread", thread);
            if (!thread.Value)
                finding.Remark("The cylinder's thread is not left-handed, as it usually is for flammable gas: make sure what it holds.");
        }

        if (refused.Count > 0)
            return finding.Danger($"not taken or not enough for a refrigerant that burns: {string.Join(", ", refused)}.", this.WhenItFails());
        if (unwritten.Count > 0)
            return finding.NotEvaluated($"not written: {string.Join(", ", unwritten)}", SafetyMessages.FlammableStepsOpenNext, "safety: {flammable: {ignition sources removed: yes, ventilated: yes}}");
        return finding.Decide(true).Say($"Taken: {string.Join(", ", taken)}.").Build();
    }

    private static void Detectors(CheckContext context, FindingBuilder finding, FlammableRefrigerant gas, FlammableSteps steps, List<string> taken, List<string> refused)
    {
        foreach (var named in steps.AreaCheckedWith)
        {
            // The reader knows no other name than an instrument's.
            var detector = context.Get<InstrumentKit>().Find(named.Value)!;
            finding.Use("area checked with", named, detector.Id);
            var described = detector.Described;
            foreach (var detected in described.Detects)
                finding.Use($"{detector.Id}: detects", detected, detector.Id);
            finding.Use($"{detector.Id}: kind", described.Kind, detector.Id).Use($"{detector.Id}: rated for flammable", described.RatedForFlammable, detector.Id);
            if (described.Kind.Value != InstrumentKind.LeakDetector)
                refused.Add($"{detector.Id} is no leak detector");
            else if (described.RatedForFlammable?.Value == false)
                refused.Add($"{detector.Id} may not be used near flammable refrigerant");
            else if (!described.Detects.IsEmpty && !described.Detects.Any(d => Detects(gas, d.Value)))
                refused.Add($"{detector.Id} is not made for {gas.Designation}");
            else
                taken.Add($"area checked with {detector.Id}");
        }

        if (steps.AlarmAt is not { } alarm || context.Limits.Find(LimitIds.SafetyFlammableLeakSearch) is not { Upper: { } most } limit)
            return;
        finding.Use("detector alarm", alarm).Show(context.State(limit));
        if (alarm.Value.Si > most.Si)
            refused.Add($"detector alarm at {alarm.Text} of the lower flammability limit");
    }

    private static bool Detects(FlammableRefrigerant gas, string written)
    {
        var name = RefrigerantCatalogue.Find(written)?.Designation ?? written;
        return string.Equals(name, gas.Designation, StringComparison.OrdinalIgnoreCase)
            || string.Equals(name, gas.Group!.Value, StringComparison.OrdinalIgnoreCase)
            || gas.Components.Contains(name, StringComparer.OrdinalIgnoreCase);
    }

    private static void Distance(CheckContext context, FindingBuilder finding, Given<Length>? within, List<string> refused)
    {
        if (within is null || context.Limits.Find(LimitIds.SafetyFlammableIgnitionDistance) is not { Lower: { } least } limit)
            return;
        finding.Use("ignition sources removed within", within).Show(context.State(limit));
        if (within.Value.Si < least.Si)
            refused.Add($"ignition sources removed within {within.Text} only");
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
        var finding = context.Finding(this).Use("work", work);
        foreach (var step in sequence)
            finding.Use("sequence", step);
        if (context.Limits.Find(LimitIds.SafetyFlammableOpening) is { } limit)
            finding.Show(context.State(limit));
        if (sequence.IsEmpty)
        {
            yield return finding.NotEvaluated(SafetyMessages.FlammableOrderNotWritten, SafetyMessages.FlammableOrderNotWrittenNext, "safety: {flammable: {sequence: [recovered, purged, evacuated, purged again, opened]}}");
            yield break;
        }

        var written = string.Join(", ", sequence.Select(s => s.Text));
        var done = sequence.Select(s => s.Value).ToList();
        // Work that ends before the circuit is opened, such as taking a unit away whole, has no last step.
        var due = done.Contains(FlammableStep.Opened) || opens ? Order : Order[..^1];
        var missing = due.Where(s => !done.Contains(s)).ToList();
        var places = done.Select(s => Array.IndexOf(Order, s)).ToList();
        var isRightOrder = places.SequenceEqual(places.Order());
        if (missing.Count > 0)
            yield return finding.Danger($"of the steps before a flammable circuit is opened, these are not in the list: {string.Join(", ", missing.Select(Words))}.", this.WhenItFails());
        else if (!isRightOrder)
            yield return finding.Danger($"the steps before a flammable circuit is opened stand in another order: {written}.", this.WhenItFails());
        else
            yield return finding.Decide(true).Say($"In order: {written}.").Build();
    }

    private static string Words(FlammableStep step) => step == FlammableStep.PurgedAgain ? "purged again" : step.ToString().ToLowerInvariant();
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
