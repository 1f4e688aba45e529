using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <summary>
/// Bubble and dew points of a blend. Unknowns are ln ρ_j of the incipient phase and ln ρ of the phase of designated composition
/// (and ln T when the pressure is given); equations are equal fugacities and equal pressures. The blend's own curve
/// interpolated, or a few substitutions from Raoult's law, start it, Newton's method with the analytic Jacobian ends it, and where that fails the curve is
/// followed from a colder state.
/// Not thread-safe.
/// </summary>
internal sealed class BlendSaturation
{
    private const int MaximumIterations = 40;

    // A density on the way needs no more digits than the composition it is for.
    private const double StartTolerance = 1e-3;

    private readonly MixtureModel _model;
    private readonly SaturationStarts? _starts;
    private readonly MixturePhase _liquid;
    private readonly MixturePhase _vapor;
    private readonly int _n;
    private readonly double[] _u;
    private readonly double[] _incipient;
    private readonly double[] _matrix;
    private readonly double[] _right;
    private readonly double[] _rough;
    private readonly double[] _direction;
    private readonly double[] _saved;
    private readonly double[] _tangent;

    /// <param name="model">The blend.</param>
    /// <param name="starts">Starts of the blend; without them a point is found from Raoult's law.</param>
    public BlendSaturation(MixtureModel model, SaturationStarts? starts = null)
    {
        _model = model;
        _starts = starts;
        _n = model.Components.Length;
        _liquid = new MixturePhase(model);
        _vapor = new MixturePhase(model);
        _u = new double[_n + 2];
        _incipient = new double[_n];
        _matrix = new double[(_n + 2) * (_n + 2)];
        _right = new double[_n + 2];
        _rough = new double[_n];
        _direction = new double[_n + 2];
        _saved = new double[_n + 2];
        _tangent = new double[_n + 2];
    }

    /// <summary>The liquid phase of the last solution, fully evaluated.</summary>
    public MixturePhase Liquid => _liquid;

    /// <summary>The vapour phase of the last solution, fully evaluated.</summary>
    public MixturePhase Vapor => _vapor;

    public double Temperature { get; private set; }

    public double Pressure { get; private set; }

    /// <summary>True when the last search met only a liquid of the designated composition that would split in two liquids.</summary>
    public bool LiquidSplits { get; private set; }

    /// <summary>dp/dT along the curve, Pa/K.</summary>
    public double Slope { get; private set; }

    /// <summary>ln ρ_j of the incipient phase, ln ρ of the other and ln T of the last solution.</summary>
    public ReadOnlySpan<double> Unknowns => _u;

    public bool AtTemperature(SaturationCurve curve, double temperature)
    {
        LiquidSplits = false;
        if (_starts?.Of(curve)?.AtTemperature(temperature, _u) == true && FromUnknowns(curve, temperature, double.NaN))
            return true;
        for (var attempt = 0; attempt < 2; attempt++)
        {
            var substitutions = attempt == 0 ? 1 : 40;
            if (Start(curve, temperature, substitutions) && Newton(curve, temperature, double.NaN) && Accept())
                return true;
        }
        return FollowTo(curve, temperature, double.NaN);
    }

    public bool AtPressure(SaturationCurve curve, double pressure)
    {
        LiquidSplits = false;
        if (_starts?.Of(curve)?.AtPressure(pressure, _u) == true && FromUnknowns(curve, double.NaN, pressure))
            return true;
        var temperature = RoughTemperature(curve, pressure);
        for (var attempt = 0; attempt < 2; attempt++)
        {
            var substitutions = attempt == 0 ? 1 : 40;
            if (Start(curve, temperature, substitutions) && Newton(curve, temperature, pressure) && Accept())
                return true;
        }
        return FollowTo(curve, double.NaN, pressure);
    }

    private bool FromUnknowns(SaturationCurve curve, double temperature, double pressure)
    {
        (curve == SaturationCurve.Bubble ? _liquid : _vapor).SetComposition(_model.Composition);
        return Newton(curve, temperature, pressure) && Accept();
    }

