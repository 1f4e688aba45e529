using System.Collections.Immutable;

namespace Commission.Records.Series;

/// <summary>Everything a plot draws: the drawing computes nothing but positions on paper.</summary>
public sealed record FigureData
{
    /// <summary>Identifier within the record, used by <c>figure data-plot="…"</c>.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// Kind of plot: <c>pull-down</c>, <c>hold</c>, <c>charge-time</c>, <c>pressure-enthalpy</c>, <c>psychrometric</c>, <c>strip</c>,
    /// <c>nitrogen-hold</c> or <c>instrument-residuals</c>.
    /// </summary>
    public required string Plot { get; init; }

    /// <summary>Phase it belongs to.</summary>
    public required string Phase { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>Caption printed below.</summary>
    public required string Caption { get; init; }

    /// <summary>The figure in words, for people who do not see it.</summary>
    public required string AltText { get; init; }

    /// <summary>Horizontal axis.</summary>
    public required FigureAxis X { get; init; }

    /// <summary>Vertical axis.</summary>
    public required FigureAxis Y { get; init; }

    /// <summary>Curves, drawn in order.</summary>
    public ImmutableArray<FigureCurve> Curves { get => field.IsDefault ? [] : field; init; }

    /// <summary>Reference lines.</summary>
    public ImmutableArray<FigureLine> Lines { get => field.IsDefault ? [] : field; init; }

    /// <summary>Events on the horizontal axis.</summary>
    public ImmutableArray<FigureEvent> Events { get => field.IsDefault ? [] : field; init; }

    /// <summary>Rows of a strip chart; empty for other plots.</summary>
    public ImmutableArray<FigureBar> Rows { get => field.IsDefault ? [] : field; init; }
}
