using Commission.Records.Series;

namespace Commission.Documents.Plots.Drawing;

/// <summary>What a kind of plot decides before axes can be laid.</summary>
internal sealed record SheetPlan
{
    /// <summary>Curves of the main panel; others (residuals) have their own.</summary>
    public Func<FigureCurve, bool> InMain { get; init; } = static _ => true;

    /// <summary>True to put the numbers of the vertical axis on the right, as psychrometric charts have them.</summary>
    public bool AxisOnRight { get; init; }

    /// <summary>Height of a second panel below that shares the horizontal axis, pt; 0 for none.</summary>
    public double LowerPanel { get; init; }

    /// <summary>Share of the vertical span kept free above the data, for labels.</summary>
    public double Headroom { get; init; } = 0.04;

    /// <summary>Values that the vertical axis must show, beside the data.</summary>
    public IReadOnlyList<double> MustShow { get; init; } = [];

    /// <summary>True when a curve only helps to read the figure and must not stretch the axes.</summary>
    public Func<FigureCurve, bool> IsBackdrop { get; init; } = static curve => curve.Role is CurveRole.Model or CurveRole.Limit;
}
