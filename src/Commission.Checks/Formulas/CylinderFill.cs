using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Fluids;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>
/// How much liquefied refrigerant a cylinder may hold. The water capacity is the mass of water that fills it; both rules say which share of that mass
/// the refrigerant may weigh, and both come from the density of its liquid.
/// </summary>
internal static class CylinderFill
{
    /// <summary>The rule by volume, as a trace prints it.</summary>
    public static Message VolumeFormula => FormulasMessages.CylinderVolume;

    /// <summary>The filling ratio for transport in Europe, as a trace prints it.</summary>
    public static Message RatioFormula => FormulasMessages.FillingRatio;

    /// <summary>Where the filling ratio comes from.</summary>
    public static Message RatioSource => Cited.FromMemory("ADR packing instruction P200 (5), liquefied gases of low pressure");

    // kg/m³ at 101.325 kPa, IAPWS-95 (published tables).
    private const double WaterAt25 = 997.05;
    private const double WaterAt15 = 999.10;

    private const double Celsius = ConversionFactors.CelsiusZero;

    /// <summary>Liquid at 25 °C against water at 25 °C: times the water capacity, the mass that fills a cylinder with liquid.</summary>
    /// <param name="fluid">The refrigerant.</param>
    /// <returns>The ratio of the densities; null where there is no liquid at 25 °C.</returns>
    public static double? SpecificGravity(Refrigerant fluid) => Liquid(fluid, Celsius + 25) / WaterAt25;

    /// <summary>
    /// The filling ratio of a liquefied gas of low pressure: liquid fills no more than 95 % at 50 °C, and not all at 60 °C. Mass of refrigerant over the mass of
    /// water at 15 °C that fills the cylinder.
    /// </summary>
    /// <param name="fluid">The refrigerant.</param>
    /// <param name="share">The share that liquid may fill at 50 °C.</param>
    /// <returns>The ratio; null where there is no liquid at 60 °C, for then it depends on what the cylinder was tested with.</returns>
    public static double? FillingRatio(Refrigerant fluid, double share) =>
        Liquid(fluid, Celsius + 50) is { } warm && Liquid(fluid, Celsius + 60) is { } hot ? Math.Min(share * warm, hot) / WaterAt15 : null;

    private static double? Liquid(Refrigerant fluid, double kelvin) => fluid.BubbleAtTemperature(kelvin) is { Ok: true, Value: var state } ? state.LiquidDensity : null;
}
