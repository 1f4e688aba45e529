using System.Globalization;

namespace Commission.Measurement.Quantities;

/// <summary>Gas flow as pressure times volume for each time: a vacuum leak or a pump load.</summary>
/// <remarks>Held in SI (pascal cubic metre per second, Pa·m³/s). Range: any sign. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Throughput : ILinearQuantity<Throughput>
{
    private Throughput(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Throughput;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in Pa·m³/s.</summary>
    public double PascalCubicMetersPerSecond => Si;

    /// <summary>Value in mbar·L/s.</summary>
    public double MillibarLitersPerSecond => Si / 0.1;

    /// <inheritdoc/>
    public static Throughput FromSi(double si) => new(si);

    /// <summary>From a value in Pa·m³/s.</summary>
    public static Throughput FromPascalCubicMetersPerSecond(double value) => new(value);

    /// <summary>From a value in mbar·L/s.</summary>
    public static Throughput FromMillibarLitersPerSecond(double value) => new(value * 0.1);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} Pa·m³/s");
}
