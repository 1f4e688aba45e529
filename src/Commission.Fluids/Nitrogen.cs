using Commission.Fluids.Mixtures;
using Commission.Messages;

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
        if (Outside(kelvin) is { } reason)
            return FluidResult<double>.None(reason);
        if (!(pascals > 0) || pascals > 2.2e9)
            return FluidResult<double>.None(FluidsMessages.NitrogenPressure(FluidText.Kilopascals(pascals)));
        var phase = Phases.Rent();
        phase.SetTemperature(kelvin);
        var rho = phase.SolveSupercritical(pascals);
        Phases.Return(phase);
        return double.IsNaN(rho)
            ? FluidResult<double>.None(FluidsMessages.NitrogenDensity(FluidText.Celsius(kelvin), FluidText.Kilopascals(pascals)))
            : FluidResult<double>.Of(rho * MolarMass);
    }

    /// <summary>Pressure of the gas at a density, Pa absolute.</summary>
    /// <param name="kelvin">126.192 K (critical) &lt; T ≤ 2000 K.</param>
    /// <param name="kilogramsPerCubicMeter">kg/m³, not negative.</param>
    public static FluidResult<double> Pressure(double kelvin, double kilogramsPerCubicMeter)
    {
        if (Outside(kelvin) is { } reason)
            return FluidResult<double>.None(reason);
        if (!(kilogramsPerCubicMeter >= 0) || kilogramsPerCubicMeter > 1000)
            return FluidResult<double>.None(FluidsMessages.NitrogenDensityRange);
        var phase = Phases.Rent();
        phase.SetTemperature(kelvin);
        phase.EvaluateVolume(kilogramsPerCubicMeter / MolarMass);
        var pressure = phase.Pressure;
        Phases.Return(phase);
        return FluidResult<double>.Of(pressure);
    }

    private static Message? Outside(double kelvin) =>
        kelvin is > 126.192 and <= 2000
            ? null
            : FluidsMessages.NitrogenTemperature(FluidText.Celsius(126.192), FluidText.Celsius(kelvin));
}