    /// <summary>Temperature at which Raoult's law with rough vapour pressures gives the pressure.</summary>
    private double RoughTemperature(SaturationCurve curve, double pressure)
    {
        var tr = _model.MeanCriticalTemperature;
        var target = Math.Log(pressure);
        double t0 = 0.75 * tr, f0 = Math.Log(RoughPressure(curve, t0)) - target;
        double t1 = 0.65 * tr, f1 = Math.Log(RoughPressure(curve, t1)) - target;
        for (var i = 0; i < 12 && Math.Abs(f1) > 1e-2; i++)
        {
            var inverse = 1 / t1 - f1 * (1 / t1 - 1 / t0) / (f1 - f0);
            var next = Math.Clamp(1 / inverse, 0.3 * tr, 1.1 * tr);
            t0 = t1;
            f0 = f1;
            t1 = next;
            f1 = Math.Log(RoughPressure(curve, t1)) - target;
            if (f1 == f0)
                break;
        }
        return t1;
    }

    private double RoughPressure(SaturationCurve curve, double temperature)
    {
        var sum = 0.0;
        for (var i = 0; i < _n; i++)
        {
            var p = _model.Components[i].RoughVaporPressure(temperature);
            _rough[i] = p;
            sum += curve == SaturationCurve.Bubble ? _model.Composition[i] * p : _model.Composition[i] / p;
        }
        return curve == SaturationCurve.Bubble ? sum : 1 / sum;
    }

    /// <summary>Sets the unknowns by successive substitution of the incipient phase at a temperature.</summary>
    private bool Start(SaturationCurve curve, double temperature, int substitutions)
    {
        var bubble = curve == SaturationCurve.Bubble;
        ReadOnlySpan<double> z = _model.Composition;
        var p = RoughPressure(curve, temperature);
        var sum = 0.0;
        for (var i = 0; i < _n; i++)
        {
            _incipient[i] = bubble ? z[i] * _rough[i] : z[i] / _rough[i];
            sum += _incipient[i];
        }
        for (var i = 0; i < _n; i++)
            _incipient[i] /= sum;

        _liquid.SetComposition(bubble ? z : _incipient);
        _vapor.SetComposition(bubble ? _incipient : z);
        _liquid.SetTemperature(temperature);
        _vapor.SetTemperature(temperature);
        var volume = 0.0;
        for (var i = 0; i < _n; i++)
        {
            var eos = _model.Components[i];
            volume += _liquid.X[i] / eos.LiquidDensity.At(Math.Min(temperature, 0.95 * eos.CriticalTemperature));
        }
        double liquidDensity = 1 / volume, vaporDensity = double.NaN, factor = 1;
        for (var step = 0; step < substitutions; step++)
        {
            liquidDensity = _liquid.SolveLiquid(p, liquidDensity, StartTolerance);
            if (double.IsNaN(liquidDensity))
                return false;
            vaporDensity = _vapor.SolveVapor(p, StartTolerance);
            for (var lower = 0; double.IsNaN(vaporDensity) && lower < 12; lower++)
            {
                p *= 0.9;
                vaporDensity = _vapor.SolveVapor(p, StartTolerance);
            }
            if (double.IsNaN(vaporDensity))
                return false;
            _liquid.Evaluate(liquidDensity);
            _liquid.EvaluateFugacity();
            _vapor.Evaluate(vaporDensity);
            _vapor.EvaluateFugacity();
            MixturePhase fixedPhase = bubble ? _liquid : _vapor, other = bubble ? _vapor : _liquid;
            sum = 0;
            for (var i = 0; i < _n; i++)
            {
                // x_i φ_i p = f_i of the fixed phase; φ_i p = f_i/x_i of the incipient phase.
                var x = other.X[i] * Math.Exp(Math.Clamp(fixedPhase.LnFugacity[i] - other.LnFugacity[i], -5, 5));
                _incipient[i] = x;
                sum += x;
            }
            var change = 0.0;
            for (var i = 0; i < _n; i++)
            {
                _incipient[i] /= sum;
                change = Math.Max(change, Math.Abs(_incipient[i] - other.X[i]));
            }
            factor = Math.Clamp(bubble ? sum : 1 / sum, 0.5, 2);
            p *= factor;
            other.SetComposition(_incipient);
            other.SetTemperature(temperature);
            if (change < 1e-3 && Math.Abs(factor - 1) < 1e-3)
                break;
        }
        // The incipient phase has changed its composition since its density was found. Vapor is near enough to a gas to follow the
        // pressure; liquid is not.
        if (bubble)
        {
            vaporDensity *= factor;
        }
        else
        {
            var rho = _liquid.SolveLiquid(p, liquidDensity, StartTolerance);
            liquidDensity = double.IsNaN(rho) ? liquidDensity : rho;
        }
        SetUnknowns(curve, liquidDensity, vaporDensity, temperature);
        return true;
    }

