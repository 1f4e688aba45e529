using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Thermodynamic temperature, a point on the scale. One degree of temperature is not one degree of difference.</summary>
/// <remarks>Held in SI (kelvin, K). Range: absolute zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Temperature : IQuantity<Temperature>
{
    private Temperature(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Temperature;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in K.</summary>
    public double Kelvins => Si;

    /// <inheritdoc/>
    public static Temperature FromSi(double si) => new(si);

    /// <summary>From a value in K.</summary>
    public static Temperature FromKelvins(double value) => new(value);

    /// <summary>From a reading in °C.</summary>
    public static Temperature FromCelsius(double value) => new(value + ConversionFactors.CelsiusZero);

    /// <summary>From a reading in °F.</summary>
    public static Temperature FromFahrenheit(double value) => new((value + ConversionFactors.FahrenheitOffset) * ConversionFactors.FahrenheitDegree);

    /// <summary>Value in °C.</summary>
    public double Celsius => Si - ConversionFactors.CelsiusZero;

    /// <summary>Value in °F.</summary>
    public double Fahrenheit => (Si / ConversionFactors.FahrenheitDegree) - ConversionFactors.FahrenheitOffset;

    /// <summary>Value in °R (degrees Rankine).</summary>
    public double Rankine => Si / ConversionFactors.FahrenheitDegree;

    /// <summary>The step from one temperature to another.</summary>
    public static TemperatureDifference operator -(Temperature left, Temperature right) => TemperatureDifference.FromKelvins(left.Si - right.Si);

    /// <summary>A temperature moved by a difference.</summary>
    public static Temperature operator +(Temperature left, TemperatureDifference right) => new(left.Si + right.Si);

    /// <summary>A temperature moved down by a difference.</summary>
    public static Temperature operator -(Temperature left, TemperatureDifference right) => new(left.Si - right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} K");
}
