using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>What a pressure gauge shows with its hose open to the air.</summary>
internal sealed class ZeroPressureCheck : ICheck
{
    public string Id => "instrument.zero-pressure";

    public string Phase => Phases.Instruments;

    public string Title => "Zero of the pressure gauge";

    public CheckHelp Help { get; } = new(
        "What does the gauge show with nothing connected? It should show zero; whatever it shows is taken off every reading.",
        "share = |reading open to air| / full scale; corrected reading = reading − reading open to air",
        "Removing the zero offset: California RA3.2, p. RA3-12 (published). The bound at which a gauge is doubted altogether: common practice, no source.",
        "Zero the gauge on site, open to air and without hoses, at its working temperature. A gauge far off at zero is bent or damaged: replace it.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.Zero is { } zero)
                yield return Judge(context, instrument, zero);
            else if (instrument.Described is { Kind.Value: InstrumentKind.PressureGauge, Reads.IsEmpty: false } gauge && gauge.Reference?.Value != GaugeReference.Absolute)
                yield return Unchecked(context, instrument);
        }
    }

    private Finding Unchecked(CheckContext context, UsedInstrument instrument)
    {
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}: zeroed at site", instrument.Described.ZeroedAtSite, instrument.Id);
        return instrument.Described.ZeroedAtSite?.Value == true
            ? finding.Information($"{instrument.Id} was zeroed on site; no offset is written, and none is removed.", "the offset after zeroing is not written")
            : finding.NotEvaluated("no reading with the hose open to air is written", "Open the gauge to the air and write what it shows: checks: {zero: 0.0 psig}.");
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, ZeroCheck zero)
    {
        var shown = zero.Adjusted ?? zero.Read;
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}: open to air", zero.Read, instrument.Id).Use($"{instrument.Id}: after adjusting", zero.Adjusted, instrument.Id);
        var offset = shown.Value.Si;
        var text = context.Present.Text(offset, DisplayKind.Pressure);
        finding.Step("p₀", "reading open to air", "as read", shown.Text, text, "taken off every reading of this gauge");
        if (instrument.FullScaleSi is not { } scale || context.Limits.Find("instruments.zero-pressure") is not { } limit)
            return finding.Information($"{instrument.Id} shows {text} open to air; taken off its readings.", "no full scale is written, so the offset cannot be set against it");
        finding.Use($"{instrument.Id}: full scale", instrument.Described.FullScale, instrument.Id);
        var share = Uncertain.Abs(context.Scope.Reading(offset, 1.0 * instrument.ZeroCause) / scale);
        finding.Judge(share, DisplayKind.Percentage, context.State(limit));
        return finding.Passes
            ? finding.Say($"{instrument.Id} shows {text} open to air; taken off its readings.").Build()
            : finding.Say($"{instrument.Id} shows {text} open to air: far off for its range.").Next("Replace or repair the gauge; a bent one is wrong everywhere, not only at zero.").Build();
    }
}