    private void SetUnknowns(SaturationCurve curve, double liquidDensity, double vaporDensity, double temperature)
    {
        var bubble = curve == SaturationCurve.Bubble;
        var rho = bubble ? vaporDensity : liquidDensity;
        for (var i = 0; i < _n; i++)
            _u[i] = Math.Log(_incipient[i] * rho);
        _u[_n] = Math.Log(bubble ? liquidDensity : vaporDensity);
        _u[_n + 1] = Math.Log(temperature);
    }

    /// <summary>Newton's method from the unknowns; <paramref name="pressure"/> NaN means that the temperature is given.</summary>
    private bool Newton(SaturationCurve curve, double temperature, double pressure)
    {
        var givenPressure = !double.IsNaN(pressure);
        var size = givenPressure ? _n + 2 : _n + 1;
        if (!givenPressure)
            _u[_n + 1] = Math.Log(temperature);
        var previous = double.PositiveInfinity;
        for (var iteration = 0; iteration < MaximumIterations; iteration++)
        {
            if (!EvaluateBoth(curve))
                return false;
            Assemble(curve, pressure, size);
            if (!LinearSystem.Solve(_matrix, _right, size))
                return false;
            double largest = 0, largestFixed = Math.Abs(_right[_n]);
            for (var i = 0; i < _n; i++)
                largest = Math.Max(largest, Math.Abs(_right[i]));
            var temperatureStep = givenPressure ? Math.Abs(_right[_n + 1]) : 0;
            if (!double.IsFinite(largest + largestFixed + temperatureStep))
                return false;
            var scale = Math.Min(1, Math.Min(1.0 / largest, Math.Min(0.25 / largestFixed, 0.03 / temperatureStep)));
            for (var i = 0; i < size; i++)
                _u[i] += scale * _right[i];
            var total = Math.Max(largest, Math.Max(largestFixed, temperatureStep));
            // Newton's error squares itself from step to step: what is left after this one is foreseen from the last two.
            var foreseen = total * total * (total / (previous * previous));
            if (total < 1e-8 || (iteration > 0 && total < 1e-5 && foreseen < 1e-13))
                return Finish(curve);
            if (iteration > 12 && total > 0.5 * previous && total < 1e-6)
                return Finish(curve);
            previous = total;
        }
        return false;
    }

    private bool EvaluateBoth(SaturationCurve curve)
    {
        var bubble = curve == SaturationCurve.Bubble;
        var temperature = Math.Exp(_u[_n + 1]);
        MixturePhase fixedPhase = bubble ? _liquid : _vapor, other = bubble ? _vapor : _liquid;
        var rho = 0.0;
        for (var i = 0; i < _n; i++)
        {
            var part = Math.Exp(_u[i]);
            _incipient[i] = part;
            rho += part;
        }
        if (!double.IsFinite(rho) || !(rho > 0))
            return false;
        for (var i = 0; i < _n; i++)
            _incipient[i] = Math.Max(_incipient[i] / rho, 1e-30);
        fixedPhase.SetTemperature(temperature);
        other.SetComposition(_incipient);
        other.SetTemperature(temperature);
        fixedPhase.Evaluate(Math.Exp(_u[_n]));
        other.Evaluate(rho);
        fixedPhase.EvaluateFugacity();
        other.EvaluateFugacity();
        return true;
    }

