using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Whether the system had settled: long enough after the start or the last change of charge, and no longer moving.</summary>
internal sealed class StabilisedCheck : ICheck
{
    public string Id => "charge.stabilised";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.ByWeightOnly is not null || analysis.Spoken(OperatingMode.Cooling, r => r.HasCircuitReading) is not { } row)
            yield break;
        if (Hunting.In(context) is { } swing)
        {
            yield return swing.Unsettled(context, context.Finding(this, row.Time));
            yield break;
        }

        yield return JudgeTime(context, row);
        if (row.Settling.Block is not null)
            yield break;
        var log = context.Get<RunningLog>();
        if (log.Stopped is { } stopped)
            yield return JudgePower(context, log, stopped);
        if (context.Limits.Find(LimitIds.ChargeStabilisedChange) is { } most)
        {
            if (log.Superheat is { } superheat)
                yield return JudgeLog(context, log, superheat, OperatingStateMessages.Superheat, ChargeMessages.LogSuperheatChange, ChargeMessages.LogSuperheatMoving, most);
            if (log.Subcooling is { } subcooling)
                yield return JudgeLog(context, log, subcooling, OperatingStateMessages.Subcooling, ChargeMessages.LogSubcoolingChange, ChargeMessages.LogSubcoolingMoving, most);
        }

        var before = analysis.Rows.LastOrDefault(r => r.Mode == OperatingMode.Cooling && r != row && r.Settling.Block is null);
        if (before is null || context.Limits.Find(LimitIds.ChargeStabilisedChange) is not { } limit)
            yield break;
        if (row.Superheat.Value is not null && before.Superheat.Value is not null)
            yield return JudgeChange(context, ChargeCriterion.Superheat, before, row, before.Superheat, row.Superheat, limit);
        if (row.Subcooling.Value is not null && before.Subcooling.Value is not null)
            yield return JudgeChange(context, ChargeCriterion.Subcooling, before, row, before.Subcooling, row.Subcooling, limit);
    }

    private Finding JudgeTime(CheckContext context, ChargeRow row)
    {
        var settling = row.Settling;
        var finding = context.Finding(this, row.Time);
        settling.NameIn(finding);
        if (settling.Standing == RowStanding.NotKnown || settling.Least is not { } least)
            return finding.NotEvaluated(settling.Words!, OperatingStateMessages.SettledNoTimesNext);
        if (settling.Standing == RowStanding.BeforeChange)
            return finding.Show(context.State(least)).Say(OperatingStateMessages.SettledBeforeChange(settling.Words!)).NotEvaluated(settling.Words!, settling.Todo!);
        var since = settling.Since!.Value;
        var text = context.Present.Text(since.Si, DisplayKind.Duration);
        finding
            .Step("t", OperatingStateMessages.StepSinceChange, OperatingStateMessages.StepSinceChangeFormula, OperatingStateMessages.StepSinceChangeValues(new(row.Time), settling.SinceChange ? OperatingStateMessages.StepSinceChangeValuesAfter.Change : OperatingStateMessages.StepSinceChangeValuesAfter.Start), text)
            .Judge(Uncertain.Exact(since.Si), DisplayKind.Duration, context.State(least))
            .Say(OperatingStateMessages.SettledTime(
                new(row.Time), new(since.Si), settling.SinceChange ? OperatingStateMessages.SettledTimeAfter.Change : OperatingStateMessages.SettledTimeAfter.Start, LimitText.Of(least, context.Present.Units)));
        // A reading taken too early says nothing against the system: it says nothing at all.
        return finding.Passes ? finding.Build() : finding.NotEvaluated(settling.Words!, settling.Todo!);
    }

    private Finding JudgePower(CheckContext context, RunningLog log, bool stopped)
    {
        var finding = context.Finding(this, OperatingStateMessages.SettledPower);
        foreach (var use in log.Uses)
            finding.Use(use);
        return stopped ? finding.NotEvaluated(ChargeMessages.LogStopped, ChargeMessages.LogStillMovingNext) : finding.Decide(true).Say(ChargeMessages.LogRanThrough).Build();
    }

    private Finding JudgeLog(
        CheckContext context, RunningLog log, LogCourse course, Message what, Func<DurationValue, QuantityValue, QuantityValue, QuantityValue, Message> said, Message moving, Limit limit)
    {
        var state = context.State(limit);
        var finding = context.Finding(this, OperatingStateMessages.InTheLog(what));
        foreach (var use in log.Uses)
            finding.Use(use);
        var present = context.Present;
        var (change, length) = (present.InMessage(course.Change, DisplayKind.TemperatureDifference), new DurationValue(course.Length));
        finding.Step("Δ", OperatingStateMessages.StepChangeInLog(what), OperatingStateMessages.StepChangeInLogFormula, present.Text(course.Length, DisplayKind.Duration), present.Text(course.Change, DisplayKind.TemperatureDifference), OperatingStateMessages.LeastSquares)
            .Judge(course.Change, DisplayKind.TemperatureDifference, state with { Kind = LimitKind.Within, Text = context.Present.Text(OperatingStateMessages.EitherWay(new(state.Text))), LowerSi = -state.UpperSi })
            .Say(said(length, change, present.InMessage(course.Low, DisplayKind.TemperatureDifference), present.InMessage(course.High, DisplayKind.TemperatureDifference)));
        return course.IsMoving(context) ? finding.NotEvaluated(moving, ChargeMessages.LogStillMovingNext) : finding.Build();
    }

    private static Message Name(ChargeCriterion what) => what == ChargeCriterion.Superheat ? OperatingStateMessages.Superheat : OperatingStateMessages.Subcooling;

    // A steady system moves a little all the time, and no clamp settles twice at the same place: each reading brings its own.
    private static Uncertain Movement(CheckContext context, ChargeRow before, ChargeRow row, ChargeCriterion what)
    {
        var kelvin = context.Assume(LimitIds.AssumptionRunningTemperature);
        var share = context.Assume(LimitIds.AssumptionRunningPressure);
        var terms = new List<RootTerm>(2);
        foreach (var reading in new[] { before, row })
        {
            var byPressure = share * reading.PerShareOfPressure(what == ChargeCriterion.Superheat);
            terms.Add(context.Causes.Enter(
                new RootCause(OperatingStateMessages.Movement(Name(what), new(reading.Time)), OperatingStateMessages.MovementSource, Math.Sqrt((kelvin * kelvin) + (byPressure * byPressure))), DisplayKind.TemperatureDifference));
        }

        return context.Scope.Reading(0, [.. terms]);
    }

    private Finding JudgeChange(CheckContext context, ChargeCriterion what, ChargeRow before, ChargeRow row, RowNumber first, RowNumber last, Limit limit)
    {
        var name = Name(what);
        var change = last.Value! - first.Value! + Movement(context, before, row, what);
        var state = context.State(limit);
        var finding = context.Finding(this, OperatingStateMessages.ChangeBetween(name, new(before.Time), new(row.Time))).Use(first).Use(last);
        before.Settling.NameIn(finding);
        row.Settling.NameIn(finding);
        finding
            .Step("Δ", OperatingStateMessages.StepChange(name), OperatingStateMessages.StepChangeFormula, $"{context.Present.Text(last.Value!.Value, DisplayKind.TemperatureDifference, 2)} − {context.Present.Text(first.Value!.Value, DisplayKind.TemperatureDifference, 2)}", context.Present.Text(change, DisplayKind.TemperatureDifference), OperatingStateMessages.Definition)
            .Judge(change, DisplayKind.TemperatureDifference, state with { Kind = LimitKind.Within, Text = context.Present.Text(OperatingStateMessages.EitherWay(new(state.Text))), LowerSi = -state.UpperSi })
            .Say(OperatingStateMessages.ChangeWas(new(before.Time), new(row.Time), name, context.Present.InMessage(change, DisplayKind.TemperatureDifference)));
        return finding.Passes ? finding.Build() : finding.NotEvaluated(OperatingStateMessages.StillMoving(name), ChargeMessages.LogStillMovingNext);
    }
}

