using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Checks.Wording;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>
/// The isolated hold against the decay limit: the clock starts at isolation, every reading up to the stated time counts, and what comes
/// later is told and not judged, so that a crew that holds longer is never worse off.
/// </summary>
internal sealed class VacuumHoldCheck : ICheck
{
    public string Id => "evacuation.hold";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Name(context.Finding(this)).Use(VacuumHoldMessages.ReadingGaugePlace, evacuation.Gauge).Use(VacuumHoldMessages.ReadingIsolatedAt, evacuation.IsolatedAt)
            .Use(VacuumHoldMessages.ReadingDecayLimit, evacuation.DecayLimit?.Level).Use(VacuumHoldMessages.ReadingDecayAfter, evacuation.DecayLimit?.After).Use(VacuumHoldMessages.ReadingAmbient, evacuation.Ambient);
        foreach (var level in evacuation.Levels)
            finding.Use(VacuumHoldMessages.ReadingIsolated(new(level.At.Text)), level.Isolated);
        yield return run.DecayLimit is { Upper: { } most } limit && limit.Companion("after") is { } after
            ? Judge(context, run, finding, limit, most.Si, after)
            : finding.NotEvaluated(EvacuationMessages.HoldNoLimit, EvacuationMessages.HoldNoLimitNext, "limits: {vacuum: {decay limit: {level: 1000 micron, after: 10 min}}}");
    }

    private static Finding Judge(CheckContext context, EvacuationRun run, FindingBuilder finding, Limit limit, double most, double after)
    {
        if (run.Rows.Series.Count == 0)
            return finding.NotEvaluated(EvacuationMessages.HoldNothingWritten, EvacuationMessages.HoldNothingWrittenNext);
        if (run.Obstacle is { } block)
            return finding.NotEvaluated(block.Why, block.Next);
        if (run is not { Decay: { } decay, Parts: { Isolation: { } isolation, HoldEnd: { } end } })
            return NoIsolation.Of(run, after).End(finding);

        run.Name(finding, isolation, end);
        var statement = context.State(limit);
        finding.Remark(limit.Remark(context.Present.Units)).Step(
            "t_d", VacuumHoldMessages.StepJudgedAt, VacuumHoldMessages.StepJudgedAtFormula, VacuumHoldMessages.StepJudgedAtValues(run.Clock.Time(isolation), new(after)), VacuumHoldMessages.StepMoment(run.Clock.Time(decay.Due)), limit.Source);
        var judged = JudgedHold.Of(run, decay, most);
        if (judged.IsAboveRange)
            return Failed(context, run, finding.Decide(false, statement).Say(SentenceAboveRange(context.Present, run, most, new(after))), decay);
        return judged.Highest is { } highest
            ? Verdict(context, run, finding, new(statement, most, after), decay, highest, judged)
            : finding.Show(statement).NotEvaluated(judged.WhyNot!, judged.Todo!);
    }

    // The level, Pa, that must not be passed for this long, s.
    private sealed record HoldLimit(LimitStatement Statement, double Most, double After);

    private static Finding Verdict(CheckContext context, EvacuationRun run, FindingBuilder finding, HoldLimit limit, DecayReading decay, Uncertain highest, JudgedHold judged)
    {
        var (statement, most, after) = limit;
        var present = context.Present;
        if (decay.AtDue is not null && run.Rows.At(decay.Due) is { } atDue)
            finding.Step("p_d", VacuumHoldMessages.StepPressureThen, VacuumHoldMessages.StepPressureThenFormula, VacuumHoldMessages.StepAt(run.Clock.Time(decay.Due)), present.Text(atDue, DisplayKind.Vacuum));
        finding.Step("p_max", VacuumHoldMessages.StepHighest, VacuumHoldMessages.StepHighestFormula, decay.HighestAt is { } t ? VacuumHoldMessages.StepAt(run.Clock.Time(t)) : "", present.Text(highest, DisplayKind.Vacuum));
        finding.Judge(highest, DisplayKind.Vacuum, statement);
        if (IsBetweenLevels(run, decay))
            finding.Remark(EvacuationMessages.HoldInterpolated(VacuumText.Value(present, decay.AtDue!.Value), new(after)));
        foreach (var reservation in new[] { run.View.HoldReservation, run.Gauge.Reservation, judged.Reservation })
        {
            if (reservation is not null)
                finding.Reserve(reservation);
        }

        if (!finding.Passes)
            return Failed(context, run, finding.Say(SentenceAboveLimit(present, run, highest.Value, most, new(after))), decay);
        finding.Say(SentenceBelowLimit(present, run, decay.AtDue ?? highest.Value, highest.Value, most, new(after)));
        if (judged.Reservation is not null)
            finding.Next(EvacuationMessages.HoldReadAtTimeNext);
        else if (run.View.HoldReservation is not null || run.Gauge.Reservation is not null)
            finding.Next(EvacuationMessages.HoldDescribeGaugeNext);
        else if (decay.HighestAfter > most && Crossed(run, most) is { } crossed)
            finding.LookAt(EvacuationMessages.HoldWentPast(VacuumText.Value(present, most), new(crossed)));
        return Later(context, run, finding, decay).Build();
    }

    private static Message SentenceBelowLimit(Presentation present, EvacuationRun run, double atDue, double highest, double most, DurationValue after)
    {
        var (end, top, limit) = (VacuumText.Value(present, atDue), VacuumText.Value(present, highest), VacuumText.Value(present, most));
        var isEnd = top with { Si = end.Si } == end;
        return run.AtIsolation is { } level
            ? EvacuationMessages.HoldPassed(VacuumText.Value(present, level.Value), end, after, isEnd ? EvacuationMessages.HoldPassedPeak.AtEnd : EvacuationMessages.HoldPassedPeak.Before, top, limit)
            : EvacuationMessages.HoldPassedStartUnknown(end, after, isEnd ? EvacuationMessages.HoldPassedStartUnknownPeak.AtEnd : EvacuationMessages.HoldPassedStartUnknownPeak.Before, top, limit);
    }

    private static Message SentenceAboveLimit(Presentation present, EvacuationRun run, double highest, double most, DurationValue after)
    {
        var (top, limit) = (VacuumText.Value(present, highest), VacuumText.Value(present, most));
        var start = run.AtIsolation is { } level ? VacuumText.Value(present, level.Value) : null;
        return (start, Crossed(run, most)) switch
        {
            ({ } from, { } crossed) => EvacuationMessages.HoldFailedCrossed(from, top, after, limit, new(crossed)),
            ({ } from, null) => EvacuationMessages.HoldFailed(from, top, after),
            (null, { } crossed) => EvacuationMessages.HoldFailedStartUnknownCrossed(top, after, limit, new(crossed)),
            _ => EvacuationMessages.HoldFailedStartUnknown(top, after),
        };
    }

    private static Message SentenceAboveRange(Presentation present, EvacuationRun run, double most, DurationValue after) => Crossed(run, most) is { } crossed
        ? EvacuationMessages.HoldFailedOverRangeCrossed(after, VacuumText.Value(present, most), new(crossed))
        : EvacuationMessages.HoldFailedOverRange(after);

    private static Finding Failed(CheckContext context, EvacuationRun run, FindingBuilder finding, DecayReading decay)
    {
        finding.Use(VacuumHoldMessages.ReadingRigRise, run.Evacuation.RigCheck?.Rise);
        if (run.Hold is { } hold)
            NitrogenWitness.Of(context, run, hold)?.NameIn(finding);
        finding.Next(RiseCauseCheck.NextStep(context, run) ?? EvacuationMessages.HoldFailedNext);
        return Later(context, run, finding, decay).Build();
    }

    private static FindingBuilder Later(CheckContext context, EvacuationRun run, FindingBuilder finding, DecayReading decay)
    {
        if (decay is { HighestAfter: { } later, AtEnd: { } last })
        {
            var (top, end) = (VacuumText.Value(context.Present, later), VacuumText.Value(context.Present, last));
            finding.Remark(top with { Si = end.Si } == end
                ? EvacuationMessages.HoldWentOn(new(decay.HoldLength), end)
                : EvacuationMessages.HoldWentOnHighest(new(decay.HoldLength), top, end));
        }

        return finding.Remark(run.View.HoldRemark);
    }

    // A log has its rows beside the stated time; of levels by hand nobody read that one.
    private static bool IsBetweenLevels(EvacuationRun run, DecayReading decay) =>
        run.Rows.Log is null && decay.AtDue is not null && !run.Rows.Series.Times.Contains(decay.Due);

    private static double? Crossed(EvacuationRun run, double level)
    {
        if (run.Parts is not { Isolation: { } isolation, HoldEnd: { } end })
            return null;
        var series = run.Rows.Series;
        for (var i = series.IndexAtOrAfter(isolation); i < series.Count && series.Times[i] <= end; i++)
        {
            if (series.OverRange[i] || series.Pressures[i] > level)
                return series.Times[i] - isolation;
        }

        return null;
    }
}

