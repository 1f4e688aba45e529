using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>A difference of two temperatures: superheat, subcooling, a split, a tolerance. 1 °F of difference is 5/9 K.</summary>
/// <remarks>Held in SI (kelvin, K). Range: any sign. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct TemperatureDifference : ILinearQuantity<TemperatureDifference>
{
    private TemperatureDifference(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.TemperatureDifference;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in K.</summary>
    public double Kelvins => Si;

    /// <summary>Value in °F of difference.</summary>
    public double FahrenheitDegrees => Si / ConversionFactors.FahrenheitDegree;

    /// <inheritdoc/>
    public static TemperatureDifference FromSi(double si) => new(si);

    /// <summary>From a value in K.</summary>
    public static TemperatureDifference FromKelvins(double value) => new(value);

    /// <summary>From a value in °F of difference.</summary>
    public static TemperatureDifference FromFahrenheitDegrees(double value) => new(value * ConversionFactors.FahrenheitDegree);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} K");
}
