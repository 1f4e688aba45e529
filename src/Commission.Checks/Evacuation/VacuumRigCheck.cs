using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>The pump, hoses and valves without the system: what they reach, and how fast they rise themselves.</summary>
internal sealed class VacuumRigCheck : ICheck
{
    public string Id => "evacuation.rig";

    public string Phase => Phases.Evacuation;

    /// <summary>Whether the rig was watched alone and held: its rise is one that the check passes.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="run">The evacuation.</param>
    internal static bool HasHeld(CheckContext context, EvacuationRun run) =>
        run.Evacuation.RigCheck is { Rise: not null } rig && new VacuumRigCheck().Rise(context, run, rig).Verdict is Verdict.Pass or Verdict.PassWithinUncertainty;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        if (evacuation.RigCheck is not { } rig)
        {
            yield return context.Finding(this).NotEvaluated(EvacuationMessages.RigNotChecked, EvacuationMessages.RigNotCheckedNext, "evacuation: {rig check: {pump alone: 45 micron, blanked off: 80 micron, rise: 20 micron, after: 5 min}}");
            yield break;
        }

        var run = context.Get<EvacuationRun>();
        if (rig.PumpAlone is not null)
            yield return PumpAlone(context, run, rig);
        if (rig.BlankedOff is not null)
            yield return BlankedOff(context, run, rig);
        if (rig.Rise is not null)
            yield return Rise(context, run, rig);
        if (rig is { PumpAlone: null, BlankedOff: null, Rise: null })
            yield return context.Finding(this).NotEvaluated(EvacuationMessages.RigNothingWritten, EvacuationMessages.RigNothingWrittenNext);
    }

    private Finding PumpAlone(CheckContext context, EvacuationRun run, Jobs.Model.RigCheck rig)
    {
        var reading = context.Readings.Plain(context.Present.Text(EvacuationMessages.RigPumpAlone), ReadingName.Evacuation, rig.PumpAlone!, DisplayKind.Vacuum, run.Evacuation.With);
        var finding = context.Finding(this, EvacuationMessages.RigPumpAlone).Use(reading).Use(EvacuationMessages.RigOilChanged, rig.OilChanged ?? run.Evacuation.Pump?.OilChanged);
        var limit = context.Limits.Require(LimitIds.EvacuationRigPumpAlone);
        var most = limit.Most;
        var statement = context.State(limit);
        if (context.Limits.Find(LimitIds.EvacuationRigPumpShare) is { Upper: { } share } shared && run.Level is { Upper: { } target } && share.Si * target.Si < most.Si)
        {
            finding.Use(VacuumHoldMessages.ReadingTarget, run.Evacuation.Target);
            var level = share.Si * target.Si;
            finding.Step(
                "p_pump", EvacuationMessages.RigPumpStep, EvacuationMessages.RigPumpFormula, EvacuationMessages.ShareOfLevel(context.Present.Value(share.Si, DisplayKind.Percentage, 0), VacuumText.Value(context.Present, target.Si)), VacuumText.Level(context.Present, level), shared.Source);
            statement = context.State(shared) with { Text = context.Present.Text(EvacuationMessages.LevelAtMost(VacuumText.Value(context.Present, level))), UpperSi = level };
        }

        finding.Judge(reading.Value, DisplayKind.Vacuum, statement);
        return finding.Conclude(
            EvacuationMessages.RigPumpReached(new(rig.PumpAlone!.Text)),
            EvacuationMessages.RigPumpTooHigh(new(rig.PumpAlone!.Text)),
            EvacuationMessages.RigPumpNext);
    }

    private Finding BlankedOff(CheckContext context, EvacuationRun run, Jobs.Model.RigCheck rig)
    {
        var reading = context.Readings.Plain(context.Present.Text(EvacuationMessages.RigBlankedName), ReadingName.Evacuation, rig.BlankedOff!, DisplayKind.Vacuum, run.Evacuation.With);
        var finding = context.Finding(this, EvacuationMessages.RigBlankedSubject).Use(reading).Use(VacuumHoldMessages.ReadingTarget, run.Evacuation.Target);
        if (run.Level is not { Upper: not null } target)
            return finding.NotEvaluated(EvacuationMessages.NoTarget, CommonMessages.NameAPackNext);
        finding.Judge(reading.Value, DisplayKind.Vacuum, context.State(target));
        return finding.Conclude(
            EvacuationMessages.RigBlankedReached(new(rig.BlankedOff!.Text)),
            EvacuationMessages.RigBlankedTooHigh(new(rig.BlankedOff!.Text)),
            this.WhenItFails());
    }

    private Finding Rise(CheckContext context, EvacuationRun run, Jobs.Model.RigCheck rig)
    {
        var finding = context.Finding(this, EvacuationMessages.RigRiseSubject).Use(EvacuationMessages.RigRiseName, rig.Rise, run.Gauge.Id).Use(EvacuationMessages.RigRiseTime, rig.After).Use(VacuumHoldMessages.ReadingTarget, run.Evacuation.Target)
            .Use(VacuumHoldMessages.ReadingDecayLimit, run.Evacuation.DecayLimit?.Level).Use(VacuumHoldMessages.ReadingDecayAfter, run.Evacuation.DecayLimit?.After);
        if (rig.After is not { Value.Si: > 0 } after)
            return finding.NotEvaluated(EvacuationMessages.RigTimeNotWritten, EvacuationMessages.RigTimeNotWrittenNext, "evacuation: {rig check: {rise: 20 micron, after: 5 min}}");
        if (run.DecayLimit is not { Upper: { } decay } limit || limit.Companion("after") is not { } time || run.Level?.Upper is not { } target || context.Limits.Find(LimitIds.EvacuationRigRiseShare) is not { } share)
            return finding.NotEvaluated(EvacuationMessages.NoDecayLimit, CommonMessages.NameAPackNext);
        // A pack whose decay limit is its target leaves the rise from where this hold began.
        var begun = decay.Si > target.Si ? Uncertain.Exact(target.Si) : run.AtIsolation;
        if (begun is not { Value: var from } || !(decay.Si > from))
            return finding.NotEvaluated(EvacuationMessages.RigNoRoom, EvacuationMessages.RigNoRoomNext);
        if (from < target.Si && run.Parts.Isolation is { } isolation)
            run.Name(run.Name(finding), isolation, isolation);
        var present = context.Present;
        var room = (decay.Si - begun) * (after.Value.Si / time);
        var allowed = room.Value;
        var rise = context.Readings.Plain(context.Present.Text(EvacuationMessages.RigRiseName), ReadingName.Evacuation, rig.Rise!, DisplayKind.Vacuum, run.Evacuation.With).Value;
        finding.Step(
            "Δp_a", EvacuationMessages.RigRoomStep, from < target.Si ? EvacuationMessages.RigRoomFormulaIsolation : EvacuationMessages.RigRoomFormula,
            EvacuationMessages.RigRoomValues(VacuumText.Value(present, decay.Si), VacuumText.Value(present, from), new(after.Text), new(time)), VacuumText.Level(present, allowed));
        var part = rise / room;
        finding.Step("s", EvacuationMessages.RigShareStep, "Δp_rig/Δp_a", EvacuationMessages.RigShareValues(new(rig.Rise!.Text), VacuumText.Value(present, allowed)), present.Text(part, DisplayKind.Percentage));
        finding.Judge(part, DisplayKind.Percentage, context.State(share));
        // Air that comes in through the rig makes a hold worse, never better: one that passed has passed.
        if (!finding.Passes && JudgedHold.HasPassed(run))
        {
            return finding.Next(EvacuationMessages.RigMendNext).Information(
                EvacuationMessages.RigRoseHoldPassed(present.InMessage(rig.Rise.Value.Si, DisplayKind.Vacuum), new(after.Value.Si)), EvacuationMessages.RigRoseHoldPassedKind);
        }

        return finding.Conclude(
            EvacuationMessages.RigRose(new(rig.Rise.Text), new(after.Text), present.Value(part.Value, DisplayKind.Percentage, 0)),
            EvacuationMessages.RigRoseTooMuch(new(rig.Rise.Text), new(after.Text), present.Value(part.Value, DisplayKind.Percentage, 0)),
            this.WhenItFails());
    }
}
