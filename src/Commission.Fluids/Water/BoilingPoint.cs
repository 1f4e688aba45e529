namespace Commission.Fluids.Water;

/// <summary>The boiling point of water at the pressure of a site, for checking thermometers.</summary>
public static class BoilingPoint
{
    /// <summary>Boiling temperature of pure water, K, from IAPWS-95 (99.97 °C, not 100 °C, at 101.325 kPa on ITS-90).</summary>
    /// <param name="pascals">The site's atmospheric pressure, Pa absolute.</param>
    public static FluidResult<double> At(double pascals) => WaterSaturation.Temperature(pascals);
}
