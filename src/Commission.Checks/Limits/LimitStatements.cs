using System.Collections.Frozen;
using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Limits;

/// <summary>Limits as a record keeps them.</summary>
internal static class LimitStatements
{
    /// <summary>A limit with its own numbers.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="present">How the job is printed.</param>
    /// <param name="atmosphere">Atmospheric pressure at the site; needed for gauge pressures only.</param>
    /// <returns>The statement.</returns>
    public static LimitStatement ToStatement(this Limit limit, Presentation present, Pressure? atmosphere = null) => Make(
        limit,
        present,
        limit.Shape switch
        {
            LimitShape.AtLeast => LimitKind.AtLeast,
            LimitShape.AtMost => LimitKind.AtMost,
            LimitShape.Target => LimitKind.Target,
            LimitShape.Statement => LimitKind.Statement,
            _ => LimitKind.Within,
        },
        LimitText.Of(limit, present.Units),
        Si(limit.Lower, atmosphere),
        Si(limit.Upper, atmosphere),
        Si(limit.Target, atmosphere));

    /// <summary>A tolerance around a target that comes from elsewhere: a table, a chart, a plate.</summary>
    /// <param name="limit">The tolerance.</param>
    /// <param name="present">How the job is printed.</param>
    /// <param name="targetSi">The target, SI.</param>
    /// <returns>The statement.</returns>
    public static LimitStatement ToStatement(this Limit limit, Presentation present, double targetSi) => Make(
        limit,
        present,
        LimitKind.Target,
        LimitText.Around(limit, targetSi, present.Units),
        targetSi + limit.Lower?.Si,
        targetSi + limit.Upper?.Si,
        targetSi);

    /// <summary>What the record remarks when a figure of the maker asks less than a published limit, or when the crew's own target was set aside.</summary>
    /// <returns>A sentence; null when there is nothing to remark.</returns>
    public static Message? Remark(this Limit limit, UnitSystem units)
    {
        if (limit.LooserThan is { } stricter)
            return LimitsMessages.MakerLooser(LimitText.Of(limit, units), new(limit.Source), Owner(stricter), LimitText.Of(stricter, units));
        return limit.SetAside is { } target
            ? LimitsMessages.TargetSetAside(LimitText.Of(target, units), Owner(limit), LimitText.Of(limit, units))
            : null;
    }

    /// <summary>Whose a limit is, as a record words it.</summary>
    /// <param name="tier">Whose it is.</param>
    /// <returns><c>maker</c>, <c>pack</c> or <c>common practice</c>.</returns>
    public static string Word(LimitTier tier) => tier switch
    {
        LimitTier.Maker => "maker",
        LimitTier.Pack => LimitStatement.PackBasis,
        _ => "common practice",
    };

    private static Message Owner(Limit limit) => limit.Tier == LimitTier.CommonPractice ? LimitsMessages.OwnerCommonPractice : LimitsMessages.OwnerPack(new(limit.Pack), new(limit.Source));

    private static double? Si(LimitFigure? figure, Pressure? atmosphere) =>
        figure is { Reference: PressureReference.Gauge or PressureReference.BelowAtmosphere } && atmosphere is { } air ? figure.ToAbsolute(air).Si : figure?.Si;

    private static LimitStatement Make(Limit limit, Presentation present, LimitKind kind, Message text, double? lower, double? upper, double? target) =>
        new(kind, present.Text(text), lower, upper, target, limit.HasSource ? Word(limit.Tier) : "job", limit.Pack, limit.Source, limit.Mark, limit.Rule)
        {
            Quantity = present.Text(limit.Definition.Means),
        };
}

/// <summary>
/// Limits as a page prints them, in the units of the job. A figure that was published in another unit keeps it in brackets, so that
/// nobody has to wonder where 66.7 Pa comes from.
/// </summary>
internal static class LimitText
{
    // A converted figure is printed as finely as a gauge of that unit reads, and rounding moves it by no more than a fiftieth: 2 °F are 1.1 K, 1000 micron 133 Pa. The
    // verdict rests on the figure as it was published, which stands beside.
    private const double Fineness = 0.02;
    private const int MostDecimals = 6;

    // The companion that is a time to reach the limit in; all others stand beside it by their names.
    private const string After = "after";

