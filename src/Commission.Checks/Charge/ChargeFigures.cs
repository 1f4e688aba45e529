using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Commission.Records.Series;
using QuantityValue = Commission.Messages.QuantityValue;

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
        var drawn = new List<ChargeCriterion>();
        var told = new List<MessageValue>();
        foreach (var (what, number, limit) in new (ChargeCriterion, Func<ChargeRow, RowNumber>, Func<ChargeRow, LimitStatement?>)[]
        {
            (ChargeCriterion.Superheat, r => r.Superheat, r => SuperheatLimit(context, analysis, r)),
            (ChargeCriterion.Subcooling, r => r.Subcooling, r => analysis.ByWeightOnly is null && !analysis.HasReceiver ? ChargeTarget.Subcooling(context, r).Limit : null),
        })
        {
            if (Curve(context, rows, what, number, At) is not { } curve)
                continue;
            if (Band(context, analysis, rows, what, number, limit, At) is { } band)
                curves.Add(band);
            curves.Add(curve);
            drawn.Add(what);
            told.Add(Course(context, rows, what, number));
        }

        if (curves.Count == 0)
            yield break;
        var present = context.Present;
        var unit = present.Unit(DisplayKind.TemperatureDifference);
        yield return new FigureData
        {
            Id = "charge-time",
            Plot = "charge-time",
            Phase = Phases.Charge,
            Title = present.Text(OperatingStateMessages.FigureTime(Which(drawn))),
            Caption = Caption(context, curves),
            AltText = present.Text(OperatingStateMessages.FigureTimeAlt(new(rows[0].Time), new(rows[^1].Time), new([.. told], ListJoin.Semicolons))),
            X = new FigureAxis(present.Text(onClock ? OperatingStateMessages.FigureClock : OperatingStateMessages.FigureElapsed), onClock ? "" : "min", onClock ? AxisScale.Clock : AxisScale.Minutes),
            Y = new FigureAxis(present.Text(OperatingStateMessages.FigureDifference), unit, AxisScale.Linear),
            Curves = curves.ToImmutable(),
            Events = [.. Events(analysis, onClock).Select(e => new FigureEvent(At(e.Time), present.Text(e.Label)))],
        };
    }

    private static OperatingStateMessages.FigureTimeWhich Which(List<ChargeCriterion> drawn) => drawn switch
    {
        [ChargeCriterion.Superheat] => OperatingStateMessages.FigureTimeWhich.Superheat,
        [ChargeCriterion.Subcooling] => OperatingStateMessages.FigureTimeWhich.Subcooling,
        _ => OperatingStateMessages.FigureTimeWhich.Both,
    };

    private static Message Name(ChargeCriterion what) => what == ChargeCriterion.Superheat ? OperatingStateMessages.Superheat : OperatingStateMessages.Subcooling;

    // The caption tells what is drawn: no shade where no limit is, no U where a bar is no longer than its mark.
    private static string Caption(CheckContext context, ImmutableArray<FigureCurve>.Builder curves)
    {
        var readings = curves.Where(curve => curve.Role == CurveRole.Measured).ToList();
        var bands = curves.Where(curve => curve.Role == CurveRole.Limit).ToList();
        // Two quantities with a tolerance each are drawn in a panel each; both stand in the same order.
        var isSplit = readings.Count == 2 && bands.Count == 2;
        var areSeen = readings.Where((reading, i) =>
        {
            var shown = isSplit ? [reading, bands[i]] : curves.ToList();
            var values = shown.SelectMany(curve => curve.Y.Concat(curve.YLow).Concat(curve.YHigh)).OfType<double>().ToList();
            return SpreadBars.AreSeen(reading, values.Min(), values.Max(), AxisScale.Linear, isSplit ? 2 : 1);
        }).Any();
        return context.Present.Text(ChargeMessages.ChargeTimeCaption(
            areSeen ? ChargeMessages.ChargeTimeCaptionBars.Seen : ChargeMessages.ChargeTimeCaptionBars.Hidden, bands.Count > 0 ? ChargeMessages.ChargeTimeCaptionShade.Drawn : ChargeMessages.ChargeTimeCaptionShade.None));
    }

    private static FigureCurve? Curve(CheckContext context, ImmutableArray<ChargeRow> rows, ChargeCriterion what, Func<ChargeRow, RowNumber> number, Func<JobTime, double> at)
    {
        if (!rows.Any(r => number(r).Value is not null))
            return null;
        var factor = Factor(context);
        return new FigureCurve
        {
            Label = context.Present.Text(Name(what)),
            Role = CurveRole.Measured,
            X = [.. rows.Select(r => at(r.Written.At.Value))],
            Y = [.. rows.Select(r => number(r).Value?.Value / factor)],
            YLow = [.. rows.Select(r => number(r).Value is { } v ? (v.Value - v.Expanded) / factor : (double?)null)],
            YHigh = [.. rows.Select(r => number(r).Value is { } v ? (v.Value + v.Expanded) / factor : (double?)null)],
        };
    }

    private static FigureCurve? Band(
        CheckContext context, ChargeAnalysis analysis, ImmutableArray<ChargeRow> rows, ChargeCriterion what, Func<ChargeRow, RowNumber> number, Func<ChargeRow, LimitStatement?> limit, Func<JobTime, double> at)
    {
        if (analysis.Spoken(OperatingMode.Cooling, r => number(r).Value is not null) is not { } judged || limit(judged) is not { LowerSi: { } lower, UpperSi: { } upper } state)
            return null;
        var factor = Factor(context);
        var middle = (state.TargetSi ?? ((lower + upper) / 2)) / factor;
        return new FigureCurve
        {
            Label = context.Present.Text(OperatingStateMessages.FigureTolerance(
                what == ChargeCriterion.Superheat ? OperatingStateMessages.FigureToleranceWhat.Superheat : OperatingStateMessages.FigureToleranceWhat.Subcooling)),
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

    private static IEnumerable<(JobTime Time, Message Label)> Events(ChargeAnalysis analysis, bool onClock)
    {
        bool Known(JobTime time) => onClock ? time.Clock is not null : time.Elapsed is not null;
        if (analysis.Charging?.CompressorStarted is { } start && Known(start.Value))
            yield return (start.Value, OperatingStateMessages.FigureStarted);
        foreach (var change in analysis.Charging?.Events ?? [])
        {
            if ((change.Added ?? change.Removed) is { } mass && Known(change.At.Value))
                yield return (change.At.Value, change.Added is null ? OperatingStateMessages.FigureRemoved(new(mass.Text)) : OperatingStateMessages.FigureAdded(new(mass.Text)));
        }

        if (analysis.Charging?.LastChange is { } last && Known(last.Value) && analysis.Charging.Events.All(e => e.At.Value.Clock != last.Value.Clock || last.Value.Clock is null))
            yield return (last.Value, OperatingStateMessages.FigureLastChange);
    }

    private static Message Course(CheckContext context, ImmutableArray<ChargeRow> rows, ChargeCriterion what, Func<ChargeRow, RowNumber> number)
    {
        var known = rows.Where(r => number(r).Value is not null).ToList();
        QuantityValue Value(ChargeRow row) => context.Present.InMessage(number(row).Value!.Value, DisplayKind.TemperatureDifference);
        return known.Count == 1
            ? OperatingStateMessages.FigureTimeOnce(Name(what), Value(known[0]), new(known[0].Time))
            : OperatingStateMessages.FigureTimeCourse(Name(what), Value(known[0]), Value(known[^1]));
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

/// <summary>The measured states in the pressure–enthalpy plane, with the saturation dome and lines of constant temperature.</summary>
internal sealed class PressureEnthalpyFigure : IFigureSource
{
    private const int DomePoints = 60;
    private const int IsothermPoints = 24;

    // Saturation is followed to here, as a share of the critical temperature; nearer to the critical point the two phases cannot be told apart.
    private const double NearCritical = 0.9995;

    // The diagram shows somewhat more than the cycle, and the whole of the dome above it.
    private const double BelowCycle = 0.6;
    private const double AboveCycle = 1.6;
    private const double AboveDome = 1.1;

    /// <inheritdoc/>
    public IEnumerable<FigureData> Figures(CheckContext context)
    {
        if (context.Get<ChargeAnalysis>().Judged(OperatingMode.Cooling, ChargeCycle.Has) is not { } row || context.Get<CircuitRefrigerant>().Fluid is not { } fluid)
            yield break;
        var cycle = ChargeCycle.Of(context, row);
        if (cycle.WhyNot is not null)
            yield break;
        var present = context.Present;
        var low = cycle.Suction.Pressure * BelowCycle;
        var high = cycle.Isentropic.Pressure * AboveCycle;
        if (fluid.CriticalPoint is { Ok: true, Value: var critical })
            high = Math.Max(high, critical.Pressure * AboveDome);
        var curves = ImmutableArray.CreateBuilder<FigureCurve>();
        if (Dome(context, fluid, low) is { } dome)
            curves.Add(dome);
        foreach (var temperature in new[] { cycle.Suction.Temperature, cycle.Liquid.Temperature, cycle.Isentropic.Temperature })
        {
            if (Isotherm(context, fluid, temperature, low, high) is { } isotherm)
                curves.Add(isotherm);
        }

        var states = States(context, row, cycle);
        curves.Add(states);
        var areSeen = SpreadBars.AreSeen(states, Pressure(context, low), Pressure(context, high), AxisScale.Log10);
        var designation = context.Get<CircuitSaturation>().Designation;
        yield return new FigureData
        {
            Id = "pressure-enthalpy",
            Plot = "pressure-enthalpy",
            Phase = Phases.Charge,
            Title = present.Text(OperatingStateMessages.FigureStates(new(designation))),
            Caption = present.Text(ChargeMessages.PressureEnthalpyCaption(
                new(designation), new(row.Time), areSeen ? ChargeMessages.PressureEnthalpyCaptionBars.Seen : ChargeMessages.PressureEnthalpyCaptionBars.Hidden)),
            AltText = present.Text(OperatingStateMessages.FigureStatesAlt(
                new(designation), new(row.Time), present.InMessage(cycle.Suction.Pressure, DisplayKind.AbsolutePressure),
                present.InMessage(cycle.Isentropic.Pressure, DisplayKind.AbsolutePressure), present.InMessage(cycle.Capacity.Value, DisplayKind.Enthalpy))),
            X = new FigureAxis(present.Text(OperatingStateMessages.FigureEnthalpy), present.Unit(DisplayKind.Enthalpy), AxisScale.Linear),
            Y = new FigureAxis(present.Text(OperatingStateMessages.FigurePressure), present.Unit(DisplayKind.AbsolutePressure), AxisScale.Log10, Pressure(context, low), Pressure(context, high)),
            Curves = curves.ToImmutable(),
        };
    }

    private static FigureCurve? Dome(CheckContext context, Refrigerant fluid, double lowest)
    {
        if (fluid.CriticalPoint is not { Ok: true, Value: var critical } || fluid.BubbleAtPressure(lowest) is not { Ok: true, Value: var start })
            return null;
        var liquid = new List<(double H, double P)>();
        var vapor = new List<(double H, double P)>();
        for (var i = 0; i < DomePoints; i++)
        {
            // Closer together toward the top, where the dome bends.
            var away = 1 - (i / (double)(DomePoints - 1));
            var t = start.Temperature + (((NearCritical * critical.Temperature) - start.Temperature) * (1 - (away * away)));
            if (fluid.BubbleAtTemperature(t) is { Ok: true, Value: var bubble })
                liquid.Add((bubble.LiquidEnthalpy, bubble.Pressure));
            if (fluid.DewAtTemperature(t) is { Ok: true, Value: var dew })
                vapor.Add((dew.VaporEnthalpy, dew.Pressure));
        }

        if (liquid.Count < 2 || vapor.Count < 2)
            return null;
        vapor.Reverse();
        return Make(context, context.Present.Text(OperatingStateMessages.FigureSaturation), CurveRole.Dome, [.. liquid.Select(p => ((double H, double? P))(p.H, p.P)), .. vapor.Select(p => ((double H, double? P))(p.H, p.P))]);
    }

    // Inside the dome of a blend a line of constant temperature is neither straight nor level: it is left out there, and drawn across for a pure fluid.
    private static FigureCurve? Isotherm(CheckContext context, Refrigerant fluid, double kelvin, double low, double high)
    {
        var points = new List<(double H, double? P)>();
        var bubble = fluid.BubbleAtTemperature(kelvin);
        var dew = fluid.DewAtTemperature(kelvin);
        if (bubble is { Ok: true, Value: var b } && b.Pressure < high)
        {
            AddBranch(fluid, kelvin, high, Math.Max(b.Pressure, low), Phase.Liquid, points);
            if (fluid.IsBlend && points.Count > 0)
                points.Add((points[^1].H, null));
        }

        if (!dew.Ok)
            AddBranch(fluid, kelvin, high, low, Phase.Vapor, points);
        else if (dew.Value.Pressure > low)
            AddBranch(fluid, kelvin, Math.Min(dew.Value.Pressure, high), low, Phase.Vapor, points);
        return points.Count(p => p.P is not null) < 2 ? null : Make(context, context.Present.Text(kelvin, DisplayKind.Temperature), CurveRole.Isotherm, points);
    }

    private static void AddBranch(Refrigerant fluid, double kelvin, double from, double to, Phase branch, List<(double H, double? P)> points)
    {
        for (var i = 0; i < IsothermPoints; i++)
        {
            var p = from * Math.Pow(to / from, i / (double)(IsothermPoints - 1));
            if (fluid.At(kelvin, p, branch) is { Ok: true, Value: var state })
                points.Add((state.Enthalpy, p));
        }
    }

    private static FigureCurve States(CheckContext context, ChargeRow row, ChargeCycle cycle)
    {
        var low = row.VaporPressure!.Value;
        var liquid = row.LiquidPressure!.Value;
        var top = (row.DischargePressure ?? row.LiquidPressure)!.Value;
        var states = new List<(double H, Uncertain P)> { (cycle.Suction.Enthalpy, low), (cycle.Discharge?.Enthalpy ?? cycle.Isentropic.Enthalpy, top), (cycle.Liquid.Enthalpy, liquid), (cycle.Throttled.Enthalpy, low), (cycle.Suction.Enthalpy, low) };
        return Make(context, row.Time, CurveRole.State, [.. states.Select(s => (s.H, (double?)s.P.Value))]) with
        {
            YLow = [.. states.Select(s => (double?)Pressure(context, s.P.Value - s.P.Expanded))],
            YHigh = [.. states.Select(s => (double?)Pressure(context, s.P.Value + s.P.Expanded))],
        };
    }

    private static FigureCurve Make(CheckContext context, string label, CurveRole role, IReadOnlyList<(double H, double? P)> points) => new()
    {
        Label = label,
        Role = role,
        X = [.. points.Select(p => context.Present.Value(p.H, DisplayKind.Enthalpy))],
        Y = [.. points.Select(p => p.P is { } pascals ? Pressure(context, pascals) : (double?)null)],
    };

    private static double Pressure(CheckContext context, double pascals) => context.Present.Value(pascals, DisplayKind.AbsolutePressure);
}
