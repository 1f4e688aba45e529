using Commission.Fluids.Data;
using Commission.Fluids.Helmholtz;
using Commission.Fluids.Saturation;

namespace Commission.Fluids.Water;

/// <summary>
/// Vapour pressure of liquid water from the triple point (273.16 K) to the critical point (647.096 K), temperatures on ITS-90.
/// <see cref="Pressure"/> solves the equilibrium of the full IAPWS-95 formulation (W. Wagner and A. Pruß, J. Phys. Chem. Ref. Data 31
/// (2002) 387; IAPWS R6-95). <see cref="AuxiliaryPressure"/> is the explicit equation of IAPWS SR1-86 (W. Wagner and A. Pruß, J. Phys.
/// Chem. Ref. Data 22 (1993) 783), within 0.01 % of it, for places that need many values.
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

    [ThreadStatic]
    private static PureSaturation? s_solver;

    private static PureSaturation Solver => s_solver ??= new PureSaturation(Equation.Value);

    /// <summary>Vapour pressure over liquid water, Pa absolute, from IAPWS-95.</summary>
    /// <param name="kelvin">273.16 K ≤ T &lt; 647.096 K.</param>
    public static FluidResult<double> Pressure(double kelvin)
    {
        if (OutOfRange(kelvin) is string reason)
            return FluidResult<double>.None(reason);
        return Solver.AtTemperature(kelvin)
            ? FluidResult<double>.Of(Solver.Pressure)
            : FluidResult<double>.None($"Water at {Refrigerant.Celsius(kelvin)} is too near to its critical point.");
    }

    /// <summary>Temperature at which liquid water boils at a pressure, K, from IAPWS-95.</summary>
    /// <param name="pascals">Pa absolute, from the triple point (611.655 Pa) to 22.064 MPa.</param>
    public static FluidResult<double> Temperature(double pascals)
    {
        if (!(pascals > 0) || pascals >= CriticalPressure)
            return FluidResult<double>.None($"Water does not boil at {Refrigerant.Kilopascals(pascals)}: its critical pressure is {Refrigerant.Kilopascals(CriticalPressure)}.");
        if (!Solver.AtPressure(pascals) || Solver.Temperature < TripleTemperature - 1e-6)
            return FluidResult<double>.None($"There is no liquid water at {Refrigerant.Kilopascals(pascals)}: below the triple point, 611.655 Pa, there is only ice and vapour.");
        return FluidResult<double>.Of(Solver.Temperature);
    }

    /// <summary>Vapour pressure over liquid water, Pa absolute, from the explicit equation of IAPWS SR1-86.</summary>
    /// <param name="kelvin">273.16 K ≤ T &lt; 647.096 K.</param>
    public static FluidResult<double> AuxiliaryPressure(double kelvin)
    {
        if (OutOfRange(kelvin) is string reason)
            return FluidResult<double>.None(reason);
        double v = 1 - kelvin / CriticalTemperature;
        double v15 = v * Math.Sqrt(v), v3 = v * v * v, v35 = v3 * Math.Sqrt(v), v75 = v35 * v3 * v;
        double sum = -7.85951783 * v + 1.84408259 * v15 - 11.7866497 * v3 + 22.6807411 * v35 - 15.9618719 * v3 * v + 1.80122502 * v75;
        return FluidResult<double>.Of(CriticalPressure * Math.Exp(CriticalTemperature / kelvin * sum));
    }

    // A microkelvin below the triple point is the rounding of 0.01 + 273.15.
    private static string? OutOfRange(double kelvin) =>
        kelvin > TripleTemperature - 1e-6 && kelvin < CriticalTemperature
            ? null
            : $"Liquid water and its vapour stand together from {Refrigerant.Celsius(TripleTemperature)} to {Refrigerant.Celsius(CriticalTemperature)}; {Refrigerant.Celsius(kelvin)} is outside.";
}
