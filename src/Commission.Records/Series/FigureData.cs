using System.Collections.Immutable;

namespace Commission.Records.Series;

/// <summary>Everything a plot draws: the drawing computes nothing but positions on paper.</summary>
public sealed record FigureData
{
    /// <summary>Identifier within the record, used by <c>figure data-plot="…"</c>.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// Kind of plot: <c>pull-down</c>, <c>hold</c>, <c>charge-time</c>, <c>pressure-enthalpy</c>, <c>psychrometric</c>,
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
}

/// <summary>One axis of a figure.</summary>
/// <param name="Label">What is drawn along it.</param>
/// <param name="Unit">Unit of its numbers; empty for none.</param>
/// <param name="Scale">Division.</param>
/// <param name="Min">Lower end; null lets the plot choose from the data.</param>
/// <param name="Max">Upper end; null lets the plot choose from the data.</param>
public sealed record FigureAxis(string Label, string Unit, AxisScale Scale, double? Min = null, double? Max = null);

/// <summary>How an axis is divided and labelled.</summary>
public enum AxisScale
{
    /// <summary>Equal steps.</summary>
    Linear,

    /// <summary>Decades; every value is positive.</summary>
    Log10,

    /// <summary>Elapsed time in minutes.</summary>
    Minutes,

    /// <summary>Minutes since midnight of the job's date, labelled as a clock; beyond 1440 the next day.</summary>
    Clock,
}

/// <summary>Something that happened, marked on the horizontal axis.</summary>
/// <param name="X">Position in the unit of the horizontal axis.</param>
/// <param name="Label">What happened.</param>
public sealed record FigureEvent(double X, string Label);