    private static readonly FrozenDictionary<string, LimitsMessages.CompanionName> Names = Enum.GetValues<LimitsMessages.CompanionName>()
        .ToFrozenDictionary(name => MemberWords.Of(name.ToString()), StringComparer.Ordinal);

    /// <summary>The limit in words and numbers.</summary>
    /// <returns>For example <c>at most 1000 micron after 10 min</c>.</returns>
    public static Message Of(Limit limit, UnitSystem units)
    {
        var text = limit.Shape switch
        {
            LimitShape.Statement => limit.Statement ?? throw new InvalidOperationException($"{limit.Id} has no words."),
            LimitShape.Tolerance when limit.Upper is { } half => LimitsMessages.Tolerance(Of(half, limit, units)),
            LimitShape.Target when limit is { Target: { } target, Upper: { } upper } => Band(target, upper.Si - target.Si, limit, units),
            LimitShape.Target when limit.Target is { } target => Of(target, limit, units),
            _ => Bounds(limit, units),
        };
        if (limit.With.TryGetValue(After, out var time))
            text = LimitsMessages.LimitAfter(text, Symbols(time));
        return limit.With.Where(pair => pair.Key != After).Select(pair => (MessageValue)LimitsMessages.Companion(Symbols(pair.Value), Names[pair.Key])).ToArray() is { Length: > 0 } more
            ? LimitsMessages.LimitWith(text, new([.. more]))
            : text;
    }

    /// <summary>A tolerance around a target that comes from elsewhere.</summary>
    /// <param name="limit">The tolerance.</param>
    /// <param name="targetSi">The target, SI.</param>
    /// <param name="units">The job's units.</param>
    /// <returns>For example <c>12.0 ± 5 °F</c>.</returns>
    public static Message Around(Limit limit, double targetSi, UnitSystem units)
    {
        if (limit is not { Lower: { } lower, Upper: { Unit: { } written } upper })
            return Of(limit, units);
        var display = Preferred(upper, limit, units);
        var unit = display?.Unit ?? written;
        var decimals = display?.Decimals ?? upper.Decimals;
        var symbol = unit.Symbol == "1" ? "" : " " + unit.Symbol;
        if (Math.Abs(lower.Si + upper.Si) > 1e-9 * upper.Si)
            return LimitsMessages.Range(new(QuantityFormat.Number(unit.FromSi(targetSi + lower.Si), decimals)), new($"{QuantityFormat.Number(unit.FromSi(targetSi + upper.Si), decimals)}{symbol}"));
        var half = unit.FromSi(upper.Si);
        var halfDecimals = ReferenceEquals(written, unit) ? upper.Decimals : Decimals(half, decimals);
        return LimitsMessages.Band(new(QuantityFormat.Number(unit.FromSi(targetSi), decimals)), new($"{QuantityFormat.Number(half, halfDecimals)}{symbol}"));
    }

    private static Message Bounds(Limit limit, UnitSystem units) => (limit.Lower, limit.Upper) switch
    {
        ({ } lower, { } upper) => Range(lower, upper, limit, units),
        ({ } lower, null) => LimitsMessages.AtLeast(Of(lower, limit, units)),
        (null, { } upper) => LimitsMessages.AtMost(Of(upper, limit, units)),
        _ => throw new InvalidOperationException($"{limit.Id} has no bound."),
    };

    private static Message Range(LimitFigure lower, LimitFigure upper, Limit limit, UnitSystem units)
    {
        if (Converted(lower, limit, units, upper) is not { } low || Converted(upper, limit, units, lower) is not { } high)
            return Joined(lower.Text, upper.Text);
        return LimitsMessages.RangeConverted(Joined(low, high), Joined(lower.Text, upper.Text));
    }

    // "55 °F" and "115 °F" are "55 to 115 °F".
    private static Message Joined(string low, string high)
    {
        var space = high.IndexOf(' ', StringComparison.Ordinal);
        var symbol = space < 0 ? "" : high[space..];
        return LimitsMessages.Range(new(symbol.Length > 0 && low.EndsWith(symbol, StringComparison.Ordinal) ? low[..^symbol.Length] : low), new(high));
    }

