namespace Commission.Documents.Plots.Axes;

/// <summary>Maps values to positions along one direction of a panel, evenly or by logarithm.</summary>
/// <param name="Low">Value at <paramref name="Start"/>; positive on a logarithmic scale.</param>
/// <param name="High">Value at <paramref name="End"/>, above <paramref name="Low"/>.</param>
/// <param name="Start">Position of the low end, pt.</param>
/// <param name="End">Position of the high end, pt; smaller than <paramref name="Start"/> on a vertical axis.</param>
/// <param name="Logarithmic">True for a logarithmic scale.</param>
internal sealed record AxisMap(double Low, double High, double Start, double End, bool Logarithmic)
{
    /// <summary>The position of a value, pt. Values outside lie outside; a value without a logarithm lies far below the low end.</summary>
    /// <param name="value">The value, in the unit of the axis.</param>
    /// <returns>The position.</returns>
    public double At(double value)
    {
        if (!Logarithmic)
            return Start + (value - Low) / (High - Low) * (End - Start);
        if (value <= 0)
            return Start - 10 * (End - Start);
        return Start + Math.Log(value / Low) / Math.Log(High / Low) * (End - Start);
    }

    /// <summary>Whether a value lies on the scale.</summary>
    /// <param name="value">The value, in the unit of the axis.</param>
    /// <returns>True within the ends.</returns>
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>The nearest position on the scale for a value that may lie outside.</summary>
    /// <param name="value">The value, in the unit of the axis.</param>
    /// <returns>The position, pt.</returns>
    public double Clamped(double value) => At(Math.Clamp(value, Low, High));
}
