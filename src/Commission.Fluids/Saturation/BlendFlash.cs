using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <summary>
/// Splits a blend inside its two-phase region into liquid and vapour at T, p: Rachford and Rice's equation with equilibrium ratios by
/// successive substitution. Not thread-safe.
/// </summary>
internal sealed class BlendFlash(MixtureModel model)
{
    private readonly MixturePhase _liquid = new(model);
    private readonly MixturePhase _vapor = new(model);
    private readonly double[] _k = new double[model.Components.Length];
    private readonly double[] _x = new double[model.Components.Length];
    private readonly double[] _y = new double[model.Components.Length];

    /// <summary>Moles of vapour per mole.</summary>
    public double VaporFraction { get; private set; }

    public MixturePhase Liquid => _liquid;

    public MixturePhase Vapor => _vapor;

    /// <summary>Sets the equilibrium ratios y/x of a neighbouring solution as the start.</summary>
    public void StartFrom(ReadOnlySpan<double> liquid, ReadOnlySpan<double> vapor)
    {
        for (var i = 0; i < _k.Length; i++)
            _k[i] = vapor[i] / liquid[i];
    }

    public bool Solve(double temperature, double pressure, double liquidGuess)
    {
        var rho = liquidGuess;
        for (var iteration = 0; iteration < 500; iteration++)
        {
            VaporFraction = RachfordRice();
            ReadOnlySpan<double> z = model.Composition;
            double sx = 0, sy = 0;
            for (var i = 0; i < _k.Length; i++)
            {
                _x[i] = z[i] / (1 + VaporFraction * (_k[i] - 1));
                _y[i] = _k[i] * _x[i];
                sx += _x[i];
                sy += _y[i];
            }
            for (var i = 0; i < _k.Length; i++)
            {
                _x[i] /= sx;
                _y[i] /= sy;
            }
            _liquid.SetComposition(_x);
            _vapor.SetComposition(_y);
            _liquid.SetTemperature(temperature);
            _vapor.SetTemperature(temperature);
            rho = _liquid.SolveLiquid(pressure, rho);
            var rhoV = _vapor.SolveVapor(pressure);
            if (double.IsNaN(rho) || double.IsNaN(rhoV))
                return false;
            _liquid.Evaluate(rho);
            _vapor.Evaluate(rhoV);
            _liquid.EvaluateFugacity();
            _vapor.EvaluateFugacity();
            var change = 0.0;
            for (var i = 0; i < _k.Length; i++)
            {
                var d = _liquid.LnFugacity[i] - _vapor.LnFugacity[i];
                _k[i] *= Math.Exp(d);
                change = Math.Max(change, Math.Abs(d));
            }
            if (change < 1e-11)
                return true;
        }
        return false;
    }

    /// <summary>The vapour fraction between 0 and 1 at which Σ z_i (K_i − 1)/(1 + β(K_i − 1)) = 0; the function falls with β.</summary>
    private double RachfordRice()
    {
        double low = 0, high = 1, beta = 0.5;
        for (var iteration = 0; iteration < 100; iteration++)
        {
            double f = 0, slope = 0;
            for (var i = 0; i < _k.Length; i++)
            {
                var q = (_k[i] - 1) / (1 + beta * (_k[i] - 1));
                f += model.Composition[i] * q;
                slope -= model.Composition[i] * q * q;
            }
            if (f > 0)
                low = beta;
            else
                high = beta;
            var next = beta - f / slope;
            if (!(next > low && next < high))
                next = 0.5 * (low + high);
            if (Math.Abs(next - beta) < 1e-15)
                return next;
            beta = next;
        }
        return beta;
    }
}
