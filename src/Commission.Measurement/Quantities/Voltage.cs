using System.Globalization;

namespace Commission.Measurement.Quantities;

/// <summary>Voltage.</summary>
/// <remarks>Held in SI (volt, V). Range: any sign. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Voltage : ILinearQuantity<Voltage>
{
    private Voltage(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Voltage;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in V.</summary>
    public double Volts => Si;

    /// <summary>Value in mV.</summary>
    public double Millivolts => Si / 1e-3;

    /// <inheritdoc/>
    public static Voltage FromSi(double si) => new(si);

    /// <summary>From a value in V.</summary>
    public static Voltage FromVolts(double value) => new(value);

    /// <summary>From a value in mV.</summary>
    public static Voltage FromMillivolts(double value) => new(value * 1e-3);

    /// <summary>Ohm's law.</summary>
    public static Resistance operator /(Voltage left, ElectricCurrent right) => Resistance.FromOhms(left.Si / right.Si);

    /// <summary>Apparent power of one phase.</summary>
    public static Power operator *(Voltage left, ElectricCurrent right) => Power.FromWatts(left.Si * right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} V");
}
