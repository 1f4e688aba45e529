using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>How far a thermometer was off in a warm bath, beside a reference.</summary>
internal sealed class WarmPointCheck : ICheck
{
    public string Id => "instrument.warm-point";

    public string Phase => Phases.Instruments;

    public string Title => "Warm point";

    public CheckHelp Help { get; } = new(
        "Does the thermometer agree with a reference near liquid-line temperature? A second point shows a slope that ice cannot.",
        "error = reading in the bath − reference",
        "The ice-point bounds of RA3.2, used at a second point (common practice, no source).",
        "Stir the bath, hold both sensors together at mid-depth, wait until neither moves. If the error stays, replace the sensor.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.WarmPoint is { } check)
                yield return Judge(context, instrument, check);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, ReferenceCheck check)
    {
        var shown = check.Adjusted ?? check.Read;
        var error = shown.Value.Si - check.Applied.Value.Si;
        var sign = error < 0 ? -1.0 : 1.0;
        var terms = new List<RootTerm> { sign * instrument.ZeroCause };
        if (check.Applied.Stated is { } stated)
            terms.Add(-sign * context.Causes.Enter(RootCause.FromExpanded($"{instrument.Id}: reference thermometer", $"stated with {check.Applied.Text}", stated.HalfWidthSi, stated.CoverageFactor), DisplayKind.TemperatureDifference));
        var finding = context.Finding(this, instrument.Id)
            .Use($"{instrument.Id}: bath temperature", check.Applied, instrument.Id)
            .Use($"{instrument.Id}: in the bath", shown, instrument.Id)
            .Step("e", "error in the warm bath", "T_read − T_reference", $"{shown.Text} − {check.Applied.Text}", context.Present.Text(error, DisplayKind.TemperatureDifference));
        if (context.Limits.Find("instruments.warm-point.range") is { } range && range.ToTolerance() is var span
            && (check.Applied.Value.Si < span.Lower || check.Applied.Value.Si > span.Upper))
        {
            finding.Remark($"The bath was outside {context.State(range).Text}, where liquid lines run.");
        }

        if (context.Limits.Find("instruments.warm-point.replace") is not { } replace)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        finding.Judge(context.Scope.Reading(Math.Abs(error), [.. terms]), DisplayKind.TemperatureDifference, context.State(replace));
        var off = context.Present.Text(Math.Abs(error), DisplayKind.TemperatureDifference);
        if (check.Applied.Stated is null)
            finding.Reserve("the reference has no stated uncertainty").Next("State the uncertainty of the reference, 113 °F +/- 0.5.");
        return finding.Passes
            ? finding.Say($"{instrument.Id} was {off} off at {check.Applied.Text}.").Build()
            : finding.Say($"{instrument.Id} was {off} off at {check.Applied.Text}: more than may be corrected.").Next("Repeat the check; if it stays, replace the sensor.").Build();
    }
}
