using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>
/// The field factors of air: total heat 4.5·cfm·Δh, sensible 1.08·cfm·ΔT, latent 0.68·cfm·Δgrains, in Btu/h. They are made for standard
/// air, 0.075 lb/ft³, and shrink with its density. They do not close exactly: sensible plus latent is about 2 % short of total.
/// </summary>
internal static class AirFactors
{
    /// <summary>Where the factors come from.</summary>
    public static Message Source => FormulasMessages.AirFactorsSource;

    private const double StandardTemperature = (70 + ConversionFactors.FahrenheitOffset) / 1.8;

    /// <summary>Density of the air against standard air.</summary>
    /// <param name="pascals">Atmospheric pressure at the site, Pa.</param>
    /// <param name="kelvins">Temperature of the air that flows, K; null for standard air at 70 °F.</param>
    /// <returns>A ratio.</returns>
    public static double DensityRatio(double pascals, double? kelvins) =>
        pascals / ConversionFactors.StandardAtmosphere * (StandardTemperature / (kelvins ?? StandardTemperature));

    /// <summary>Factor of total heat: Btu/h for each cfm and Btu/lb.</summary>
    /// <param name="densityRatio">From <see cref="DensityRatio"/>.</param>
    /// <returns>4.5 at sea level.</returns>
    public static double Total(double densityRatio) => 4.5 * densityRatio;

    /// <summary>Factor of sensible heat: Btu/h for each cfm and °F.</summary>
    /// <param name="densityRatio">From <see cref="DensityRatio"/>.</param>
    /// <returns>1.08 at sea level.</returns>
    public static double Sensible(double densityRatio) => 1.08 * densityRatio;
}

/// <summary>The fan laws for one fan in one duct system: flow with speed, pressure with its square, power with its cube.</summary>
internal static class FanLaws
{
    /// <summary>The laws, as a trace prints them.</summary>
    public static Message Formula => FormulasMessages.FanLaws;

    /// <summary>Static pressure at another speed.</summary>
    /// <param name="pressure">Pressure now, any unit.</param>
    /// <param name="speedRatio">New speed over speed now.</param>
    /// <returns>Pressure, same unit.</returns>
    public static double Pressure(double pressure, double speedRatio) => pressure * speedRatio * speedRatio;

    /// <summary>Shaft power at another speed.</summary>
    /// <param name="power">Power now, any unit.</param>
    /// <param name="speedRatio">New speed over speed now.</param>
    /// <returns>Power, same unit.</returns>
    public static double Power(double power, double speedRatio) => power * speedRatio * speedRatio * speedRatio;
}

/// <summary>Airflow from the heat put into the air and its rise in temperature, in SI doubles so that uncertainty passes through.</summary>
internal static class HeatRiseAirflow
{
    /// <summary>The electric form, as a trace prints it.</summary>
    public static Message ElectricFormula => FormulasMessages.HeatRiseElectric;

    /// <summary>The gas form, as a trace prints it.</summary>
    public static Message GasFormula => FormulasMessages.HeatRiseGas;

    /// <summary>Where the formulas come from.</summary>
    public static Message Source => FormulasMessages.HeatRiseSource;

    private const double BtuPerHour = ConversionFactors.Btu / 3600;
    private const double CubicFootPerMinute = ConversionFactors.CubicFoot / 60;

    /// <summary>Airflow from a known heat output: gas furnace or strip heat.</summary>
    /// <param name="watts">Heat put into the air, W.</param>
    /// <param name="riseKelvins">Supply minus return temperature, K.</param>
    /// <param name="densityRatio">Air density against standard air, from <see cref="AirFactors.DensityRatio"/>.</param>
    /// <param name="blower">Heat the blower adds for each flow, W/(m³/s); zero where its power is in <paramref name="watts"/>.</param>
    /// <returns>m³/s at that density.</returns>
    public static double FromHeat(double watts, double riseKelvins, double densityRatio, double blower) =>
        watts / ((AirFactors.Sensible(densityRatio) * riseKelvins * 1.8 * BtuPerHour / CubicFootPerMinute) - blower);
}
