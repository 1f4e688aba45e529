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
