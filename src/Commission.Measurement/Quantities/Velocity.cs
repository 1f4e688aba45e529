using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Velocity of a gas or of air.</summary>
/// <remarks>Held in SI (metre per second, m/s). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Velocity : ILinearQuantity<Velocity>
{
    private Velocity(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Velocity;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in m/s.</summary>
    public double MetersPerSecond => Si;

    /// <summary>Value in fpm.</summary>
    public double FeetPerMinute => Si / (ConversionFactors.Foot / 60.0);

    /// <inheritdoc/>
    public static Velocity FromSi(double si) => new(si);

    /// <summary>From a value in m/s.</summary>
    public static Velocity FromMetersPerSecond(double value) => new(value);

    /// <summary>From a value in fpm.</summary>
    public static Velocity FromFeetPerMinute(double value) => new(value * (ConversionFactors.Foot / 60.0));

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} m/s");
}
