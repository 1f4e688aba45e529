using Commission.Checks.Readings;
using Commission.Fluids;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;

namespace Commission.Checks.Charge;

/// <summary>
/// Saturation temperatures of the circuit's refrigerant at corrected pressures. The refrigerant's own equations are one root cause of
/// doubt, a share of the pressure that acts through dT/dp, common to every temperature taken from them.
/// </summary>
internal sealed class CircuitSaturation : IAnalysis<CircuitSaturation>
{
    private readonly CheckContext context;
    private readonly CircuitRefrigerant circuit;
    private readonly Lazy<RootCause> model;

    private CircuitSaturation(CheckContext context)
    {
        this.context = context;
        circuit = context.Get<CircuitRefrigerant>();
        model = new Lazy<RootCause>(MakeModel);
    }

    /// <summary>Whether dew and bubble differ: the refrigerant is a blend.</summary>
    public bool IsBlend => circuit.Info?.IsBlend ?? false;

    /// <summary>Designation of the refrigerant.</summary>
    public string Designation => circuit.Designation;

    /// <summary>Where the temperatures come from, as a trace cites it.</summary>
    public string Source => IsBlend
        ? $"multi-fluid Helmholtz model of {Designation}, papers under sources"
        : $"equation of state of {Designation}, paper under sources";

    /// <inheritdoc/>
    public static CircuitSaturation Create(CheckContext context) => new(context);

    /// <summary>The dew point at a pressure.</summary>
    /// <param name="pressure">A corrected pressure, absolute.</param>
    public SaturationTemperature Dew(CorrectedReading pressure) => At(pressure, static (fluid, p) => fluid.DewAtPressure(p));

    /// <summary>The bubble point at a pressure.</summary>
    /// <param name="pressure">A corrected pressure, absolute.</param>
    public SaturationTemperature Bubble(CorrectedReading pressure) => At(pressure, static (fluid, p) => fluid.BubbleAtPressure(p));

    private SaturationTemperature At(CorrectedReading pressure, Func<Refrigerant, double, FluidResult<SaturationState>> curve)
    {
        if (circuit.Fluid is not { } fluid)
            return SaturationTemperature.None($"{Designation} cannot be computed: {circuit.WhyNot}.");
        var p = pressure.Value.Value;
        var state = curve(fluid, p);
        if (!state.Ok)
            return SaturationTemperature.None(state.Reason);
        var (temperature, slope) = (state.Value.Temperature, state.Value.TemperatureSlope);
        var value = Uncertain.WithPartials(temperature, (pressure.Value, slope)) + context.Scope.Reading(0, p * slope * model.Value);
        var before = pressure.AfterZero == p ? state : curve(fluid, pressure.AfterZero);
        return SaturationTemperature.Of(value, before.Ok ? before.Value.Temperature : double.NaN, slope);
    }

    private RootCause MakeModel()
    {
        var (id, words) = circuit.Fluid is { EstimatedPairs.Length: > 0 } ? ("assumption.refrigerant.estimated", "a blend with estimated pairs")
            : IsBlend ? ("assumption.refrigerant.blend", "a blend")
            : ("assumption.refrigerant.pure", "a pure refrigerant");
        return context.Causes.Enter(
            new RootCause($"{Designation}: equations of state", $"saturation pressure of {words}, as a share of it; common practice", context.Assume(id)),
            DisplayKind.Percentage);
    }
}
