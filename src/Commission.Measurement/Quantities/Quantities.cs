namespace Commission.Measurement.Quantities;

/// <summary>A physical quantity: one SI number and what it is a number of. Equality and order compare the SI value exactly; the default is zero.</summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf> : IComparable<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>What this is a number of; tells which units may stand beside it.</summary>
    static abstract Dimension Dimension { get; }

    /// <summary>Value in the coherent SI unit.</summary>
    double Si { get; }

    /// <summary>From a value in the coherent SI unit.</summary>
    static abstract TSelf FromSi(double si);

    /// <summary>Order by SI value.</summary>
    int IComparable<TSelf>.CompareTo(TSelf other) => Si.CompareTo(other.Si);
}

/// <summary>Mass.</summary>
/// <remarks>kilogram, kg; any sign: charge recovered is negative.</remarks>
public readonly record struct Mass : IQuantity<Mass>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Mass;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Mass FromSi(double si) => new() { Si = si };
}

/// <summary>Length, elevation, tube diameter.</summary>
/// <remarks>metre, m; any sign: a fall is a negative rise.</remarks>
public readonly record struct Length : IQuantity<Length>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Length;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Length FromSi(double si) => new() { Si = si };

    /// <summary>Value in m.</summary>
    public double Meters => Si;

    /// <summary>From a value in m.</summary>
    public static Length FromMeters(double value) => FromSi(value);
}

/// <summary>Area.</summary>
/// <remarks>square metre, m²; zero and above where it is a floor or a duct.</remarks>
public readonly record struct Area : IQuantity<Area>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Area;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Area FromSi(double si) => new() { Si = si };
}

/// <summary>Volume: a circuit, a room.</summary>
/// <remarks>cubic metre, m³; zero and above.</remarks>
public readonly record struct Volume : IQuantity<Volume>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Volume;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Volume FromSi(double si) => new() { Si = si };
}

/// <summary>A span of time.</summary>
/// <remarks>second, s; any sign.</remarks>
public readonly record struct Duration : IQuantity<Duration>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Duration;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Duration FromSi(double si) => new() { Si = si };

    /// <summary>Value in min.</summary>
    public double Minutes => Si / 60;
}

/// <summary>Volume flow: air, or the displacement of a pump.</summary>
/// <remarks>cubic metre per second, m³/s; zero and above.</remarks>
public readonly record struct VolumeFlow : IQuantity<VolumeFlow>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.VolumeFlow;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static VolumeFlow FromSi(double si) => new() { Si = si };
}

/// <summary>Mass flow of a circuit, or a leak rate.</summary>
/// <remarks>kilogram per second, kg/s; zero and above.</remarks>
public readonly record struct MassFlow : IQuantity<MassFlow>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.MassFlow;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static MassFlow FromSi(double si) => new() { Si = si };
}

/// <summary>Velocity of a gas or of air.</summary>
/// <remarks>metre per second, m/s; zero and above.</remarks>
public readonly record struct Velocity : IQuantity<Velocity>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Velocity;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Velocity FromSi(double si) => new() { Si = si };
}

/// <summary>Charge for each length of line.</summary>
/// <remarks>kilogram per metre, kg/m; zero and above.</remarks>
public readonly record struct MassPerLength : IQuantity<MassPerLength>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.MassPerLength;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static MassPerLength FromSi(double si) => new() { Si = si };
}

/// <summary>Torque of a flare nut or a screw.</summary>
/// <remarks>newton metre, N·m; zero and above.</remarks>
public readonly record struct Torque : IQuantity<Torque>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Torque;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Torque FromSi(double si) => new() { Si = si };
}

/// <summary>Power: electrical input or heat rate.</summary>
/// <remarks>watt, W; any sign.</remarks>
public readonly record struct Power : IQuantity<Power>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Power;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Power FromSi(double si) => new() { Si = si };
}

/// <summary>Fan power for each unit of air flow.</summary>
/// <remarks>joule per cubic metre, J/m³; zero and above.</remarks>
public readonly record struct PowerPerFlow : IQuantity<PowerPerFlow>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.PowerPerFlow;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static PowerPerFlow FromSi(double si) => new() { Si = si };
}

/// <summary>Electric current.</summary>
/// <remarks>ampere, A; zero and above for an effective value.</remarks>
public readonly record struct ElectricCurrent : IQuantity<ElectricCurrent>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.ElectricCurrent;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static ElectricCurrent FromSi(double si) => new() { Si = si };
}

/// <summary>Voltage.</summary>
/// <remarks>volt, V; any sign.</remarks>
public readonly record struct Voltage : IQuantity<Voltage>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Voltage;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Voltage FromSi(double si) => new() { Si = si };
}

/// <summary>Capacitance of a run or start capacitor.</summary>
/// <remarks>farad, F; zero and above.</remarks>
public readonly record struct Capacitance : IQuantity<Capacitance>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Capacitance;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Capacitance FromSi(double si) => new() { Si = si };
}

/// <summary>Resistance of a winding or of insulation.</summary>
/// <remarks>ohm, Ω; zero and above.</remarks>
public readonly record struct Resistance : IQuantity<Resistance>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Resistance;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Resistance FromSi(double si) => new() { Si = si };
}

/// <summary>Frequency of a supply, or a speed.</summary>
/// <remarks>hertz, Hz; zero and above.</remarks>
public readonly record struct Frequency : IQuantity<Frequency>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Frequency;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Frequency FromSi(double si) => new() { Si = si };
}

/// <summary>A pure number: a fraction, a percentage, a relative humidity.</summary>
/// <remarks>one; any sign.</remarks>
public readonly record struct Ratio : IQuantity<Ratio>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Ratio;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Ratio FromSi(double si) => new() { Si = si };
}

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
