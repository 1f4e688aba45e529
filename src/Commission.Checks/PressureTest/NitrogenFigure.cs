using System.Collections.Immutable;
using Commission.Checks.Evacuation;
using Commission.Checks.PressureTest.Analysis;
using Commission.Checks.Recording;
using Commission.Measurement.Units;
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
        var temperature = present.Text(start.Temperature, DisplayKind.Temperature);
        var onClock = rows.Start is not null;
        var origin = onClock ? (rows.Start!.Value.DateTime - context.Job.Identity.Date.Value.ToDateTime(TimeOnly.MinValue)).TotalMinutes : 0;
        double[] x = [.. rows.Times.Select(t => origin + ((t - (onClock && rows.IsLog ? 0 : rows.Times[0])) / 60))];
        var referred = Referred(run, rows, start);
        double? Gauge(double? absolute) => absolute is { } p ? present.Value(p - start.Atmosphere, DisplayKind.Pressure) : null;
        var lines = ImmutableArray.CreateBuilder<FigureLine>();
        if (context.Limits.Find("pressure-test.hold.loss")?.Upper is { } most)
            lines.Add(new FigureLine($"{most.Text} of the absolute pressure lost", Gauge(start.Absolute * (1 - most.Si))!.Value, AxisName.Y, LineRole.Tolerance));
        yield return new FigureData
        {
            Id = "nitrogen-hold",
            Plot = "nitrogen-hold",
            Phase = Phases.PressureTest,
            Title = "Nitrogen hold",
            Caption = $"Pressure as read, and referred to {temperature} by the density of real nitrogen with its U: a tight system stays level.",
            AltText = $"Pressure from {present.Text(start.Gauge, DisplayKind.Pressure)} to {present.Text(loss.End.Gauge, DisplayKind.Pressure)} in {EvacuationClock.Span(rows.Length)}; referred to {temperature} it ends at {present.Text(loss.ReferredPressure - start.Atmosphere, DisplayKind.Pressure)}, with {present.Text(reach, DisplayKind.PressureDifference)} of uncertainty.",
            X = new FigureAxis(onClock ? "Time" : "Time since the first reading", onClock ? "" : "min", onClock ? AxisScale.Clock : AxisScale.Minutes),
            Y = new FigureAxis("Pressure", present.Unit(DisplayKind.Pressure), AxisScale.Linear),
            Curves =
            [
                new FigureCurve { Label = "as read", Role = CurveRole.Measured, X = [.. x], Y = [.. rows.Readings.Select(r => (double?)present.Value(r.Gauge, DisplayKind.Pressure))] },
                new FigureCurve
                {
                    Label = $"referred to {temperature}",
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
