using Commission.Checks.Evacuation;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>Whether the gas had given off the heat of filling before the hold began.</summary>
internal sealed class SettledCheck : ICheck
{
    public string Id => "pressure-test.settled";

    public string Phase => Phases.PressureTest;

    public string Title => "Rest before the hold";

    public CheckHelp Help { get; } = new(
        "How long had the nitrogen rested after filling when the first reading was taken? Gas warms as it is pressed in, and its cooling looks like a leak.",
        "time of the first reading − end of filling ≥ stated time",
        "10 minutes: common practice, no source.",
        "Wait, read pressure and temperature again, and count the hold from there.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { Tightness: { } hold } test)
            yield break;
        var finding = context.Finding(this).Use("settled", hold.From?.Settled).Use("filling began", test.Started).Use("first reading", hold.From?.At);
        if (context.Limits.Find("pressure-test.settled") is not { Lower: { } least } limit)
        {
            yield return finding.NotEvaluated("no pack sets a time", "Name a limits pack.");
            yield break;
        }

        if (Settled(test, hold) is not { } settled)
        {
            yield return finding.Show(context.State(limit)).NotEvaluated("how long the gas had rested is not written", "Write settled: 12 min with the first reading.");
            yield break;
        }

        finding.Judge(Uncertain.Exact(settled), DisplayKind.Duration, context.State(limit));
        yield return finding.Passes
            ? finding.Say($"The nitrogen rested for {EvacuationClock.Span(settled)} before the hold.").Build()
            : finding.Say($"The nitrogen rested for only {EvacuationClock.Span(settled)} before the hold; {least.Text} are usual.").Next(Help.WhenItFails).Build();
    }

    // When filling began is all the clock says: the rest is shorter than that by the time it took, which crews do not write.
    private static double? Settled(Jobs.Model.PressureTest test, Jobs.Model.PressureHold hold) =>
        hold.From?.Settled?.Value.Si
        ?? (hold.From?.At.Value.Clock is { } first && test.Started?.Value.Clock is { } began && first > began ? (first - began).TotalSeconds : null);
}
