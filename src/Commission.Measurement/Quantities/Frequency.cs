using System.Globalization;

namespace Commission.Measurement.Quantities;

/// <summary>Frequency of a supply, or a speed.</summary>
/// <remarks>Held in SI (hertz, Hz). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Frequency : ILinearQuantity<Frequency>
{
    private Frequency(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Frequency;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in Hz.</summary>
    public double Hertz => Si;

    /// <summary>Value in rpm.</summary>
    public double RevolutionsPerMinute => Si / (1.0 / 60.0);

    /// <inheritdoc/>
    public static Frequency FromSi(double si) => new(si);

    /// <summary>From a value in Hz.</summary>
    public static Frequency FromHertz(double value) => new(value);

    /// <summary>From a value in rpm.</summary>
    public static Frequency FromRevolutionsPerMinute(double value) => new(value * (1.0 / 60.0));

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} Hz");
}
