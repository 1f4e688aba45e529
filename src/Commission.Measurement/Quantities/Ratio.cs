using System.Globalization;

namespace Commission.Measurement.Quantities;

/// <summary>A pure number: a fraction, a percentage, a relative humidity.</summary>
/// <remarks>Held in SI (one). Range: any sign. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Ratio : ILinearQuantity<Ratio>
{
    private Ratio(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Ratio;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in 1.</summary>
    public double Fraction => Si;

    /// <summary>Value in %.</summary>
    public double Percent => Si / 0.01;

    /// <inheritdoc/>
    public static Ratio FromSi(double si) => new(si);

    /// <summary>From a value in 1.</summary>
    public static Ratio FromFraction(double value) => new(value);

    /// <summary>From a value in %.</summary>
    public static Ratio FromPercent(double value) => new(value * 0.01);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si}");
}