/// <summary>Whether the compressor ran in a way in which superheat and subcooling show the charge.</summary>
internal sealed class RunningConditionCheck : ICheck
{
    public string Id => "charge.running-condition";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, r => r.HasCircuitReading) is not { } row)
            yield break;
        var gate = RunningCondition.Of(context, row);
        var finding = context.Finding(this, row.Time);
        gate.NameIn(finding);
        if (gate.Block is { } why)
        {
            yield return finding.NotEvaluated(why, gate.Todo!);
            yield break;
        }

        finding.Decide(true);
        if (gate.Reservation is { } missing)
            finding.Reserve(missing);
        yield return finding.Say(gate.Reservation is { } open ? OperatingStateMessages.RunningOpen(new(row.Time), open) : OperatingStateMessages.RunningValid(new(row.Time), How(row.Running?.Value))).Build();
    }

    private static OperatingStateMessages.RunningValidHow How(RunningState? running) => running switch
    {
        RunningState.Full => OperatingStateMessages.RunningValidHow.Full,
        RunningState.HighStage => OperatingStateMessages.RunningValidHow.HighStage,
        RunningState.ChargingMode => OperatingStateMessages.RunningValidHow.ChargingMode,
        RunningState.Part => OperatingStateMessages.RunningValidHow.Part,
        _ => OperatingStateMessages.RunningValidHow.OneSpeed,
    };
}
