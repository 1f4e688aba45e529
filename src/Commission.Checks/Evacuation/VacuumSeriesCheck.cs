using Commission.Checks.Kernel;
using Commission.Checks.VacuumAnalysis;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>What the readings of the evacuation hold: pulls, breaks, isolation, hold; as written, or as the log shows it.</summary>
internal sealed class VacuumSeriesCheck : ICheck
{
    private const double Disagreement = 60;

    public string Id => "evacuation.series";

    public string Phase => Phases.Evacuation;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var series = run.Rows.Series;
        var finding = run.Name(context.Finding(this)).Use(VacuumHoldMessages.ReadingSerial, evacuation.Log?.GaugeSerial).Use(VacuumHoldMessages.ReadingClockSet, evacuation.Log?.ClockSet);
        foreach (var level in evacuation.Levels)
            finding.Use(VacuumHoldMessages.ReadingVacuumWritten(new(level.At.Text)), level.Pressure, run.Gauge.Id).Use(VacuumHoldMessages.ReadingIsolated(new(level.At.Text)), level.Isolated);
        if (series.Count == 0)
        {
            yield return finding.NotEvaluated(VacuumHoldMessages.SeriesNone, VacuumHoldMessages.SeriesNoneNext, "evacuation: {series: {file: …}}");
            yield break;
        }

        foreach (var part in run.Parts.Segments)
            finding.Step(Symbol(part.Kind), Words(part.Kind), part.Basis == SegmentBasis.Given ? VacuumHoldMessages.SeriesAsWritten : VacuumHoldMessages.SeriesFound, Span(run, part), Pressures(context, part));
        foreach (var remark in run.Parts.Remarks)
            finding.Remark(remark);
        foreach (var remark in Remarks(run, evacuation))
            finding.Remark(remark);
        yield return finding.Information(run.Rows.Log is null ? VacuumHoldMessages.SeriesLevels(series.Count, Course(run)) : VacuumHoldMessages.SeriesRows(series.Count, Course(run)), VacuumHoldMessages.SeriesKind);
    }

    private static ListValue Course(EvacuationRun run)
    {
        var parts = run.Parts;
        var pulls = parts.Segments.Count(s => s.Kind == SegmentKind.Pull);
        var words = new List<MessageValue>();
        if (pulls > 0)
            words.Add(VacuumHoldMessages.SeriesPulls(pulls));
        if (parts.Breaks > 0)
            words.Add(VacuumHoldMessages.SeriesBreaks(parts.Breaks));
        if (parts is { Isolation: { } isolation, HoldEnd: { } end })
        {
            words.Add(VacuumHoldMessages.SeriesIsolated(run.Clock.Time(isolation), parts.IsolationBasis == SegmentBasis.Given ? VacuumHoldMessages.SeriesIsolatedBasis.Written : VacuumHoldMessages.SeriesIsolatedBasis.Readings));
            words.Add(VacuumHoldMessages.SeriesHoldLength(new(end - isolation)));
        }
        else
        {
            words.Add(VacuumHoldMessages.SeriesNoHold);
        }

        return new ListValue([.. words], ListJoin.Comma);
    }

    private static IEnumerable<Message> Remarks(EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        if (run.ReadingsBeginLate is { } late && late > Disagreement)
            yield return VacuumHoldMessages.SeriesReadingsLate(new(late));
        if (run.LogBeginsLate is { } after)
            yield return EvacuationMessages.SeriesBeginsLate(new(after));
        if (run.Rows.Log is { Every: > 1 } log)
            yield return EvacuationMessages.SeriesThinned(new(log.File), log.Every);
        if (run.Rows.Log is not null && !evacuation.Levels.IsEmpty)
            yield return VacuumHoldMessages.SeriesBoth;
        if (evacuation.Log?.ClockSet?.Value == false)
            yield return VacuumHoldMessages.SeriesClockNotSet;
        if (evacuation.Log?.GaugeSerial is { } serial && run.Gauge.Instrument?.Described.Serial is { } known && !string.Equals(serial.Value, known.Value, StringComparison.OrdinalIgnoreCase))
            yield return VacuumHoldMessages.SeriesOtherGauge(new(serial.Value), new(run.Gauge.Id!), new(known.Value));
    }

    private static string Symbol(SegmentKind kind) => kind switch
    {
        SegmentKind.Pull => "pull",
        SegmentKind.Break => "break",
        _ => "hold",
    };

    private static Message Words(SegmentKind kind) => kind switch
    {
        SegmentKind.Pull => VacuumHoldMessages.SeriesPull,
        SegmentKind.Break => VacuumHoldMessages.SeriesBreak,
        _ => VacuumHoldMessages.SeriesHold,
    };

    private static Message Span(EvacuationRun run, SeriesSegment part) => VacuumHoldMessages.SeriesSpan(run.Clock.Time(part.From), run.Clock.Time(part.To));

    private static Message Pressures(CheckContext context, SeriesSegment part) =>
        part is { PressureAtStart: { } first, PressureAtEnd: { } last }
            ? VacuumHoldMessages.SeriesPressures(VacuumText.Value(context.Present, first), VacuumText.Value(context.Present, last), part.OverRangeRows > 0 ? VacuumHoldMessages.SeriesPressuresOver.Between : VacuumHoldMessages.SeriesPressuresOver.None)
            : VacuumHoldMessages.SeriesOverRange;
}
