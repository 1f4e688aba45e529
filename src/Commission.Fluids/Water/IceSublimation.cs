namespace Commission.Fluids.Water;

/// <summary>
/// Vapour pressure of ice from 50 K to the triple point: IAPWS R14-08(2011), eq. 6 (W. Wagner, T. Riethmann, R. Feistel and
/// A. H. Harvey, J. Phys. Chem. Ref. Data 40 (2011) 043103).
/// </summary>
public static class IceSublimation
{
    /// <summary>50 K.</summary>
    public const double LowestTemperature = 50;

    private const double TriplePressure = 611.657;

    /// <summary>Vapour pressure over ice, Pa absolute.</summary>
    /// <param name="kelvin">50 K ≤ T ≤ 273.16 K.</param>
    public static FluidResult<double> Pressure(double kelvin) =>
        kelvin is >= LowestTemperature and <= WaterSaturation.TripleTemperature
            ? FluidResult<double>.Of(Equation(kelvin, out _))
            : FluidResult<double>.None($"Ice is computed from {Refrigerant.Celsius(LowestTemperature)} to {Refrigerant.Celsius(WaterSaturation.TripleTemperature)}; {Refrigerant.Celsius(kelvin)} is outside.");

    /// <summary>Temperature at which ice has a vapour pressure, K.</summary>
    /// <param name="pascals">Pa absolute, at most 611.657 Pa, at least the vapour pressure at 50 K.</param>
    public static FluidResult<double> Temperature(double pascals)
    {
        if (!(pascals <= TriplePressure) || pascals < Equation(LowestTemperature, out _))
            return FluidResult<double>.None($"Ice has no vapour pressure of {Refrigerant.Kilopascals(pascals)}: at most 611.657 Pa, at the triple point.");
        double t = 1 / (1 / WaterSaturation.TripleTemperature - Math.Log(pascals / TriplePressure) / 6140);
        for (int i = 0; i < 50; i++)
        {
            double ln = Math.Log(Equation(t, out double slope) / pascals);
            // ln p is nearly straight in 1/T.
            double next = 1 / (1 / t + ln / (slope * t * t));
            if (Math.Abs(next - t) < 1e-13 * t)
                return FluidResult<double>.Of(next);
            t = next;
        }
        return FluidResult<double>.Of(t);
    }

    private static double Equation(double kelvin, out double slope)
    {
        const double tt = WaterSaturation.TripleTemperature;
        double theta = kelvin / tt;
        double s1 = -21.2144006 * Math.Pow(theta, 0.00333333333);
        double s2 = 27.3203819 * Math.Pow(theta, 1.20666667);
        double s3 = -6.10598130 * Math.Pow(theta, 1.70333333);
        double sum = s1 + s2 + s3;
        // d ln p/dT = (1/Tt) d(sum/θ)/dθ.
        slope = (s1 * (0.00333333333 - 1) + s2 * (1.20666667 - 1) + s3 * (1.70333333 - 1)) / (theta * theta * tt);
        return TriplePressure * Math.Exp(sum / theta);
    }
}
