using System.Globalization;
using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>Breaks of the vacuum with dry nitrogen: as many as are asked for, each down to its level, up to the atmosphere, and left to soak. Where nobody asks for them they are told.</summary>
internal sealed class NitrogenBreaksCheck : ICheck
{
    private const double Near = 600;

    public string Id => "evacuation.breaks";

    public string Phase => Phases.Evacuation;

    public string Title => "Nitrogen breaks";

    public CheckHelp Help { get; } = new(
        "Was the vacuum broken with dry nitrogen where the maker, a named pack or a wet circuit asks for it? Nitrogen takes up water that a vacuum alone leaves behind.",
        "number of breaks ≥ asked; level before each ≤ pack level; filled to the pack's range; left in for the pack's time",
        "Triple evacuation 1500, 1500 and 500 micron, broken to 0 to 5 psig for 5 minutes or more: common practice, no source; a named pack or the maker first.",
        "Break with dry nitrogen through a regulator, sweep from the far port, leave it in, pull down again. Never break with refrigerant. With ice about, warm the circuit first.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var breaks = evacuation.Events.Where(e => e.What.Value == EvacuationEventKind.NitrogenBreak).ToList();
        var finding = run.Name(context.Finding(this)).Use("wet", evacuation.Wet);
        foreach (var b in breaks)
            finding.Use("break: to", b.To).Use("break: held", b.Held);
        var limit = context.Limits.Find("evacuation.break.count");
        var wet = evacuation.Wet?.Value == true;
        var asked = limit is { Tier: LimitTier.Maker or LimitTier.Pack };
        if (limit is null || (!asked && !wet))
        {
            yield return finding.Information(
                breaks.Count == 0 ? "The vacuum was not broken with nitrogen; nobody asks for it here." : $"{Told(breaks)}; nobody asks for it here.", "breaks are asked for by the maker, by a named pack or for a wet circuit");
            yield break;
        }

        // A break the crew forgot to write shows in the log; that it was dry nitrogen does not.
        var unwritten = Unwritten(run, evacuation).ToList();
        // A count has neither unit nor doubt: it is no measured number.
        var counted = Counted(context, limit);
        finding.Decide(breaks.Count + unwritten.Count >= counted.LowerSi, counted);
        var shortcomings = unwritten.Select(t => $"the log shows a break at {run.Clock.Moment(t)} and nobody wrote with what").Concat(breaks.SelectMany(b => Shortcomings(context, run, b))).Distinct(StringComparer.Ordinal).ToList();
        foreach (var reservation in shortcomings)
            finding.Reserve(reservation);
        var because = asked ? $"{limit.Source} asks" : "a wet circuit asks";
        yield return finding.Passes
            ? Todo(shortcomings, finding.Say($"{Told(breaks)}; {because} for {Number(limit.Lower!.Si)}.")).Build()
            : finding.Say($"{Told(breaks)}; {because} for {Number(limit.Lower!.Si)}.").Next(Help.WhenItFails).Build();
    }

    private static FindingBuilder Todo(List<string> shortcomings, FindingBuilder finding) =>
        shortcomings.Count > 0 ? finding.Next("Write with what each break was made, to what pressure, and how long it was left; make up what was short.") : finding;

    private static LimitStatement Counted(CheckContext context, Limit limit) => context.State(limit) with { Text = $"at least {Number(limit.Lower!.Si)}" };

    private static string Told(List<EvacuationEvent> breaks) => breaks.Count switch
    {
        0 => "No break with nitrogen",
        1 => $"One break with nitrogen, at {breaks[0].At.Text}{(breaks[0].To is { } to ? $" to {to.Text}" : "")}",
        _ => $"{Number(breaks.Count)} breaks with nitrogen, at {string.Join(", ", breaks.Select(b => b.At.Text))}",
    };

    private static string Number(double n) => n switch
    {
        1 => "one",
        2 => "two",
        3 => "three",
        _ => n.ToString("0", CultureInfo.InvariantCulture),
    };

    private static IEnumerable<double> Unwritten(EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        var written = evacuation.Events.Where(e => e.What.Value is EvacuationEventKind.NitrogenBreak or EvacuationEventKind.Opened).Select(e => run.Clock.Seconds(e.At.Value)).OfType<double>().ToList();
        return run.Parts.Segments.Where(s => s.Kind == SegmentKind.Break && !written.Exists(t => Math.Abs(t - s.From) <= Near || (t >= s.From && t <= s.To))).Select(s => s.From);
    }

    private static IEnumerable<string> Shortcomings(CheckContext context, EvacuationRun run, EvacuationEvent b)
    {
        var present = context.Present;
        if (b.To is { } to && context.Limits.Find("evacuation.break.to") is { } range)
        {
            var bounds = range.ToTolerance(context.Get<SiteAtmosphere>().Pressure);
            var filled = to.Value.ToAbsolute(context.Get<SiteAtmosphere>().Pressure).Si;
            if (filled < bounds.Lower)
                yield return $"the break at {b.At.Text} to {to.Text} did not reach the atmosphere";
            else if (filled > bounds.Upper)
                yield return $"the break at {b.At.Text} to {to.Text} went above {context.State(range).Text}";
        }

        if (b.Held is { } held && context.Limits.Find("evacuation.break.time") is { Lower: { } least } && held.Value.Si < least.Si)
            yield return $"the nitrogen of the break at {b.At.Text} was left in for {held.Text}; {least.Text} are usual";
        if (context.Limits.Find("evacuation.break.level") is not { Upper: { } deep } || run.Clock.Seconds(b.At.Value) is not { } time)
            yield break;
        // The readings around a break jump: what counts is the lowest of the pull before it.
        var pull = run.Parts.Segments.LastOrDefault(s => s.Kind != SegmentKind.Break && s.From < time);
        if (pull?.Lowest is { } lowest ? lowest > deep.Si : pull is { OverRangeRows: > 0 })
            yield return $"the pull before the break at {b.At.Text} came {(pull.Lowest is { } p ? $"no lower than {VacuumText.Level(present, p)}" : "nowhere in the gauge's range")}; {deep.Text} is usual";
    }
}
