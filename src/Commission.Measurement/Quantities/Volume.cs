using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Volume: a circuit, a room.</summary>
/// <remarks>Held in SI (cubic metre, m³). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Volume : ILinearQuantity<Volume>
{
    private Volume(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Volume;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in m³.</summary>
    public double CubicMeters => Si;

    /// <summary>Value in L.</summary>
    public double Liters => Si / 1e-3;

    /// <summary>Value in ft³.</summary>
    public double CubicFeet => Si / ConversionFactors.CubicFoot;

    /// <inheritdoc/>
    public static Volume FromSi(double si) => new(si);

    /// <summary>From a value in m³.</summary>
    public static Volume FromCubicMeters(double value) => new(value);

    /// <summary>From a value in L.</summary>
    public static Volume FromLiters(double value) => new(value * 1e-3);

    /// <summary>From a value in ft³.</summary>
    public static Volume FromCubicFeet(double value) => new(value * ConversionFactors.CubicFoot);

    /// <summary>Volume moved in a time.</summary>
    public static VolumeFlow operator /(Volume left, Duration right) => VolumeFlow.FromCubicMetersPerSecond(left.Si / right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} m³");
}
