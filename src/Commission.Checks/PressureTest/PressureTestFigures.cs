using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.NitrogenAnalysis;
using Commission.Jobs.Model;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Series;

namespace Commission.Checks.PressureTest;

/// <summary>The nitrogen hold: pressure as read, and the same referred to the temperature at the start, with the band within which no loss can be seen.</summary>
internal sealed class NitrogenFigure : IFigureSource
{
    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        if (context.Job.PressureTest is null || context.Get<NitrogenRun>() is not { Loss: { } loss, Rows: { } rows } run)
            yield break;
        var present = context.Present;
        var start = loss.Start;
        var reach = loss.Loss.Expanded * start.Absolute;
        var temperature = present.InMessage(start.Temperature, DisplayKind.Temperature);
        var onClock = rows.Start is not null;
        var origin = onClock ? (rows.Start!.Value.DateTime - context.Job.Identity.Date.Value.ToDateTime(TimeOnly.MinValue)).TotalMinutes : 0;
        double[] x = [.. rows.Times.Select(t => origin + ((t - (onClock && rows.IsLog ? 0 : rows.Times[0])) / 60))];
        var referred = Referred(run, rows, start);
        double? Gauge(double? absolute) => absolute is { } p ? present.Value(p - start.Atmosphere, DisplayKind.Pressure) : null;
        var lines = ImmutableArray.CreateBuilder<FigureLine>();
        if (context.Limits.Find(LimitIds.PressureTestHoldLoss)?.Upper is { } most)
            lines.Add(new FigureLine(present.Text(PressureTestMessages.HoldFigureLimit(new(most.Text))), Gauge(start.Absolute * (1 - most.Si))!.Value, AxisName.Y, LineRole.Tolerance));
        yield return new FigureData
        {
            Id = "nitrogen-hold",
            Plot = "nitrogen-hold",
            Phase = Phases.PressureTest,
            Title = present.Text(PressureTestMessages.HoldFigure),
            Caption = present.Text(PressureTestMessages.HoldFigureCaption(temperature)),
            AltText = present.Text(PressureTestMessages.HoldFigureAlt(
                present.InMessage(start.Gauge, DisplayKind.Pressure), present.InMessage(loss.End.Gauge, DisplayKind.Pressure), new(rows.Length), temperature,
                present.InMessage(loss.ReferredPressure - start.Atmosphere, DisplayKind.Pressure), present.InMessage(reach, DisplayKind.PressureDifference))),
            X = new FigureAxis(present.Text(onClock ? PressureTestMessages.HoldFigureTime : PressureTestMessages.HoldFigureElapsed), onClock ? "" : "min", onClock ? AxisScale.Clock : AxisScale.Minutes),
            Y = new FigureAxis(present.Text(PressureTestMessages.HoldFigurePressure), present.Unit(DisplayKind.Pressure), AxisScale.Linear),
            Curves =
            [
                new FigureCurve { Label = present.Text(PressureTestMessages.HoldFigureMeasured), Role = CurveRole.Measured, X = [.. x], Y = [.. rows.Readings.Select(r => (double?)present.Value(r.Gauge, DisplayKind.Pressure))] },
                new FigureCurve
                {
                    Label = present.Text(PressureTestMessages.HoldFigureReferred(temperature)),
                    Role = CurveRole.Model,
                    X = [.. x],
                    Y = [.. referred.Select(Gauge)],
                    YLow = [.. referred.Select((p, i) => Gauge(p - (i == 0 && !rows.IsLog ? 0 : reach)))],
                    YHigh = [.. referred.Select((p, i) => Gauge(p + (i == 0 && !rows.IsLog ? 0 : reach)))],
                },
            ],
            Lines = lines.ToImmutable(),
        };
    }

    private static ImmutableArray<double?> Referred(NitrogenRun run, NitrogenRows rows, NitrogenReading start) => run.Course is { } course
        ? [.. course.Referred.Select(p => (double?)p)]
        : [.. rows.Readings.Select(r => NitrogenHold.Refer(r.Absolute, r.Temperature, start.Temperature, NitrogenRun.Density))];
}

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
        rows.AddRange(test.Stages.Select(s => Stage(context.Present.Text(PressureTestMessages.RowStage), s)));
        if (test.Strength is { } strength)
            rows.Add(Stage(context.Present.Text(PressureTestMessages.RowStrength), strength));
        rows.AddRange(Points(context, test));
        if (rows.Count == 0)
            yield break;
        yield return new RecordTable
        {
            Id = "pressure-test-readings",
            Phase = Phases.PressureTest,
            Title = context.Present.Text(PressureTestMessages.Table),
            Note = rows.Count > MostRows ? context.Present.Text(PressureTestMessages.TableShortened) : "",
            Columns =
            [
                new TableColumn(context.Present.Text(PressureTestMessages.HoldFigureTime)), new TableColumn(context.Present.Text(PressureTestMessages.TableWhat)), new TableColumn(context.Present.Text(PressureTestMessages.TableAsRead), "", ColumnAlign.Right),
                new TableColumn(context.Present.Text(PressureTestMessages.TableHeld), "", ColumnAlign.Right),
                new TableColumn(context.Present.Text(PressureTestMessages.TableTemperature), "", ColumnAlign.Right), new TableColumn(context.Present.Text(PressureTestMessages.TableReferred), "", ColumnAlign.Right),
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
            var what = context.Present.Text(ReferenceEquals(point, hold.From) ? PressureTestMessages.RowHoldBegins : ReferenceEquals(point, hold.To) ? PressureTestMessages.RowHoldEnds : PressureTestMessages.RowHold);
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
