using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Area.</summary>
/// <remarks>Held in SI (square metre, m²). Range: zero and above where it is a floor or a duct. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Area : ILinearQuantity<Area>
{
    private Area(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Area;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in m².</summary>
    public double SquareMeters => Si;

    /// <summary>Value in ft².</summary>
    public double SquareFeet => Si / (ConversionFactors.Foot * ConversionFactors.Foot);

    /// <summary>Value in in².</summary>
    public double SquareInches => Si / (ConversionFactors.Inch * ConversionFactors.Inch);

    /// <inheritdoc/>
    public static Area FromSi(double si) => new(si);

    /// <summary>From a value in m².</summary>
    public static Area FromSquareMeters(double value) => new(value);

    /// <summary>From a value in ft².</summary>
    public static Area FromSquareFeet(double value) => new(value * (ConversionFactors.Foot * ConversionFactors.Foot));

    /// <summary>From a value in in².</summary>
    public static Area FromSquareInches(double value) => new(value * (ConversionFactors.Inch * ConversionFactors.Inch));

    /// <summary>The volume of a prism.</summary>
    public static Volume operator *(Area left, Length right) => Volume.FromCubicMeters(left.Si * right.Si);

    /// <summary>Flow through an area at a mean velocity.</summary>
    public static VolumeFlow operator *(Area left, Velocity right) => VolumeFlow.FromCubicMetersPerSecond(left.Si * right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} m²");
}
