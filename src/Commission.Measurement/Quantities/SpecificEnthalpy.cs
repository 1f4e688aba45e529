using System.Globalization;
using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Enthalpy of a unit of mass, or a difference of two.</summary>
/// <remarks>Held in SI (joule per kilogram, J/kg). Range: any sign: the zero is a convention of the fluid. Default: zero. Equality and order compare the SI value exactly; NaN equals itself and propagates.</remarks>
public readonly record struct SpecificEnthalpy : ILinearQuantity<SpecificEnthalpy>
{
    private SpecificEnthalpy(double si) => Si = si;

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.SpecificEnthalpy;

    /// <inheritdoc/>
    public double Si { get; }

    /// <summary>Value in J/kg.</summary>
    public double JoulesPerKilogram => Si;

    /// <summary>Value in kJ/kg.</summary>
    public double KilojoulesPerKilogram => Si / 1000.0;

    /// <summary>Value in Btu/lb (International Table).</summary>
    public double BtuPerPound => Si / (ConversionFactors.Btu / ConversionFactors.Pound);

    /// <inheritdoc/>
    public static SpecificEnthalpy FromSi(double si) => new(si);

    /// <summary>From a value in J/kg.</summary>
    public static SpecificEnthalpy FromJoulesPerKilogram(double value) => new(value);

    /// <summary>From a value in kJ/kg.</summary>
    public static SpecificEnthalpy FromKilojoulesPerKilogram(double value) => new(value * 1000.0);

    /// <summary>From a value in Btu/lb (International Table).</summary>
    public static SpecificEnthalpy FromBtuPerPound(double value) => new(value * (ConversionFactors.Btu / ConversionFactors.Pound));

    /// <summary>The SI value with its unit, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si} J/kg");
}
