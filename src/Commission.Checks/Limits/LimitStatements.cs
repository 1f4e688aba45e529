using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Limits;

/// <summary>Limits as a record keeps them.</summary>
internal static class LimitStatements
{
    /// <summary>A limit with its own numbers.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="units">The job's units.</param>
    /// <param name="atmosphere">Atmospheric pressure at the site; needed for gauge pressures only.</param>
    /// <returns>The statement.</returns>
    public static LimitStatement ToStatement(this Limit limit, UnitSystem units, Pressure? atmosphere = null) => Make(
        limit,
        limit.Shape switch
        {
            LimitShape.AtLeast => LimitKind.AtLeast,
            LimitShape.AtMost => LimitKind.AtMost,
            LimitShape.Target => LimitKind.Target,
            LimitShape.Statement => LimitKind.Statement,
            _ => LimitKind.Within,
        },
        LimitText.Of(limit, units),
        Si(limit.Lower, atmosphere),
        Si(limit.Upper, atmosphere),
        Si(limit.Target, atmosphere));

    /// <summary>A tolerance around a target that comes from elsewhere: a table, a chart, a plate.</summary>
    /// <param name="limit">The tolerance.</param>
    /// <param name="units">The job's units.</param>
    /// <param name="targetSi">The target, SI.</param>
    /// <returns>The statement.</returns>
    public static LimitStatement ToStatement(this Limit limit, UnitSystem units, double targetSi) => Make(
        limit,
        LimitKind.Target,
        LimitText.Around(limit, targetSi, units),
        targetSi + limit.Lower?.Si,
        targetSi + limit.Upper?.Si,
        targetSi);

    /// <summary>What the record remarks when a figure of the maker asks less than a published limit, or when the crew's own target was set aside.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="units">The job's units.</param>
    /// <returns>A sentence; null when there is nothing to remark.</returns>
    public static string? Remark(this Limit limit, UnitSystem units)
    {
        if (limit.LooserThan is { } stricter)
            return $"The maker's figure, {LimitText.Of(limit, units)} ({limit.Source}), asks less than {Owner(stricter)}: {LimitText.Of(stricter, units)}.";
        return limit.SetAside is { } target
            ? $"The job's own target, {LimitText.Of(target, units)}, has no source and asks less than {Owner(limit)}: {LimitText.Of(limit, units)}. It was not used."
            : null;
    }

    /// <summary>Whose a limit is, as a record words it.</summary>
    /// <param name="tier">Whose it is.</param>
    /// <returns><c>maker</c>, <c>pack</c> or <c>common practice</c>.</returns>
    public static string Word(LimitTier tier) => tier switch
    {
        LimitTier.Maker => "maker",
        LimitTier.Pack => "pack",
        _ => "common practice",
    };

    private static string Owner(Limit limit) => limit.Tier == LimitTier.CommonPractice ? "common practice" : $"the pack {limit.Pack} ({limit.Source})";

    private static double? Si(LimitFigure? figure, Pressure? atmosphere) =>
        figure is { Reference: PressureReference.Gauge or PressureReference.BelowAtmosphere } && atmosphere is { } air ? figure.ToAbsolute(air).Si : figure?.Si;

    private static LimitStatement Make(Limit limit, LimitKind kind, string text, double? lower, double? upper, double? target) =>
        new(kind, text, lower, upper, target, Word(limit.Tier), limit.Pack, limit.Source, limit.Mark, limit.Rule)
        {
            Quantity = limit.Definition.Means,
        };
}
