using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Measurement.Units;
using Commission.Messages;
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
                { From: { } from, To: { } to } => context.Present.Text(PipingMessages.TableFromTo(new(from.Value), new(to.Value))),
                { To: { } to } => context.Present.Text(PipingMessages.TableTo(new(to.Value))),
                _ => context.Present.Text(PipingMessages.TableLineSet),
            };
            Add(context, rows, way, PipingMessages.TableLiquid, run.Liquid);
            Add(context, rows, way, PipingMessages.TableVapor, run.Vapor);
        }

        if (rows.Count == 0)
            yield break;
        yield return new RecordTable
        {
            Id = "lines",
            Phase = Phases.Piping,
            Title = context.Present.Text(PipingMessages.Table),
            Columns =
            [
                new TableColumn(context.Present.Text(PipingMessages.TableRun)),
                new TableColumn(context.Present.Text(PipingMessages.TableLine)),
                new TableColumn(context.Present.Text(PipingMessages.TableDiameter)),
                new TableColumn(context.Present.Text(PipingMessages.TableBore), context.Present.Unit(DisplayKind.TubeDiameter), ColumnAlign.Decimal),
                new TableColumn(context.Present.Text(PipingMessages.TableLength)),
                new TableColumn(context.Present.Text(PipingMessages.TableRise)),
                new TableColumn(context.Present.Text(PipingMessages.TableElbows), "", ColumnAlign.Right),
            ],
            Rows = rows.ToImmutable(),
        };
    }

    private static void Add(CheckContext context, ImmutableArray<ImmutableArray<string>>.Builder rows, string way, Message line, Tube? tube)
    {
        if (tube is null)
            return;
        rows.Add(
        [
            way,
            context.Present.Text(line),
            tube.Od.Text,
            LineBore.Of(context, line, tube).Metres is { } bore ? context.Present.Number(bore, DisplayKind.TubeDiameter) : "",
            tube.Length.Text,
            tube.Rise?.Text ?? "",
            tube.Elbows?.Text ?? "",
        ]);
    }
}
