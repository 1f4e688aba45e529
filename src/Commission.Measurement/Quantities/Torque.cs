using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Torque of a flare nut or a screw.</summary>
/// <remarks>Held in SI (newton metre, N·m). Range: zero and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Torque : ILinearQuantity<Torque>
{
    private Torque(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Torque;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in N·m.</summary>
    public double NewtonMeters => Si;

    /// <summary>Value in lbf·ft.</summary>
    public double PoundForceFeet => Si / (ConversionFactors.PoundForce * ConversionFactors.Foot);

    /// <summary>Value in lbf·in.</summary>
    public double PoundForceInches => Si / (ConversionFactors.PoundForce * ConversionFactors.Inch);

    /// <inheritdoc/>
    public static Torque FromSi(double si) => new(si);

    /// <summary>From a value in N·m.</summary>
    public static Torque FromNewtonMeters(double value) => new(value);

    /// <summary>From a value in lbf·ft.</summary>
    public static Torque FromPoundForceFeet(double value) => new(value * (ConversionFactors.PoundForce * ConversionFactors.Foot));

    /// <summary>From a value in lbf·in.</summary>
    public static Torque FromPoundForceInches(double value) => new(value * (ConversionFactors.PoundForce * ConversionFactors.Inch));

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} N·m");
}
