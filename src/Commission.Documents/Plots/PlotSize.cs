namespace Commission.Documents.Plots;

/// <summary>The outer size of a figure in PDF points (1 pt = 1/72 in), positive and finite.</summary>
/// <param name="Width">Width, pt.</param>
/// <param name="Height">Height, pt.</param>
public readonly record struct PlotSize(double Width, double Height)
{
    /// <summary>Width of a figure that spans the text of a page: 7.1 in.</summary>
    public const double FullWidth = 7.1 * 72;

    /// <summary>Width of the variant drawn for a telephone held upright, where a full-width figure would shrink below reading size.</summary>
    public const double NarrowWidth = 264;

    /// <summary>True below the width at which a figure drops its second line of comfort: fewer ticks, shorter labels.</summary>
    internal bool IsNarrow => Width < 360;
}
