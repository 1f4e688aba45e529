namespace Commission.Checks.EvacuationAnalysis;

/// <summary>An estimate with its 95 % interval, in the unit of the quantity. The interval need not be symmetrical.</summary>
/// <param name="Value">Best estimate.</param>
/// <param name="Low">Lower end; −∞ when the data set none.</param>
/// <param name="High">Upper end; +∞ when the data set none.</param>
public readonly record struct Interval(double Value, double Low, double High)
{
    /// <summary>True when a value lies inside, ends included.</summary>
    /// <param name="value">In the unit of the quantity.</param>
    public bool Contains(double value) => value >= Low && value <= High;
}
