using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <summary>
/// Whether the liquid of a blend at its bubble point would fall apart into two liquids, by the tangent-plane criterion (Michelsen, Fluid
/// Phase Equilib. 9 (1982) 1): another liquid whose fugacities lie below, on balance, is more stable. A liquid may pass the local test of
/// stability and still be metastable. Not thread-safe.
/// </summary>
internal sealed class LiquidSplit
{
    private const int MaximumIterations = 200;

    private readonly MixtureModel _model;
    private readonly BlendSaturation _saturation;
    private readonly MixturePhase _trial;
    private readonly int _n;
    private readonly double[] _w;

    public LiquidSplit(MixtureModel model)
    {
        _model = model;
        _saturation = new BlendSaturation(model);
        _trial = new MixturePhase(model);
        _n = model.Components.Length;
        _w = new double[_n];
    }

    /// <summary>
    /// The temperature from which upward the bubble liquid is one liquid, K, to 0.01 K, looked for from <paramref name="lowest"/> upward;
    /// 0 where it is one there already.
    /// </summary>
    public double Limit(double lowest)
    {
        if (IsOne(lowest))
            return 0;
        double unstable = lowest, step = 0.02 * _model.ReducingTemperature, stable = lowest + step;
        while (stable < 0.8 * _model.ReducingTemperature && !IsOne(stable))
        {
            unstable = stable;
            stable += step;
        }
        while (stable - unstable > 0.01)
        {
            var middle = 0.5 * (stable + unstable);
            if (IsOne(middle))
                stable = middle;
            else
                unstable = middle;
        }
        return stable;
    }

    private bool IsOne(double temperature)
    {
        _saturation.Liquid.SetComposition(_model.Composition);
        if (!_saturation.AtTemperature(SaturationCurve.Bubble, temperature))
            return !_saturation.LiquidSplits;
        for (var rich = 0; rich < _n; rich++)
        {
            if (IsBelow(temperature, rich))
                return false;
        }
        return true;
    }

    /// <summary>Substitutes from a liquid that is nearly one component; true when one with a negative distance from the tangent plane is met.</summary>
    private bool IsBelow(double temperature, int rich)
    {
        ReadOnlySpan<double> z = _model.Composition;
        for (var i = 0; i < _n; i++)
            _w[i] = 0.05 * z[i] + (i == rich ? 0.95 : 0);
        var volume = 0.0;
        for (var i = 0; i < _n; i++)
        {
            var eos = _model.Components[i];
            volume += _w[i] / eos.LiquidDensity.At(Math.Clamp(temperature, eos.LowestTemperature, 0.95 * eos.CriticalTemperature));
        }
        var rho = 1.01 / volume;
        var liquid = _saturation.Liquid;
        for (var iteration = 0; iteration < MaximumIterations; iteration++)
        {
            _trial.SetComposition(_w);
            _trial.SetTemperature(temperature);
            rho = _trial.SolveLiquid(_saturation.Pressure, rho);
            if (double.IsNaN(rho))
                return false;
            _trial.Evaluate(rho);
            _trial.EvaluateFugacity();
            double distance = 0, sum = 0, fromFeed = 0, change = 0;
            for (var i = 0; i < _n; i++)
            {
                var d = _trial.LnFugacity[i] - liquid.LnFugacity[i];
                distance += _w[i] * d;
                sum += _w[i] * Math.Exp(-d);
                fromFeed = Math.Max(fromFeed, Math.Abs(_w[i] - z[i]));
            }
            if (distance < -1e-7)
                return true;
            if (fromFeed < 1e-3)
                return false;
            for (var i = 0; i < _n; i++)
            {
                var next = _w[i] * Math.Exp(liquid.LnFugacity[i] - _trial.LnFugacity[i]) / sum;
                change = Math.Max(change, Math.Abs(next - _w[i]));
                _w[i] = next;
            }
            if (change < 1e-7)
                return false;
        }
        return false;
    }
}
