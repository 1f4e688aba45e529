using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Length, elevation, tube diameter.</summary>
/// <remarks>Held in SI (metre, m). Range: any sign: a fall is a negative rise. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Length : ILinearQuantity<Length>
{
    private Length(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Length;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in m.</summary>
    public double Meters => Si;

    /// <summary>Value in mm.</summary>
    public double Millimeters => Si / 1e-3;

    /// <summary>Value in ft.</summary>
    public double Feet => Si / ConversionFactors.Foot;

    /// <summary>Value in in.</summary>
    public double Inches => Si / ConversionFactors.Inch;

    /// <inheritdoc/>
    public static Length FromSi(double si) => new(si);

    /// <summary>From a value in m.</summary>
    public static Length FromMeters(double value) => new(value);

    /// <summary>From a value in mm.</summary>
    public static Length FromMillimeters(double value) => new(value * 1e-3);

    /// <summary>From a value in ft.</summary>
    public static Length FromFeet(double value) => new(value * ConversionFactors.Foot);

    /// <summary>From a value in in.</summary>
    public static Length FromInches(double value) => new(value * ConversionFactors.Inch);

    /// <summary>The area of a rectangle.</summary>
    public static Area operator *(Length left, Length right) => Area.FromSquareMeters(left.Si * right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} m");
}
