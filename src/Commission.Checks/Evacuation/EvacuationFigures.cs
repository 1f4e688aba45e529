using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Fluids.Water;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records;
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
            yield return Line($"{(coldest.Value.Si < WaterSaturation.TripleTemperature ? "ice" : "water")} at {coldest.Text} ({ReadWhen(evacuation)})", saturation, LineRole.Saturation);
    }

    // Where it was read twice, the other stands in the sentence about water: each with its time.
    private static string ReadWhen(Jobs.Model.Evacuation evacuation) => evacuation switch
    {
        { ColdestPart: null } => "coldest part at the end",
        { ColdestPartAtEnd: null } => "coldest part",
        _ => "coldest part at isolation",
    };

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

/// <summary>The isolated hold on a linear scale: readings, the curves that explain them with their bands, the level and the time that decide, and what the curve leaves over.</summary>
internal sealed class HoldFigure : IFigureSource
{
    private const int FewestPoints = 3;

    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        if (context.Job.Evacuation is null)
            yield break;
        var run = context.Get<EvacuationRun>();
        if (run.View.HoldBlock is not null || run.Parts is not { Isolation: { } isolation, HoldEnd: { } end, Hold.PressureAtStart: not null })
            yield break;
        var measured = Measured(context, run, isolation, end);
        // Two readings have no shape: the sentence of the check says all there is.
        if (measured.X.Length < FewestPoints)
            yield break;
        var curves = ImmutableArray.CreateBuilder<FigureCurve>();
        curves.Add(measured);
        if (run.Hold is { } hold)
            curves.AddRange(Models(context, hold, isolation));
        var after = run.DecayLimit?.Companion("after");
        yield return new FigureData
        {
            Id = "hold",
            Plot = "hold",
            Phase = Phases.Evacuation,
            Title = "Isolated hold",
            Caption = curves.Count > 1 && run.Hold?.Conclusion == HoldConclusion.CannotTell
                ? "Readings after the valve was closed, what fits them among others with the 95 % band of its mean, and what is left between readings and curve."
                : curves.Count > 1
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

    private static bool HasCurve(HoldResult hold) => !hold.RisesWithoutCurve
        && hold.Reason is not (CannotTellReason.TooFewBlocks or CannotTellReason.Falling or CannotTellReason.SpeedsUp or CannotTellReason.NoCurveFits);

    // The preferred curve; where two shapes explain the readings alike, the rival beside it. What no curve follows, or none explains, has none; where it cannot be told which, each is one of several.
    private static IEnumerable<FigureCurve> Models(CheckContext context, HoldResult hold, double isolation)
    {
        if (hold.Preferred is not { } preferred || hold.Points.Length < 3 || !HasCurve(hold))
            yield break;
        var open = hold.Conclusion == HoldConclusion.CannotTell ? ", one of several that fit" : "";
        var shown = hold.Reason is CannotTellReason.LineOrSource or CannotTellReason.SourceWithOrWithoutLine or CannotTellReason.LineWithOrWithoutSource
            ? hold.Evidence.Where(e => e.Difference is not null && e.Model != preferred).OrderBy(e => e.Difference).Take(1).Select(e => e.Model).Prepend(preferred)
            : [preferred];
        double Pressure(double pascals) => context.Present.Value(pascals, DisplayKind.Vacuum);
        foreach (var curve in shown.Select(m => hold.Curves.FirstOrDefault(c => c.Model == m)).OfType<HoldCurve>())
        {
            yield return new FigureCurve
            {
                Label = $"{RiseCauseCheck.Curve(curve.Model)}{open}",
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
        var shape = run.Hold is { } result ? $" {present.Text(RiseCauseCheck.Wording(context, run).Statement(result))}" : "";
        return $"Pressure from {VacuumText.Level(present, hold.PressureAtStart!.Value)} at isolation to {VacuumText.Level(present, hold.PressureAtEnd!.Value)} after {EvacuationClock.Span(hold.Length)}.{shape}";
    }
}

/// <summary>
/// Thins a log for a figure: of each bundle of rows the lowest and the highest stay, in their order, so that no spike and no break is
/// lost, and an over-range stretch stays a gap.
/// </summary>
internal static class CurveThinning
{
    /// <summary>Most points of a curve in a record.</summary>
    public const int MostPoints = 2000;

    // Lowest, highest and the mark of an over-range stretch.
    private const int PointsOfBundle = 3;

    /// <summary>Rows of a stretch, thinned.</summary>
    /// <param name="series">The readings.</param>
    /// <param name="from">Begin, s.</param>
    /// <param name="to">End, s.</param>
    /// <returns>Times (s) and pressures (Pa); null where the gauge was over range.</returns>
    public static (ImmutableArray<double> Times, ImmutableArray<double?> Pressures) Of(VacuumSeries series, double from, double to)
    {
        var first = series.IndexAtOrAfter(from);
        var last = series.IndexAtOrAfter(to);
        if (last < series.Count && series.Times[last] == to)
            last++;
        var count = Math.Max(last - first, 0);
        var size = Math.Max(1, (count + (MostPoints / PointsOfBundle) - 1) / (MostPoints / PointsOfBundle));
        if (count <= MostPoints)
            size = 1;
        var times = ImmutableArray.CreateBuilder<double>();
        var pressures = ImmutableArray.CreateBuilder<double?>();
        for (var i = first; i < last; i += size)
            AddBundle(series, i, Math.Min(i + size, last), times, pressures);
        return (times.ToImmutable(), pressures.ToImmutable());
    }

    private static void AddBundle(VacuumSeries series, int from, int to, ImmutableArray<double>.Builder times, ImmutableArray<double?>.Builder pressures)
    {
        var (low, high, over) = (-1, -1, -1);
        for (var i = from; i < to; i++)
        {
            if (series.OverRange[i])
            {
                over = over < 0 ? i : over;
                continue;
            }

            if (low < 0 || series.Pressures[i] < series.Pressures[low])
                low = i;
            if (high < 0 || series.Pressures[i] > series.Pressures[high])
                high = i;
        }

        foreach (var row in new[] { low, high, over }.Where(r => r >= 0).Distinct().Order())
        {
            times.Add(series.Times[row]);
            pressures.Add(series.OverRange[row] ? null : series.Pressures[row]);
        }
    }
}

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
                .. Levels(context, part)]));
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

    // A break ends where the nitrogen took it, which is beyond most gauges; the last level that such a gauge showed is that of its start.
    private static ImmutableArray<string> Levels(CheckContext context, SeriesSegment part) => part.Kind == SegmentKind.Break
        ? [Level(context, part.PressureAtStart, part.OverRangeRows), Level(context, part.OverRangeRows > 0 && !(part.PressureAtEnd > part.PressureAtStart) ? null : part.PressureAtEnd, part.OverRangeRows), ""]
        : [Level(context, part.PressureAtStart, part.OverRangeRows), Level(context, part.PressureAtEnd, part.OverRangeRows), Level(context, part.Lowest, part.OverRangeRows)];

    private static string Level(CheckContext context, double? pascals, int overRange) =>
        pascals is { } p ? VacuumText.Level(context.Present, p) : overRange > 0 ? "over range" : "";
}
