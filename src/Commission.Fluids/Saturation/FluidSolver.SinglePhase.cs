using Commission.Fluids.Helmholtz;
using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <content>States of one phase in the designated composition.</content>
internal sealed partial class FluidSolver
{
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
    public bool SetSingle(double temperature, double pressure, Phase branch)
    {
        MixturePhase phase = Single;
        phase.SetTemperature(temperature);
        double rho = branch switch
        {
            Phase.Liquid => phase.SolveLiquid(pressure, LiquidGuess(temperature)),
            Phase.Vapor => phase.SolveVapor(pressure),
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
    public bool SolveTemperature(double pressure, Phase branch, double target, bool entropy, double guess, double low, double high)
    {
        double t = Math.Clamp(guess, low, high);
        for (int iteration = 0; iteration < 100; iteration++)
        {
            if (!SetSingle(t, pressure, branch))
            {
                // The branch ends between here and the last good temperature: come back towards the guess.
                double back = 0.5 * (t + Math.Clamp(guess, low, high));
                if (Math.Abs(back - t) < 1e-9 * t)
                    return false;
                t = back;
                continue;
            }
            CaloricProperties c = CaloricProperties.Of(Single);
            double error = target - (entropy ? c.Entropy : c.Enthalpy);
            if (error > 0)
                low = Math.Max(low, t);
            else
                high = Math.Min(high, t);
            double step = error / (entropy ? c.Cp / t : c.Cp);
            if (Math.Abs(step) < 1e-12 * t)
                return true;
            double next = t + Math.Clamp(step, -0.1 * t, 0.1 * t);
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
        double volume = 0;
        for (int i = 0; i < _model.Components.Length; i++)
        {
            EquationOfState eos = _model.Components[i];
            volume += _model.Composition[i] / eos.LiquidDensity.At(Math.Clamp(temperature, eos.LowestTemperature, 0.95 * eos.CriticalTemperature));
        }
        return 1.01 / volume;
    }
}
