using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>A difference of two pressures: a drop, a rise, a static pressure against the room.</summary>
/// <remarks>Held in SI (pascal, Pa). Range: any sign. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct PressureDifference : ILinearQuantity<PressureDifference>
{
    private PressureDifference(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.PressureDifference;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in Pa.</summary>
    public double Pascals => Si;

    /// <summary>Value in kPa.</summary>
    public double Kilopascals => Si / 1000.0;

    /// <summary>Value in bar.</summary>
    public double Bar => Si / 1e5;

    /// <summary>Value in psi.</summary>
    public double Psi => Si / ConversionFactors.Psi;

    /// <summary>Value in inwc.</summary>
    public double InchesOfWater => Si / ConversionFactors.InchOfWater;

    /// <summary>Value in micron (1e-3 conventional mmHg).</summary>
    public double Microns => Si / ConversionFactors.Micron;

    /// <inheritdoc/>
    public static PressureDifference FromSi(double si) => new(si);

    /// <summary>From a value in Pa.</summary>
    public static PressureDifference FromPascals(double value) => new(value);

    /// <summary>From a value in kPa.</summary>
    public static PressureDifference FromKilopascals(double value) => new(value * 1000.0);

    /// <summary>From a value in bar.</summary>
    public static PressureDifference FromBar(double value) => new(value * 1e5);

    /// <summary>From a value in psi.</summary>
    public static PressureDifference FromPsi(double value) => new(value * ConversionFactors.Psi);

    /// <summary>From a value in inwc.</summary>
    public static PressureDifference FromInchesOfWater(double value) => new(value * ConversionFactors.InchOfWater);

    /// <summary>From a value in micron (1e-3 conventional mmHg).</summary>
    public static PressureDifference FromMicrons(double value) => new(value * ConversionFactors.Micron);

    /// <summary>A difference spread over a time.</summary>
    public static PressureRate operator /(PressureDifference left, Duration right) => PressureRate.FromPascalsPerSecond(left.Si / right.Si);

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} Pa");
}