/// <summary>Why there is no hold to look at: nobody wrote when the valve was closed, or nothing was read after it.</summary>
internal sealed record NoIsolation(Message Why, Message Next, string? InFile)
{
    /// <summary>Reads it from the evacuation.</summary>
    /// <param name="run">An evacuation without an isolated hold.</param>
    /// <param name="after">The stated time of the decay limit, s; null where none is stated.</param>
    public static NoIsolation Of(EvacuationRun run, double? after) => run.ClosedAsWritten is { } closed
        ? new(EvacuationMessages.HoldNothingAfter(closed), EvacuationMessages.HoldNothingAfterNext(new(after ?? UsualHold)), null)
        : new(EvacuationMessages.HoldNoIsolation, EvacuationMessages.HoldNoIsolationNext, "evacuation: {events: [{at: 71 min, what: isolated}]}");

    private const double UsualHold = 10 * 60;

    /// <summary>Ends a finding with it.</summary>
    public Finding End(FindingBuilder finding) => finding.NotEvaluated(Why, Next, InFile);
}

/// <summary>What of a hold is held against a limit: the highest pressure until the stated time, or why there is none.</summary>
/// <param name="Highest">Highest pressure until the stated time; null when there is none to be judged.</param>
/// <param name="IsAboveRange">Whether the pressure rose above the gauge's range, and so above the level, before the stated time.</param>
/// <param name="WhyNot">Why nothing can be judged; null when it can.</param>
/// <param name="Todo">What would make it possible; null when it is.</param>
/// <param name="Reservation">What the judgement rests on and was not shown; null when nothing.</param>
internal sealed record JudgedHold(Uncertain? Highest, bool IsAboveRange, Message? WhyNot, Message? Todo, Message? Reservation)
{
    /// <summary>Reads a hold.</summary>
    /// <param name="run">The evacuation.</param>
    /// <param name="decay">The hold as read for the stated time.</param>
    /// <param name="level">The level that must not be passed, Pa.</param>
    public static JudgedHold Of(EvacuationRun run, DecayReading decay, double level)
    {
        if (decay.OverRangeRows > 0 && HasShown(run.Rows.Series, level))
            return new JudgedHold(null, true, null, null, null);
        if (decay is not { Highest: { } value, HighestAt: { } at })
            return Not(EvacuationMessages.HoldNoReading, EvacuationMessages.HoldNoReadingNext);
        var highest = run.Rows.At(at) ?? Uncertain.Exact(value);
        if (value > level)
            return new JudgedHold(highest, false, null, null, null);
        if (decay.OverRangeRows > 0)
            return Not(EvacuationMessages.HoldOverRange, EvacuationMessages.HoldOverRangeNext);
        if (decay.Reached)
            return new JudgedHold(highest, false, null, null, BetweenTwo(run, decay, level));
        return run.Parts.HoldEnd < decay.Due ? EndsEarly(run, decay, highest) : AfterGap(run, decay, level, highest);
    }

