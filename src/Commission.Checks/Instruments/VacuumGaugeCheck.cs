using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>A vacuum gauge against a second one, or on a blanked-off rig.</summary>
internal sealed class VacuumGaugeCheck : ICheck
{
    public string Id => "instrument.vacuum-gauge";

    public string Phase => Phases.Instruments;

    public string Title => "Vacuum gauge";

    public CheckHelp Help { get; } = new(
        "Does the vacuum gauge agree with a second one, and does it come down on a rig that is closed at its end? A gauge fouled with oil never shows a good vacuum.",
        "difference = |reading − other| / mean of both",
        "Two heat-loss gauges of ± 10 % each (common practice, no source). Such gauges are set for air: in water vapour or refrigerant they differ (from memory).",
        "Clean the sensor as its maker says, change the pump oil, and check again. Use a diaphragm gauge where the gas matters.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            var checks = instrument.Described.Checks;
            if (checks?.AgainstSecondGauge is { } pair)
                yield return Compare(context, instrument, pair);
            if (checks?.RigBlankedOff is { } blanked)
                yield return Blanked(context, instrument, blanked);
        }
    }

    private Finding Compare(CheckContext context, UsedInstrument instrument, PairCheck pair)
    {
        var finding = context.Finding(this, instrument.Id).Use(instrument.Id, pair.Read, instrument.Id).Use(pair.With.Value, pair.Other, pair.With.Value);
        var a = pair.Read.Value.Si;
        var b = pair.Other.Value.Si;
        if (!(a + b > 0))
            return finding.NotEvaluated("both gauges show nothing", "Compare them at a level they can show.");
        var share = 2 * Math.Abs(a - b) / (a + b);
        finding.Step("d", "difference as a share of the mean", "2·|p_a − p_b|/(p_a + p_b)", $"{pair.Read.Text} against {pair.Other.Text}", context.Present.Text(share, DisplayKind.Percentage));
        var limit = context.Limits.Require(LimitIds.InstrumentsVacuumGaugeAgreement);
        finding.Judge(Uncertain.Exact(share), DisplayKind.Percentage, context.State(limit));
        return finding.Conclude(
            $"{instrument.Id} and {pair.With.Value} differ by {context.Present.Text(share, DisplayKind.Percentage)}.",
            $"{instrument.Id} and {pair.With.Value} differ by {context.Present.Text(share, DisplayKind.Percentage)}.",
            "Clean both sensors and compare again; trust neither until they agree.");
    }

    private Finding Blanked(CheckContext context, UsedInstrument instrument, BlankOffCheck blanked)
    {
        var finding = context.Finding(this, $"{instrument.Id}, rig closed").Use($"{instrument.Id}: rig closed at its end", blanked.Level, instrument.Id);
        if (context.Limits.Find(LimitIds.EvacuationLevel) is not { Upper: not null } target)
            return finding.NotEvaluated("no pack sets a target", "Name a limits pack.");
        var level = context.Readings.Plain($"{instrument.Id}: rig closed", ReadingName.Evacuation, blanked.Level, DisplayKind.Vacuum, [instrument.Described.Id]);
        finding.Use(level).Judge(level.Value, DisplayKind.Vacuum, context.State(target));
        return finding.Conclude(
            $"{instrument.Id} came down to {blanked.Level.Text} on the closed rig, below the target.",
            $"{instrument.Id} came no lower than {blanked.Level.Text} on the closed rig: it could not show the target.",
            "Clean the sensor, change the pump oil, check hoses and seals, then repeat.");
    }
}
