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
internal sealed record ReferenceWords(Message Reference, Message Applied, Message Read, Message Stated, DisplayKind Kind);

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
            terms.Add(-sign * context.Causes.Enter(RootCause.FromExpanded(InstrumentsMessages.Of(new(instrument.Id), words.Reference), words.Stated, stated.HalfWidthSi, stated.CoverageFactor), words.Kind));
        finding.Use(InstrumentsMessages.Of(new(instrument.Id), words.Applied), check.Applied, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), words.Read), shown, instrument.Id);
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
        var error = ReferenceError.Of(context, finding, instrument, check, new ReferenceWords(InstrumentsMessages.WeightKnown, InstrumentsMessages.WeightKnown, InstrumentsMessages.Read, InstrumentsMessages.StatedWithWeight, DisplayKind.Mass));
        finding.Step("e", InstrumentsMessages.ErrorAtWeight, "m_read − m_applied", error.Difference, present.Text(error.Si, DisplayKind.Mass));
        var limit = context.Limits.Require(LimitIds.InstrumentsScale);
        finding.Judge(error.Size, DisplayKind.Mass, context.State(limit));
        return finding.Conclude(
            present.InMessage(error.Si, DisplayKind.Mass) is { Value: not 0 } off ? InstrumentsMessages.ScaleOff(new(instrument.Id), off, new(check.Applied.Text)) : InstrumentsMessages.ScaleRight(new(instrument.Id), new(check.Applied.Text)),
            InstrumentsMessages.ScaleTooFarOff(new(instrument.Id), present.InMessage(error.Si, DisplayKind.Mass), new(check.Applied.Text)),
            InstrumentsMessages.ScaleTooFarOffNext);
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
        var finding = context.Finding(this, instrument.Id).Use(InstrumentsMessages.Named(new(instrument.Id)), pair.Read, instrument.Id).Use(InstrumentsMessages.Named(new(pair.With.Value)), pair.Other, pair.With.Value);
        var a = pair.Read.Value.Si;
        var b = pair.Other.Value.Si;
        if (!(a + b > 0))
            return finding.NotEvaluated(InstrumentsMessages.BothShowNothing, InstrumentsMessages.BothShowNothingNext);
        var share = 2 * Math.Abs(a - b) / (a + b);
        finding.Step("d", InstrumentsMessages.DifferenceOfMean, "2·|p_a − p_b|/(p_a + p_b)", InstrumentsMessages.Against(new(pair.Read.Text), new(pair.Other.Text)), context.Present.Text(share, DisplayKind.Percentage));
        var limit = context.Limits.Require(LimitIds.InstrumentsVacuumGaugeAgreement);
        finding.Judge(Uncertain.Exact(share), DisplayKind.Percentage, context.State(limit));
        return finding.Conclude(
            InstrumentsMessages.Differ(new(instrument.Id), new(pair.With.Value), context.Present.InMessage(share, DisplayKind.Percentage)),
            InstrumentsMessages.Differ(new(instrument.Id), new(pair.With.Value), context.Present.InMessage(share, DisplayKind.Percentage)),
            InstrumentsMessages.VacuumGaugesDifferNext);
    }

    private Finding Blanked(CheckContext context, UsedInstrument instrument, BlankOffCheck blanked)
    {
        var finding = context.Finding(this, InstrumentsMessages.SubjectRigClosed(new(instrument.Id))).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.RigClosedAtEnd), blanked.Level, instrument.Id);
        if (context.Limits.Find(LimitIds.EvacuationLevel) is not { Upper: not null } target)
            return finding.NotEvaluated(InstrumentsMessages.NoTarget, CommonMessages.NameAPackNext);
        var level = context.Readings.Plain(context.Present.Text(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.RigClosed)), ReadingName.Evacuation, blanked.Level, DisplayKind.Vacuum, [instrument.Described.Id]);
        finding.Use(level).Judge(level.Value, DisplayKind.Vacuum, context.State(target));
        return finding.Conclude(
            InstrumentsMessages.RigGood(new(instrument.Id), new(blanked.Level.Text)), InstrumentsMessages.RigBad(new(instrument.Id), new(blanked.Level.Text)), InstrumentsMessages.RigBadNext);
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
        yield return context.Finding(this).Use(InstrumentsMessages.DetectorChecked, last, detector?.Id).Use(ReadingsMessages.LeakCheck, check.Date)
            .Step("due", InstrumentsMessages.DetectorDue, InstrumentsMessages.DetectorDueFormula, InstrumentsMessages.DayPlus(last.Value, new(months.Text)), CommonMessages.Day(due), limit.Source)
            .Decide(due >= check.Date.Value && last.Value <= check.Date.Value, context.State(limit))
            .Conclude(InstrumentsMessages.LeakDetectorChecked(last.Value), InstrumentsMessages.LeakDetectorNotChecked(last.Value, check.Date.Value), InstrumentsMessages.LeakDetectorNext);
    }
}
