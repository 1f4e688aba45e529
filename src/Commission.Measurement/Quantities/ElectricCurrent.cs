using System.Globalization;

namespace Commission.Measurement.Quantities;

/// <summary>Electric current.</summary>
/// <remarks>Held in SI (ampere, A). Range: zero and above for an effective value. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct ElectricCurrent : ILinearQuantity<ElectricCurrent>
{
    private ElectricCurrent(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.ElectricCurrent;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in A.</summary>
    public double Amperes => Si;

    /// <summary>Value in mA.</summary>
    public double Milliamperes => Si / 1e-3;

    /// <inheritdoc/>
    public static ElectricCurrent FromSi(double si) => new(si);

    /// <summary>From a value in A.</summary>
    public static ElectricCurrent FromAmperes(double value) => new(value);

    /// <summary>From a value in mA.</summary>
    public static ElectricCurrent FromMilliamperes(double value) => new(value * 1e-3);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} A");
}
