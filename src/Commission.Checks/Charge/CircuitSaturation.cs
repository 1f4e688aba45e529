using System.Globalization;
using Commission.Checks.Readings;
using Commission.Fluids;
using Commission.Fluids.Saturation;
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
    private readonly Lazy<(RootCause? Bubble, RootCause? Dew)> listed;

    private CircuitSaturation(CheckContext context)
    {
        this.context = context;
        circuit = context.Get<CircuitRefrigerant>();
        model = new Lazy<RootCause>(MakeModel);
        listed = new Lazy<(RootCause? Bubble, RootCause? Dew)>(MakeListed);
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
    public SaturationTemperature Dew(CorrectedReading pressure) => At(pressure, static (fluid, p) => fluid.DewAtPressure(p), () => listed.Value.Dew);

    /// <summary>The bubble point at a pressure.</summary>
    /// <param name="pressure">A corrected pressure, absolute.</param>
    public SaturationTemperature Bubble(CorrectedReading pressure) => At(pressure, static (fluid, p) => fluid.BubbleAtPressure(p), () => listed.Value.Bubble);

    private SaturationTemperature At(CorrectedReading pressure, Func<Refrigerant, double, FluidResult<SaturationState>> curve, Func<RootCause?> beyond)
    {
        if (circuit.Fluid is not { } fluid)
            return SaturationTemperature.None($"{Designation} cannot be computed: {circuit.WhyNot}.");
        var p = pressure.Value.Value;
        var state = curve(fluid, p);
        if (!state.Ok)
            return SaturationTemperature.None(state.Reason);
        var (temperature, slope) = (state.Value.Temperature, state.Value.TemperatureSlope);
        var value = Uncertain.WithPartials(temperature, (pressure.Value, slope)) + context.Scope.Reading(0, p * slope * model.Value);
        if (beyond() is { } difference)
            value += context.Scope.Reading(0, p * slope * difference);
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

    // Where the listed normal boiling point lies further from the equations than the assumed share of the pressure allows, the rest
    // of the way is a doubt of its own for that curve.
    private (RootCause? Bubble, RootCause? Dew) MakeListed()
    {
        const double StandardAtmosphere = 101_325;
        if (circuit.Fluid is not { IsBlend: true } fluid || fluid.CompareWithListedBoilingRange() is not { Ok: true, Value: var difference })
            return (null, null);
        return (
            Beyond("bubble", difference.Bubble, fluid.BubbleAtPressure(StandardAtmosphere)),
            Beyond("dew", difference.Dew, fluid.DewAtPressure(StandardAtmosphere)));
    }

    private RootCause? Beyond(string curve, double kelvins, FluidResult<SaturationState> boiling)
    {
        if (!boiling.Ok)
            return null;
        var share = Math.Abs(kelvins) * boiling.Value.PressureSlope / boiling.Value.Pressure / Math.Sqrt(3);
        var rest = (share * share) - (model.Value.StandardUncertainty * model.Value.StandardUncertainty);
        return rest > 0
            ? context.Causes.Enter(
                new RootCause(
                    $"{Designation}: listed normal {curve} point",
                    string.Create(CultureInfo.InvariantCulture, $"ASHRAE 34 lists it {-kelvins:+0.00;−0.00} K from the equations, from memory; what goes beyond their own share"),
                    Math.Sqrt(rest),
                    distribution: Distribution.Rectangular),
                DisplayKind.Percentage)
            : null;
    }
}
