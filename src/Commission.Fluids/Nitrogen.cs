using Commission.Fluids.Mixtures;

namespace Commission.Fluids;

/// <summary>
/// Nitrogen gas for pressure tests: R. Span, E. W. Lemmon, R. T. Jacobsen, W. Wagner and A. Yokozeki, J. Phys. Chem. Ref. Data 29 (2000)
/// 1361, 0.02 % in density in the range of a pressure test.
/// </summary>
public static class Nitrogen
{
    private static readonly Lazy<MixtureModel> Model = new(static () => MixtureModel.Load(["R-728"], [1]));

    private static readonly Spare<MixturePhase> Phases = new(static () =>
    {
        var phase = new MixturePhase(Model.Value);
        phase.SetComposition(Model.Value.Composition);
        return phase;
    });

    /// <summary>kg/mol.</summary>
    public const double MolarMass = 0.02801348;

    /// <summary>Density of the gas, kg/m³.</summary>
    /// <param name="kelvin">126.192 K (critical) &lt; T ≤ 2000 K.</param>
    /// <param name="pascals">0 &lt; p ≤ 2200 MPa absolute.</param>
    public static FluidResult<double> Density(double kelvin, double pascals)
    {
        if (Outside(kelvin) is string reason)
            return FluidResult<double>.None(reason);
        if (!(pascals > 0) || pascals > 2.2e9)
            return FluidResult<double>.None($"Nitrogen: {FluidText.Kilopascals(pascals)} is outside the equation, above 0 to 2200 MPa.");
        var phase = Phases.Rent();
        phase.SetTemperature(kelvin);
        var rho = phase.SolveSupercritical(pascals);
        Phases.Return(phase);
        return double.IsNaN(rho)
            ? FluidResult<double>.None($"Nitrogen: no density was found at {FluidText.Celsius(kelvin)} and {FluidText.Kilopascals(pascals)}.")
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
        var phase = Phases.Rent();
        phase.SetTemperature(kelvin);
        phase.EvaluateVolume(kilogramsPerCubicMeter / MolarMass);
        var pressure = phase.Pressure;
        Phases.Return(phase);
        return FluidResult<double>.Of(pressure);
    }

    private static string? Outside(double kelvin) =>
        kelvin is > 126.192 and <= 2000
            ? null
            : $"Nitrogen gas is computed above its critical temperature, {FluidText.Celsius(126.192)}, to 2000 K; {FluidText.Celsius(kelvin)} is outside.";
}
