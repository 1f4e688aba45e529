using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Density, or a concentration limit by mass.</summary>
/// <remarks>Held in SI (kilogram per cubic metre, kg/m³). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Density : ILinearQuantity<Density>
{
    private Density(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Density;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in kg/m³.</summary>
    public double KilogramsPerCubicMeter => Si;

    /// <summary>Value in g/m³.</summary>
    public double GramsPerCubicMeter => Si / 1e-3;

    /// <summary>Value in lb/ft³.</summary>
    public double PoundsPerCubicFoot => Si / (ConversionFactors.Pound / ConversionFactors.CubicFoot);

    /// <inheritdoc/>
    public static Density FromSi(double si) => new(si);

    /// <summary>From a value in kg/m³.</summary>
    public static Density FromKilogramsPerCubicMeter(double value) => new(value);

    /// <summary>From a value in g/m³.</summary>
    public static Density FromGramsPerCubicMeter(double value) => new(value * 1e-3);

    /// <summary>From a value in lb/ft³.</summary>
    public static Density FromPoundsPerCubicFoot(double value) => new(value * (ConversionFactors.Pound / ConversionFactors.CubicFoot));

    /// <summary>The mass in a volume.</summary>
    public static Mass operator *(Density left, Volume right) => Mass.FromKilograms(left.Si * right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} kg/m³");
}
