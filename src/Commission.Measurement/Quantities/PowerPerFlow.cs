using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Fan power for each unit of air flow.</summary>
/// <remarks>Held in SI (joule per cubic metre, J/m³). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct PowerPerFlow : ILinearQuantity<PowerPerFlow>
{
    private PowerPerFlow(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.PowerPerFlow;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in J/m³, the same as W/(m³/s).</summary>
    public double JoulesPerCubicMeter => Si;

    /// <summary>Value in W/cfm.</summary>
    public double WattsPerCfm => Si / (60.0 / ConversionFactors.CubicFoot);

    /// <inheritdoc/>
    public static PowerPerFlow FromSi(double si) => new(si);

    /// <summary>From a value in J/m³, the same as W/(m³/s).</summary>
    public static PowerPerFlow FromJoulesPerCubicMeter(double value) => new(value);

    /// <summary>From a value in W/cfm.</summary>
    public static PowerPerFlow FromWattsPerCfm(double value) => new(value * (60.0 / ConversionFactors.CubicFoot));

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} J/m³");
}
