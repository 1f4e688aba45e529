using Commission.Fluids.Mixtures;
using Commission.Fluids.Saturation;

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
        if (OutsideRange(kelvin, pascals) is string reason)
            return FluidResult<FluidState>.None(reason);
        if (CriticalPoint is { Ok: true } c && kelvin > c.Value.Temperature)
            branch = Phase.Supercritical;
        else if (branch is not (Phase.Liquid or Phase.Vapor))
            return FluidResult<FluidState>.None($"{Info.Designation}: at {Celsius(kelvin)} the state is liquid or vapour; say which.");
        FluidSolver solver = Rent();
        try
        {
            return solver.SetSingle(kelvin, pascals, branch)
                ? FluidResult<FluidState>.Of(State(solver.Single, branch))
                : FluidResult<FluidState>.None($"{Info.Designation}: at {Celsius(kelvin)} and {Kilopascals(pascals)} there is no {(branch == Phase.Liquid ? "liquid" : "vapour")}, not even a metastable one.");
        }
        finally
        {
            Return(solver);
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
        string what = entropy ? "entropy" : "enthalpy";
        if (!double.IsFinite(value))
            return FluidResult<FluidState>.None($"{Info.Designation}: the {what} is not a number.");
        if (OutsideRange(LowestTemperature, pascals) is string reason)
            return FluidResult<FluidState>.None(reason);
        double target = (value - (entropy ? Offset.Entropy : Offset.Enthalpy)) * MolarMass;
        FluidResult<SaturationState> bubble = BubbleAtPressure(pascals), dew = IsBlend ? DewAtPressure(pascals) : bubble;
        FluidResult<CriticalPoint> critical = CriticalPoint;
        FluidSolver solver = Rent();
        try
        {
            double low = LowestTemperature, high = HighestTemperature;
            if (!bubble.Ok || !dew.Ok)
            {
                if (!critical.Ok || pascals < critical.Value.Pressure)
                    return FluidResult<FluidState>.None(bubble.Reason ?? dew.Reason!);
                if (!solver.SolveTemperature(pascals, Phase.Supercritical, target, entropy, critical.Value.Temperature * 1.05, low, high))
                    return FluidResult<FluidState>.None($"{Info.Designation}: no state with this {what} at {Kilopascals(pascals)} between {Celsius(low)} and {Celsius(high)}.");
                return FluidResult<FluidState>.Of(State(solver.Single, solver.Single.Temperature > critical.Value.Temperature ? Phase.Supercritical : Phase.Liquid));
            }
            SaturationState b = bubble.Value, d = dew.Value;
            double atBubble = entropy ? b.LiquidEntropy : b.LiquidEnthalpy, atDew = entropy ? d.VaporEntropy : d.VaporEnthalpy;
            if (value <= atBubble)
                return Branch(solver, pascals, Phase.Liquid, target, entropy, b.Temperature, low, b.Temperature, what);
            if (value >= atDew)
                return Branch(solver, pascals, Phase.Vapor, target, entropy, d.Temperature, d.Temperature, high, what);
            if (!IsBlend)
            {
                double quality = (value - atBubble) / (atDew - atBubble);
                return FluidResult<FluidState>.Of(Mixed(b.Temperature, pascals, quality, 1 / b.LiquidDensity, 1 / b.VaporDensity, b.LiquidEnthalpy, b.VaporEnthalpy, b.LiquidEntropy, b.VaporEntropy));
            }
            return TwoPhase(solver, pascals, value, entropy, b.Temperature, d.Temperature);
        }
        finally
        {
            Return(solver);
        }
    }

    private FluidResult<FluidState> Branch(FluidSolver solver, double pascals, Phase branch, double target, bool entropy, double guess, double low, double high, string what) =>
        solver.SolveTemperature(pascals, branch, target, entropy, guess, low, high)
            ? FluidResult<FluidState>.Of(State(solver.Single, branch))
            : FluidResult<FluidState>.None($"{Info.Designation}: no {(branch == Phase.Liquid ? "liquid" : "vapour")} with this {what} at {Kilopascals(pascals)} between {Celsius(low)} and {Celsius(high)}.");

    private FluidResult<FluidState> TwoPhase(FluidSolver solver, double pascals, double value, bool entropy, double bubbleTemperature, double dewTemperature)
    {
        if (!solver.SaturationAtPressure(SaturationCurve.Bubble, pascals))
            return FluidResult<FluidState>.None($"{Info.Designation}: no bubble point at {Kilopascals(pascals)}.");
        BlendFlash flash = new(_model);
        (double[] x, double[] y, double rho) = solver.Phases();
        flash.StartFrom(x, y);
        double low = Math.Min(bubbleTemperature, dewTemperature), high = Math.Max(bubbleTemperature, dewTemperature);
        double errorLow = double.NaN, errorHigh = double.NaN;
        double t = 0.5 * (low + high);
        bool lastWasLow = false;
        FluidState state = default;
        // Regula falsi with halved end values (Illinois): the glide of a near-azeotrope is a few hundredths of a kelvin.
        for (int iteration = 0; iteration < 100; iteration++)
        {
            if (!flash.Solve(t, pascals, rho))
                return FluidResult<FluidState>.None($"{Info.Designation}: the split into liquid and vapour at {Celsius(t)} and {Kilopascals(pascals)} did not converge.");
            rho = flash.Liquid.Density;
            state = Mixed(flash, pascals);
            double error = value - (entropy ? state.Entropy : state.Enthalpy);
            if (Math.Abs(error) < 1e-11 * (1e5 + Math.Abs(value)) || high - low < 1e-14 * t)
                break;
            if (error > 0)
            {
                if (lastWasLow)
                    errorHigh *= 0.5;
                (low, errorLow, lastWasLow) = (t, error, true);
            }
            else
            {
                if (!lastWasLow)
                    errorLow *= 0.5;
                (high, errorHigh, lastWasLow) = (t, error, false);
            }
            double next = (low * errorHigh - high * errorLow) / (errorHigh - errorLow);
            t = next > low && next < high ? next : 0.5 * (low + high);
        }
        return FluidResult<FluidState>.Of(state);
    }

    private FluidState Mixed(BlendFlash flash, double pascals)
    {
        double liquidMass = Mass(flash.Liquid), vaporMass = Mass(flash.Vapor);
        double quality = flash.VaporFraction * vaporMass / (flash.VaporFraction * vaporMass + (1 - flash.VaporFraction) * liquidMass);
        CaloricProperties l = CaloricProperties.Of(flash.Liquid), v = CaloricProperties.Of(flash.Vapor);
        return Mixed(
            flash.Liquid.Temperature,
            pascals,
            quality,
            1 / (flash.Liquid.Density * liquidMass),
            1 / (flash.Vapor.Density * vaporMass),
            l.Enthalpy / liquidMass + Offset.Enthalpy,
            v.Enthalpy / vaporMass + Offset.Enthalpy,
            l.Entropy / liquidMass + Offset.Entropy,
            v.Entropy / vaporMass + Offset.Entropy);
    }

    private static FluidState Mixed(double temperature, double pressure, double quality, double liquidVolume, double vaporVolume, double hl, double hv, double sl, double sv) => new(
        Phase.TwoPhase,
        temperature,
        pressure,
        1 / (liquidVolume + quality * (vaporVolume - liquidVolume)),
        hl + quality * (hv - hl),
        sl + quality * (sv - sl),
        quality,
        null,
        null,
        null);

    private FluidState State(MixturePhase phase, Phase kind)
    {
        CaloricProperties c = CaloricProperties.Of(phase);
        double mass = MolarMass;
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
        double sum = 0;
        for (int i = 0; i < _model.Components.Length; i++)
            sum += phase.X[i] * _model.Components[i].MolarMass;
        return sum;
    }

    private string? OutsideRange(double kelvin, double pascals)
    {
        if (!double.IsFinite(kelvin) || kelvin < LowestTemperature || kelvin > HighestTemperature)
            return $"{Info.Designation}: {Celsius(kelvin)} is outside the range of the equations, {Celsius(LowestTemperature)} to {Celsius(HighestTemperature)}.";
        if (!(pascals > 0) || pascals > HighestPressure)
            return $"{Info.Designation}: {Kilopascals(pascals)} is outside the range of the equations, above 0 to {Kilopascals(HighestPressure)}.";
        return null;
    }
}
