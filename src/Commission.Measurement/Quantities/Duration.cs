using System.Globalization;

namespace Commission.Measurement.Quantities;

/// <summary>A span of time.</summary>
/// <remarks>Held in SI (second, s). Range: any sign. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Duration : ILinearQuantity<Duration>
{
    private Duration(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Duration;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in s.</summary>
    public double Seconds => Si;

    /// <summary>Value in min.</summary>
    public double Minutes => Si / 60.0;

    /// <summary>Value in h.</summary>
    public double Hours => Si / 3600.0;

    /// <summary>Value in d.</summary>
    public double Days => Si / 86400.0;

    /// <inheritdoc/>
    public static Duration FromSi(double si) => new(si);

    /// <summary>From a value in s.</summary>
    public static Duration FromSeconds(double value) => new(value);

    /// <summary>From a value in min.</summary>
    public static Duration FromMinutes(double value) => new(value * 60.0);

    /// <summary>From a value in h.</summary>
    public static Duration FromHours(double value) => new(value * 3600.0);

    /// <summary>From a value in d.</summary>
    public static Duration FromDays(double value) => new(value * 86400.0);

    /// <summary>From a framework time span.</summary>
    public static Duration FromTimeSpan(TimeSpan value) => new(value.TotalSeconds);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} s");
}
