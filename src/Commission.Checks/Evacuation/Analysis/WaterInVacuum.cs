namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What a vacuum says about water at the coldest part: information, never proof that a system is dry.</summary>
/// <param name="Saturation">Vapour pressure of water or ice at the coldest part, Pa.</param>
/// <param name="HumidityLow">Lower end of p/p_sat, the equilibrium humidity were all of the gas water vapour.</param>
/// <param name="HumidityHigh">Upper end of p/p_sat; the two differ for a thermal gauge.</param>
/// <param name="HiddenBelow">Ice (or water) colder than this stays hidden: it gives off no more than the pressure read, K; the colder end of the band.</param>
/// <param name="HiddenBelowAtMost">The warmer end of that band, K.</param>
/// <remarks>
/// A heat-loss (thermal) gauge is set for air; in water vapour the true pressure is about 0.5 to 1 times what it shows (from memory).
/// A capacitance gauge shows it as it is.
/// </remarks>
public sealed record WaterInVacuum(
    double Saturation, double HumidityLow, double HumidityHigh, double HiddenBelow, double HiddenBelowAtMost)
{
    private const double ThermalLow = 0.5;

    /// <summary>Free liquid water in equilibrium is excluded: even the upper end is below saturation.</summary>
    public bool NoFreeWaterAtEquilibrium => HumidityHigh < 1;

    /// <summary>Reads a pressure.</summary>
    /// <param name="pressure">Pressure shown, Pa, above 0.</param>
    /// <param name="coldest">Temperature of the coldest part, K.</param>
    /// <param name="thermalGauge">True for a heat-loss gauge, false for a capacitance gauge.</param>
    /// <param name="saturationPressure">Vapour pressure of water or ice at a temperature (K → Pa); null outside its range.</param>
    /// <param name="saturationTemperature">Its inverse (Pa → K); null outside its range.</param>
    /// <returns>The reading; null when a function has no value there.</returns>
    public static WaterInVacuum? Read(
        double pressure,
        double coldest,
        bool thermalGauge,
        Func<double, double?> saturationPressure,
        Func<double, double?> saturationTemperature)
    {
        ArgumentNullException.ThrowIfNull(saturationPressure);
        ArgumentNullException.ThrowIfNull(saturationTemperature);
        var low = thermalGauge ? ThermalLow * pressure : pressure;
        if (saturationPressure(coldest) is not { } saturation
            || saturationTemperature(low) is not { } ice
            || saturationTemperature(pressure) is not { } iceAtMost)
            return null;
        return new WaterInVacuum(saturation, low / saturation, pressure / saturation, ice, iceAtMost);
    }
}
