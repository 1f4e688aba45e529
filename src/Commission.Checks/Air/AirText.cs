using Commission.Checks.Findings;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;

namespace Commission.Checks.Air;

/// <summary>
/// Numbers of moist air as the trade prints them: humidity ratio in grains per pound or grams per kilogram; enthalpy above dry air at 0 °F
/// in US units, as its charts have it, and above dry air at 0 °C in SI.
/// </summary>
internal static class AirText
{
    private const double GrainsPerPound = 7000;
    private const double GramsPerKilogram = 1000;

    // Dry air from 0 °F to 0 °C with the heat capacity of the SI form, 1.006 kJ/(kg K).
    private const double ZeroFahrenheit = 1006 * 32 / 1.8;

    /// <summary>Unit of the humidity ratio.</summary>
    /// <param name="present">How numbers are printed.</param>
    public static string RatioUnit(Presentation present) => IsUs(present) ? "gr/lb" : "g/kg";

    /// <summary>A humidity ratio in the unit of <see cref="RatioUnit"/>.</summary>
    /// <param name="present">How numbers are printed.</param>
    /// <param name="ratio">kg/kg.</param>
    public static double RatioValue(Presentation present, double ratio) => ratio * (IsUs(present) ? GrainsPerPound : GramsPerKilogram);

    /// <summary>A humidity ratio with its U.</summary>
    /// <param name="present">How numbers are printed.</param>
    /// <param name="ratio">kg/kg.</param>
    public static string Ratio(Presentation present, Uncertain ratio)
    {
        var most = IsUs(present) ? 1 : 2;
        var expanded = RatioValue(present, ratio.Expanded);
        var decimals = expanded > 0 ? QuantityFormat.DecimalsFor(expanded, most) : most;
        var value = QuantityFormat.Number(RatioValue(present, ratio.Value), decimals);
        return expanded > 0 ? $"{value} ± {QuantityFormat.Number(expanded, decimals)} {RatioUnit(present)}" : $"{value} {RatioUnit(present)}";
    }

    /// <summary>An enthalpy above the zero of the charts.</summary>
    /// <param name="present">How numbers are printed.</param>
    /// <param name="enthalpy">J/kg above dry air at 0 °C.</param>
    public static Uncertain Enthalpy(Presentation present, Uncertain enthalpy) => IsUs(present) ? enthalpy + ZeroFahrenheit : enthalpy;

    /// <summary>Where enthalpy is zero, in words.</summary>
    /// <param name="present">How numbers are printed.</param>
    public static string EnthalpyZero(Presentation present) => IsUs(present) ? "above dry air at 0 °F" : "above dry air at 0 °C";

    private static bool IsUs(Presentation present) => present.Preset == "us";
}
