using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Measurement.Units;
using Commission.Records;

namespace Commission.Checks.Piping;

/// <summary>The lines as written, with their bores.</summary>
internal sealed class PipingTable : ITableSource
{
    /// <inheritdoc/>
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        foreach (var run in context.Job.Equipment.Piping)
        {
            var way = run switch
            {
                { From: { } from, To: { } to } => $"{from.Value} to {to.Value}",
                { To: { } to } => $"to {to.Value}",
                _ => "line set",
            };
            Add(context, rows, way, "liquid", run.Liquid);
            Add(context, rows, way, "vapor", run.Vapor);
        }

        if (rows.Count == 0)
            yield break;
        yield return new RecordTable
        {
            Id = "lines",
            Phase = Phases.Piping,
            Title = "Lines",
            Columns =
            [
                new TableColumn("Run"),
                new TableColumn("Line"),
                new TableColumn("Diameter"),
                new TableColumn("Bore", context.Present.Unit(DisplayKind.TubeDiameter), ColumnAlign.Decimal),
                new TableColumn("Length"),
                new TableColumn("Rise"),
                new TableColumn("Elbows", "", ColumnAlign.Right),
            ],
            Rows = rows.ToImmutable(),
        };
    }

    private static void Add(CheckContext context, ImmutableArray<ImmutableArray<string>>.Builder rows, string way, string line, Tube? tube)
    {
        if (tube is null)
            return;
        rows.Add(
        [
            way,
            line,
            tube.Od.Text,
            LineBore.Of(line, tube).Metres is { } bore ? context.Present.Number(bore, DisplayKind.TubeDiameter) : "",
            tube.Length.Text,
            tube.Rise?.Text ?? "",
            tube.Elbows?.Text ?? "",
        ]);
    }
}
