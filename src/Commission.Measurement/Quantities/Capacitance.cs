using System.Globalization;

namespace Commission.Measurement.Quantities;

/// <summary>Capacitance of a run or start capacitor.</summary>
/// <remarks>Held in SI (farad, F). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Capacitance : ILinearQuantity<Capacitance>
{
    private Capacitance(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Capacitance;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in F.</summary>
    public double Farads => Si;

    /// <summary>Value in µF.</summary>
    public double Microfarads => Si / 1e-6;

    /// <inheritdoc/>
    public static Capacitance FromSi(double si) => new(si);

    /// <summary>From a value in F.</summary>
    public static Capacitance FromFarads(double value) => new(value);

    /// <summary>From a value in µF.</summary>
    public static Capacitance FromMicrofarads(double value) => new(value * 1e-6);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} F");
}
