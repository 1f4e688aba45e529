using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Checks.Limits;

/// <summary>
/// Limits as a page prints them, in the units of the job. A figure that was published in another unit keeps it in brackets, so that
/// nobody has to wonder where 66.7 Pa comes from.
/// </summary>
internal static class LimitText
{
    // A converted figure is printed finely enough that rounding moves it by less than a thousandth.
    private const double Fineness = 1e-3;
    private const int MostDecimals = 6;

    /// <summary>The limit in words and numbers.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="units">The job's units.</param>
    /// <returns>For example <c>at most 1000 micron after 10 min</c>.</returns>
    public static string Of(Limit limit, UnitSystem units)
    {
        var text = limit.Shape switch
        {
            LimitShape.Statement => limit.Statement ?? "",
            LimitShape.Tolerance when limit.Upper is { } half => $"± {Of(half, limit, units)}",
            LimitShape.Target when limit is { Target: { } target, Upper: { } upper } => Band(target, upper.Si - target.Si, limit, units),
            LimitShape.Target when limit.Target is { } target => Of(target, limit, units),
            _ => Bounds(limit, units),
        };
        return string.Concat([text, .. limit.With.Select(pair => pair.Key is "after" ? $" after {pair.Value.Text}" : $" and {pair.Value.Text} {pair.Key}")]);
    }

    /// <summary>A tolerance around a target that comes from elsewhere.</summary>
    /// <param name="limit">The tolerance.</param>
    /// <param name="targetSi">The target, SI.</param>
    /// <param name="units">The job's units.</param>
    /// <returns>For example <c>12.0 ± 5 °F</c>.</returns>
    public static string Around(Limit limit, double targetSi, UnitSystem units)
    {
        if (limit is not { Lower: { } lower, Upper: { } upper }) return Of(limit, units);
        var display = DisplayOf(upper, limit, units);
        var unit = display?.Unit ?? upper.Unit;
        if (unit is null) return Of(limit, units);
        var decimals = display?.Decimals ?? upper.Decimals;
        var target = QuantityFormat.Number(unit.FromSi(targetSi), decimals);
        var half = ReferenceEquals(upper.Unit, unit) ? QuantityFormat.Number(unit.FromSi(upper.Si), upper.Decimals) : QuantityFormat.Number(unit.FromSi(upper.Si), Decimals(unit.FromSi(upper.Si), decimals));
        var symbol = unit.Symbol == "1" ? "" : " " + unit.Symbol;
        return Math.Abs(lower.Si + upper.Si) <= 1e-9 * upper.Si
            ? $"{target} ± {half}{symbol}"
            : $"{QuantityFormat.Number(unit.FromSi(targetSi + lower.Si), decimals)} to {QuantityFormat.Number(unit.FromSi(targetSi + upper.Si), decimals)}{symbol}";
    }

    private static string Bounds(Limit limit, UnitSystem units) => (limit.Lower, limit.Upper) switch
    {
        ({ } lower, { } upper) => Range(lower, upper, limit, units),
        ({ } lower, null) => $"at least {Of(lower, limit, units)}",
        (null, { } upper) => $"at most {Of(upper, limit, units)}",
        _ => "",
    };

    private static string Range(LimitFigure lower, LimitFigure upper, Limit limit, UnitSystem units)
    {
        var (low, high) = (Converted(lower, limit, units), Converted(upper, limit, units));
        var written = low is null ? "" : $" ({Joined(lower.Text, upper.Text)})";
        return Joined(low ?? lower.Text, high ?? upper.Text) + written;
    }

    // "55 °F" and "115 °F" are "55 to 115 °F".
    private static string Joined(string low, string high)
    {
        var space = high.IndexOf(' ', StringComparison.Ordinal);
        var symbol = space < 0 ? "" : high[space..];
        return symbol.Length > 0 && low.EndsWith(symbol, StringComparison.Ordinal) ? $"{low[..^symbol.Length]} to {high}" : $"{low} to {high}";
    }

    private static string Band(LimitFigure target, double half, Limit limit, UnitSystem units)
    {
        var display = DisplayOf(target, limit, units);
        var unit = display?.Unit ?? target.Unit;
        if (unit is null) return target.Text;
        var decimals = display is null ? Math.Max(target.Decimals, limit.Upper?.Decimals ?? 0) : Decimals(half / unit.Factor, display.Decimals);
        var text = $"{QuantityFormat.Number(unit.FromSi(target.Si), decimals)} ± {QuantityFormat.Number(half / unit.Factor, decimals)}";
        return unit.Symbol == "1" ? text : $"{text} {unit.Symbol}";
    }

    private static string Of(LimitFigure figure, Limit limit, UnitSystem units) =>
        Converted(figure, limit, units) is { } text ? $"{text} ({figure.Text})" : figure.Text;

    private static string? Converted(LimitFigure figure, Limit limit, UnitSystem units)
    {
        if (DisplayOf(figure, limit, units) is not { } display) return null;
        if (display.Smaller is not null) return QuantityFormat.Format(figure.Si, display);
        var value = display.Unit.FromSi(figure.Si);
        return QuantityFormat.Format(figure.Si, display.Unit, display.Unit.Offset is 0 ? Decimals(value, display.Decimals) : display.Decimals);
    }

    private static int Decimals(double value, int least)
    {
        var decimals = least;
        while (decimals < MostDecimals && Math.Abs(QuantityFormat.Round(value, decimals) - value) > Fineness * Math.Abs(value)) decimals++;
        return decimals;
    }

    // Null: the figure is printed as it was written, because its unit is the job's or belongs to no system.
    private static DisplayUnit? DisplayOf(LimitFigure figure, Limit limit, UnitSystem units)
    {
        if (figure.Unit is not { } written) return null;
        var kind = written.Dimension switch
        {
            Dimension.Pressure when limit.Definition.Quantity == Dimension.VacuumLevel => DisplayKind.Vacuum,
            Dimension.VacuumLevel => DisplayKind.Vacuum,
            Dimension.Pressure when written.Reference == PressureReference.Gauge => DisplayKind.Pressure,
            Dimension.Pressure when written.Reference == PressureReference.Absolute => DisplayKind.AbsolutePressure,
            Dimension.PressureDifference when limit.Definition.Group is "air" => DisplayKind.StaticPressure,
            Dimension.PressureDifference when limit.Definition.Group is "evacuation" => DisplayKind.Vacuum,
            Dimension.PressureDifference => DisplayKind.PressureDifference,
            Dimension.Temperature => DisplayKind.Temperature,
            Dimension.TemperatureDifference => DisplayKind.TemperatureDifference,
            Dimension.Mass => DisplayKind.Mass,
            Dimension.Length => DisplayKind.Length,
            Dimension.Area => DisplayKind.Area,
            Dimension.Velocity => DisplayKind.Velocity,
            Dimension.VolumeFlow when limit.Definition.Group is "air" => DisplayKind.AirFlow,
            Dimension.FlowPerPower => DisplayKind.FlowPerCapacity,
            Dimension.PowerPerFlow => DisplayKind.FanPower,
            Dimension.Torque => DisplayKind.Torque,
            _ => (DisplayKind?)null,
        };
        if (kind is not { } known) return null;
        var display = units[known];
        var isSame = string.Equals(display.Unit.Symbol, written.Symbol, StringComparison.Ordinal)
            || string.Equals(display.Smaller?.Symbol, written.Symbol, StringComparison.Ordinal);
        return isSame ? null : display;
    }
}