    private void Assemble(SaturationCurve curve, double pressure, int size)
    {
        var bubble = curve == SaturationCurve.Bubble;
        MixturePhase f = bubble ? _liquid : _vapor, o = bubble ? _vapor : _liquid;
        var rt = _model.GasConstant * f.Temperature;
        var scale = 1 / (_liquid.Density * rt);
        var n = _n;
        for (var i = 0; i < n; i++)
        {
            var along = 0.0;
            for (var j = 0; j < n; j++)
            {
                _matrix[i * size + j] = -o.X[j] * o.Jacobian[i * n + j];
                along += f.X[j] * f.Jacobian[i * n + j];
            }
            _matrix[i * size + n] = along;
            _right[i] = o.LnFugacity[i] - f.LnFugacity[i];
        }
        for (var j = 0; j < n; j++)
            _matrix[n * size + j] = -o.Density * rt * o.X[j] * o.PressureByAmount[j] * scale;
        _matrix[n * size + n] = f.Density * f.PressureByDensity * scale;
        _right[n] = (o.Pressure - f.Pressure) * scale;
        if (size == n + 1)
            return;
        for (var i = 0; i < n; i++)
            _matrix[i * size + n + 1] = f.LnFugacityByTemperature[i] - o.LnFugacityByTemperature[i];
        _matrix[n * size + n + 1] = (f.Density * f.PressureByTemperature - o.Density * o.PressureByTemperature) * rt * scale;
        var last = (n + 1) * size;
        var unit = 1 / pressure;
        for (var j = 0; j < n; j++)
            _matrix[last + j] = bubble ? o.Density * rt * o.X[j] * o.PressureByAmount[j] * unit : 0;
        _matrix[last + n] = bubble ? 0 : f.Density * f.PressureByDensity * unit;
        _matrix[last + n + 1] = _vapor.Density * rt * _vapor.PressureByTemperature * unit;
        _right[n + 1] = 1 - _vapor.Pressure * unit;
    }

    /// <summary>Evaluates the end state and the direction of the curve there.</summary>
    private bool Finish(SaturationCurve curve)
    {
        if (!EvaluateBoth(curve))
            return false;
        Temperature = _liquid.Temperature;
        Pressure = _vapor.Pressure;
        return Pressure > 0 && Direction(curve);
    }

    /// <summary>The change of the unknowns with ln T along the curve, and the slope.</summary>
    private bool Direction(SaturationCurve curve)
    {
        var bubble = curve == SaturationCurve.Bubble;
        MixturePhase f = bubble ? _liquid : _vapor, o = bubble ? _vapor : _liquid;
        Assemble(curve, double.NaN, _n + 1);
        var rt = _model.GasConstant * f.Temperature;
        var scale = 1 / (_liquid.Density * rt);
        for (var i = 0; i < _n; i++)
            _right[i] = o.LnFugacityByTemperature[i] - f.LnFugacityByTemperature[i];
        _right[_n] = (o.Density * o.PressureByTemperature - f.Density * f.PressureByTemperature) * rt * scale;
        if (!LinearSystem.Solve(_matrix, _right, _n + 1))
            return false;
        var change = _vapor.Density * rt * _vapor.PressureByTemperature;
        if (bubble)
        {
            for (var j = 0; j < _n; j++)
                change += o.Density * rt * o.X[j] * o.PressureByAmount[j] * _right[j];
        }
        else
        {
            change += f.Density * f.PressureByDensity * _right[_n];
        }
        Slope = change / f.Temperature;
        Array.Copy(_right, _direction, _n + 1);
        _direction[_n + 1] = 1;
        return double.IsFinite(Slope);
    }

    /// <summary>Guards against the trivial solution, exchanged phases and phases that would fall apart.</summary>
    private bool Accept()
    {
        if (!(_liquid.Density > 1.02 * _vapor.Density && Slope > 0 && IsStable(_vapor)))
            return false;
        if (Math.Abs(_liquid.Pressure - _vapor.Pressure) > 1e-6 * _liquid.Density * _model.GasConstant * Temperature)
            return false;
        if (IsStable(_liquid))
            return true;
        LiquidSplits |= _liquid.Density > 3 * _vapor.Density;
        return false;
    }

