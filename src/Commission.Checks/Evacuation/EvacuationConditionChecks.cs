using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Fluids.Water;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>Whether it was warm enough for water to leave: ice gives off so little vapour that a vacuum does not see it.</summary>
internal sealed class EvacuationConditionsCheck : ICheck
{
    public string Id => "evacuation.conditions";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var finding = context.Finding(this).Use(VacuumHoldMessages.ReadingAmbient, evacuation.Ambient).Use(VacuumHoldMessages.ReadingColdest, evacuation.ColdestPart).Use(VacuumHoldMessages.ReadingColdestAtEnd, evacuation.ColdestPartAtEnd);
        var limit = context.Limits.Require(LimitIds.EvacuationAmbient);
        var statement = context.State(limit);
        var coldest = new[] { (EvacuationMessages.ColdAround, evacuation.Ambient), (EvacuationMessages.ColdColdestPart, evacuation.ColdestPart), (EvacuationMessages.ColdColdestPart, evacuation.ColdestPartAtEnd) }
            .Where(t => t.Item2 is not null).OrderBy(t => t.Item2!.Value.Si).FirstOrDefault();
        if (coldest.Item2 is not { } given)
        {
            yield return finding.Show(statement).NotEvaluated(EvacuationMessages.ColdNotRead, EvacuationMessages.ColdNotReadNext, "evacuation: {ambient: 72 °F, coldest part: 66 °F}");
            yield break;
        }

        var temperature = new TextValue(given.Text);
        finding.Judge(Reading(context, given), DisplayKind.Temperature, statement);
        if (WaterVapor.SaturationPressure(given.Value.Si) is { Ok: true, Value: var vapour })
        {
            finding.Step(
                "p_s", given.Value.Si < WaterSaturation.TripleTemperature ? EvacuationMessages.ColdIcePressure : EvacuationMessages.ColdWaterPressure, "p_sat(T)", given.Text,
                VacuumText.Level(context.Present, vapour), given.Value.Si < WaterSaturation.TripleTemperature ? "IAPWS R14-08" : "IAPWS-95, Wagner and Pruß 2002");
        }

        if (finding.Passes)
        {
            yield return finding.Say(EvacuationMessages.ColdEnough(temperature, coldest.Item1)).Build();
            yield break;
        }

        // Ice leaves too, slowly: a level held below its vapour pressure shows that none is left; anything else leaves a doubt, and no failure.
        var run = context.Get<EvacuationRun>();
        var held = run.Parts is { HoldEnd: { } end } ? run.Rows.At(end) : null;
        finding.Decide(true);
        yield return held is { } level && WaterVapor.SaturationPressure(given.Value.Si) is { Ok: true, Value: var ice } && level.Value + level.Expanded < ice
            ? finding.Say(EvacuationMessages.ColdNoIceLeft(temperature, coldest.Item1, VacuumText.Value(context.Present, level.Value), VacuumText.Value(context.Present, ice))).Build()
            : finding.Reserve(EvacuationMessages.ColdIceWhy(temperature, coldest.Item1)).Say(EvacuationMessages.ColdIce(temperature, coldest.Item1)).Next(EvacuationMessages.ColdNext).Build();
    }

    private static Uncertain Reading(CheckContext context, Given<Temperature> given)
    {
        if (given.Stated is { } stated)
        {
            return context.Scope.Reading(given.Value.Si, 1.0 * context.Causes.Enter(
                RootCause.FromExpanded(EvacuationMessages.CauseTemperature, EvacuationMessages.CauseTemperatureStated, stated.HalfWidthSi, stated.CoverageFactor), DisplayKind.TemperatureDifference));
        }

        return given.Step is { } step and > 0
            ? context.Scope.Reading(given.Value.Si, 1.0 * context.Causes.Enter(RootCause.FromResolution(EvacuationMessages.CauseTemperatureStep, CorrectionsMessages.SmallestStep, step), DisplayKind.TemperatureDifference))
            : Uncertain.Exact(given.Value.Si);
    }
}

/// <summary>What was inside the vacuum: a closed valve leaves a part of the circuit wet and full of air.</summary>
internal sealed class EvacuationSectionCheck : ICheck
{
    public string Id => "evacuation.section";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        yield return SectionStatement.Make(context, context.Finding(this), evacuation.Section, evacuation.SectionName, evacuation.Valves, SectionWork.Evacuated);
    }
}

/// <summary>Breaks of the vacuum with dry nitrogen: as many as are asked for, each down to its level, up to the atmosphere, and left to soak. Where nobody asks for them they are told.</summary>
internal sealed class NitrogenBreaksCheck : ICheck
{
    private const double Near = 600;
    private const int UsualBreaks = 2;
    private const double UsualTime = 5 * 60;

