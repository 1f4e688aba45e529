using Commission.Fluids.Data;
using Commission.Fluids.Helmholtz;
using Commission.Fluids.Saturation;
using Commission.Messages;

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
}

/// <summary>
/// Vapour pressure of liquid water from the triple point (273.16 K) to the critical point (647.096 K), temperatures on ITS-90.
/// <see cref="Pressure"/> solves the equilibrium of the full IAPWS-95 formulation (W. Wagner and A. Pruß, J. Phys. Chem. Ref. Data 31
/// (2002) 387; IAPWS R6-95).
/// </summary>
public static class WaterSaturation
{
    /// <summary>273.16 K.</summary>
    public const double TripleTemperature = 273.16;

    /// <summary>647.096 K.</summary>
    public const double CriticalTemperature = 647.096;

    /// <summary>22.064 MPa.</summary>
    public const double CriticalPressure = 22.064e6;

    private static readonly Lazy<EquationOfState> Equation = new(() => FluidFile.Load("R-718"));

    private static readonly Spare<PureSaturation> Solvers = new(static () => new PureSaturation(Equation.Value));

    /// <summary>Vapour pressure over liquid water, Pa absolute, from IAPWS-95.</summary>
    /// <param name="kelvin">273.16 K ≤ T &lt; 647.096 K.</param>
    public static FluidResult<double> Pressure(double kelvin)
    {
        if (OutOfRange(kelvin) is { } reason)
            return FluidResult<double>.None(reason);
        var solver = Solvers.Rent();
        double? pressure = solver.AtTemperature(kelvin) ? solver.Pressure : null;
        Solvers.Return(solver);
        return pressure is double p
            ? FluidResult<double>.Of(p)
            : FluidResult<double>.None(FluidsMessages.WaterNearCritical(FluidText.Celsius(kelvin)));
    }

    /// <summary>Temperature at which liquid water boils at a pressure, K, from IAPWS-95.</summary>
    /// <param name="pascals">Pa absolute, from the triple point (611.655 Pa) to 22.064 MPa.</param>
    public static FluidResult<double> Temperature(double pascals)
    {
        if (!(pascals > 0) || pascals >= CriticalPressure)
            return FluidResult<double>.None(FluidsMessages.WaterDoesNotBoil(FluidText.Kilopascals(pascals), FluidText.Kilopascals(CriticalPressure)));
        var solver = Solvers.Rent();
        double? boiling = solver.AtPressure(pascals) ? solver.Temperature : null;
        Solvers.Return(solver);
        return boiling is double t && !(t < TripleTemperature - 1e-6)
            ? FluidResult<double>.Of(t)
            : FluidResult<double>.None(FluidsMessages.NoLiquidWater(FluidText.Kilopascals(pascals)));
    }

    // A microkelvin below the triple point is the rounding of 0.01 + 273.15.
    private static Message? OutOfRange(double kelvin) =>
        kelvin > TripleTemperature - 1e-6 && kelvin < CriticalTemperature
            ? null
            : FluidsMessages.WaterRange(FluidText.Celsius(TripleTemperature), FluidText.Celsius(CriticalTemperature), FluidText.Celsius(kelvin));
}

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
            : FluidResult<double>.None(FluidsMessages.IceRange(FluidText.Celsius(LowestTemperature), FluidText.Celsius(WaterSaturation.TripleTemperature), FluidText.Celsius(kelvin)));

    /// <summary>Temperature at which ice has a vapour pressure, K.</summary>
    /// <param name="pascals">Pa absolute, at most 611.657 Pa, at least the vapour pressure at 50 K.</param>
    public static FluidResult<double> Temperature(double pascals)
    {
        if (!(pascals <= TriplePressure) || pascals < Equation(LowestTemperature, out _))
            return FluidResult<double>.None(FluidsMessages.IcePressure(FluidText.Kilopascals(pascals)));
        var t = 1 / (1 / WaterSaturation.TripleTemperature - Math.Log(pascals / TriplePressure) / 6140);
        for (var i = 0; i < 50; i++)
        {
            var ln = Math.Log(Equation(t, out var slope) / pascals);
            // ln p is nearly straight in 1/T.
            var next = 1 / (1 / t + ln / (slope * t * t));
            if (Math.Abs(next - t) < 1e-13 * t)
                return FluidResult<double>.Of(next);
            t = next;
        }
        return FluidResult<double>.Of(t);
    }

    private static double Equation(double kelvin, out double slope)
    {
        const double tt = WaterSaturation.TripleTemperature;
        var theta = kelvin / tt;
        var s1 = -21.2144006 * Math.Pow(theta, 0.00333333333);
        var s2 = 27.3203819 * Math.Pow(theta, 1.20666667);
        var s3 = -6.10598130 * Math.Pow(theta, 1.70333333);
        var sum = s1 + s2 + s3;
        // d ln p/dT = (1/Tt) d(sum/θ)/dθ.
        slope = (s1 * (0.00333333333 - 1) + s2 * (1.20666667 - 1) + s3 * (1.70333333 - 1)) / (theta * theta * tt);
        return TriplePressure * Math.Exp(sum / theta);
    }
}
