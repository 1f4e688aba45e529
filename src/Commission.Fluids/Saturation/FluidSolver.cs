using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <summary>The work space of one calculation on one refrigerant: saturation and single phases. Not thread-safe; rented from <see cref="Refrigerant"/>.</summary>
internal sealed class FluidSolver
{
    private readonly MixtureModel _model;
    private readonly PureSaturation? _pure;
    private readonly BlendSaturation? _blend;
    private readonly MixturePhase _liquid;
    private readonly MixturePhase _vapor;

    public FluidSolver(MixtureModel model, SaturationStarts starts)
    {
        _model = model;
        if (model.Components.Length == 1)
        {
            _pure = new PureSaturation(model.Components[0]);
            _liquid = new MixturePhase(model);
            _vapor = new MixturePhase(model);
            _liquid.SetComposition(model.Composition);
            _vapor.SetComposition(model.Composition);
        }
        else
        {
            _blend = new BlendSaturation(model, starts);
            _liquid = _blend.Liquid;
            _vapor = _blend.Vapor;
        }
    }

    public double Temperature => _pure?.Temperature ?? _blend!.Temperature;

    public double Pressure => _pure?.Pressure ?? _blend!.Pressure;

    /// <summary>True when a search failed because the liquid of designated composition would split in two liquids.</summary>
    public bool LiquidSplits => _blend?.LiquidSplits ?? false;

    public double Slope => _pure?.Slope ?? _blend!.Slope;

    public bool SaturationAtTemperature(SaturationCurve curve, double temperature)
    {
        if (_pure is not null)
            return _pure.AtTemperature(temperature);
        return _blend!.AtTemperature(curve, temperature);
    }

    public bool SaturationAtPressure(SaturationCurve curve, double pressure)
    {
        if (_pure is not null)
            return _pure.AtPressure(pressure);
        return _blend!.AtPressure(curve, pressure);
    }

    /// <summary>The last saturation solution with enthalpy and entropy on the equations' own zero.</summary>
    public SaturationState State(SaturationCurve curve)
    {
        if (_pure is not null)
        {
            _liquid.SetTemperature(_pure.Temperature);
            _liquid.Evaluate(_pure.Liquid);
            _vapor.SetTemperature(_pure.Temperature);
            _vapor.Evaluate(_pure.Vapor);
        }
        CaloricProperties liquid = CaloricProperties.Of(_liquid), vapor = CaloricProperties.Of(_vapor);
        double liquidMass = MolarMass(_liquid), vaporMass = MolarMass(_vapor);
        return new SaturationState(
            Temperature,
            Pressure,
            _liquid.Density * liquidMass,
            _vapor.Density * vaporMass,
            liquid.Enthalpy / liquidMass,
            vapor.Enthalpy / vaporMass,
            liquid.Entropy / liquidMass,
            vapor.Entropy / vaporMass,
            Slope);
    }

    /// <summary>Both phases of the last saturation solution.</summary>
    public PhasePair Phases() => new(Temperature, _liquid.X.ToArray(), _vapor.X.ToArray(), _liquid.Density, _vapor.Density);

    private double MolarMass(MixturePhase phase)
    {
        var sum = 0.0;
        for (var i = 0; i < _model.Components.Length; i++)
            sum += phase.X[i] * _model.Components[i].MolarMass;
        return sum;
    }

    private MixturePhase? _single;

    /// <summary>The phase of designated composition used for single-phase states.</summary>
    public MixturePhase Single
    {
        get
        {
            if (_single is null)
            {
                _single = new MixturePhase(_model);
                _single.SetComposition(_model.Composition);
            }
            return _single;
        }
    }

    /// <summary>Evaluates the branch at T, p; false when it has no root there.</summary>
    public bool SetSingle(double temperature, double pressure, Branch branch)
    {
        var phase = Single;
        phase.SetTemperature(temperature);
        var rho = branch switch
        {
            Branch.Liquid => phase.SolveLiquid(pressure, LiquidGuess(temperature)),
            Branch.Vapor => phase.SolveVapor(pressure),
            _ => phase.SolveSupercritical(pressure),
        };
        if (double.IsNaN(rho) || !(rho > 0))
            return false;
        phase.Evaluate(rho);
        return true;
    }

    /// <summary>
    /// Finds T on a branch at a pressure where enthalpy or entropy (molar, the equations' own zero) has a value, from a guess and kept
    /// between two temperatures; the phase is left evaluated.
    /// </summary>
    public bool SolveTemperature(Goal goal, Branch branch, double guess, double low, double high)
    {
        var t = Math.Clamp(guess, low, high);
        for (var iteration = 0; iteration < 100; iteration++)
        {
            if (!SetSingle(t, goal.Pressure, branch))
            {
                // The branch ends between here and the last good temperature: come back towards the guess.
                var back = 0.5 * (t + Math.Clamp(guess, low, high));
                if (Math.Abs(back - t) < 1e-9 * t)
                    return false;
                t = back;
                continue;
            }
            var c = CaloricProperties.Of(Single);
            var error = goal.Value - (goal.IsEntropy ? c.Entropy : c.Enthalpy);
            if (error > 0)
                low = Math.Max(low, t);
            else
                high = Math.Min(high, t);
            var step = error / (goal.IsEntropy ? c.Cp / t : c.Cp);
            if (Math.Abs(step) < 1e-12 * t)
                return true;
            var next = t + Math.Clamp(step, -0.1 * t, 0.1 * t);
            if (!(next >= low && next <= high))
                next = 0.5 * (low + high);
            if (high - low < 1e-11 * t)
                return Math.Abs(step) < 1e-6 * t;
            t = next;
        }
        return false;
    }

    private double LiquidGuess(double temperature)
    {
        var volume = 0.0;
        for (var i = 0; i < _model.Components.Length; i++)
        {
            var eos = _model.Components[i];
            volume += _model.Composition[i] / eos.LiquidDensity.At(Math.Clamp(temperature, eos.LowestTemperature, 0.95 * eos.CriticalTemperature));
        }
        return 1.01 / volume;
    }
}

/// <summary>Which branch of the equation of state a density is looked for on.</summary>
internal enum Branch
{
    Liquid,
    Vapor,
    Supercritical,
}

/// <summary>A state to be found at a pressure (Pa): molar enthalpy (J/mol) or entropy (J/(mol K)) on the equations' own zero.</summary>
internal readonly record struct Goal(double Pressure, double Value, bool IsEntropy);
