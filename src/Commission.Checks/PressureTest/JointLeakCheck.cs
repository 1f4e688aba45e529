using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>Each field joint, the method, and what the method can see. Only this check may speak of grams a year.</summary>
internal sealed class JointLeakCheck : ICheck
{
    public string Id => "pressure-test.joint-leak-check";

    public string Phase => Phases.PressureTest;

    public string Title => "Joint leak check";

    public CheckHelp Help { get; } = new(
        "Was every field joint searched for leaks while under pressure, and with a method fine enough?",
        "result none at each joint; sensitivity of the method at most what the pack asks; an electronic detector reacts to what stood in the circuit: a tracer, the refrigerant, never plain nitrogen",
        "IEC/UL 60335-2-40: field-made joints indoors, 5 g a year or finer (from memory). That a detector finds only what it is made for is a fact.",
        "Release the pressure, remake the joint (a new flare, or braze again under flowing nitrogen), test the section again and search the joint again. Never search with a flame.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        foreach (var joint in test.Joints)
            yield return Judge(context, joint);
        if (test.Joints.IsEmpty)
            yield return context.Finding(this).NotEvaluated(PressureTestMessages.SearchNoJoint, PressureTestMessages.SearchNoJointNext, "pressure test: {joints: [{place: …, kind: flare, method: bubble solution, result: none}]}");
    }

    private Finding Judge(CheckContext context, Joint joint)
    {
        var detector = joint.With.IsDefaultOrEmpty ? null : joint.With.Select(w => context.Get<InstrumentKit>().Find(w.Value)).FirstOrDefault(i => i is not null);
        var sensitivity = joint.Sensitivity ?? detector?.Described.Sensitivity;
        var finding = context.Finding(this, joint.Place.Value)
            .Use($"{joint.Place.Value}: kind", joint.Kind).Use($"{joint.Place.Value}: method", joint.Method, detector?.Id)
            .Use($"{joint.Place.Value}: result", joint.Result, detector?.Id).Use($"{joint.Place.Value}: sensitivity", sensitivity, detector?.Id).Use($"{joint.Place.Value}: number", joint.Count);
        if (joint.Result.Value == LeakResult.Leak)
            return finding.Decide(false).Say(PressureTestMessages.SearchLeak(new(joint.Place.Value))).Next(Help.WhenItFails).Build();
        if (joint.Method is not { } method)
            return finding.NotEvaluated(PressureTestMessages.SearchNoMethod, PressureTestMessages.SearchNoMethodNext, "pressure test: {joints: [{method: bubble solution}]}");
        var isElectronic = method.Value is LeakMethod.Electronic or LeakMethod.ElectronicWithTracer;
        if (isElectronic && Unmet(context, finding, method.Value, detector) is { } unmet)
            return unmet;
        var after = joint.Result.Value == LeakResult.LeakRepaired;
        if (context.Limits.Find(LimitIds.PressureTestJointLeakCheckSensitivity) is { } limit && sensitivity is not null && isElectronic)
        {
            // What the detector can see is no reading of the joint: the joint shows a leak or none.
            finding.Decide(sensitivity.Value.Si <= limit.Most.Si, context.State(limit));
            Doubt(context, finding, method.Value, detector);
            return finding.Conclude(
                PressureTestMessages.SearchFoundNoneSensitivity(new(joint.Place.Value), after ? PressureTestMessages.SearchFoundNoneSensitivityAfter.Repair : PressureTestMessages.SearchFoundNoneSensitivityAfter.Nothing, new(method.Text), new(sensitivity.Text)),
                PressureTestMessages.SearchTooCoarse(new(joint.Place.Value), after ? PressureTestMessages.SearchTooCoarseAfter.Repair : PressureTestMessages.SearchTooCoarseAfter.Nothing, new(method.Text), new(sensitivity.Text)),
                PressureTestMessages.SearchTooCoarseNext);
        }

        // Bubbles and sound show a leak or none; nobody states grams a year for them.
        finding.Decide(true);
        if (isElectronic)
            finding.Reserve(PressureTestMessages.SearchSensitivityNotWritten);
        if (isElectronic)
            Doubt(context, finding, method.Value, detector);
        return finding.Say(PressureTestMessages.SearchFoundNone(new(joint.Place.Value), after ? PressureTestMessages.SearchFoundNoneAfter.Repair : PressureTestMessages.SearchFoundNoneAfter.Nothing, new(method.Text)))
            .Next(PressureTestMessages.SearchSensitivityNotWrittenNext).Build();
    }

    // A search with a detector that could not react is no search.
    private static Finding? Unmet(CheckContext context, FindingBuilder finding, LeakMethod method, UsedInstrument? detector)
    {
        var test = context.Job.PressureTest!;
        var search = TracerSearch.Of(context, test);
        finding.Use("test gas", test.Gas).Use("tracer", test.Tracer?.Gas);
        if (search.IsPlain)
            return finding.NotEvaluated(PressureTestMessages.SearchPlain(new TextValue(test.Gas.Text)), PressureTestMessages.SearchPlainNext);
        var detects = detector?.Described.Detects ?? [];
        foreach (var gas in detects)
            finding.Use($"{detector!.Id}: detects", gas, detector.Id);
        if (detects.IsEmpty || search.IsUnnamed || search.IsMetBy(detects.Select(d => d.Value)))
            return null;
        return finding.NotEvaluated(
            PressureTestMessages.SearchOtherGas(new TextValue(detector!.Id), new ListValue([.. detects.Select(d => (MessageValue)new NameValue(d.Text))], ListJoin.And), new ListValue([.. search.Gases.Select(g => (MessageValue)new NameValue(g))], ListJoin.And)),
            PressureTestMessages.SearchOtherGasNext);
    }

    // What is not written is asked for where the method itself does not say it.
    private static void Doubt(CheckContext context, FindingBuilder finding, LeakMethod method, UsedInstrument? detector)
    {
        var search = TracerSearch.Of(context, context.Job.PressureTest!);
        var detects = (detector?.Described.Detects ?? []).Select(d => d.Value).ToList();
        if (search.IsUnnamed && detects.Count > 0 && !TracerSearch.IsForTracer(detects))
            finding.Reserve(PressureTestMessages.SearchTracerNotWritten).Next(PressureTestMessages.SearchTracerNotWrittenNext, "pressure test: {tracer: …}");
        else if (method == LeakMethod.Electronic && detects.Count == 0)
            finding.Reserve(PressureTestMessages.SearchDetectsNotWritten).Next(PressureTestMessages.SearchDetectsNotWrittenNext, "instruments: [{kind: leak detector, detects: […]}]");
    }
}
