using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Volume flow: air, or the displacement of a pump.</summary>
/// <remarks>Held in SI (cubic metre per second, m³/s). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct VolumeFlow : ILinearQuantity<VolumeFlow>
{
    private VolumeFlow(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.VolumeFlow;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in m³/s.</summary>
    public double CubicMetersPerSecond => Si;

    /// <summary>Value in m³/h.</summary>
    public double CubicMetersPerHour => Si / (1.0 / 3600.0);

    /// <summary>Value in L/s.</summary>
    public double LitersPerSecond => Si / 1e-3;

    /// <summary>Value in cfm.</summary>
    public double CubicFeetPerMinute => Si / (ConversionFactors.CubicFoot / 60.0);

    /// <inheritdoc/>
    public static VolumeFlow FromSi(double si) => new(si);

    /// <summary>From a value in m³/s.</summary>
    public static VolumeFlow FromCubicMetersPerSecond(double value) => new(value);

    /// <summary>From a value in m³/h.</summary>
    public static VolumeFlow FromCubicMetersPerHour(double value) => new(value * (1.0 / 3600.0));

    /// <summary>From a value in L/s.</summary>
    public static VolumeFlow FromLitersPerSecond(double value) => new(value * 1e-3);

    /// <summary>From a value in cfm.</summary>
    public static VolumeFlow FromCubicFeetPerMinute(double value) => new(value * (ConversionFactors.CubicFoot / 60.0));

    /// <summary>Volume moved during a time.</summary>
    public static Volume operator *(VolumeFlow left, Duration right) => Volume.FromCubicMeters(left.Si * right.Si);

    /// <summary>Mass flow at a density.</summary>
    public static MassFlow operator *(VolumeFlow left, Density right) => MassFlow.FromKilogramsPerSecond(left.Si * right.Si);

    /// <summary>Mean velocity through an area.</summary>
    public static Velocity operator /(VolumeFlow left, Area right) => Velocity.FromMetersPerSecond(left.Si / right.Si);

    /// <summary>Air flow for each watt of capacity.</summary>
    public static FlowPerPower operator /(VolumeFlow left, Power right) => FlowPerPower.FromCubicMetersPerJoule(left.Si / right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} m³/s");
}
