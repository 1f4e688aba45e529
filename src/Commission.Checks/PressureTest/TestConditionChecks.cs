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

    public string Title => "Test gas";

    public CheckHelp Help { get; } = new(
        "Was the circuit tested with an inert gas? Oxygen and compressed air explode with oil, fuel gases burn, and refrigerant may not be let out.",
        "dry nitrogen, helium, argon or carbon dioxide; a tracer up to the share the pack allows",
        "ASHRAE 15-1994 section 10.1.2, interim action on the test gas (published).",
        "Stop. Release the gas outdoors away from ignition, purge with dry nitrogen, find out what it has done to the oil, and test again with dry nitrogen through a regulator and relief device.");

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
            : finding.Danger($"{test.Gas.Text} was used as test gas. {Why(test.Gas)}", Help.WhenItFails);
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

    public string Title => "Section under test";

    public CheckHelp Help { get; } = new(
        "Which part of the circuit was under pressure, and how did its valves stand? A closed expansion valve, solenoid or service valve leaves a part untested.",
        "section and valve positions as written, against what this kind of system can shut off",
        "Common practice, no source.",
        "Drive the expansion valve open, hold solenoids open with a magnet, open the service valves of the part under test, and repeat; or name the section and test the rest as its own section.");

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

    public string Title => "Brazing under nitrogen";

    public CheckHelp Help { get; } = new(
        "Did dry nitrogen flow through the pipe while it was brazed? Without it scale forms inside and blocks strainers and valves.",
        "flow of nitrogen within the pack's range while brazing",
        "2 to 5 cubic feet an hour: common practice, no source.",
        "Cut out a joint and look. Where scale is found, replace or flush what was brazed and fit a filter drier.");

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
