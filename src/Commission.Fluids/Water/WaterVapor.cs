namespace Commission.Fluids.Water;

/// <summary>
/// Vapour pressure of water in whatever form is stable: ice below the triple point (<see cref="IceSublimation"/>), liquid above
/// (<see cref="WaterSaturation"/>). At the triple point the two formulations differ by 3e-6 (611.657 and 611.655 Pa).
/// </summary>
public static class WaterVapor
{
    /// <summary>Vapour pressure over ice or liquid, Pa absolute.</summary>
    /// <param name="kelvin">50 K ≤ T &lt; 647.096 K.</param>
    public static FluidResult<double> SaturationPressure(double kelvin) =>
        kelvin < WaterSaturation.TripleTemperature ? IceSublimation.Pressure(kelvin) : WaterSaturation.Pressure(kelvin);

    /// <summary>
    /// Temperature at which ice or liquid water has a vapour pressure, K: above it no water can stay in a space held at that pressure.
    /// </summary>
    /// <param name="pascals">Pa absolute.</param>
    public static FluidResult<double> SaturationTemperature(double pascals)
    {
        if (pascals is >= 611.655 and <= 611.657)
            return FluidResult<double>.Of(WaterSaturation.TripleTemperature);
        return pascals < 611.655 ? IceSublimation.Temperature(pascals) : WaterSaturation.Temperature(pascals);
    }

    /// <summary>True when water at this vapour pressure is ice.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public static bool IsIce(double pascals) => pascals < 611.655;
}
