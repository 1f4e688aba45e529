using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>What the two sides of a check against a reference are called.</summary>
/// <param name="Reference">The reference, in the budget.</param>
/// <param name="Applied">What was applied.</param>
/// <param name="Read">What was read.</param>
/// <param name="Stated">Where the reference's uncertainty is from.</param>
/// <param name="Kind">How the error is displayed.</param>
internal sealed record ReferenceWords(string Reference, string Applied, string Read, string Stated, DisplayKind Kind);

/// <summary>How far an instrument was off at a reference.</summary>
/// <param name="Si">Reading less reference, SI.</param>
/// <param name="Size">Its absolute value with the doubt of indication and reference.</param>
/// <param name="Difference">The two numbers as written.</param>
internal sealed record ReferenceError(double Si, Uncertain Size, string Difference)
{
    /// <summary>The error, its two numbers named in the finding.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="instrument">The instrument.</param>
    /// <param name="check">The check against a reference.</param>
    /// <param name="words">What its sides are called.</param>
    public static ReferenceError Of(CheckContext context, FindingBuilder finding, UsedInstrument instrument, ReferenceCheck check, ReferenceWords words)
    {
        var shown = check.Adjusted ?? check.Read;
        var error = shown.Value.Si - check.Applied.Value.Si;
        var sign = error < 0 ? -1.0 : 1.0;
        var terms = new List<RootTerm> { sign * instrument.ZeroCause };
        if (check.Applied.Stated is { } stated)
            terms.Add(-sign * context.Causes.Enter(RootCause.FromExpanded($"{instrument.Id}: {words.Reference}", words.Stated, stated.HalfWidthSi, stated.CoverageFactor), words.Kind));
        finding.Use($"{instrument.Id}: {words.Applied}", check.Applied, instrument.Id).Use($"{instrument.Id}: {words.Read}", shown, instrument.Id);
        return new ReferenceError(error, context.Scope.Reading(Math.Abs(error), [.. terms]), $"{shown.Text} − {check.Applied.Text}");
    }
}

/// <summary>What the scale shows under a known weight.</summary>
internal sealed class ScaleCheck : ICheck
{
    public string Id => "instrument.scale";

    public string Phase => Phases.Instruments;

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
        var present = context.Present;
        var finding = context.Finding(this, instrument.Id);
        var error = ReferenceError.Of(context, finding, instrument, check, new ReferenceWords("check weight", "check weight", "read", "stated with the weight", DisplayKind.Mass));
        finding.Step("e", "error at the check weight", "m_read − m_applied", error.Difference, present.Text(error.Si, DisplayKind.Mass));
        var limit = context.Limits.Require(LimitIds.InstrumentsScale);
        finding.Judge(error.Size, DisplayKind.Mass, context.State(limit));
        return finding.Conclude(
            $"{instrument.Id} is off by {present.Text(error.Si, DisplayKind.Mass)} at {check.Applied.Text}.",
            $"{instrument.Id} is off by {present.Text(error.Si, DisplayKind.Mass)} at {check.Applied.Text}: too much for a charge by weight.",
            "Level and tare the scale and repeat; else have it calibrated.");
    }
}

/// <summary>A vacuum gauge against a second one, or on a blanked-off rig.</summary>
internal sealed class VacuumGaugeCheck : ICheck
{
    public string Id => "instrument.vacuum-gauge";

    public string Phase => Phases.Instruments;

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

/// <summary>Whether the detector of the leak check was itself checked, where a pack sets a time for that.</summary>
internal sealed class LeakDetectorCheck : ICheck
{
    public string Id => "instrument.leak-detector";

    public string Phase => Phases.Instruments;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.LeakCheck is not { } check || context.Limits.Find(LimitIds.InstrumentsLeakDetectorInterval) is not { Upper: { } months } limit)
            yield break;
        var detector = context.Get<InstrumentKit>().FirstOf(check.With);
        if ((check.DetectorChecked ?? detector?.Described.Calibrated) is not { } last)
            yield break;
        var due = last.Value.AddMonths((int)months.Si);
        yield return context.Finding(this).Use("detector checked", last, detector?.Id).Use("date", check.Date)
            .Step("due", "next check of the detector", "checked + interval", $"{last.Text} + {months.Text}", due.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), limit.Source)
            .Decide(due >= check.Date.Value && last.Value <= check.Date.Value, context.State(limit))
            .Conclude(InstrumentsMessages.LeakDetectorChecked(last.Value), InstrumentsMessages.LeakDetectorNotChecked(last.Value, check.Date.Value), InstrumentsMessages.LeakDetectorNext);
    }
}
