using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>Two instruments at one place: thermometers on one pipe, gauges on one port.</summary>
internal sealed class PairAgreementCheck : ICheck
{
    public string Id => "instrument.pair-agreement";

    public string Phase => Phases.Instruments;

    public string Title => "Two instruments at one place";

    public CheckHelp Help { get; } = new(
        "Do two instruments show the same at the same place? Superheat and subcooling are differences; a pair that agrees makes them good even when both are a little off.",
        "difference = reading − other reading",
        "Bound: common practice, no source.",
        "Swap the two and read again: an error that moves with the instrument is the instrument's. Check the one that is off at the ice point or against nitrogen.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.Pair is { } pair && instrument.Dimension == Measurement.Quantities.Dimension.TemperatureDifference)
                yield return Judge(context, instrument, pair);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, PairCheck pair)
    {
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}", pair.Read, instrument.Id).Use(pair.With.Value, pair.Other, pair.With.Value);
        var other = context.Get<InstrumentKit>().Find(pair.With.Value);
        var difference = pair.Read.Value.Si - pair.Other.Value.Si;
        var sign = difference < 0 ? -1.0 : 1.0;
        var terms = new List<RootTerm> { sign * instrument.ZeroCause };
        if (other is not null)
            terms.Add(-sign * other.ZeroCause);
        finding.Step("d", "difference of the pair", "T_a − T_b", $"{pair.Read.Text} − {pair.Other.Text}", context.Present.Text(difference, DisplayKind.TemperatureDifference));
        if (context.Limits.Find("instruments.pair-agreement") is not { } limit)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        finding.Judge(context.Scope.Reading(Math.Abs(difference), [.. terms]), DisplayKind.TemperatureDifference, context.State(limit));
        var text = context.Present.Text(Math.Abs(difference), DisplayKind.TemperatureDifference);
        return finding.Passes
            ? finding.Say($"{instrument.Id} and {pair.With.Value} differ by {text} at one place.").Build()
            : finding.Say($"{instrument.Id} and {pair.With.Value} differ by {text} at one place.").Next("Swap them and read again; check the one that is off in ice water.").Build();
    }
}
