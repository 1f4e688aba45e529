using System.Collections.Immutable;
using Commission.Checks.Recording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Checks.Charge;

/// <summary>Superheat and subcooling through the charging, each with its U, over the tolerance of the last reading.</summary>
internal sealed class ChargeTimeFigure : IFigureSource
{
    private const int MostPoints = 2000;

    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        var rows = Thin([.. analysis.Rows.Where(r => r.Mode == OperatingMode.Cooling)]);
        var onClock = rows.All(r => r.Written.At.Value.Clock is not null);
        if (rows.Length < 2 || (!onClock && !rows.All(r => r.Written.At.Value.Elapsed is not null)))
            yield break;
        double At(JobTime time) => onClock ? Clock(context, time) : time.Elapsed!.Value.Minutes;
        var curves = ImmutableArray.CreateBuilder<FigureCurve>();
        var told = new List<string>();
        foreach (var (label, number, limit) in new (string, Func<ChargeRow, RowNumber>, Func<ChargeRow, LimitStatement?>)[]
        {
            ("superheat", r => r.Superheat, r => SuperheatLimit(context, analysis, r)),
            ("subcooling", r => r.Subcooling, r => analysis.ByWeightOnly is null && !analysis.HasReceiver ? ChargeTarget.Subcooling(context, r).Limit : null),
        })
        {
            if (Curve(context, rows, label, number, At) is not { } curve)
                continue;
            if (Band(context, analysis, rows, label, number, limit, At) is { } band)
                curves.Add(band);
            curves.Add(curve);
            told.Add($"{label} {Ends(context, rows, number)}");
        }

        if (curves.Count == 0)
            yield break;
        var unit = context.Present.Unit(DisplayKind.TemperatureDifference);
        yield return new FigureData
        {
            Id = "charge-time",
            Plot = "charge-time",
            Phase = Phases.Charge,
            Title = "Superheat and subcooling",
            Caption = "Each reading with its U; the shaded part is what the limit of the judged reading allows.",
            AltText = $"Between {rows[0].Time} and {rows[^1].Time}: {string.Join("; ", told)}.",
            X = new FigureAxis(onClock ? "Time" : "Time since the compressor started", onClock ? "" : "min", onClock ? AxisScale.Clock : AxisScale.Minutes),
            Y = new FigureAxis("Temperature difference", unit, AxisScale.Linear),
            Curves = curves.ToImmutable(),
            Events = [.. Events(analysis, onClock).Select(e => new FigureEvent(At(e.Time), e.Label))],
        };
    }

    private static FigureCurve? Curve(CheckContext context, ImmutableArray<ChargeRow> rows, string label, Func<ChargeRow, RowNumber> number, Func<JobTime, double> at)
    {
        if (!rows.Any(r => number(r).Value is not null))
            return null;
        var factor = Factor(context);
        return new FigureCurve
        {
            Label = label,
            Role = CurveRole.Measured,
            X = [.. rows.Select(r => at(r.Written.At.Value))],
            Y = [.. rows.Select(r => number(r).Value?.Value / factor)],
            YLow = [.. rows.Select(r => number(r).Value is { } v ? (v.Value - v.Expanded) / factor : (double?)null)],
            YHigh = [.. rows.Select(r => number(r).Value is { } v ? (v.Value + v.Expanded) / factor : (double?)null)],
        };
    }

    private static FigureCurve? Band(
        CheckContext context, ChargeAnalysis analysis, ImmutableArray<ChargeRow> rows, string label, Func<ChargeRow, RowNumber> number, Func<ChargeRow, LimitStatement?> limit, Func<JobTime, double> at)
    {
        if (analysis.Spoken(OperatingMode.Cooling, r => number(r).Value is not null) is not { } judged || limit(judged) is not { LowerSi: { } lower, UpperSi: { } upper } state)
            return null;
        var factor = Factor(context);
        var middle = (state.TargetSi ?? ((lower + upper) / 2)) / factor;
        return new FigureCurve
        {
            Label = $"{label} tolerance",
            Role = CurveRole.Limit,
            X = [at(rows[0].Written.At.Value), at(rows[^1].Written.At.Value)],
            Y = [middle, middle],
            YLow = [lower / factor, lower / factor],
            YHigh = [upper / factor, upper / factor],
        };
    }

    private static LimitStatement? SuperheatLimit(CheckContext context, ChargeAnalysis analysis, ChargeRow row)
    {
        if (analysis.ByWeightOnly is not null || analysis.IsRefrigeration)
            return null;
        if (!analysis.HasValve)
            return ChargeTarget.Superheat(context, row).Limit;
        return analysis.Metering == MeteringKind.EEV && MeteringSuperheatCheck.LimitOf(context)?.Tier != Limits.LimitTier.Maker
            ? null
            : MeteringSuperheatCheck.LimitOf(context) is { } range ? context.State(range) : null;
    }

    private static IEnumerable<(JobTime Time, string Label)> Events(ChargeAnalysis analysis, bool onClock)
    {
        bool Known(JobTime time) => onClock ? time.Clock is not null : time.Elapsed is not null;
        if (analysis.Charging?.CompressorStarted is { } start && Known(start.Value))
            yield return (start.Value, "compressor started");
        foreach (var change in analysis.Charging?.Events ?? [])
        {
            if ((change.Added ?? change.Removed) is { } mass && Known(change.At.Value))
                yield return (change.At.Value, $"{mass.Text} {(change.Added is null ? "removed" : "added")}");
        }

        if (analysis.Charging?.LastChange is { } last && Known(last.Value) && analysis.Charging.Events.All(e => e.At.Value.Clock != last.Value.Clock || last.Value.Clock is null))
            yield return (last.Value, "last change of charge");
    }

    private static string Ends(CheckContext context, ImmutableArray<ChargeRow> rows, Func<ChargeRow, RowNumber> number)
    {
        var known = rows.Where(r => number(r).Value is not null).ToList();
        string Text(ChargeRow row) => context.Present.Text(number(row).Value!.Value, DisplayKind.TemperatureDifference);
        return known.Count == 1 ? $"{Text(known[0])} at {known[0].Time}" : $"from {Text(known[0])} to {Text(known[^1])}";
    }

    // Minutes since midnight of the job's day; beyond 1440 the next day.
    private static double Clock(CheckContext context, JobTime time) =>
        (time.Clock!.Value.DateTime - context.Job.Identity.Date.Value.ToDateTime(TimeOnly.MinValue)).TotalMinutes;

    private static double Factor(CheckContext context) => context.Present.Units[DisplayKind.TemperatureDifference].Unit.Factor;

    private static ImmutableArray<ChargeRow> Thin(ImmutableArray<ChargeRow> rows)
    {
        if (rows.Length <= MostPoints)
            return rows;
        var stride = (rows.Length - 1) / (double)(MostPoints - 1);
        return [.. Enumerable.Range(0, MostPoints).Select(i => rows[(int)Math.Round(i * stride)])];
    }
}
