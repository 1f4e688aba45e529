using System.Collections.Immutable;

namespace Commission.Records.Series;

/// <summary>One curve of a figure; at most 2,000 points.</summary>
public sealed record FigureCurve
{
    /// <summary>Direct label at the curve.</summary>
    public required string Label { get; init; }

    /// <summary>What the curve means.</summary>
    public required CurveRole Role { get; init; }

    /// <summary>Abscissas in the unit of the horizontal axis.</summary>
    public ImmutableArray<double> X { get => field.IsDefault ? [] : field; init; }

    /// <summary>Ordinates in the unit of the vertical axis, as many as abscissas; null is a gap.</summary>
    public ImmutableArray<double?> Y { get => field.IsDefault ? [] : field; init; }

    /// <summary>Lower edge of a band or error bar; empty for none, else as many as abscissas.</summary>
    public ImmutableArray<double?> YLow { get => field.IsDefault ? [] : field; init; }

    /// <summary>Upper edge of a band or error bar; empty for none, else as many as abscissas.</summary>
    public ImmutableArray<double?> YHigh { get => field.IsDefault ? [] : field; init; }
}

/// <summary>What a curve means; the plot chooses colour and line style from it.</summary>
public enum CurveRole
{
    /// <summary>Readings.</summary>
    Measured,

    /// <summary>A fitted or computed course.</summary>
    Model,

    /// <summary>A limit that changes along the axis.</summary>
    Limit,

    /// <summary>The saturation dome of a refrigerant.</summary>
    Dome,

    /// <summary>A line of constant temperature.</summary>
    Isotherm,

    /// <summary>States of the cycle, joined in order.</summary>
    State,

    /// <summary>What is left after a correction or a fit.</summary>
    Residual,
}

/// <summary>A straight reference line across a figure.</summary>
/// <param name="Label">Direct label.</param>
/// <param name="At">Position in the unit of the axis.</param>
/// <param name="Axis">The axis the position is on.</param>
/// <param name="Role">What the line means.</param>
public sealed record FigureLine(string Label, double At, AxisName Axis, LineRole Role);

/// <summary>Names the axis a reference line belongs to.</summary>
public enum AxisName
{
    /// <summary>The horizontal axis: the line is vertical.</summary>
    X,

    /// <summary>The vertical axis: the line is horizontal.</summary>
    Y,
}

/// <summary>What a reference line means.</summary>
public enum LineRole
{
    /// <summary>A level to reach.</summary>
    Target,

    /// <summary>The level a hold must stay below.</summary>
    DecayLimit,

    /// <summary>Saturation of water or refrigerant.</summary>
    Saturation,

    /// <summary>An edge of a tolerance.</summary>
    Tolerance,
}
