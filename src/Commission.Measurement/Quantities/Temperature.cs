namespace Commission.Measurement.Quantities;

/// <summary>Thermodynamic temperature, a point on the scale. One degree of temperature is not one degree of difference.</summary>
/// <remarks>kelvin, K; absolute zero and above.</remarks>
public readonly record struct Temperature : IQuantity<Temperature>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Temperature;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Temperature FromSi(double si) => new() { Si = si };

    /// <summary>Value in °C.</summary>
    public double Celsius => Si - ConversionFactors.CelsiusZero;

    /// <summary>Value in °F.</summary>
    public double Fahrenheit => (Si / ConversionFactors.FahrenheitDegree) - ConversionFactors.FahrenheitOffset;
}

/// <summary>A difference of two temperatures: superheat, subcooling, a split, a tolerance. 1 °F of difference is 5/9 K.</summary>
/// <remarks>kelvin, K; any sign.</remarks>
public readonly record struct TemperatureDifference : IQuantity<TemperatureDifference>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.TemperatureDifference;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static TemperatureDifference FromSi(double si) => new() { Si = si };

    /// <summary>From a value in °F of difference.</summary>
    public static TemperatureDifference FromFahrenheitDegrees(double value) => FromSi(value * ConversionFactors.FahrenheitDegree);
}
