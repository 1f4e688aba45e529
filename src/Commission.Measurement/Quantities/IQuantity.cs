namespace Commission.Measurement.Quantities;

/// <summary>A physical quantity: one SI number and what it is a number of.</summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf> : IComparable<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>What this is a number of; tells which units may stand beside it.</summary>
    static abstract Dimension Dimension { get; }

    /// <summary>Value in the coherent SI unit.</summary>
    double Si { get; }

    /// <summary>From a value in the coherent SI unit.</summary>
    static abstract TSelf FromSi(double si);

    /// <summary>Order by SI value.</summary>
    int IComparable<TSelf>.CompareTo(TSelf other) => Si.CompareTo(other.Si);
}
