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
            yield return context.Finding(this).NotEvaluated("the rig was not checked without the system", "Blank the rig off, pull it down, and watch its rise for five minutes.", "evacuation: {rig check: {pump alone: 45 micron, blanked off: 80 micron, rise: 20 micron, after: 5 min}}");
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
            yield return context.Finding(this).NotEvaluated("no level of the rig is written", "Write what the pump reaches alone, what the blanked rig reaches, and how far it rises in what time.");
    }

    private Finding PumpAlone(CheckContext context, EvacuationRun run, Jobs.Model.RigCheck rig)
    {
        var reading = context.Readings.Plain("pump alone", ReadingName.Evacuation, rig.PumpAlone!, DisplayKind.Vacuum, run.Evacuation.With);
        var finding = context.Finding(this, "pump alone").Use(reading).Use("oil changed", rig.OilChanged ?? run.Evacuation.Pump?.OilChanged);
        var limit = context.Limits.Require(LimitIds.EvacuationRigPumpAlone);
        var most = limit.Most;
        var statement = context.State(limit);
        if (context.Limits.Find(LimitIds.EvacuationRigPumpShare) is { Upper: { } share } shared && run.Level is { Upper: { } target } && share.Si * target.Si < most.Si)
        {
            finding.Use("target", run.Evacuation.Target);
            var level = share.Si * target.Si;
            finding.Step("p_pump", "level the pump alone has to reach", "share × target", $"{context.Present.Text(share.Si, DisplayKind.Percentage, 0)} of {VacuumText.Level(context.Present, target.Si)}", VacuumText.Level(context.Present, level), shared.Source);
            statement = context.State(shared) with { Text = $"at most {VacuumText.Level(context.Present, level)}", UpperSi = level };
        }

        finding.Judge(reading.Value, DisplayKind.Vacuum, statement);
        return finding.Conclude(
            $"The pump alone reached {rig.PumpAlone!.Text}.",
            $"The pump alone reached no less than {rig.PumpAlone!.Text}: too near the target to reach it through hoses.",
            "Change the pump oil while it is warm, run the pump on its own inlet, and clean the gauge's sensor.");
    }

    private Finding BlankedOff(CheckContext context, EvacuationRun run, Jobs.Model.RigCheck rig)
    {
        var reading = context.Readings.Plain("rig blanked off", ReadingName.Evacuation, rig.BlankedOff!, DisplayKind.Vacuum, run.Evacuation.With);
        var finding = context.Finding(this, "blanked off").Use(reading).Use("target", run.Evacuation.Target);
        if (run.Level is not { Upper: not null } target)
            return finding.NotEvaluated("no pack sets a target", "Name a limits pack.");
        finding.Judge(reading.Value, DisplayKind.Vacuum, context.State(target));
        return finding.Conclude(
            $"The rig closed at its end reached {rig.BlankedOff!.Text}.",
            $"The rig closed at its end came no lower than {rig.BlankedOff!.Text}: no system behind it could reach the target.",
            this.WhenItFails());
    }

    private Finding Rise(CheckContext context, EvacuationRun run, Jobs.Model.RigCheck rig)
    {
        var finding = context.Finding(this, "rise").Use("rise of the rig", rig.Rise, run.Gauge.Id).Use("in what time", rig.After).Use("target", run.Evacuation.Target)
            .Use("decay limit", run.Evacuation.DecayLimit?.Level).Use("decay limit: after", run.Evacuation.DecayLimit?.After);
        if (rig.After is not { Value.Si: > 0 } after)
            return finding.NotEvaluated(EvacuationMessages.RigTimeNotWritten, EvacuationMessages.RigTimeNotWrittenNext, "evacuation: {rig check: {rise: 20 micron, after: 5 min}}");
        if (run.DecayLimit is not { Upper: { } decay } limit || limit.Companion("after") is not { } time || run.Level?.Upper is not { } target || context.Limits.Find(LimitIds.EvacuationRigRiseShare) is not { } share)
            return finding.NotEvaluated("no pack sets a decay limit", "Name a limits pack.");
        // A pack whose decay limit is its target leaves the rise from where this hold began.
        var begun = decay.Si > target.Si ? Uncertain.Exact(target.Si) : run.AtIsolation;
        if (begun is not { Value: var from } || !(decay.Si > from))
            return finding.NotEvaluated("the decay limit leaves no rise above the target", "Compare the rig's rise with the rise of the hold by eye.");
        if (from < target.Si && run.Parts.Isolation is { } isolation)
            run.Name(run.Name(finding), isolation, isolation);
        var present = context.Present;
        var room = (decay.Si - begun) * (after.Value.Si / time);
        var allowed = room.Value;
        var rise = context.Readings.Plain("rise of the rig", ReadingName.Evacuation, rig.Rise!, DisplayKind.Vacuum, run.Evacuation.With).Value;
        finding.Step(
            "Δp_a", "rise the hold allows in that time", from < target.Si ? "(decay limit − level at isolation) · t_rig/t_hold" : "(decay limit − target) · t_rig/t_hold",
            $"({VacuumText.Level(present, decay.Si)} − {VacuumText.Level(present, from)}) · {after.Text}/{EvacuationClock.Span(time)}", VacuumText.Level(present, allowed));
        var part = rise / room;
        finding.Step("s", "the rig's rise as a share of it", "Δp_rig/Δp_a", $"{rig.Rise!.Text} of {VacuumText.Level(present, allowed)}", present.Text(part, DisplayKind.Percentage));
        finding.Judge(part, DisplayKind.Percentage, context.State(share));
        // Air that comes in through the rig makes a hold worse, never better: one that passed has passed.
        if (!finding.Passes && JudgedHold.HasPassed(run))
        {
            return finding.Next(EvacuationMessages.RigMendNext).Information(
                EvacuationMessages.RigRoseHoldPassed(present.InMessage(rig.Rise.Value.Si, DisplayKind.Vacuum), new(after.Value.Si)), EvacuationMessages.RigRoseHoldPassedKind);
        }

        return finding.Conclude(
            $"The blanked rig rose {rig.Rise.Text} in {after.Text}, {present.Text(part.Value, DisplayKind.Percentage, 0)} of what the hold allows in that time.",
            $"The blanked rig rose {rig.Rise.Text} in {after.Text}, {present.Text(part.Value, DisplayKind.Percentage, 0)} of what the hold allows in that time: a rise in the hold may be the rig's.",
            this.WhenItFails());
    }
}
