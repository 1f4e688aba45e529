using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Absolute pressure. A gauge reading becomes one only through <see cref="StatedPressure.ToAbsolute"/> with the atmosphere at the site.</summary>
/// <remarks>Held in SI (pascal, Pa). Range: zero (a perfect vacuum) and above. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct Pressure : IQuantity<Pressure>
{
    private Pressure(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Pressure;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in Pa.</summary>
    public double Pascals => Si;

    /// <summary>Value in kPa.</summary>
    public double Kilopascals => Si / 1000.0;

    /// <summary>Value in MPa.</summary>
    public double Megapascals => Si / 1e6;

    /// <summary>Value in bar.</summary>
    public double Bar => Si / 1e5;

    /// <summary>Value in mbar.</summary>
    public double Millibar => Si / 100.0;

    /// <summary>Value in psia.</summary>
    public double Psia => Si / ConversionFactors.Psi;

    /// <summary>Value in micron (1e-3 conventional mmHg).</summary>
    public double Microns => Si / ConversionFactors.Micron;

    /// <summary>Value in Torr.</summary>
    public double Torr => Si / ConversionFactors.Torr;

    /// <summary>Value in inHg abs.</summary>
    public double InchesOfMercury => Si / ConversionFactors.InchOfMercury;

    /// <inheritdoc/>
    public static Pressure FromSi(double si) => new(si);

    /// <summary>From a value in Pa.</summary>
    public static Pressure FromPascals(double value) => new(value);

    /// <summary>From a value in kPa.</summary>
    public static Pressure FromKilopascals(double value) => new(value * 1000.0);

    /// <summary>From a value in MPa.</summary>
    public static Pressure FromMegapascals(double value) => new(value * 1e6);

    /// <summary>From a value in bar.</summary>
    public static Pressure FromBar(double value) => new(value * 1e5);

    /// <summary>From a value in mbar.</summary>
    public static Pressure FromMillibar(double value) => new(value * 100.0);

    /// <summary>From a value in psia.</summary>
    public static Pressure FromPsia(double value) => new(value * ConversionFactors.Psi);

    /// <summary>From a value in micron (1e-3 conventional mmHg).</summary>
    public static Pressure FromMicrons(double value) => new(value * ConversionFactors.Micron);

    /// <summary>From a value in Torr.</summary>
    public static Pressure FromTorr(double value) => new(value * ConversionFactors.Torr);

    /// <summary>From a value in inHg abs.</summary>
    public static Pressure FromInchesOfMercury(double value) => new(value * ConversionFactors.InchOfMercury);

    /// <summary>The step from one absolute pressure to another.</summary>
    public static PressureDifference operator -(Pressure left, Pressure right) => PressureDifference.FromPascals(left.Si - right.Si);

    /// <summary>A pressure moved by a difference.</summary>
    public static Pressure operator +(Pressure left, PressureDifference right) => new(left.Si + right.Si);

    /// <summary>A pressure moved down by a difference.</summary>
    public static Pressure operator -(Pressure left, PressureDifference right) => new(left.Si - right.Si);

    /// <summary>The ratio of two absolute pressures, such as a compression ratio.</summary>
    public static double operator /(Pressure left, Pressure right) => left.Si / right.Si;

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} Pa");
}
