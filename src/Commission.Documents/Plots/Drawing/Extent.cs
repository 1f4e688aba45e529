namespace Commission.Documents.Plots.Drawing;

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
    /// <param name="values">The values.</param>
    public void AddAll(IEnumerable<double?> values)
    {
        foreach (var value in values)
            Add(value);
    }
}
