using Commission.Fluids.Mixtures;

namespace Commission.Fluids;

/// <summary>
/// Nitrogen gas for pressure tests: R. Span, E. W. Lemmon, R. T. Jacobsen, W. Wagner and A. Yokozeki, J. Phys. Chem. Ref. Data 29 (2000)
/// 1361, 0.02 % in density in the range of a pressure test.
/// </summary>
public static class Nitrogen
{
    private static readonly Lazy<MixtureModel> Model = new(static () => MixtureModel.Load(["R-728"], [1]));

    [ThreadStatic]
    private static MixturePhase? s_phase;

    /// <summary>kg/mol.</summary>
    public const double MolarMass = 0.02801348;

    /// <summary>J/(mol K), the equation's own constant.</summary>
    public const double GasConstant = 8.31451;

    private static MixturePhase Phase
    {
        get
        {
            if (s_phase is null)
            {
                s_phase = new MixturePhase(Model.Value);
                s_phase.SetComposition(Model.Value.Composition);
            }
            return s_phase;
        }
    }

    /// <summary>Density of the gas, kg/m³.</summary>
    /// <param name="kelvin">126.192 K (critical) &lt; T ≤ 2000 K.</param>
    /// <param name="pascals">0 &lt; p ≤ 2200 MPa absolute.</param>
    public static FluidResult<double> Density(double kelvin, double pascals)
    {
        if (Outside(kelvin) is string reason)
            return FluidResult<double>.None(reason);
        if (!(pascals > 0) || pascals > 2.2e9)
            return FluidResult<double>.None($"Nitrogen: {Refrigerant.Kilopascals(pascals)} is outside the equation, above 0 to 2200 MPa.");
        MixturePhase phase = Phase;
        phase.SetTemperature(kelvin);
        double rho = phase.SolveSupercritical(pascals);
        return double.IsNaN(rho)
            ? FluidResult<double>.None($"Nitrogen: no density was found at {Refrigerant.Celsius(kelvin)} and {Refrigerant.Kilopascals(pascals)}.")
            : FluidResult<double>.Of(rho * MolarMass);
    }

    /// <summary>Pressure of the gas at a density, Pa absolute.</summary>
    /// <param name="kelvin">126.192 K (critical) &lt; T ≤ 2000 K.</param>
    /// <param name="kilogramsPerCubicMeter">kg/m³, not negative.</param>
    public static FluidResult<double> Pressure(double kelvin, double kilogramsPerCubicMeter)
    {
        if (Outside(kelvin) is string reason)
            return FluidResult<double>.None(reason);
        if (!(kilogramsPerCubicMeter >= 0) || kilogramsPerCubicMeter > 1000)
            return FluidResult<double>.None("Nitrogen: a density of the gas is between 0 and 1000 kg/m³.");
        MixturePhase phase = Phase;
        phase.SetTemperature(kelvin);
        phase.EvaluateVolume(kilogramsPerCubicMeter / MolarMass);
        return FluidResult<double>.Of(phase.Pressure);
    }

    /// <summary>
    /// The pressure a tight vessel of constant volume shows after its gas went from one temperature to another, Pa absolute (real gas).
    /// </summary>
    /// <param name="pascals">Pressure at the start, Pa absolute.</param>
    /// <param name="kelvin">Temperature at the start, K.</param>
    /// <param name="laterKelvin">Temperature later, K.</param>
    public static FluidResult<double> PressureAtConstantVolume(double pascals, double kelvin, double laterKelvin)
    {
        FluidResult<double> density = Density(kelvin, pascals);
        return density.Ok ? Pressure(laterKelvin, density.Value) : density;
    }

    /// <summary>The same by the ideal-gas law, p1 T2/T1, Pa absolute; it understates the effect of temperature by 3 to 10 %.</summary>
    /// <param name="pascals">Pressure at the start, Pa absolute.</param>
    /// <param name="kelvin">Temperature at the start, K.</param>
    /// <param name="laterKelvin">Temperature later, K.</param>
    public static double IdealPressureAtConstantVolume(double pascals, double kelvin, double laterKelvin) => pascals * laterKelvin / kelvin;

    /// <summary>Compressibility factor Z = p/(ρRT).</summary>
    /// <param name="kelvin">K.</param>
    /// <param name="pascals">Pa absolute.</param>
    public static FluidResult<double> Compressibility(double kelvin, double pascals)
    {
        FluidResult<double> density = Density(kelvin, pascals);
        return density.Ok ? FluidResult<double>.Of(pascals * MolarMass / (density.Value * GasConstant * kelvin)) : density;
    }

    /// <summary>∂p/∂T at constant density, Pa/K: what a tight system's gauge moves per kelvin.</summary>
    /// <param name="kelvin">K.</param>
    /// <param name="pascals">Pa absolute.</param>
    public static FluidResult<double> PressureByTemperature(double kelvin, double pascals)
    {
        FluidResult<double> density = Density(kelvin, pascals);
        if (!density.Ok)
            return density;
        MixturePhase phase = Phase;
        phase.Evaluate(density.Value / MolarMass);
        return FluidResult<double>.Of(phase.Density * GasConstant * (1 + phase.Total.D - phase.Total.DT));
    }

    /// <summary>Second virial coefficient, m³/mol: the limit of (Z − 1)/ρ at zero density.</summary>
    /// <param name="kelvin">K.</param>
    public static FluidResult<double> SecondVirialCoefficient(double kelvin)
    {
        if (Outside(kelvin) is string reason)
            return FluidResult<double>.None(reason);
        MixturePhase phase = Phase;
        phase.SetTemperature(kelvin);
        const double dilute = 1e-4;
        phase.Evaluate(dilute);
        return FluidResult<double>.Of(phase.Total.D / dilute);
    }

    private static string? Outside(double kelvin) =>
        kelvin is > 126.192 and <= 2000
            ? null
            : $"Nitrogen gas is computed above its critical temperature, {Refrigerant.Celsius(126.192)}, to 2000 K; {Refrigerant.Celsius(kelvin)} is outside.";
}
