namespace Commission.Checks.Tables;

/// <summary>Airflow from the heat put into the air and its rise in temperature, in SI doubles so that uncertainty passes through.</summary>
internal static class HeatRiseAirflow
{
    /// <summary>The electric form, as a trace prints it.</summary>
    public const string ElectricFormula = "cfm = V·A·3.412 / (1.08·ΔT), 1.08 scaled by air density";

    /// <summary>The gas form, as a trace prints it.</summary>
    public const string GasFormula = "cfm = output in Btu/h / (1.08·ΔT), 1.08 scaled by air density";

    /// <summary>Where the formulas come from.</summary>
    public const string Source = "sensible-heat factor of standard air; generic installation manuals";

    private const double BtuPerHour = 1055.05585262 / 3600;
    private const double CubicFootPerMinute = 0.028316846592 / 60;

    /// <summary>Airflow from a known heat output: gas furnace or strip heat.</summary>
    /// <param name="watts">Heat put into the air, W.</param>
    /// <param name="riseKelvins">Supply minus return temperature, K.</param>
    /// <param name="densityRatio">Air density against standard air, from <see cref="AirFactors.DensityRatio"/>.</param>
    /// <returns>m³/s at that density.</returns>
    public static double FromHeat(double watts, double riseKelvins, double densityRatio) =>
        watts / BtuPerHour / (AirFactors.Sensible(densityRatio) * riseKelvins * 1.8) * CubicFootPerMinute;

    /// <summary>Airflow from strip heat of unity power factor.</summary>
    /// <param name="volts">Voltage at the heater, V.</param>
    /// <param name="amperes">Current of the heater, A; on one phase.</param>
    /// <param name="riseKelvins">Supply minus return temperature, K.</param>
    /// <param name="densityRatio">Air density against standard air, from <see cref="AirFactors.DensityRatio"/>.</param>
    /// <returns>m³/s at that density.</returns>
    public static double FromElectricHeat(double volts, double amperes, double riseKelvins, double densityRatio) =>
        FromHeat(volts * amperes, riseKelvins, densityRatio);
}
