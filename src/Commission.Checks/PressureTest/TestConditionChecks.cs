using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>What the circuit was tested with.</summary>
internal sealed class TestGasCheck : ICheck
{
    public string Id => "pressure-test.gas";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        var finding = context.Finding(this).Use(PressureTestMessages.ReadingGas, test.Gas).Use(PressureTestMessages.ReadingTracer, test.Tracer?.Gas).Use(PressureTestMessages.ReadingTracerShare, test.Tracer?.Share);
        var inert = test.Gas.Value is TestGas.DryNitrogen or TestGas.NitrogenWithTracer or TestGas.Helium or TestGas.Argon or TestGas.CarbonDioxide;
        var limit = context.Limits.Find(LimitIds.PressureTestGas);
        if (test.Tracer?.Share is { } share && inert && context.Limits.Find(LimitIds.PressureTestTracerMaximum) is { } most)
        {
            // What the bottle's label says of the mixture is no reading.
            finding.Decide(share.Value.Si <= most.Most.Si, context.State(most));
            yield return finding.Conclude(
                PressureTestMessages.GasWithTracer(new(test.Gas.Text), new(share.Text), new(test.Tracer!.Gas.Value)),
                PressureTestMessages.GasTooMuchTracer(new(share.Text), new(test.Tracer!.Gas.Value)),
                PressureTestMessages.GasTooMuchTracerNext);
            yield break;
        }

        finding.Decide(inert, limit is null ? null : context.State(limit));
        yield return inert
            ? finding.Say(PressureTestMessages.Gas(new(test.Gas.Text))).Build()
            : finding.Remark(Why(test.Gas)).Danger(PressureTestMessages.GasDangerous(new(test.Gas.Text)), this.WhenItFails());
    }

    private static Message Why(Given<TestGas> gas) => gas.Value switch
    {
        TestGas.Oxygen or TestGas.CompressedAir => PressureTestMessages.GasExplodesWithOil,
        TestGas.Hydrogen or TestGas.Acetylene => PressureTestMessages.GasBurns,
        _ => PressureTestMessages.GasHidesLeak,
    };
}

/// <summary>What was inside the test: a closed valve leaves a part of the circuit untested.</summary>
internal sealed class TestSectionCheck : ICheck
{
    public string Id => "pressure-test.section";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        yield return SectionStatement.Make(context, context.Finding(this), test.Section, test.SectionName, test.Valves, SectionWork.Tested);
    }
}

/// <summary>Whether nitrogen flowed through the joints while they were brazed.</summary>
internal sealed class BrazingCheck : ICheck
{
    public string Id => "pressure-test.brazing";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test || (test.Brazing is null && !test.Joints.Any(j => j.Kind?.Value == JointKind.Brazed)))
            yield break;
        var finding = context.Finding(this).Use(PressureTestMessages.ReadingFlow, test.Brazing?.NitrogenFlow).Use(PressureTestMessages.ReadingInspected, test.Brazing?.Inspected);
        foreach (var joint in test.Joints.Where(j => j.Kind?.Value == JointKind.Brazed))
            finding.Use(PressureTestMessages.ReadingJointKind(new(joint.Place.Value)), joint.Kind);
        if (test.Brazing?.NitrogenFlow is not { } flow)
        {
            yield return finding.Information(PressureTestMessages.BrazingNoFlow, PressureTestMessages.BrazingNoFlowKind);
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.PressureTestBrazingNitrogenFlow);
        // What a float shows is written to the nearest mark and states no accuracy: a fact beside a range, not a measured number.
        finding.Decide(limit.ToTolerance() is var range && !(flow.Value.Si < range.Lower) && !(flow.Value.Si > range.Upper), context.State(limit));
        yield return finding.Conclude(
            PressureTestMessages.BrazingFlow(new(flow.Text)),
            PressureTestMessages.BrazingFlowOutside(new(flow.Text)),
            PressureTestMessages.BrazingFlowOutsideNext);
    }
}
