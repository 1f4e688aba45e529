using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Checks.Wording;
using Commission.Fluids.Water;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
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
            Title = present.Text(EvacuationMessages.FigureEvacuation),
            Caption = present.Text(Caption(run)),
            AltText = Told(context, run, evacuation),
            X = new FigureAxis(present.Text(run.Clock.IsOfDay ? EvacuationMessages.AxisTime : EvacuationMessages.AxisSincePump), run.Clock.IsOfDay ? "" : "min", run.Clock.IsOfDay ? AxisScale.Clock : AxisScale.Minutes),
            Y = new FigureAxis(present.Text(EvacuationMessages.AxisPressure), present.Unit(DisplayKind.Vacuum), AxisScale.Log10),
            Curves = curves.ToImmutable(),
            Lines = [.. Lines(context, run, evacuation)],
            Events = [.. Events(context, run, evacuation)],
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
            Label = present.Text(run.Rows.Log is null ? EvacuationMessages.CurveByHand : EvacuationMessages.CurveMeasured),
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
            Label = context.Present.Text(EvacuationMessages.CurveExpected),
            Role = CurveRole.Model,
            X = [.. result.Expected.Select(e => run.Clock.Minutes(e.Time))],
            Y = [.. result.Expected.Select(e => (double?)context.Present.Value(e.Pressure, DisplayKind.Vacuum))],
        };
    }

    private static IEnumerable<FigureLine> Lines(CheckContext context, EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        var present = context.Present;
        FigureLine Line(Message label, double pascals, LineRole role) => new(present.Text(label), present.Value(pascals, DisplayKind.Vacuum), AxisName.Y, role);
        if (run.Level?.Upper is { } target)
            yield return Line(EvacuationMessages.LineTarget(VacuumText.Value(present, target.Si)), target.Si, LineRole.Target);
        if (run.DecayLimit?.Upper is { } decay && decay.Si != run.Level?.Upper?.Si)
            yield return Line(EvacuationMessages.LineDecayLimit(VacuumText.Value(present, decay.Si)), decay.Si, LineRole.DecayLimit);
        if ((evacuation.ColdestPart ?? evacuation.ColdestPartAtEnd) is { } coldest && WaterVapor.SaturationPressure(coldest.Value.Si) is { Ok: true, Value: var saturation })
        {
            yield return Line(
                EvacuationMessages.LineSaturation(
                    coldest.Value.Si < WaterSaturation.TripleTemperature ? EvacuationMessages.LineSaturationPhase.Ice : EvacuationMessages.LineSaturationPhase.Water, new(coldest.Text), ReadWhen(evacuation), VacuumText.Value(present, saturation)),
                saturation, LineRole.Saturation);
        }
    }

    // Where it was read twice, the other stands in the sentence about water: each with its time.
    private static EvacuationMessages.LineSaturationWhen ReadWhen(Jobs.Model.Evacuation evacuation) => evacuation switch
    {
        { ColdestPart: null } => EvacuationMessages.LineSaturationWhen.End,
        { ColdestPartAtEnd: null } => EvacuationMessages.LineSaturationWhen.Once,
        _ => EvacuationMessages.LineSaturationWhen.Isolation,
    };

    private static IEnumerable<FigureEvent> Events(CheckContext context, EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        foreach (var e in evacuation.Events)
        {
            if (run.Clock.Seconds(e.At.Value) is { } seconds)
                yield return new FigureEvent(run.Clock.Minutes(seconds), context.Present.Text(e.To is { } to ? EvacuationMessages.EventTo(SchemaWords.Of(e.What.Value), new(to.Text)) : SchemaWords.Of(e.What.Value)));
        }

        if (run.Parts is { Isolation: { } isolation } && !evacuation.Events.Any(e => e.What.Value == EvacuationEventKind.Isolated))
            yield return new FigureEvent(run.Clock.Minutes(isolation), context.Present.Text(run.Parts.IsolationBasis == SegmentBasis.Given ? EvacuationMessages.EventIsolated : EvacuationMessages.EventIsolatedByLog));
        foreach (var part in run.Parts.Segments.Where(s => s is { Kind: SegmentKind.Break, Basis: SegmentBasis.FoundInData }))
            yield return new FigureEvent(run.Clock.Minutes(part.From), context.Present.Text(EvacuationMessages.EventBreakByLog));
    }

    private static Message Caption(EvacuationRun run)
    {
        var parts = new List<MessageValue> { EvacuationMessages.CaptionEvacuation };
        var series = run.Rows.Series;
        if (series.Count > CurveThinning.MostPoints)
            parts.Add(EvacuationMessages.CaptionThinned(series.Count));
        if (run.Rows.Log is not null && !series.Gaps.IsEmpty)
        {
            parts.Add(EvacuationMessages.CaptionGap(
                run.Clock.Time(series.Gaps[0].From), run.Clock.Time(series.Gaps[0].To), series.Gaps.Length > 1 ? EvacuationMessages.CaptionGapMore.Several : EvacuationMessages.CaptionGapMore.One));
        }

        return CommonMessages.Several(new([.. parts], ListJoin.Sentences));
    }

    private static string Told(CheckContext context, EvacuationRun run, Jobs.Model.Evacuation evacuation)
    {
        var present = context.Present;
        var lowest = run.Parts.Segments.Where(s => s.Lowest is not null).Select(s => s.Lowest!.Value).DefaultIfEmpty(double.NaN).Min();
        var parts = new List<MessageValue>
        {
            EvacuationMessages.ToldEvacuation(run.Clock.Time(run.Rows.Series.Times[0]), run.Clock.Time(run.Rows.Series.Times[^1]), VacuumText.Value(present, lowest)),
        };
        if (run.Parts.Isolation is { } isolation)
            parts.Add(EvacuationMessages.ToldIsolated(run.Clock.Time(isolation)));
        parts.AddRange(Lines(context, run, evacuation).Select(l => new TextValue(l.Label)));
        return present.Text(EvacuationMessages.Told(new([.. parts], ListJoin.Semicolons)));
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
            Title = context.Present.Text(EvacuationMessages.FigureHold),
            Caption = context.Present.Text(
                curves.Count <= 1 ? EvacuationMessages.CaptionHold
                : run.Hold?.Conclusion == HoldConclusion.CannotTell ? EvacuationMessages.CaptionHoldOneOfSeveral : EvacuationMessages.CaptionHoldCurves),
            AltText = Told(context, run),
            X = new FigureAxis(context.Present.Text(EvacuationMessages.AxisSinceIsolation), "min", AxisScale.Minutes, 0),
            Y = new FigureAxis(context.Present.Text(EvacuationMessages.AxisPressure), context.Present.Unit(DisplayKind.Vacuum), AxisScale.Linear),
            Curves = curves.ToImmutable(),
            Lines = [.. Lines(context, run.DecayLimit, after)],
            Events = [new FigureEvent(0, context.Present.Text(EvacuationMessages.EventIsolated)), new FigureEvent((end - isolation) / 60, context.Present.Text(EvacuationMessages.EventHoldEnd))],
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
            Label = context.Present.Text(byHand ? EvacuationMessages.CurveByHand : EvacuationMessages.CurveMeasured),
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
        var isOpen = hold.Conclusion == HoldConclusion.CannotTell;
        var shown = hold.Reason is CannotTellReason.LineOrSource or CannotTellReason.SourceWithOrWithoutLine or CannotTellReason.LineWithOrWithoutSource
            ? hold.Evidence.Where(e => e.Difference is not null && e.Model != preferred).OrderBy(e => e.Difference).Take(1).Select(e => e.Model).Prepend(preferred)
            : [preferred];
        double Pressure(double pascals) => context.Present.Value(pascals, DisplayKind.Vacuum);
        foreach (var curve in shown.Select(m => hold.Curves.FirstOrDefault(c => c.Model == m)).OfType<HoldCurve>())
        {
            yield return new FigureCurve
            {
                Label = context.Present.Text(isOpen ? EvacuationMessages.CurveOneOfSeveral(RiseCauseCheck.Curve(curve.Model)) : RiseCauseCheck.Curve(curve.Model)),
                Role = CurveRole.Model,
                X = [.. curve.Times.Select(t => (t - isolation) / 60)],
                Y = [.. curve.Pressures.Select(p => (double?)Pressure(p))],
                YLow = [.. curve.Low.Select(p => (double?)Pressure(p))],
                YHigh = [.. curve.High.Select(p => (double?)Pressure(p))],
            };
        }

        yield return new FigureCurve
        {
            Label = context.Present.Text(EvacuationMessages.ReadingsLess(RiseCauseCheck.Curve(preferred))),
            Role = CurveRole.Residual,
            X = [.. hold.Points.Select(p => (p.Time - isolation) / 60)],
            Y = [.. hold.Points.Select(p => (double?)Pressure(p.Residual))],
        };
    }

    private static IEnumerable<FigureLine> Lines(CheckContext context, Limit? limit, double? after)
    {
        if (limit?.Upper is { } most)
            yield return new FigureLine(context.Present.Text(EvacuationMessages.LineDecayLimit(VacuumText.Value(context.Present, most.Si))), context.Present.Value(most.Si, DisplayKind.Vacuum), AxisName.Y, LineRole.DecayLimit);
        if (after is { } time)
            yield return new FigureLine(context.Present.Text(EvacuationMessages.LineJudgedAt(new(time))), time / 60, AxisName.X, LineRole.DecayLimit);
    }

    private static string Told(CheckContext context, EvacuationRun run)
    {
        var present = context.Present;
        var hold = run.Parts.Hold!;
        var told = EvacuationMessages.ToldHold(VacuumText.Value(present, hold.PressureAtStart!.Value), VacuumText.Value(present, hold.PressureAtEnd!.Value), new(hold.Length));
        return present.Text(run.Hold is { } result ? CommonMessages.Several(new([told, RiseCauseCheck.Wording(context, run).Statement(result)], ListJoin.Sentences)) : told);
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
        string Text(Message message) => context.Present.Text(message);
        var rows = new List<(double At, int Order, ImmutableArray<string> Cells)>();
        foreach (var part in run.Parts.Segments)
        {
            rows.Add((part.From, 1, [
                run.Clock.Moment(part.From), run.Clock.Moment(part.To), Text(Words(part.Kind)), Text(part.Basis == SegmentBasis.Given ? EvacuationMessages.CourseWritten : EvacuationMessages.CourseFound),
                .. Levels(context, part)]));
        }

        // What cuts the log stands in the rows above; the rest is listed beside it.
        foreach (var e in evacuation.Events.Where(e => e.What.Value is EvacuationEventKind.HeatApplied or EvacuationEventKind.PumpOilChanged or EvacuationEventKind.GaugeCleaned))
            rows.Add((run.Clock.Seconds(e.At.Value) ?? double.MaxValue, 0, [e.At.Text, "", Text(e.Note is { } note ? EvacuationMessages.EventNote(SchemaWords.Of(e.What.Value), new(note.Value)) : SchemaWords.Of(e.What.Value)), Text(EvacuationMessages.CourseWritten), "", "", ""]));
        foreach (var e in evacuation.Events.Where(e => e.What.Value == EvacuationEventKind.NitrogenBreak && (e.To ?? (object?)e.Held) is not null))
            rows.Add((run.Clock.Seconds(e.At.Value) ?? double.MaxValue, 0, [e.At.Text, "", Text(Broken(e)), Text(EvacuationMessages.CourseWritten), "", "", ""]));
        if (rows.Count == 0)
            yield break;
        yield return new RecordTable
        {
            Id = "evacuation-parts",
            Phase = Phases.Evacuation,
            Title = Text(EvacuationMessages.Course),
            Columns =
            [
                new TableColumn(Text(EvacuationMessages.CourseFrom)), new TableColumn(Text(EvacuationMessages.CourseTo)), new TableColumn(Text(EvacuationMessages.CourseWhat)), new TableColumn(Text(EvacuationMessages.CourseKnown)),
                new TableColumn(Text(EvacuationMessages.CourseStart), "", ColumnAlign.Right), new TableColumn(Text(EvacuationMessages.CourseEnd), "", ColumnAlign.Right), new TableColumn(Text(EvacuationMessages.CourseLowest), "", ColumnAlign.Right),
            ],
            Rows = [.. rows.OrderBy(r => r.At).ThenBy(r => r.Order).Select(r => r.Cells)],
        };
    }

    private static Message Broken(Jobs.Model.EvacuationEvent e) => e switch
    {
        { To: { } to, Held: { } held } => EvacuationMessages.BrokenToHeld(new(to.Text), new(held.Text)),
        { To: { } to } => EvacuationMessages.BrokenTo(new(to.Text)),
        { Held: { } held } => EvacuationMessages.BrokenHeld(new(held.Text)),
        _ => EvacuationMessages.Broken,
    };

    private static Message Words(SegmentKind kind) => kind switch
    {
        SegmentKind.Pull => EvacuationMessages.PartPull,
        SegmentKind.Break => EvacuationMessages.PartBreak,
        _ => EvacuationMessages.PartHold,
    };

    // A break ends where the nitrogen took it, which is beyond most gauges; the last level that such a gauge showed is that of its start.
    private static ImmutableArray<string> Levels(CheckContext context, SeriesSegment part) => part.Kind == SegmentKind.Break
        ? [Level(context, part.PressureAtStart, part.OverRangeRows), Level(context, part.OverRangeRows > 0 && !(part.PressureAtEnd > part.PressureAtStart) ? null : part.PressureAtEnd, part.OverRangeRows), ""]
        : [Level(context, part.PressureAtStart, part.OverRangeRows), Level(context, part.PressureAtEnd, part.OverRangeRows), Level(context, part.Lowest, part.OverRangeRows)];

    private static string Level(CheckContext context, double? pascals, int overRange) =>
        pascals is { } p ? VacuumText.Level(context.Present, p) : overRange > 0 ? context.Present.Text(EvacuationMessages.CourseOverRange) : "";
}
