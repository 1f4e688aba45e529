using Commission.Records.Series;

namespace Commission.Documents.Plots.Sheets;

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

/// <summary>The smallest and largest of the values shown to it.</summary>
internal sealed class Extent
{
    /// <summary>Smallest value; +∞ before the first.</summary>
    public double Low { get; private set; } = double.PositiveInfinity;

    /// <summary>Largest value; −∞ before the first.</summary>
    public double High { get; private set; } = double.NegativeInfinity;

    /// <summary>True before the first value.</summary>
    public bool IsEmpty => Low > High;

    /// <summary>Takes a value in.</summary>
    /// <param name="value">The value; null, what is not a number, and what no instrument could mean (beyond 1e100) are passed over.</param>
    public void Add(double? value)
    {
        if (value is not { } number || !(Math.Abs(number) < 1e100))
            return;
        Low = Math.Min(Low, number);
        High = Math.Max(High, number);
    }

    /// <summary>Takes values in.</summary>
    public void AddAll(IEnumerable<double?> values)
    {
        foreach (var value in values)
            Add(value);
    }
}
