using System.Runtime.InteropServices;
using Commission.Fluids.Mixtures;
using Commission.Fluids.Saturation;
using Commission.Messages;

namespace Commission.Fluids;

/// <content>Single-phase states, and states at pressure and enthalpy or entropy.</content>
public sealed partial class Refrigerant
{
    /// <summary>
    /// The state at a temperature and pressure on a branch. Metastable states (vapour above its dew pressure, liquid below its bubble
    /// pressure) are answered while the branch exists; above the critical temperature the branch does not matter.
    /// </summary>
    /// <param name="kelvin">K.</param>
    /// <param name="pascals">Pa absolute.</param>
    /// <param name="branch"><see cref="Phase.Liquid"/> or <see cref="Phase.Vapor"/>.</param>
    public FluidResult<FluidState> At(double kelvin, double pascals, Phase branch)
    {
        if (OutsideRange(kelvin, pascals) is { } reason)
            return FluidResult<FluidState>.None(reason);
        if (CriticalPoint is { Ok: true } c && kelvin > c.Value.Temperature)
            branch = Phase.Supercritical;
        else if (branch is not (Phase.Liquid or Phase.Vapor))
            return FluidResult<FluidState>.None(FluidsMessages.SayWhich(new(Info.Designation), FluidText.Celsius(kelvin)));
        var solver = _solvers.Rent();
        try
        {
            return solver.SetSingle(kelvin, pascals, BranchOf(branch))
                ? FluidResult<FluidState>.Of(State(solver.Single, branch))
                : FluidResult<FluidState>.None(FluidsMessages.NoPhase(branch == Phase.Liquid ? FluidsMessages.NoPhasePhase.Liquid : FluidsMessages.NoPhasePhase.Vapor, new(Info.Designation), FluidText.Celsius(kelvin), FluidText.Kilopascals(pascals)));
        }
        finally
        {
            _solvers.Return(solver);
        }
    }

    /// <summary>The state at a pressure and an enthalpy (after a throttle, or of a heat balance).</summary>
    /// <param name="pascals">Pa absolute.</param>
    /// <param name="joulesPerKilogram">J/kg on the reference state of <see cref="ReferenceState"/>.</param>
    public FluidResult<FluidState> AtPressureEnthalpy(double pascals, double joulesPerKilogram) => AtPressureAnd(pascals, joulesPerKilogram, entropy: false);

    /// <summary>The state at a pressure and an entropy (the end of an ideal compression).</summary>
    /// <param name="pascals">Pa absolute.</param>
    /// <param name="joulesPerKilogramKelvin">J/(kg K) on the reference state of <see cref="ReferenceState"/>.</param>
    public FluidResult<FluidState> AtPressureEntropy(double pascals, double joulesPerKilogramKelvin) => AtPressureAnd(pascals, joulesPerKilogramKelvin, entropy: true);