    private static Message Band(LimitFigure target, double half, Limit limit, UnitSystem units)
    {
        var display = DisplayOf(target, limit, units);
        var unit = display?.Unit ?? target.Unit;
        if (unit is null)
            return LimitsMessages.Figure(Symbols(target));
        var decimals = display is null ? Math.Max(target.Decimals, limit.Upper?.Decimals ?? 0) : Decimals(half / unit.Factor, display.Decimals);
        var width = QuantityFormat.Number(half / unit.Factor, decimals);
        return LimitsMessages.Band(new(QuantityFormat.Number(unit.FromSi(target.Si), decimals)), new(unit.Symbol == "1" ? width : $"{width} {unit.Symbol}"));
    }

    private static Message Of(LimitFigure figure, Limit limit, UnitSystem units)
    {
        if (limit.Definition.IsMonths)
            return figure.IsYears ? LimitsMessages.Years((int)figure.Si / 12) : LimitsMessages.Months((int)figure.Si);
        return Converted(figure, limit, units) is { } text ? LimitsMessages.FigureConverted(new(text), Symbols(figure)) : LimitsMessages.Figure(Symbols(figure));
    }

    private static SymbolsValue Symbols(LimitFigure figure) => new(figure.Text);

    // The other end of a range is printed with the same decimals.
    private static string? Converted(LimitFigure figure, Limit limit, UnitSystem units, LimitFigure? other = null)
    {
        if (DisplayOf(figure, limit, units) is not { } display)
            return null;
        if (display.Smaller is not null)
            return QuantityFormat.Format(figure.Si, display);
        var decimals = Least(display);
        if (display.Unit.Offset is 0)
        {
            decimals = Decimals(display.Unit.FromSi(figure.Si), decimals);
            if (other is not null)
                decimals = Math.Max(decimals, Decimals(display.Unit.FromSi(other.Si), Least(display)));
        }

        return QuantityFormat.Format(figure.Si, display.Unit, decimals);
    }

    // Pascals are whole.
    private static int Least(DisplayUnit display) => display.Unit.Symbol == "Pa" ? 0 : display.Decimals;

    private static int Decimals(double value, int least)
    {
        var decimals = least;
        while (decimals < MostDecimals && Math.Abs(QuantityFormat.Round(value, decimals) - value) > Fineness * Math.Abs(value))
            decimals++;
        return decimals;
    }

    // Null: the figure is printed as it was written, because its unit is the job's or belongs to no system.
    private static DisplayUnit? DisplayOf(LimitFigure figure, Limit limit, UnitSystem units)
    {
        if (Preferred(figure, limit, units) is not { } display || figure.Unit is not { } written)
            return null;
        var isSame = string.Equals(display.Unit.Symbol, written.Symbol, StringComparison.Ordinal)
            || string.Equals(display.Smaller?.Symbol, written.Symbol, StringComparison.Ordinal);
        return isSame ? null : display;
    }

    // The job's unit for this kind of number; null for kinds that every crew reads in the same units.
    private static DisplayUnit? Preferred(LimitFigure figure, Limit limit, UnitSystem units)
    {
        if (figure.Unit is not { } written)
            return null;
        var kind = written.Dimension switch
        {
            Dimension.Pressure when limit.Definition.Quantity == Dimension.VacuumLevel => DisplayKind.Vacuum,
            Dimension.VacuumLevel => DisplayKind.Vacuum,
            Dimension.Pressure when written.Reference == PressureReference.Gauge => DisplayKind.Pressure,
            Dimension.Pressure when written.Reference == PressureReference.Absolute => DisplayKind.AbsolutePressure,
            Dimension.PressureDifference when limit.Definition.Group is LimitGroup.Air => DisplayKind.StaticPressure,
            Dimension.PressureDifference when limit.Definition.Group is LimitGroup.Evacuation => DisplayKind.Vacuum,
            Dimension.PressureDifference => DisplayKind.PressureDifference,
            Dimension.Temperature => DisplayKind.Temperature,
            Dimension.TemperatureDifference => DisplayKind.TemperatureDifference,
            Dimension.Mass => DisplayKind.Mass,
            Dimension.Length => DisplayKind.Length,
            Dimension.Area => DisplayKind.Area,
            Dimension.Velocity => DisplayKind.Velocity,
            Dimension.VolumeFlow when limit.Definition.Group is LimitGroup.Air => DisplayKind.AirFlow,
            Dimension.FlowPerPower => DisplayKind.FlowPerCapacity,
            Dimension.PowerPerFlow => DisplayKind.FanPower,
            Dimension.Torque => DisplayKind.Torque,
            _ => (DisplayKind?)null,
        };
        return kind is { } known ? units[known] : null;
    }
}
