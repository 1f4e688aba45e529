using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Mass flow of a circuit, or a leak rate.</summary>
/// <remarks>Held in SI (kilogram per second, kg/s). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct MassFlow : ILinearQuantity<MassFlow>
{
    private MassFlow(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.MassFlow;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in kg/s.</summary>
    public double KilogramsPerSecond => Si;

    /// <summary>Value in kg/h.</summary>
    public double KilogramsPerHour => Si / (1.0 / 3600.0);

    /// <summary>Value in lb/h.</summary>
    public double PoundsPerHour => Si / (ConversionFactors.Pound / 3600.0);

    /// <summary>Value in lb/min.</summary>
    public double PoundsPerMinute => Si / (ConversionFactors.Pound / 60.0);

    /// <summary>Value in g/yr (year of 365 days).</summary>
    public double GramsPerYear => Si / (1e-3 / ConversionFactors.Year);

    /// <inheritdoc/>
    public static MassFlow FromSi(double si) => new(si);

    /// <summary>From a value in kg/s.</summary>
    public static MassFlow FromKilogramsPerSecond(double value) => new(value);

    /// <summary>From a value in kg/h.</summary>
    public static MassFlow FromKilogramsPerHour(double value) => new(value * (1.0 / 3600.0));

    /// <summary>From a value in lb/h.</summary>
    public static MassFlow FromPoundsPerHour(double value) => new(value * (ConversionFactors.Pound / 3600.0));

    /// <summary>From a value in lb/min.</summary>
    public static MassFlow FromPoundsPerMinute(double value) => new(value * (ConversionFactors.Pound / 60.0));

    /// <summary>From a value in g/yr (year of 365 days).</summary>
    public static MassFlow FromGramsPerYear(double value) => new(value * (1e-3 / ConversionFactors.Year));

    /// <summary>Heat carried by a flow through an enthalpy difference.</summary>
    public static Power operator *(MassFlow left, SpecificEnthalpy right) => Power.FromWatts(left.Si * right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} kg/s");
}