    private FluidResult<FluidState> AtPressureAnd(double pascals, double value, bool entropy)
    {
        var what = Sought(entropy);
        if (!double.IsFinite(value))
            return FluidResult<FluidState>.None(FluidsMessages.GoalNoNumber(new(Info.Designation), what));
        if (OutsideRange(LowestTemperature, pascals) is { } reason)
            return FluidResult<FluidState>.None(reason);
        var goal = new Goal(pascals, (value - (entropy ? Offset.Entropy : Offset.Enthalpy)) * MolarMass, entropy);
        FluidResult<SaturationState> bubble = BubbleAtPressure(pascals), dew = IsBlend ? DewAtPressure(pascals) : bubble;
        var critical = CriticalPoint;
        var solver = _solvers.Rent();
        try
        {
            double low = LowestTemperature, high = HighestTemperature;
            if (!bubble.Ok || !dew.Ok)
            {
                if (!critical.Ok || pascals < critical.Value.Pressure)
                    return FluidResult<FluidState>.None(bubble.Reason ?? dew.Reason!);
                if (!solver.SolveTemperature(goal, Branch.Supercritical, critical.Value.Temperature * 1.05, low, high))
                    return FluidResult<FluidState>.None(FluidsMessages.NoState(new(Info.Designation), what, FluidText.Kilopascals(pascals), FluidText.Celsius(low), FluidText.Celsius(high)));
                return FluidResult<FluidState>.Of(State(solver.Single, solver.Single.Temperature > critical.Value.Temperature ? Phase.Supercritical : Phase.Liquid));
            }
            SaturationState b = bubble.Value, d = dew.Value;
            double atBubble = entropy ? b.LiquidEntropy : b.LiquidEnthalpy, atDew = entropy ? d.VaporEntropy : d.VaporEnthalpy;
            if (value <= atBubble)
                return On(Phase.Liquid, solver, goal, b.Temperature, low, b.Temperature);
            if (value >= atDew)
                return On(Phase.Vapor, solver, goal, d.Temperature, d.Temperature, high);
            if (!IsBlend)
            {
                var quality = (value - atBubble) / (atDew - atBubble);
                return FluidResult<FluidState>.Of(Mixed(b.Temperature, pascals, quality, new End(1 / b.LiquidDensity, b.LiquidEnthalpy, b.LiquidEntropy), new End(1 / b.VaporDensity, b.VaporEnthalpy, b.VaporEntropy)));
            }
            return TwoPhase(solver, pascals, value, entropy, atBubble, atDew);
        }
        finally
        {
            _solvers.Return(solver);
        }
    }

    private FluidResult<FluidState> On(Phase phase, FluidSolver solver, Goal goal, double guess, double low, double high) =>
        solver.SolveTemperature(goal, BranchOf(phase), guess, low, high)
            ? FluidResult<FluidState>.Of(State(solver.Single, phase))
            : FluidResult<FluidState>.None(FluidsMessages.NoPhaseWith(
                phase == Phase.Liquid ? FluidsMessages.NoPhaseWithPhase.Liquid : FluidsMessages.NoPhaseWithPhase.Vapor, new(Info.Designation), Sought(goal.IsEntropy), FluidText.Kilopascals(goal.Pressure), FluidText.Celsius(low), FluidText.Celsius(high)));

    private static Message Sought(bool entropy) => FluidsMessages.Goal(entropy ? FluidsMessages.GoalGoal.Entropy : FluidsMessages.GoalGoal.Enthalpy);

    private FluidResult<FluidState> TwoPhase(FluidSolver solver, double pascals, double value, bool entropy, double atBubble, double atDew)
    {
        if (!solver.SaturationAtPressure(SaturationCurve.Bubble, pascals))
            return FluidResult<FluidState>.None(FluidsMessages.NoCurve(new(Info.Designation), Name(SaturationCurve.Bubble), FluidText.Kilopascals(pascals)));
        var bubble = solver.Phases();
        if (!solver.SaturationAtPressure(SaturationCurve.Dew, pascals))
            return FluidResult<FluidState>.None(FluidsMessages.NoCurve(new(Info.Designation), Name(SaturationCurve.Dew), FluidText.Kilopascals(pascals)));
        BlendFlash flash = new(_model);
        flash.Between(bubble, solver.Phases());
        double low = 0, high = 1, errorLow = value - atBubble, errorHigh = value - atDew;
        var fraction = (value - atBubble) / (atDew - atBubble);
        var side = 0;
        var state = default(FluidState);
        // Regula falsi with halved end values (Illinois) in the share of vapour, in which enthalpy and entropy are nearly straight.
        for (var iteration = 0; iteration < 100; iteration++)
        {
            if (!flash.Solve(pascals, fraction))
                return FluidResult<FluidState>.None(FluidsMessages.NoConvergence(new(Info.Designation), FluidText.Celsius(bubble.Temperature), FluidText.Celsius(solver.Temperature), FluidText.Kilopascals(pascals)));
            state = Mixed(flash, pascals);
            var error = value - (entropy ? state.Entropy : state.Enthalpy);
            if (Math.Abs(error) < 1e-11 * (1e5 + Math.Abs(value)) || high - low < 1e-15)
                break;
            if (error > 0)
            {
                if (side > 0)
                    errorHigh *= 0.5;
                (low, errorLow, side) = (fraction, error, 1);
            }
            else
            {
                if (side < 0)
                    errorLow *= 0.5;
                (high, errorHigh, side) = (fraction, error, -1);
            }
            var next = (low * errorHigh - high * errorLow) / (errorHigh - errorLow);
            fraction = next > low && next < high ? next : 0.5 * (low + high);
        }
        return FluidResult<FluidState>.Of(state);
    }

