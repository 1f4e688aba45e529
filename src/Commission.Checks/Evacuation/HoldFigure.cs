using System.Collections.Immutable;
using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Commission.Measurement.Units;
using Commission.Records.Series;

namespace Commission.Checks.Evacuation;

/// <summary>The isolated hold on a linear scale: readings, the curves that explain them with their bands, the level and the time that decide, and what the curve leaves over.</summary>
internal sealed class HoldFigure : IFigureSource
{
    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        if (context.Job.Evacuation is null)
            yield break;
        var run = context.Get<EvacuationRun>();
        if (run.View.HoldBlock is not null || run.Parts is not { Isolation: { } isolation, HoldEnd: { } end, Hold.PressureAtStart: not null })
            yield break;
        var curves = ImmutableArray.CreateBuilder<FigureCurve>();
        curves.Add(Measured(context, run, isolation, end));
        if (run.Hold is { } hold)
            curves.AddRange(Models(context, hold, isolation));
        var after = run.DecayLimit?.Companion("after");
        yield return new FigureData
        {
            Id = "hold",
            Plot = "hold",
            Phase = Phases.Evacuation,
            Title = "Isolated hold",
            Caption = curves.Count > 1
                ? "Readings after the valve was closed, the curves that explain them with the 95 % band of their mean, and what is left between readings and curve."
                : "Readings after the valve was closed.",
            AltText = Told(context, run),
            X = new FigureAxis("Time since isolation", "min", AxisScale.Minutes, 0),
            Y = new FigureAxis("Pressure", context.Present.Unit(DisplayKind.Vacuum), AxisScale.Linear),
            Curves = curves.ToImmutable(),
            Lines = [.. Lines(context, run.DecayLimit, after)],
            Events = [new FigureEvent(0, "isolated"), new FigureEvent((end - isolation) / 60, "end of the hold")],
        };
    }

    private static FigureCurve Measured(CheckContext context, EvacuationRun run, double isolation, double end)
    {
        var (times, pressures) = CurveThinning.Of(run.Rows.Series, isolation, end);
        var byHand = run.Rows.Log is null;
        double? Shown(double pascals) => context.Present.Value(pascals, DisplayKind.Vacuum);
        var around = byHand ? times.Select(t => run.Rows.At(t)).ToImmutableArray() : [];
        return new FigureCurve
        {
            Label = byHand ? "as written down" : "measured",
            Role = CurveRole.Measured,
            X = [.. times.Select(t => (t - isolation) / 60)],
            Y = [.. pressures.Select(p => p is { } value ? Shown(value) : null)],
            YLow = [.. around.Select(u => u is null ? null : Shown(u.Value - u.Expanded))],
            YHigh = [.. around.Select(u => u is null ? null : Shown(u.Value + u.Expanded))],
        };
    }

    // The preferred curve; where two shapes explain the readings alike, the rival beside it.
    private static IEnumerable<FigureCurve> Models(CheckContext context, HoldResult hold, double isolation)
    {
        if (hold.Preferred is not { } preferred || hold.Points.Length < 3)
            yield break;
        var shown = hold.Reason is CannotTellReason.LineOrSource or CannotTellReason.SourceWithOrWithoutLine or CannotTellReason.LineWithOrWithoutSource
            ? hold.Evidence.Where(e => e.Difference is not null && e.Model != preferred).OrderBy(e => e.Difference).Take(1).Select(e => e.Model).Prepend(preferred)
            : [preferred];
        double Pressure(double pascals) => context.Present.Value(pascals, DisplayKind.Vacuum);
        foreach (var curve in shown.Select(m => hold.Curves.FirstOrDefault(c => c.Model == m)).OfType<HoldCurve>())
        {
            yield return new FigureCurve
            {
                Label = RiseCauseCheck.Curve(curve.Model),
                Role = CurveRole.Model,
                X = [.. curve.Times.Select(t => (t - isolation) / 60)],
                Y = [.. curve.Pressures.Select(p => (double?)Pressure(p))],
                YLow = [.. curve.Low.Select(p => (double?)Pressure(p))],
                YHigh = [.. curve.High.Select(p => (double?)Pressure(p))],
            };
        }

        yield return new FigureCurve
        {
            Label = $"Readings less {RiseCauseCheck.Curve(preferred)}",
            Role = CurveRole.Residual,
            X = [.. hold.Points.Select(p => (p.Time - isolation) / 60)],
            Y = [.. hold.Points.Select(p => (double?)Pressure(p.Residual))],
        };
    }

    private static IEnumerable<FigureLine> Lines(CheckContext context, Limit? limit, double? after)
    {
        if (limit?.Upper is { } most)
            yield return new FigureLine($"decay limit {VacuumText.Level(context.Present, most.Si)}", context.Present.Value(most.Si, DisplayKind.Vacuum), AxisName.Y, LineRole.DecayLimit);
        if (after is { } time)
            yield return new FigureLine($"judged at {EvacuationClock.Span(time)}", time / 60, AxisName.X, LineRole.DecayLimit);
    }

    private static string Told(CheckContext context, EvacuationRun run)
    {
        var present = context.Present;
        var hold = run.Parts.Hold!;
        var shape = run.Hold is { } result ? $" {VacuumText.Wording(present).Statement(result)}" : "";
        return $"Pressure from {VacuumText.Level(present, hold.PressureAtStart!.Value)} at isolation to {VacuumText.Level(present, hold.PressureAtEnd!.Value)} after {EvacuationClock.Span(hold.Length)}.{shape}";
    }
}
