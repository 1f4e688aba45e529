using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Air flow for each unit of cooling capacity.</summary>
/// <remarks>Held in SI (cubic metre per joule, m³/J). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct FlowPerPower : ILinearQuantity<FlowPerPower>
{
    private FlowPerPower(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.FlowPerPower;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in m³/J, the same as (m³/s)/W.</summary>
    public double CubicMetersPerJoule => Si;

    /// <summary>Value in cfm/ton.</summary>
    public double CfmPerTon => Si / (ConversionFactors.CubicFoot / 60.0 / ConversionFactors.TonOfRefrigeration);

    /// <inheritdoc/>
    public static FlowPerPower FromSi(double si) => new(si);

    /// <summary>From a value in m³/J, the same as (m³/s)/W.</summary>
    public static FlowPerPower FromCubicMetersPerJoule(double value) => new(value);

    /// <summary>From a value in cfm/ton.</summary>
    public static FlowPerPower FromCfmPerTon(double value) => new(value * (ConversionFactors.CubicFoot / 60.0 / ConversionFactors.TonOfRefrigeration));

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} m³/J");
}
