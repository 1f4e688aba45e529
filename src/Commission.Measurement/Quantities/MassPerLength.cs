using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Charge for each length of line.</summary>
/// <remarks>Held in SI (kilogram per metre, kg/m). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct MassPerLength : ILinearQuantity<MassPerLength>
{
    private MassPerLength(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.MassPerLength;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in kg/m.</summary>
    public double KilogramsPerMeter => Si;

    /// <summary>Value in g/m.</summary>
    public double GramsPerMeter => Si / 1e-3;

    /// <summary>Value in oz/ft.</summary>
    public double OuncesPerFoot => Si / (ConversionFactors.Ounce / ConversionFactors.Foot);

    /// <inheritdoc/>
    public static MassPerLength FromSi(double si) => new(si);

    /// <summary>From a value in kg/m.</summary>
    public static MassPerLength FromKilogramsPerMeter(double value) => new(value);

    /// <summary>From a value in g/m.</summary>
    public static MassPerLength FromGramsPerMeter(double value) => new(value * 1e-3);

    /// <summary>From a value in oz/ft.</summary>
    public static MassPerLength FromOuncesPerFoot(double value) => new(value * (ConversionFactors.Ounce / ConversionFactors.Foot));

    /// <summary>The mass in a length of line.</summary>
    public static Mass operator *(MassPerLength left, Length right) => Mass.FromKilograms(left.Si * right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} kg/m");
}
