using System.Collections.Immutable;
using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Recording;
using Commission.Jobs.Model.Words;
using Commission.Records;

namespace Commission.Checks.Evacuation;

/// <summary>What happened during the evacuation, in order: the written events and the pulls, breaks and holds of the readings.</summary>
internal sealed class EvacuationPartsTable : ITableSource
{
    /// <inheritdoc/>
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var rows = new List<(double At, int Order, ImmutableArray<string> Cells)>();
        foreach (var part in run.Parts.Segments)
        {
            rows.Add((part.From, 1, [
                run.Clock.Moment(part.From), run.Clock.Moment(part.To), Words(part.Kind), part.Basis == SegmentBasis.Given ? "written" : "found",
                Level(context, part.PressureAtStart, part.OverRangeRows), Level(context, part.PressureAtEnd, part.OverRangeRows), Level(context, part.Lowest, part.OverRangeRows)]));
        }

        // What cuts the log stands in the rows above; the rest is listed beside it.
        foreach (var e in evacuation.Events.Where(e => e.What.Value is EvacuationEventKind.HeatApplied or EvacuationEventKind.PumpOilChanged or EvacuationEventKind.GaugeCleaned))
            rows.Add((run.Clock.Seconds(e.At.Value) ?? double.MaxValue, 0, [e.At.Text, "", e.Note is { } note ? $"{e.What.Text}: {note.Value}" : e.What.Text, "written", "", "", ""]));
        foreach (var e in evacuation.Events.Where(e => e.What.Value == EvacuationEventKind.NitrogenBreak && (e.To ?? (object?)e.Held) is not null))
            rows.Add((run.Clock.Seconds(e.At.Value) ?? double.MaxValue, 0, [e.At.Text, "", Broken(e), "written", "", "", ""]));
        if (rows.Count == 0)
            yield break;
        yield return new RecordTable
        {
            Id = "evacuation-parts",
            Phase = Phases.Evacuation,
            Title = "Course of the evacuation",
            Columns =
            [
                new TableColumn("From"), new TableColumn("To"), new TableColumn("What"), new TableColumn("Known from"),
                new TableColumn("At the start", "", ColumnAlign.Right), new TableColumn("At the end", "", ColumnAlign.Right), new TableColumn("Lowest", "", ColumnAlign.Right),
            ],
            Rows = [.. rows.OrderBy(r => r.At).ThenBy(r => r.Order).Select(r => r.Cells)],
        };
    }

    private static string Broken(Jobs.Model.EvacuationEvent e) =>
        $"broken with nitrogen{(e.To is { } to ? $" to {to.Text}" : "")}{(e.Held is { } held ? $", left for {held.Text}" : "")}";

    private static string Words(SegmentKind kind) => kind switch
    {
        SegmentKind.Pull => "pull",
        SegmentKind.Break => "break",
        _ => "isolated hold",
    };

    private static string Level(CheckContext context, double? pascals, int overRange) =>
        pascals is { } p ? VacuumText.Level(context.Present, p) : overRange > 0 ? "over range" : "";
}
