using System.Collections.Immutable;
using Commission.Checks.PressureTest.Analysis;
using Commission.Checks.Recording;
using Commission.Jobs.Model;
using Commission.Measurement.Units;
using Commission.Records;

namespace Commission.Checks.PressureTest;

/// <summary>The readings of the pressure test as written, and the pressures referred to the temperature at the start.</summary>
internal sealed class PressureTestTable : ITableSource
{
    private const int MostRows = 30;

    /// <inheritdoc/>
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        var rows = new List<ImmutableArray<string>>();
        rows.AddRange(test.Stages.Select(s => Stage("stage", s)));
        if (test.Strength is { } strength)
            rows.Add(Stage("strength test", strength));
        rows.AddRange(Points(context, test));
        if (rows.Count == 0)
            yield break;
        yield return new RecordTable
        {
            Id = "pressure-test-readings",
            Phase = Phases.PressureTest,
            Title = "Pressure test",
            Note = rows.Count > MostRows ? "The first and the last readings; the rest is in the job file." : "",
            Columns =
            [
                new TableColumn("Time"), new TableColumn("What"), new TableColumn("Pressure as read", "", ColumnAlign.Right), new TableColumn("Held or rested", "", ColumnAlign.Right),
                new TableColumn("Temperature", "", ColumnAlign.Right), new TableColumn("Referred to the start", "", ColumnAlign.Right),
            ],
            Rows = rows.Count > MostRows ? [.. rows.Take(MostRows / 2), .. rows.TakeLast(MostRows / 2)] : [.. rows],
        };
    }

    private static ImmutableArray<string> Stage(string what, TestStage stage) => [stage.At?.Text ?? "", what, stage.Pressure.Text, stage.Held?.Text ?? "", "", ""];

    private static IEnumerable<ImmutableArray<string>> Points(CheckContext context, Jobs.Model.PressureTest test)
    {
        var run = context.Get<NitrogenRun>();
        if (run.Hold is not { } hold)
            yield break;
        var points = new[] { hold.From }.Concat(hold.Readings).Append(hold.To).OfType<HoldPoint>().DistinctBy(p => p.Pressure.At).ToList();
        for (var i = 0; i < points.Count; i++)
        {
            var point = points[i];
            var what = ReferenceEquals(point, hold.From) ? "hold begins" : ReferenceEquals(point, hold.To) ? "hold ends" : "hold";
            yield return
            [
                point.At.Text, what, point.Pressure.Text, point.Settled?.Text ?? "", string.Join(", ", point.Temperature.Select(t => t.Text)), Referred(context, run, test, point),
            ];
        }
    }

    private static string Referred(CheckContext context, NitrogenRun run, Jobs.Model.PressureTest test, HoldPoint point)
    {
        if (run is not { Loss: { } loss, Rows: { IsLog: false } rows })
            return "";
        var index = rows.At.IndexOf(point.At);
        return index >= 0 && index < rows.Readings.Length && test.Tightness is not null
            && NitrogenHold.Refer(rows.Readings[index].Absolute, rows.Readings[index].Temperature, loss.Start.Temperature, NitrogenRun.Density) is { } referred
            ? context.Present.Text(referred - loss.Start.Atmosphere, DisplayKind.Pressure)
            : "";
    }
}
