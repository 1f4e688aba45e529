using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Mass.</summary>
/// <remarks>Held in SI (kilogram, kg). Range: any sign: charge recovered is negative. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Mass : ILinearQuantity<Mass>
{
    private Mass(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Mass;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in kg.</summary>
    public double Kilograms => Si;

    /// <summary>Value in g.</summary>
    public double Grams => Si / 1e-3;

    /// <summary>Value in lb.</summary>
    public double Pounds => Si / ConversionFactors.Pound;

    /// <summary>Value in oz (avoirdupois).</summary>
    public double Ounces => Si / ConversionFactors.Ounce;

    /// <inheritdoc/>
    public static Mass FromSi(double si) => new(si);

    /// <summary>From a value in kg.</summary>
    public static Mass FromKilograms(double value) => new(value);

    /// <summary>From a value in g.</summary>
    public static Mass FromGrams(double value) => new(value * 1e-3);

    /// <summary>From a value in lb.</summary>
    public static Mass FromPounds(double value) => new(value * ConversionFactors.Pound);

    /// <summary>From a value in oz (avoirdupois).</summary>
    public static Mass FromOunces(double value) => new(value * ConversionFactors.Ounce);

    /// <summary>Mass spread along a length.</summary>
    public static MassPerLength operator /(Mass left, Length right) => MassPerLength.FromKilogramsPerMeter(left.Si / right.Si);

    /// <summary>Mass in a volume.</summary>
    public static Density operator /(Mass left, Volume right) => Density.FromKilogramsPerCubicMeter(left.Si / right.Si);

    /// <summary>Mass moved in a time.</summary>
    public static MassFlow operator /(Mass left, Duration right) => MassFlow.FromKilogramsPerSecond(left.Si / right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} kg");
}
