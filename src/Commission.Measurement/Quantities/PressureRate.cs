using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>How fast a pressure rises or falls.</summary>
/// <remarks>Held in SI (pascal per second, Pa/s). Range: any sign. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct PressureRate : ILinearQuantity<PressureRate>
{
    private PressureRate(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.PressureRate;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in Pa/s.</summary>
    public double PascalsPerSecond => Si;

    /// <summary>Value in micron/min.</summary>
    public double MicronsPerMinute => Si / (ConversionFactors.Micron / 60.0);

    /// <summary>Value in Pa/min.</summary>
    public double PascalsPerMinute => Si / (1.0 / 60.0);

    /// <inheritdoc/>
    public static PressureRate FromSi(double si) => new(si);

    /// <summary>From a value in Pa/s.</summary>
    public static PressureRate FromPascalsPerSecond(double value) => new(value);

    /// <summary>From a value in micron/min.</summary>
    public static PressureRate FromMicronsPerMinute(double value) => new(value * (ConversionFactors.Micron / 60.0));

    /// <summary>From a value in Pa/min.</summary>
    public static PressureRate FromPascalsPerMinute(double value) => new(value * (1.0 / 60.0));

    /// <summary>Throughput of a volume whose pressure changes at this rate, Q = V·dp/dt.</summary>
    public static Throughput operator *(PressureRate left, Volume right) => Throughput.FromPascalCubicMetersPerSecond(left.Si * right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} Pa/s");
}
