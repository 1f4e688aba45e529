using System.Globalization;

namespace Commission.Measurement.Quantities;

/// <summary>Resistance of a winding or of insulation.</summary>
/// <remarks>Held in SI (ohm, Ω). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Resistance : ILinearQuantity<Resistance>
{
    private Resistance(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Resistance;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in Ω.</summary>
    public double Ohms => Si;

    /// <summary>Value in MΩ.</summary>
    public double Megohms => Si / 1e6;

    /// <inheritdoc/>
    public static Resistance FromSi(double si) => new(si);

    /// <summary>From a value in Ω.</summary>
    public static Resistance FromOhms(double value) => new(value);

    /// <summary>From a value in MΩ.</summary>
    public static Resistance FromMegohms(double value) => new(value * 1e6);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} Ω");
}