    /// <summary>
    /// Local stability against diffusion and collapse: the matrix √(x_i x_j) n ∂ln f_i/∂n_j at constant volume is positive definite
    /// (Heidemann and Khalil 1980), tested by Cholesky's factors.
    /// </summary>
    private bool IsStable(MixturePhase phase)
    {
        var n = _n;
        var x = phase.X;
        var l = _matrix;
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = Math.Sqrt(x[i] * x[j]) * phase.Jacobian[i * n + j];
                for (var k = 0; k < j; k++)
                    sum -= l[i * n + k] * l[j * n + k];
                if (i == j)
                {
                    if (!(sum > 0))
                        return false;
                    l[i * n + i] = Math.Sqrt(sum);
                }
                else
                {
                    l[i * n + j] = sum / l[j * n + j];
                }
            }
        }
        return true;
    }

    /// <summary>
    /// Follows the curve from a moderate temperature to a temperature or (when that is NaN) to a pressure, predicting each step along the
    /// tangent. Returns false where the curve ends (critical point, retrograde turn) before.
    /// </summary>
    private bool FollowTo(SaturationCurve curve, double temperature, double pressure)
    {
        var tr = _model.MeanCriticalTemperature;
        var wanted = double.IsNaN(temperature) ? RoughTemperature(curve, pressure) : temperature;
        ReadOnlySpan<double> starts = [0.9 * wanted, 0.8 * tr, 0.7 * tr, 0.6 * tr, 0.75 * wanted, 1.08 * wanted];
        foreach (var start in starts)
        {
            if (start > 0.92 * tr)
                continue;
            if (Start(curve, start, 60) && Newton(curve, start, double.NaN) && Accept() && March(curve, temperature, pressure))
                return true;
        }
        return false;
    }

    private bool March(SaturationCurve curve, double temperature, double pressure)
    {
        var givenPressure = !double.IsNaN(pressure);
        var step = 0.02;
        double lnTarget = Math.Log(temperature), lnPressure = Math.Log(pressure);
        for (var count = 0; count < 400; count++)
        {
            var here = _u[_n + 1];
            var remaining = givenPressure
                ? (lnPressure - Math.Log(Pressure)) * Pressure / (Slope * Temperature)
                : lnTarget - here;
            var last = Math.Abs(remaining) <= step;
            var change = last ? remaining : Math.CopySign(step, remaining);
            Array.Copy(_u, _saved, _u.Length);
            (var savedTemperature, var savedPressure, var savedSlope) = (Temperature, Pressure, Slope);
            Array.Copy(_direction, _tangent, _direction.Length);
            for (var i = 0; i < _u.Length; i++)
                _u[i] += change * _direction[i];
            var found = Newton(curve, Math.Exp(here + change), last && givenPressure ? pressure : double.NaN)
                && Accept()
                && Math.Abs(Math.Log(_liquid.Density / _vapor.Density)) > 0.3 * Math.Abs(LastGap(curve));
            if (found && last)
                return true;
            if (found)
            {
                step = Math.Min(step * 1.4, 0.03);
                continue;
            }
            Array.Copy(_saved, _u, _u.Length);
            Array.Copy(_tangent, _direction, _direction.Length);
            (Temperature, Pressure, Slope) = (savedTemperature, savedPressure, savedSlope);
            step = Math.Min(step, Math.Abs(change)) * 0.4;
            if (step < 1e-6)
                return false;
        }
        return false;
    }

    /// <summary>ln(ρ_l/ρ_v) of the state before the step: a sudden collapse is the trivial solution.</summary>
    private double LastGap(SaturationCurve curve)
    {
        var incipient = 0.0;
        for (var i = 0; i < _n; i++)
            incipient += Math.Exp(_saved[i]);
        var gap = Math.Log(incipient) - _saved[_n];
        return curve == SaturationCurve.Bubble ? -gap : gap;
    }
}
