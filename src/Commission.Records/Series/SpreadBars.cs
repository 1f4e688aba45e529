namespace Commission.Records.Series;

/// <summary>When the bars of U of a curve can be seen in a figure: a caption speaks of them then and only then.</summary>
public static class SpreadBars
{
    /// <summary>A curve of more readings than these is drawn as a line, without marks and bars.</summary>
    public const int MostMarks = 60;

    // A mark takes up about a thirtieth of a vertical axis on paper; a bar that hardly leaves it is not seen.
    private const double ShareOfMark = 0.04;

    /// <summary>Whether a bar of a curve is longer than the mark in its middle.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="low">Lower end of the vertical axis, in its unit; positive on a logarithmic one.</param>
    /// <param name="high">Upper end.</param>
    /// <param name="scale">How the axis is divided.</param>
    /// <param name="panels">Panels that share the height of the figure, 1 or more.</param>
    public static bool AreSeen(FigureCurve curve, double low, double high, AxisScale scale, int panels = 1)
    {
        ArgumentNullException.ThrowIfNull(curve);
        if (curve.YLow.Length != curve.X.Length || curve.YHigh.Length != curve.X.Length || curve.Y.Count(value => value is not null) > MostMarks)
            return false;
        var span = At(high) - At(low);
        for (var i = 0; i < curve.X.Length; i++)
        {
            if (curve.YLow[i] is { } from && curve.YHigh[i] is { } to && At(to) - At(from) > ShareOfMark * panels * span)
                return true;
        }

        return false;

        double At(double value) => scale == AxisScale.Log10 ? Math.Log10(Math.Max(value, low)) : value;
    }
}
