namespace Commission.Checks.Tables;

/// <summary>
/// The field factors of air: total heat 4.5·cfm·Δh, sensible 1.08·cfm·ΔT, latent 0.68·cfm·Δgrains, in Btu/h. They are made for standard
/// air, 0.075 lb/ft³, and shrink with its density. They do not close exactly: sensible plus latent is about 2 % short of total.
/// </summary>
internal static class AirFactors
{
    /// <summary>Where the factors come from.</summary>
    public const string Source = "standard air 0.075 lb/ft³: 4.5 = 60·0.075, 1.08 = 4.5·0.24, 0.68 = 4.5·1061/7000";

    private const double StandardPressure = 101325;
    private const double StandardTemperature = (70 + 459.67) / 1.8;

    /// <summary>Density of the air against standard air.</summary>
    /// <param name="pascals">Atmospheric pressure at the site, Pa.</param>
    /// <param name="kelvins">Temperature of the air that flows, K; null for standard air at 70 °F.</param>
    /// <returns>A ratio.</returns>
    public static double DensityRatio(double pascals, double? kelvins) =>
        pascals / StandardPressure * (StandardTemperature / (kelvins ?? StandardTemperature));

    /// <summary>Factor of total heat: Btu/h for each cfm and Btu/lb.</summary>
    /// <param name="densityRatio">From <see cref="DensityRatio"/>.</param>
    /// <returns>4.5 at sea level.</returns>
    public static double Total(double densityRatio) => 4.5 * densityRatio;

    /// <summary>Factor of sensible heat: Btu/h for each cfm and °F.</summary>
    /// <param name="densityRatio">From <see cref="DensityRatio"/>.</param>
    /// <returns>1.08 at sea level.</returns>
    public static double Sensible(double densityRatio) => 1.08 * densityRatio;

    /// <summary>Factor of latent heat: Btu/h for each cfm and grain of water per pound of dry air.</summary>
    /// <param name="densityRatio">From <see cref="DensityRatio"/>.</param>
    /// <returns>0.68 at sea level.</returns>
    public static double Latent(double densityRatio) => 0.68 * densityRatio;
}
