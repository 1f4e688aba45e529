using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>What the scale shows under a known weight.</summary>
internal sealed class ScaleCheck : ICheck
{
    public string Id => "instrument.scale";

    public string Phase => Phases.Instruments;

    public string Title => "Scale at a check weight";

    public CheckHelp Help { get; } = new(
        "Does the scale show a known weight? A charge by weight is as good as its scale.",
        "error = reading − check weight",
        "± 1 oz asked of charging scales in generic installation manuals (published).",
        "Level the scale on a firm floor out of the wind, tare it, repeat. If the error stays, have it calibrated.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.CheckWeight is { } check)
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
            terms.Add(-sign * context.Causes.Enter(RootCause.FromExpanded($"{instrument.Id}: check weight", "stated with the weight", stated.HalfWidthSi, stated.CoverageFactor), DisplayKind.Mass));
        var present = context.Present;
        var finding = context.Finding(this, instrument.Id)
            .Use($"{instrument.Id}: check weight", check.Applied, instrument.Id)
            .Use($"{instrument.Id}: read", shown, instrument.Id)
            .Step("e", "error at the check weight", "m_read − m_applied", $"{shown.Text} − {check.Applied.Text}", present.Text(error, DisplayKind.Mass));
        var limit = context.Limits.Require(LimitIds.InstrumentsScale);
        finding.Judge(context.Scope.Reading(Math.Abs(error), [.. terms]), DisplayKind.Mass, context.State(limit));
        return finding.Passes
            ? finding.Say($"{instrument.Id} is off by {present.Text(error, DisplayKind.Mass)} at {check.Applied.Text}.").Build()
            : finding.Say($"{instrument.Id} is off by {present.Text(error, DisplayKind.Mass)} at {check.Applied.Text}: too much for a charge by weight.").Next("Level and tare the scale and repeat; else have it calibrated.").Build();
    }
}
