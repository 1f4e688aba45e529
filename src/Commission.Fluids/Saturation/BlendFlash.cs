using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <summary>
/// Liquid and vapour of a blend inside its two-phase region at a pressure and a share of vapour: Newton's method in the amounts in the
/// vapour, the volumes of both phases and the temperature, started between bubble and dew point. The share of vapour is given and not
/// the temperature, because the glide of a near-azeotrope is too small for a temperature to tell its states apart, and because
/// substitution of equilibrium ratios needs thousands of steps near the critical point. Not thread-safe.
/// </summary>
internal sealed class BlendFlash
{
    private const int MaximumIterations = 40;

    private readonly MixtureModel _model;
    private readonly MixturePhase _liquid;
    private readonly MixturePhase _vapor;
    private readonly int _n;
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double[] _amount;
    private readonly double[] _matrix;
    private readonly double[] _right;
    private PhasePair _bubble = null!;
    private PhasePair _dew = null!;

    public BlendFlash(MixtureModel model)
    {
        _model = model;
        _liquid = new MixturePhase(model);
        _vapor = new MixturePhase(model);
        _n = model.Components.Length;
        _x = new double[_n];
        _y = new double[_n];
        _amount = new double[_n];
        _matrix = new double[(_n + 3) * (_n + 3)];
        _right = new double[_n + 3];
    }

    /// <summary>Moles of vapour per mole.</summary>
    public double VaporFraction { get; private set; }

    public MixturePhase Liquid => _liquid;

    public MixturePhase Vapor => _vapor;

    /// <summary>Both ends of the two-phase region at the pressure.</summary>
    public void Between(PhasePair bubble, PhasePair dew) => (_bubble, _dew) = (bubble, dew);

    /// <summary>Finds the phases at a pressure where a share of the moles, between 0 and 1, is vapour.</summary>
    public bool Solve(double pressure, double fraction)
    {
        Start(fraction);
        var size = _n + 3;
        for (var iteration = 0; iteration < MaximumIterations; iteration++)
        {
            Assemble(pressure, fraction);
            if (!LinearSystem.Solve(_matrix, _right, size))
                return false;
            if (Step() is not double step)
                return false;
            if (step < 1e-9)
                return _liquid.Density > 1.0001 * _vapor.Density && _liquid.PressureByDensity > 0 && _vapor.PressureByDensity > 0;
        }
        return false;
    }

    /// <summary>Between bubble and dew point: temperature, densities and the logarithms of the equilibrium ratios in proportion.</summary>
    private void Start(double fraction)
    {
        ReadOnlySpan<double> z = _model.Composition;
        double sum = 0;
        for (var i = 0; i < _n; i++)
        {
            double b = Math.Log(_bubble.Vapor[i] / _bubble.Liquid[i]), d = Math.Log(_dew.Vapor[i] / _dew.Liquid[i]);
            var k = Math.Exp(b + fraction * (d - b));
            _amount[i] = z[i] * fraction * k / (1 + fraction * (k - 1));
            sum += _amount[i];
        }
        for (var i = 0; i < _n; i++)
            _amount[i] = Math.Min(_amount[i] * fraction / sum, z[i] * (1 - 1e-9));
        Evaluate(
            _bubble.Temperature + fraction * (_dew.Temperature - _bubble.Temperature),
            _bubble.LiquidDensity + fraction * (_dew.LiquidDensity - _bubble.LiquidDensity),
            _bubble.VaporDensity + fraction * (_dew.VaporDensity - _bubble.VaporDensity));
    }

    /// <summary>Evaluates both phases of the amounts at hand.</summary>
    private void Evaluate(double temperature, double liquidDensity, double vaporDensity)
    {
        ReadOnlySpan<double> z = _model.Composition;
        VaporFraction = 0;
        for (var i = 0; i < _n; i++)
            VaporFraction += _amount[i];
        for (var i = 0; i < _n; i++)
        {
            _x[i] = (z[i] - _amount[i]) / (1 - VaporFraction);
            _y[i] = _amount[i] / VaporFraction;
        }
        _liquid.SetComposition(_x);
        _vapor.SetComposition(_y);
        _liquid.SetTemperature(temperature);
        _vapor.SetTemperature(temperature);
        _liquid.Evaluate(liquidDensity);
        _vapor.Evaluate(vaporDensity);
        _liquid.EvaluateFugacity();
        _vapor.EvaluateFugacity();
    }