    public string Id => "evacuation.breaks";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var breaks = evacuation.Events.Where(e => e.What.Value == EvacuationEventKind.NitrogenBreak).ToList();
        var finding = run.Name(context.Finding(this)).Use(EvacuationMessages.LevelWet, evacuation.Wet);
        foreach (var b in breaks)
            finding.Use(EvacuationMessages.BreakTo, b.To).Use(EvacuationMessages.BreakHeld, b.Held);
        var limit = context.Limits.Find(LimitIds.EvacuationBreakCount);
        var wet = evacuation.Wet?.Value == true;
        var asked = limit is { Tier: LimitTier.Maker or LimitTier.Pack };
        if (limit is null || (!asked && !wet))
        {
            yield return finding.Information(
                breaks.Count == 0 ? EvacuationMessages.BreaksNoneNotAsked : EvacuationMessages.BreaksNotAsked(Told(breaks)), EvacuationMessages.BreaksNotAskedKind);
            yield break;
        }

        // A break the crew forgot to write shows in the log; that it was dry nitrogen does not.
        var unwritten = Unwritten(run, evacuation).ToList();
        // A count has neither unit nor doubt: it is no measured number.
        var counted = Counted(context, limit);
        finding.Decide(breaks.Count + unwritten.Count >= counted.LowerSi, counted);
        var shortcomings = unwritten.Select(t => EvacuationMessages.BreakUnwritten(run.Clock.Time(t))).Concat(breaks.SelectMany(b => Shortcomings(context, run, b))).Distinct().ToList();
        foreach (var reservation in shortcomings)
            finding.Reserve(reservation);
        var number = (int)limit.Lower!.Si;
        var said = asked ? EvacuationMessages.BreaksAsked(Told(breaks), new(limit.Source), number) : EvacuationMessages.BreaksWet(Told(breaks), number);
        yield return finding.Passes
            ? Todo(shortcomings, finding.Say(said)).Build()
            : finding.Say(said).Next(wet && !run.IsCharged ? RiseCauseCheck.Wording(context, run).WetNext : Next((int)counted.LowerSi!.Value - breaks.Count - unwritten.Count, context.Limits.Find(LimitIds.EvacuationBreakTime)?.Lower?.Si ?? UsualTime)).Build();
    }

    private static Message Next(int still, double time) => EvacuationMessages.BreaksNext(still, new DurationValue(time));

    private static FindingBuilder Todo(List<Message> shortcomings, FindingBuilder finding) =>
        shortcomings.Count > 0 ? finding.Next(EvacuationMessages.BreaksShortNext) : finding;

    private static LimitStatement Counted(CheckContext context, Limit limit) => context.State(limit) with { Text = context.Present.Text(EvacuationMessages.BreaksAtLeast((int)limit.Lower!.Si)) };

    private static Message Told(List<EvacuationEvent> breaks) => breaks switch
    {
        [] => EvacuationMessages.BreaksNone,
        [{ To: { } to } one] => EvacuationMessages.BreakOneTo(new(one.At.Text), new(to.Text)),
        [var one] => EvacuationMessages.BreakOne(new(one.At.Text)),
        _ => EvacuationMessages.BreakSeveral(breaks.Count, new([.. breaks.Select(b => new TextValue(b.At.Text))], ListJoin.Comma)),
    };

    private static IEnumerable<double> Unwritten(EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        var written = evacuation.Events.Where(e => e.What.Value is EvacuationEventKind.NitrogenBreak or EvacuationEventKind.Opened).Select(e => run.Clock.Seconds(e.At.Value)).OfType<double>().ToList();
        return run.Parts.Segments.Where(s => s.Kind == SegmentKind.Break && !written.Exists(t => Math.Abs(t - s.From) <= Near || (t >= s.From && t <= s.To))).Select(s => s.From);
    }

    private static IEnumerable<Message> Shortcomings(CheckContext context, EvacuationRun run, EvacuationEvent b)
    {
        var present = context.Present;
        if (b.To is { } to && context.Limits.Find(LimitIds.EvacuationBreakTo) is { } range)
        {
            var bounds = range.ToTolerance(context.Get<SiteAtmosphere>().Pressure);
            var filled = to.Value.ToAbsolute(context.Get<SiteAtmosphere>().Pressure).Si;
            if (filled < bounds.Lower)
                yield return EvacuationMessages.BreakBelowAtmosphere(new(b.At.Text), new(to.Text));
            else if (filled > bounds.Upper)
                yield return EvacuationMessages.BreakAbove(new(b.At.Text), new(to.Text), new(context.State(range).Text));
        }

        if (b.Held is { } held && context.Limits.Find(LimitIds.EvacuationBreakTime) is { Lower: { } least } && held.Value.Si < least.Si)
            yield return EvacuationMessages.BreakTooShort(new(b.At.Text), new(held.Text), new(least.Text));
        if (context.Limits.Find(LimitIds.EvacuationBreakLevel) is not { Upper: { } deep } || run.Clock.Seconds(b.At.Value) is not { } time)
            yield break;
        // The readings around a break jump: what counts is the lowest of the pull before it.
        var pull = run.Parts.Segments.LastOrDefault(s => s.Kind != SegmentKind.Break && s.From < time);
        if (pull?.Lowest is { } lowest ? lowest > deep.Si : pull is { OverRangeRows: > 0 })
            yield return pull.Lowest is { } p ? EvacuationMessages.BreakNotDeep(new(b.At.Text), VacuumText.Value(present, p), new(deep.Text)) : EvacuationMessages.BreakOverRange(new(b.At.Text), new(deep.Text));
    }
}