    /// <summary>Whether the isolated hold of an evacuation stayed below the decay limit for its time.</summary>
    public static bool HasPassed(EvacuationRun run) => run is { Obstacle: null, DecayLimit: { Upper: { } most } limit, Decay: { } decay }
        && Of(run, decay, most.Si).Highest is { } highest
        && Conformity.Judge(highest, limit.ToTolerance(), limit.Rule).Verdict is Verdict.Pass or Verdict.PassWithinUncertainty or Verdict.Conditional;

    /// <summary>Whether the isolated hold of an evacuation rose above the decay limit within its time.</summary>
    public static bool HasFailed(EvacuationRun run) => run is { Obstacle: null, DecayLimit: { Upper: { } most } limit, Decay: { } decay }
        && Of(run, decay, most.Si) is var judged
        && (judged.IsAboveRange || (judged.Highest is { } highest && Conformity.Judge(highest, limit.ToTolerance(), limit.Rule).Verdict == Verdict.Fail));

    private static JudgedHold Not(Message why, Message todo) => new(null, false, why, todo, null);

    // A hold that ends within one step of its log before the stated time has lasted as long as the log can tell.
    private static JudgedHold EndsEarly(EvacuationRun run, DecayReading decay, Uncertain highest)
    {
        var asked = new DurationValue(decay.Due - run.Parts.Isolation!.Value);
        return decay.Due - run.Parts.HoldEnd <= run.Slack
            ? new JudgedHold(highest, false, null, null, null)
            : Not(EvacuationMessages.HoldTooShort(new(decay.HoldLength), asked), EvacuationMessages.HoldTooShortNext(asked));
    }

    // The next reading bounds what the gap hides, as far as a closed vacuum only rises.
    private static JudgedHold AfterGap(EvacuationRun run, DecayReading decay, double level, Uncertain highest)
    {
        var series = run.Rows.Series;
        var next = series.IndexAtOrAfter(decay.Due);
        if (series.Times[next] > run.Parts.HoldEnd || series.OverRange[next] || series.Pressures[next] > level)
            return Not(EvacuationMessages.HoldGap, EvacuationMessages.HoldGapNext);
        return new JudgedHold(
            series.Pressures[next] > highest.Value ? run.Rows.Row(next) : highest, false, null, null,
            EvacuationMessages.HoldGapBridged(new(series.Times[next] - decay.Due)));
    }

    // Levels by hand far apart: a rise that slows down may have passed the limit between two of them although the straight line did not.
    private static Message? BetweenTwo(EvacuationRun run, DecayReading decay, double level)
    {
        var series = run.Rows.Series;
        var next = series.IndexAtOrAfter(decay.Due);
        return run.Rows.Log is null && series.Pressures[next] > level
            ? EvacuationMessages.HoldBetweenReadings(new(series.Times[next] - decay.Due))
            : null;
    }

    // A gauge that has shown the limit itself and then goes over range is above it.
    private static bool HasShown(VacuumSeries series, double level)
    {
        for (var i = 0; i < series.Count; i++)
        {
            if (!series.OverRange[i] && series.Pressures[i] >= level)
                return true;
        }

        return false;
    }
}
