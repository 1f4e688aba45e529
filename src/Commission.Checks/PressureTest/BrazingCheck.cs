using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

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

        if (context.Limits.Find("pressure-test.brazing.nitrogen-flow") is not { } limit)
        {
            yield return finding.Information($"Brazed with {flow.Text} of nitrogen.", "no pack sets a range");
            yield break;
        }

        // What a float shows is written to the nearest mark and states no accuracy: a fact beside a range, not a measured number.
        finding.Decide(limit.ToTolerance() is var range && !(flow.Value.Si < range.Lower) && !(flow.Value.Si > range.Upper), context.State(limit));
        yield return finding.Passes
            ? finding.Say($"Brazed with {flow.Text} of nitrogen flowing.").Build()
            : finding.Say($"Brazed with {flow.Text} of nitrogen: outside the usual range.").Next("Too little lets scale form, too much blows pinholes: inspect a joint.").Build();
    }
}
