using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
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
        var finding = context.Finding(this).Use("test gas", test.Gas).Use("tracer", test.Tracer?.Gas).Use("share of the tracer", test.Tracer?.Share);
        var inert = test.Gas.Value is TestGas.DryNitrogen or TestGas.NitrogenWithTracer or TestGas.Helium or TestGas.Argon or TestGas.CarbonDioxide;
        var limit = context.Limits.Find(LimitIds.PressureTestGas);
        if (test.Tracer?.Share is { } share && inert && context.Limits.Find(LimitIds.PressureTestTracerMaximum) is { } most)
        {
            // What the bottle's label says of the mixture is no reading.
            finding.Decide(share.Value.Si <= most.Most.Si, context.State(most));
            yield return finding.Conclude(
                $"Tested with {test.Gas.Text}, {share.Text} {test.Tracer!.Gas.Value} as tracer.",
                $"{share.Text} {test.Tracer!.Gas.Value} is more tracer than the limit allows.",
                "Release the gas outdoors and use a made-up mixture of at most 5 %.");
            yield break;
        }

        finding.Decide(inert, limit is null ? null : context.State(limit));
        yield return inert
            ? finding.Say($"Tested with {test.Gas.Text}.").Build()
            : finding.Danger($"{test.Gas.Text} was used as test gas. {Why(test.Gas)}", this.WhenItFails());
    }

    private static string Why(Given<TestGas> gas) => gas.Value switch
    {
        TestGas.Oxygen or TestGas.CompressedAir => "With oil under pressure it explodes.",
        TestGas.Hydrogen or TestGas.Acetylene => "It burns and explodes.",
        _ => "It may not be released, and it hides a leak.",
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
        yield return SectionStatement.Make(context, context.Finding(this), test.Section, test.SectionName, test.Valves, ("tested", "pressure test"));
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
        var finding = context.Finding(this).Use("nitrogen flow", test.Brazing?.NitrogenFlow).Use("inspected", test.Brazing?.Inspected);
        foreach (var joint in test.Joints.Where(j => j.Kind?.Value == JointKind.Brazed))
            finding.Use($"{joint.Place.Value}: kind", joint.Kind);
        if (test.Brazing?.NitrogenFlow is not { } flow)
        {
            yield return finding.Information("Joints were brazed; no nitrogen flow is written.", "brazing under nitrogen is not recorded");
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.PressureTestBrazingNitrogenFlow);
        // What a float shows is written to the nearest mark and states no accuracy: a fact beside a range, not a measured number.
        finding.Decide(limit.ToTolerance() is var range && !(flow.Value.Si < range.Lower) && !(flow.Value.Si > range.Upper), context.State(limit));
        yield return finding.Conclude(
            $"Brazed with {flow.Text} of nitrogen flowing.",
            $"Brazed with {flow.Text} of nitrogen: outside the usual range.",
            "Too little lets scale form, too much blows pinholes: inspect a joint.");
    }
}
