using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Commission.Fluids.Water;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Series;

namespace Commission.Checks.Evacuation;

/// <summary>The whole evacuation on a logarithmic scale, with target, decay limit, the vapour pressure of water at the coldest part, and what happened when.</summary>
internal sealed class PullDownFigure : IFigureSource
{
    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var series = run.Rows.Series;
        // A log that holds nothing but the hold is drawn as the hold.
        if (series.Count < 3 || !run.Parts.Segments.Any(s => s.Kind == SegmentKind.Pull && s.PressureAtStart > s.PressureAtEnd))
            yield break;
        var present = context.Present;
        var curves = ImmutableArray.CreateBuilder<FigureCurve>();
        curves.Add(Measured(run, present));
        if (Expected(context, run) is { } expected)
            curves.Add(expected);
        yield return new FigureData
        {
            Id = "pull-down",
            Plot = "pull-down",
            Phase = Phases.Evacuation,
            Title = "Evacuation",
            Caption = Caption(run),
            AltText = Told(context, run, evacuation),
            X = new FigureAxis(run.Clock.IsOfDay ? "Time" : "Time since the pump was started", run.Clock.IsOfDay ? "" : "min", run.Clock.IsOfDay ? AxisScale.Clock : AxisScale.Minutes),
            Y = new FigureAxis("Pressure", present.Unit(DisplayKind.Vacuum), AxisScale.Log10),
            Curves = curves.ToImmutable(),
            Lines = [.. Lines(context, run, evacuation)],
            Events = [.. Events(run, evacuation)],
        };
    }

    private static FigureCurve Measured(EvacuationRun run, Presentation present)
    {
        var series = run.Rows.Series;
        var (times, pressures) = CurveThinning.Of(series, series.Times[0], series.Times[^1]);
        // A gauge that shows nothing at all is drawn at half its step: a logarithm has no zero.
        var least = Math.Max(run.Gauge.Resolution / 2, 1e-3);
        return new FigureCurve
        {
            Label = run.Rows.Log is null ? "as written down" : "measured",
            Role = CurveRole.Measured,
            X = [.. times.Select(run.Clock.Minutes)],
            Y = [.. pressures.Select(p => p is { } value ? present.Value(Math.Max(value, least), DisplayKind.Vacuum) : (double?)null)],
        };
    }

    private static FigureCurve? Expected(CheckContext context, EvacuationRun run)
    {
        if (context.Get<PumpDown>().Result is not { Expected.IsEmpty: false } result)
            return null;
        return new FigureCurve
        {
            Label = "expected by pump and hose",
            Role = CurveRole.Model,
            X = [.. result.Expected.Select(e => run.Clock.Minutes(e.Time))],
            Y = [.. result.Expected.Select(e => (double?)context.Present.Value(e.Pressure, DisplayKind.Vacuum))],
        };
    }

    private static IEnumerable<FigureLine> Lines(CheckContext context, EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        var present = context.Present;
        FigureLine Line(string name, double pascals, LineRole role) => new($"{name} {VacuumText.Level(present, pascals)}", present.Value(pascals, DisplayKind.Vacuum), AxisName.Y, role);
        if (run.Level?.Upper is { } target)
            yield return Line("target", target.Si, LineRole.Target);
        if (run.DecayLimit?.Upper is { } decay && decay.Si != run.Level?.Upper?.Si)
            yield return Line("decay limit", decay.Si, LineRole.DecayLimit);
        if ((evacuation.ColdestPart ?? evacuation.ColdestPartAtEnd) is { } coldest && WaterVapor.SaturationPressure(coldest.Value.Si) is { Ok: true, Value: var saturation })
            yield return Line($"{(coldest.Value.Si < WaterSaturation.TripleTemperature ? "ice" : "water")} at {coldest.Text} (coldest part)", saturation, LineRole.Saturation);
    }

    private static IEnumerable<FigureEvent> Events(EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        foreach (var e in evacuation.Events)
        {
            if (run.Clock.Seconds(e.At.Value) is { } seconds)
                yield return new FigureEvent(run.Clock.Minutes(seconds), e.To is { } to ? $"{e.What.Text} to {to.Text}" : e.What.Text);
        }

        if (run.Parts is { Isolation: { } isolation } && !evacuation.Events.Any(e => e.What.Value == EvacuationEventKind.Isolated))
            yield return new FigureEvent(run.Clock.Minutes(isolation), run.Parts.IsolationBasis == SegmentBasis.Given ? "isolated" : "isolated (by the log)");
        foreach (var part in run.Parts.Segments.Where(s => s is { Kind: SegmentKind.Break, Basis: SegmentBasis.FoundInData }))
            yield return new FigureEvent(run.Clock.Minutes(part.From), "break (by the log)");
    }

    private static string Caption(EvacuationRun run)
    {
        var thinned = run.Rows.Series.Count > CurveThinning.MostPoints
            ? string.Create(CultureInfo.InvariantCulture, $" Of the {run.Rows.Series.Count:#,0} rows of the log the lowest and the highest of each bundle are drawn.")
            : "";
        var gaps = run.Rows.Log is not null && !run.Rows.Series.Gaps.IsEmpty
            ? $" The log is silent from {run.Clock.Moment(run.Rows.Series.Gaps[0].From)} to {run.Clock.Moment(run.Rows.Series.Gaps[0].To)}{(run.Rows.Series.Gaps.Length > 1 ? " and in further gaps" : "")}; the line is drawn through."
            : "";
        return $"Pressure through the evacuation on a logarithmic scale, with the levels it is judged by.{thinned}{gaps}";
    }

    private static string Told(CheckContext context, EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        var present = context.Present;
        var lowest = run.Parts.Segments.Where(s => s.Lowest is not null).Select(s => s.Lowest!.Value).DefaultIfEmpty(double.NaN).Min();
        var words = $"Pressure from {run.Clock.Moment(run.Rows.Series.Times[0])} to {run.Clock.Moment(run.Rows.Series.Times[^1])}, lowest {VacuumText.Level(present, lowest)}";
        var limits = string.Concat(Lines(context, run, evacuation).Select(l => $"; {l.Label}"));
        return run.Parts.Isolation is { } isolation ? $"{words}; isolated at {run.Clock.Moment(isolation)}{limits}." : $"{words}{limits}.";
    }
}