    /// <summary>
    /// Goes the step that the solved system asks for, half the way to an absent component and a fifth of a volume at most; returns the
    /// largest relative change asked for, null where there is no step.
    /// </summary>
    private double? Step()
    {
        ReadOnlySpan<double> z = _model.Composition;
        double scale = 1, largest = 0;
        for (var i = 0; i < _n; i++)
        {
            var room = Math.Min(z[i] - _amount[i], _amount[i]);
            largest = Math.Max(largest, Math.Abs(_right[i]) / room);
            scale = Math.Min(scale, 0.5 * (_right[i] > 0 ? z[i] - _amount[i] : _amount[i]) / Math.Abs(_right[i]));
        }
        largest = Math.Max(largest, Math.Max(Math.Abs(_right[_n]), Math.Abs(_right[_n + 1])));
        scale = Math.Min(scale, 0.2 / Math.Max(Math.Abs(_right[_n]), Math.Max(Math.Abs(_right[_n + 1]), 10 * Math.Abs(_right[_n + 2]))));
        if (!double.IsFinite(largest) || !(scale > 0))
            return null;
        double liquidVolume = (1 - VaporFraction) / _liquid.Density, vaporVolume = VaporFraction / _vapor.Density, fraction = 0;
        for (var i = 0; i < _n; i++)
        {
            _amount[i] += scale * _right[i];
            fraction += _amount[i];
        }
        Evaluate(
            _liquid.Temperature * Math.Exp(scale * _right[_n + 2]),
            (1 - fraction) / (liquidVolume * Math.Exp(scale * _right[_n])),
            fraction / (vaporVolume * Math.Exp(scale * _right[_n + 1])));
        return largest;
    }

    /// <summary>
    /// Equal fugacities, the pressure of each phase, the share of vapour; unknowns are the amounts in the vapour and ln of liquid volume,
    /// vapour volume and temperature.
    /// </summary>
    private void Assemble(double pressure, double fraction)
    {
        int n = _n, size = n + 3;
        double inverseLiquid = 1 / (1 - VaporFraction), inverseVapor = 1 / VaporFraction;
        double liquidStiffness = 0, vaporStiffness = 0;
        Array.Clear(_matrix);
        for (var i = 0; i < n; i++)
        {
            double alongLiquid = 0, alongVapor = 0;
            for (var j = 0; j < n; j++)
            {
                double l = _liquid.Jacobian[i * n + j], v = _vapor.Jacobian[i * n + j];
                _matrix[i * size + j] = v * inverseVapor + l * inverseLiquid;
                alongLiquid += l * _x[j];
                alongVapor += v * _y[j];
            }
            _matrix[i * size + n] = alongLiquid;
            _matrix[i * size + n + 1] = -alongVapor;
            _matrix[i * size + n + 2] = _vapor.LnFugacityByTemperature[i] - _liquid.LnFugacityByTemperature[i];
            _right[i] = _liquid.LnFugacity[i] - _vapor.LnFugacity[i];
            _matrix[n * size + i] = -_liquid.PressureByAmount[i] * inverseLiquid;
            _matrix[(n + 1) * size + i] = _vapor.PressureByAmount[i] * inverseVapor;
            _matrix[(n + 2) * size + i] = 1;
            liquidStiffness += _liquid.PressureByAmount[i] * _x[i];
            vaporStiffness += _vapor.PressureByAmount[i] * _y[i];
        }
        var rt = _model.GasConstant * _liquid.Temperature;
        _matrix[n * size + n] = -liquidStiffness;
        _matrix[n * size + n + 2] = _liquid.PressureByTemperature;
        _right[n] = (pressure - _liquid.Pressure) / (_liquid.Density * rt);
        _matrix[(n + 1) * size + n + 1] = -vaporStiffness;
        _matrix[(n + 1) * size + n + 2] = _vapor.PressureByTemperature;
        _right[n + 1] = (pressure - _vapor.Pressure) / (_vapor.Density * rt);
        _right[n + 2] = fraction - VaporFraction;
    }
}

/// <summary>Both phases of a saturation solution: mole fractions, molar densities (mol/m³), K.</summary>
internal sealed record PhasePair(double Temperature, double[] Liquid, double[] Vapor, double LiquidDensity, double VaporDensity);
