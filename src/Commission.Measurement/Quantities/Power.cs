using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Power: electrical input or heat rate.</summary>
/// <remarks>Held in SI (watt, W). Range: any sign. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Power : ILinearQuantity<Power>
{
    private Power(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Power;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in W.</summary>
    public double Watts => Si;

    /// <summary>Value in kW.</summary>
    public double Kilowatts => Si / 1000.0;

    /// <summary>Value in Btu/h (International Table).</summary>
    public double BtuPerHour => Si / (ConversionFactors.Btu / 3600.0);

    /// <summary>Value in ton (12,000 Btu/h).</summary>
    public double TonsOfRefrigeration => Si / ConversionFactors.TonOfRefrigeration;

    /// <inheritdoc/>
    public static Power FromSi(double si) => new(si);

    /// <summary>From a value in W.</summary>
    public static Power FromWatts(double value) => new(value);

    /// <summary>From a value in kW.</summary>
    public static Power FromKilowatts(double value) => new(value * 1000.0);

    /// <summary>From a value in Btu/h (International Table).</summary>
    public static Power FromBtuPerHour(double value) => new(value * (ConversionFactors.Btu / 3600.0));

    /// <summary>From a value in ton (12,000 Btu/h).</summary>
    public static Power FromTonsOfRefrigeration(double value) => new(value * ConversionFactors.TonOfRefrigeration);

    /// <summary>Power spent on each unit of flow.</summary>
    public static PowerPerFlow operator /(Power left, VolumeFlow right) => PowerPerFlow.FromJoulesPerCubicMeter(left.Si / right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} W");
}