    private FluidState Mixed(BlendFlash flash, double pascals)
    {
        double liquidMass = Mass(flash.Liquid), vaporMass = Mass(flash.Vapor);
        var quality = flash.VaporFraction * vaporMass / (flash.VaporFraction * vaporMass + (1 - flash.VaporFraction) * liquidMass);
        CaloricProperties l = CaloricProperties.Of(flash.Liquid), v = CaloricProperties.Of(flash.Vapor);
        return Mixed(
            flash.Liquid.Temperature,
            pascals,
            quality,
            new End(1 / (flash.Liquid.Density * liquidMass), l.Enthalpy / liquidMass + Offset.Enthalpy, l.Entropy / liquidMass + Offset.Entropy),
            new End(1 / (flash.Vapor.Density * vaporMass), v.Enthalpy / vaporMass + Offset.Enthalpy, v.Entropy / vaporMass + Offset.Entropy));
    }

    private static FluidState Mixed(double temperature, double pressure, double quality, End liquid, End vapor) => new(
        Phase.TwoPhase,
        temperature,
        pressure,
        1 / (liquid.Volume + quality * (vapor.Volume - liquid.Volume)),
        liquid.Enthalpy + quality * (vapor.Enthalpy - liquid.Enthalpy),
        liquid.Entropy + quality * (vapor.Entropy - liquid.Entropy),
        quality,
        null,
        null,
        null);

    private static Branch BranchOf(Phase phase) => phase switch
    {
        Phase.Liquid => Branch.Liquid,
        Phase.Vapor => Branch.Vapor,
        _ => Branch.Supercritical,
    };

    private FluidState State(MixturePhase phase, Phase kind)
    {
        var c = CaloricProperties.Of(phase);
        var mass = MolarMass;
        return new FluidState(
            kind,
            phase.Temperature,
            phase.Pressure,
            phase.Density * mass,
            c.Enthalpy / mass + Offset.Enthalpy,
            c.Entropy / mass + Offset.Entropy,
            kind == Phase.Liquid ? 0 : 1,
            c.Cp / mass,
            c.Cv / mass,
            c.SpeedOfSound);
    }

    private double Mass(MixturePhase phase)
    {
        var sum = 0.0;
        for (var i = 0; i < _model.Components.Length; i++)
            sum += phase.X[i] * _model.Components[i].MolarMass;
        return sum;
    }

    private Message? OutsideRange(double kelvin, double pascals)
    {
        if (!double.IsFinite(kelvin) || kelvin < LowestTemperature || kelvin > HighestTemperature)
            return FluidsMessages.TemperatureRange(new(Info.Designation), FluidText.Celsius(kelvin), FluidText.Celsius(LowestTemperature), FluidText.Celsius(HighestTemperature));
        if (!(pascals > 0) || pascals > HighestPressure)
            return FluidsMessages.PressureRange(new(Info.Designation), FluidText.Kilopascals(pascals), FluidText.Kilopascals(HighestPressure));
        return null;
    }

    /// <summary>One end of a mixture of liquid and vapour: m³/kg, J/kg, J/(kg K).</summary>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct End(double Volume, double Enthalpy, double Entropy);
}
