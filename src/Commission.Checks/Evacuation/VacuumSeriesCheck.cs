using System.Globalization;
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
        var finding = run.Name(context.Finding(this)).Use("gauge serial of the log", evacuation.Log?.GaugeSerial).Use("clock set", evacuation.Log?.ClockSet);
        foreach (var level in evacuation.Levels)
            finding.Use($"vacuum at {level.At.Text}", level.Pressure, run.Gauge.Id).Use($"isolated at {level.At.Text}", level.Isolated);
        if (series.Count == 0)
        {
            yield return finding.NotEvaluated("neither a log nor levels are written", "Log the evacuation, or read the level at isolation and after the hold.", "evacuation: {series: {file: …}}");
            yield break;
        }

        foreach (var part in run.Parts.Segments)
            finding.Step(Symbol(part.Kind), Words(part.Kind), part.Basis == SegmentBasis.Given ? "as written" : "found from the readings", Span(run, part), Pressures(context, part));
        foreach (var remark in run.Parts.Remarks)
            finding.Remark(remark);
        foreach (var remark in Remarks(run, evacuation))
            finding.Remark(remark);
        yield return finding.Information($"{run.Rows.Words}: {Course(run)}.", "says what the readings hold; sets no limit");
    }

    private static string Course(EvacuationRun run)
    {
        var parts = run.Parts;
        var pulls = parts.Segments.Count(s => s.Kind == SegmentKind.Pull);
        var words = new List<string>();
        if (pulls > 0)
            words.Add(Count(pulls, "pull", "pulls"));
        if (parts.Breaks > 0)
            words.Add(Count(parts.Breaks, "break", "breaks"));
        if (parts is { Isolation: { } isolation, HoldEnd: { } end })
        {
            words.Add($"isolated at {run.Clock.Moment(isolation)}{(parts.IsolationBasis == SegmentBasis.Given ? "" : " by the readings")}");
            words.Add($"hold of {EvacuationClock.Span(end - isolation)}");
        }
        else
        {
            words.Add("no hold");
        }

        return string.Join(", ", words);
    }

    private static IEnumerable<Message> Remarks(EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        if (run.ReadingsBeginLate is { } late && late > Disagreement)
            yield return $"The readings begin {EvacuationClock.Span(late)} after the isolation that is written.";
        if (run.LogBeginsLate is { } after)
            yield return EvacuationMessages.SeriesBeginsLate(new(after));
        if (run.Rows.Log is { Every: > 1 } log)
            yield return EvacuationMessages.SeriesThinned(new(log.File), log.Every);
        if (run.Rows.Log is not null && !evacuation.Levels.IsEmpty)
            yield return "Levels are written by hand beside the log; the log is judged.";
        if (evacuation.Log?.ClockSet?.Value == false)
            yield return "The log's clock was not set: its times of day may be off.";
        if (evacuation.Log?.GaugeSerial is { } serial && run.Gauge.Instrument?.Described.Serial is { } known && !string.Equals(serial.Value, known.Value, StringComparison.OrdinalIgnoreCase))
            yield return $"The log was written by gauge {serial.Value}; the instrument {run.Gauge.Id} has serial {known.Value}.";
    }

    private static string Count(int count, string one, string many) => count == 1 ? $"one {one}" : string.Create(CultureInfo.InvariantCulture, $"{count} {many}");

    private static string Symbol(SegmentKind kind) => kind switch
    {
        SegmentKind.Pull => "pull",
        SegmentKind.Break => "break",
        _ => "hold",
    };

    private static string Words(SegmentKind kind) => kind switch
    {
        SegmentKind.Pull => "the pump pulls on the system",
        SegmentKind.Break => "gas is let in",
        _ => "the system stands isolated",
    };

    private static string Span(EvacuationRun run, SeriesSegment part) => $"{run.Clock.Moment(part.From)} to {run.Clock.Moment(part.To)}";

    private static string Pressures(CheckContext context, SeriesSegment part) =>
        part is { PressureAtStart: { } first, PressureAtEnd: { } last }
            ? $"{VacuumText.Level(context.Present, first)} to {VacuumText.Level(context.Present, last)}{(part.OverRangeRows > 0 ? ", in between above the gauge's range" : "")}"
            : "above the gauge's range";
}
