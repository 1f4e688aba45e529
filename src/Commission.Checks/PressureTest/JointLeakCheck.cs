using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>Each field joint, the method, and what the method can see. Only this check may speak of grams a year.</summary>
internal sealed class JointLeakCheck : ICheck
{
    // More than these have a row of their own in no record that anybody reads.
    private const int MostApart = 12;

    public string Id => "pressure-test.joint-leak-check";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        var alike = test.Joints.GroupBy(Kind).ToDictionary(g => g.Key, g => g.ToList());
        foreach (var joint in test.Joints)
        {
            // A long list of joints that were searched alike and showed nothing is one answer; a leak is told by itself.
            var same = alike[Kind(joint)];
            if (same.Count <= MostApart || joint.Result.Value == LeakResult.Leak)
                yield return Judge(context, [joint]);
            else if (ReferenceEquals(same[0], joint))
                yield return Judge(context, same);
        }

        if (test.Joints.IsEmpty)
            yield return context.Finding(this).NotEvaluated(PressureTestMessages.SearchNoJoint, PressureTestMessages.SearchNoJointNext, "pressure test: {joints: [{place: …, kind: flare, method: bubble solution, result: none}]}");
    }

    private static (JointKind?, LeakMethod?, LeakResult, double?, string) Kind(Joint joint) =>
        (joint.Kind?.Value, joint.Method?.Value, joint.Result.Value, joint.Sensitivity?.Value.Si, string.Join('|', joint.With.IsDefault ? [] : joint.With.Select(w => w.Value)));

    private Finding Judge(CheckContext context, List<Joint> joints)
    {
        var joint = joints[0];
        var place = new TextValue(string.Join(", ", joints.Select(j => j.Place.Value)));
        var detector = joint.With.IsDefaultOrEmpty ? null : joint.With.Select(w => context.Get<InstrumentKit>().Find(w.Value)).FirstOrDefault(i => i is not null);
        var sensitivity = joint.Sensitivity ?? detector?.Described.Sensitivity;
        var finding = context.Finding(this, joints.Count == 1 ? joint.Place.Value : context.Present.Text(PressureTestMessages.SearchJoints(joints.Count)));
        foreach (var each in joints)
        {
            var at = new TextValue(each.Place.Value);
            finding.Use(PressureTestMessages.ReadingJointPlace(at), each.Place).Use(PressureTestMessages.ReadingJointKind(at), each.Kind).Use(PressureTestMessages.ReadingJointMethod(at), each.Method, detector?.Id)
                .Use(PressureTestMessages.ReadingJointResult(at), each.Result, detector?.Id).Use(PressureTestMessages.ReadingJointSensitivity(at), each.Sensitivity ?? sensitivity, detector?.Id).Use(PressureTestMessages.ReadingJointNumber(at), each.Count);
        }

        if (joint.Result.Value == LeakResult.Leak)
            return finding.Decide(false).Say(PressureTestMessages.SearchLeak(place)).Next(this.WhenItFails()).Build();
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
                PressureTestMessages.SearchFoundNoneSensitivity(place, after ? PressureTestMessages.SearchFoundNoneSensitivityAfter.Repair : PressureTestMessages.SearchFoundNoneSensitivityAfter.Nothing, new(method.Text), new(sensitivity.Text)),
                PressureTestMessages.SearchTooCoarse(place, after ? PressureTestMessages.SearchTooCoarseAfter.Repair : PressureTestMessages.SearchTooCoarseAfter.Nothing, new(method.Text), new(sensitivity.Text)),
                PressureTestMessages.SearchTooCoarseNext);
        }

        // Bubbles and sound show a leak or none; nobody states grams a year for them.
        finding.Decide(true);
        if (isElectronic)
            finding.Reserve(PressureTestMessages.SearchSensitivityNotWritten);
        if (isElectronic)
            Doubt(context, finding, method.Value, detector);
        return finding.Say(PressureTestMessages.SearchFoundNone(place, after ? PressureTestMessages.SearchFoundNoneAfter.Repair : PressureTestMessages.SearchFoundNoneAfter.Nothing, new(method.Text)))
            .Next(PressureTestMessages.SearchSensitivityNotWrittenNext).Build();
    }

    // A search with a detector that could not react is no search.
    private static Finding? Unmet(CheckContext context, FindingBuilder finding, LeakMethod method, UsedInstrument? detector)
    {
        var test = context.Job.PressureTest!;
        var search = TracerSearch.Of(context, test);
        finding.Use(PressureTestMessages.ReadingGas, test.Gas).Use(PressureTestMessages.ReadingTracer, test.Tracer?.Gas);
        if (search.IsPlain)
            return finding.NotEvaluated(PressureTestMessages.SearchPlain(new TextValue(test.Gas.Text)), PressureTestMessages.SearchPlainNext);
        var detects = detector?.Described.Detects ?? [];
        foreach (var gas in detects)
            finding.Use(PressureTestMessages.ReadingDetects(new(detector!.Id)), gas, detector.Id);
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
