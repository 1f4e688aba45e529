using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>The pressure in the system when the valve was closed, against the target.</summary>
internal sealed class VacuumLevelCheck : ICheck
{
    private const double LateReadings = 60;

    public string Id => "evacuation.level";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Name(context.Finding(this)).Use(VacuumHoldMessages.ReadingGaugePlace, evacuation.Gauge).Use(VacuumHoldMessages.ReadingTarget, evacuation.Target).Use(VacuumHoldMessages.ReadingAmbient, evacuation.Ambient);
        yield return run.Level is { Upper: not null } limit
            ? Judge(context, run, finding, limit)
            : finding.NotEvaluated(EvacuationMessages.NoLevel, CommonMessages.NameAPackNext);
    }

    private Finding Judge(CheckContext context, EvacuationRun run, FindingBuilder finding, Limit limit)
    {
        if (run.Rows.Series.Count == 0)
            return finding.NotEvaluated(EvacuationMessages.LevelNothingWritten, EvacuationMessages.LevelNothingWrittenNext, "evacuation: {levels: [{at: \"10:25\", pressure: 320 micron, isolated: yes}]}");
        if (run.LevelObstacle is { } block)
            return finding.NotEvaluated(block.Why, block.Next);
        if (run.Parts.Isolation is not { } isolation)
            return NoIsolation.Of(run, run.DecayLimit?.Companion("after")).End(finding);
        run.Name(finding, isolation, isolation);
        if (run.ReadingsBeginLate is { } late && late > LateReadings)
            return finding.NotEvaluated(EvacuationMessages.LevelBeginsLate(new(late)), EvacuationMessages.LevelBeginsLateNext);
        var present = context.Present;
        var statement = context.State(limit);
        if (run.AtIsolation is not { } level)
        {
            var row = run.Rows.Series.IndexAtOrAfter(isolation);
            return row < run.Rows.Series.Count && run.Rows.Series.OverRange[row]
                ? finding.Decide(false, statement).Say(EvacuationMessages.LevelOverRange(run.Clock.Time(isolation))).Next(this.WhenItFails()).Build()
                : finding.Show(statement).NotEvaluated(EvacuationMessages.LevelGap, EvacuationMessages.LevelGapNext);
        }

        finding.Step(
            "p_i", EvacuationMessages.LevelStep, EvacuationMessages.LevelFormula,
            EvacuationMessages.LevelIsolation(run.Clock.Time(isolation), run.Parts.IsolationBasis == SegmentBasis.Given ? EvacuationMessages.LevelIsolationKnown.Written : EvacuationMessages.LevelIsolationKnown.Found), present.Text(level, DisplayKind.Vacuum));
        finding.Judge(level, DisplayKind.Vacuum, statement).Remark(limit.Remark(present.Units));
        foreach (var reservation in new[] { run.View.LevelReservation, run.Gauge.Reservation })
        {
            if (reservation is not null)
                finding.Reserve(reservation);
        }

        var (reached, at) = (VacuumText.Value(present, level.Value), run.Clock.Time(isolation));
        return finding.Passes
            ? Todo(run, finding.Say(EvacuationMessages.LevelWas(reached, at))).Build()
            : finding.Say(EvacuationMessages.LevelAboveTarget(reached, at)).Next(run.Evacuation.Wet?.Value == true && !run.IsCharged ? RiseCauseCheck.Wording(context, run).WetNext : this.WhenItFails()).Use(EvacuationMessages.LevelWet, run.Evacuation.Wet).Build();
    }

    private static FindingBuilder Todo(EvacuationRun run, FindingBuilder finding) =>
        run.View.LevelReservation is not null ? finding.Next(EvacuationMessages.LevelGaugePlaceNext, "evacuation: {gauge: at the system}")
        : run.Gauge.Reservation is not null ? finding.Next(EvacuationMessages.LevelGaugeAccuracyNext)
        : finding;
}

/// <summary>The rise of the isolated system, where a pack limits the rise itself and not only the level.</summary>
internal sealed class VacuumRiseCheck : ICheck
{
    public string Id => "evacuation.rise";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation || context.Limits.Find(LimitIds.EvacuationRise) is not { Upper: { } most } limit || limit.Companion("after") is not { } after)
            yield break;
        var run = context.Get<EvacuationRun>();
        var finding = run.Name(context.Finding(this)).Use(VacuumHoldMessages.ReadingGaugePlace, evacuation.Gauge).Use(VacuumHoldMessages.ReadingIsolatedAt, evacuation.IsolatedAt);
        foreach (var level in evacuation.Levels)
            finding.Use(VacuumHoldMessages.ReadingIsolated(new(level.At.Text)), level.Isolated);
        var statement = context.State(limit);
        if (run.Obstacle is { } block)
        {
            yield return finding.Show(statement).NotEvaluated(block.Why, block.Next);
            yield break;
        }

        if (run.Parts is not { Isolation: { } isolation, HoldEnd: { } end } || run.Read(after) is not { } decay || run.AtIsolation is not { } begun)
        {
            yield return finding.Show(statement).NotEvaluated(EvacuationMessages.RiseNoStart, EvacuationMessages.RiseNoStartNext);
            yield break;
        }

        run.Name(finding, isolation, Math.Min(decay.Due, end));
        var judged = JudgedHold.Of(run, decay, begun.Value + most.Si);
        if (judged.IsAboveRange)
        {
            yield return finding.Decide(false, statement).Say(EvacuationMessages.RiseOverRange(new(after))).Next(this.WhenItFails()).Build();
            yield break;
        }

        if (judged.Highest is not { } highest)
        {
            yield return finding.Show(statement).NotEvaluated(judged.WhyNot!, judged.Todo!);
            yield break;
        }

        var rise = highest - begun;
        finding.Step(
            "Δp", EvacuationMessages.RiseStep, "p_max − p_i", $"{VacuumText.Level(context.Present, highest.Value)} − {VacuumText.Level(context.Present, begun.Value)}",
            context.Present.Text(rise, DisplayKind.Vacuum), limit.Source);
        finding.Judge(rise, DisplayKind.Vacuum, statement);
        foreach (var reservation in new[] { run.View.HoldReservation, run.Gauge.Reservation, judged.Reservation })
        {
            if (reservation is not null)
                finding.Reserve(reservation);
        }

        var rose = VacuumText.Value(context.Present, rise.Value);
        if ((run.View.HoldReservation ?? run.Gauge.Reservation ?? judged.Reservation) is not null)
            finding.Next(EvacuationMessages.RiseReservedNext);
        yield return finding.Conclude(EvacuationMessages.RiseWas(rose, new(after)), EvacuationMessages.RiseTooMuch(rose, new(after)), this.WhenItFails());
    }
}
