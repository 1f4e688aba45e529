using Commission.Fluids.Helmholtz;

namespace Commission.Fluids.Mixtures;

/// <summary>
/// The state of one phase and the work space of its evaluation. Not thread-safe; a solver owns its own. Order of use:
/// <see cref="SetComposition"/>, <see cref="SetTemperature"/>, then <see cref="Evaluate"/> or <see cref="EvaluateVolume"/> at a density.
/// </summary>
internal sealed class MixturePhase
{
    private readonly int _count;
    private readonly double[] _x;
    private readonly double[] _pureTemperature;
    private readonly double[] _pureVolume;
    private readonly ReducingState _temperature;
    private readonly ReducingState _volume;
    private readonly double[][] _componentWork;
    private readonly double[][] _pairWork;
    private readonly ResidualDerivatives[] _component;
    private readonly ResidualDerivatives[] _pair;
    private readonly ResidualDerivatives[] _partial;
    private readonly DensityTable _table = new();
    private readonly double[] _a;
    private readonly double[] _b;
    private readonly double[] _second;
    private readonly double[] _row;
    private double _preparedTau = double.NaN;
    private double _tau;

    public MixturePhase(MixtureModel model)
    {
        Model = model;
        _count = model.Components.Length;
        _x = new double[_count];
        _pureTemperature = new double[_count];
        _pureVolume = new double[_count];
        _temperature = new ReducingState(_count);
        _volume = new ReducingState(_count);
        _componentWork = new double[_count][];
        _component = new ResidualDerivatives[_count];
        _partial = new ResidualDerivatives[_count];
        _pairWork = new double[model.Pairs.Length][];
        _pair = new ResidualDerivatives[model.Pairs.Length];
        _a = new double[_count];
        _b = new double[_count];
        _row = new double[_count];
        _second = new double[_count * _count];
        LnFugacity = new double[_count];
        LnFugacityByTemperature = new double[_count];
        PressureByAmount = new double[_count];
        Jacobian = new double[_count * _count];
        for (var i = 0; i < _count; i++)
        {
            var eos = model.Components[i];
            _pureTemperature[i] = eos.ReducingTemperature;
            _pureVolume[i] = 1 / eos.ReducingDensity;
            _componentWork[i] = new double[eos.Residual.WorkLength];
        }
        for (var k = 0; k < _pairWork.Length; k++)
            _pairWork[k] = new double[model.Pairs[k].Departure?.WorkLength ?? 0];
    }

    public MixtureModel Model { get; }

    public ReadOnlySpan<double> X => _x;

    public double Temperature { get; private set; }

    /// <summary>mol/m³ of the last evaluation.</summary>
    public double Density { get; private set; }

    /// <summary>Pa of the last evaluation.</summary>
    public double Pressure { get; private set; }

    /// <summary>∂p/∂ρ at constant T and composition of the last evaluation, Pa m³/mol.</summary>
    public double PressureByDensity { get; private set; }

    /// <summary>Residual Helmholtz energy of the last full evaluation.</summary>
    public ResidualDerivatives Total { get; private set; }

    /// <summary>ln of the fugacity in Pa, from <see cref="EvaluateFugacity"/>.</summary>
    public double[] LnFugacity { get; }

    /// <summary>n ∂ln f_i/∂n_j at constant T and V, row i, column j.</summary>
    public double[] Jacobian { get; }

    /// <summary>∂ln f_i/∂ln T at constant amounts and volume.</summary>
    public double[] LnFugacityByTemperature { get; }

    /// <summary>n ∂p/∂n_j at constant T and V divided by ρRT.</summary>
    public double[] PressureByAmount { get; }

    /// <summary>∂p/∂ln T at constant amounts and volume divided by ρRT.</summary>
    public double PressureByTemperature { get; private set; }

    /// <summary>The reducing density of the composition, mol/m³.</summary>
    public double ReducingDensity => 1 / _volume.Value;

    /// <summary>The reducing temperature of the composition, K.</summary>
    public double ReducingTemperature => _temperature.Value;

    public void SetComposition(ReadOnlySpan<double> x)
    {
        x.CopyTo(_x);
        _temperature.Set(_x, _pureTemperature, Model.Pairs, Model.CrossTemperature, temperature: true);
        _volume.Set(_x, _pureVolume, Model.Pairs, Model.CrossVolume, temperature: false);
    }

    public void SetTemperature(double temperature)
    {
        Temperature = temperature;
        _tau = _temperature.Value / temperature;
        if (_tau == _preparedTau)
            return;
        var lnTau = Math.Log(_tau);
        for (var i = 0; i < _componentWork.Length; i++)
            Model.Components[i].Residual.Prepare(_tau, lnTau, _componentWork[i]);
        for (var k = 0; k < _pairWork.Length; k++)
            Model.Pairs[k].Departure?.Prepare(_tau, lnTau, _pairWork[k]);
        _preparedTau = _tau;
    }

    /// <summary>Pressure and ∂p/∂ρ at a density.</summary>
    public void EvaluateVolume(double density)
    {
        var delta = density * _volume.Value;
        _table.Fill(delta, Model.DecayMask);
        double d = 0, dd = 0;
        for (var i = 0; i < _count; i++)
        {
            Model.Components[i].Residual.EvaluateVolume(_table, _tau, _componentWork[i], out var r);
            d += _x[i] * r.D;
            dd += _x[i] * r.DD;
        }
        for (var k = 0; k < _pairWork.Length; k++)
        {
            var pair = Model.Pairs[k];
            if (pair.Departure is null)
                continue;
            pair.Departure.EvaluateVolume(_table, _tau, _pairWork[k], out var r);
            var w = _x[pair.A] * _x[pair.B] * pair.F;
            d += w * r.D;
            dd += w * r.DD;
        }
        SetPressure(density, d, dd);
    }

    /// <summary>All derivatives in δ and τ of the whole and of each component and pair.</summary>
    public void Evaluate(double density)
    {
        var delta = density * _volume.Value;
        _table.Fill(delta, Model.DecayMask);
        var total = default(ResidualDerivatives);
        for (var i = 0; i < _count; i++)
        {
            Model.Components[i].Residual.Evaluate(_table, _tau, _componentWork[i], out _component[i]);
            total.AddScaled(_component[i], _x[i]);
        }
        for (var k = 0; k < _pairWork.Length; k++)
        {
            var pair = Model.Pairs[k];
            if (pair.Departure is null)
                continue;
            pair.Departure.Evaluate(_table, _tau, _pairWork[k], out _pair[k]);
            total.AddScaled(_pair[k], _x[pair.A] * _x[pair.B] * pair.F);
        }
        Total = total;
        SetPressure(density, total.D, total.DD);
    }

    /// <summary>
    /// After <see cref="Evaluate"/>: ln f_i = ln(ρ_i R T) + ∂(n αr)/∂n_i and all its first derivatives. With a_i = n ∂ln δ/∂n_i and
    /// b_i = n ∂ln τ/∂n_i the residual chemical potential is α + δα_δ a_i + τα_τ b_i + α_xi − Σ x_k α_xk (Kunz and Wagner 2012, table B4).
    /// </summary>
    public void EvaluateFugacity()
    {
        var n = _count;
        var total = Total;
        double dd = total.D + total.DD, dt = total.DT, tt = total.T + total.TT;

        Array.Clear(_second);
        for (var i = 0; i < n; i++)
            _partial[i] = _component[i];
        for (var k = 0; k < _pairWork.Length; k++)
        {
            var pair = Model.Pairs[k];
            if (pair.Departure is null)
                continue;
            _partial[pair.A].AddScaled(_pair[k], _x[pair.B] * pair.F);
            _partial[pair.B].AddScaled(_pair[k], _x[pair.A] * pair.F);
            var cross = pair.F * _pair[k].A;
            _second[pair.A * n + pair.B] = cross;
            _second[pair.B * n + pair.A] = cross;
        }
        double sumA = 0, sumD = 0, sumT = 0, all = 0;
        for (var i = 0; i < n; i++)
        {
            sumA += _x[i] * _partial[i].A;
            sumD += _x[i] * _partial[i].D;
            sumT += _x[i] * _partial[i].T;
            var row = 0.0;
            for (var m = 0; m < n; m++)
                row += _x[m] * _second[i * n + m];
            _row[i] = row;
            all += _x[i] * row;
        }
        double[] gv = _volume.G, hv = _volume.H, gt = _temperature.G, ht = _temperature.H;
        double rv = 1 / _volume.Value, rt = 1 / _temperature.Value;
        for (var i = 0; i < n; i++)
        {
            _a[i] = 1 + gv[i] * rv;
            _b[i] = gt[i] * rt;
        }
        var lnRho = Math.Log(Density * Model.GasConstant * Temperature);
        for (var i = 0; i < n; i++)
        {
            double gA = _partial[i].A - sumA, gD = _partial[i].D - sumD, gT = _partial[i].T - sumT;
            double ai = _a[i], bi = _b[i];
            LnFugacity[i] = Math.Log(_x[i]) + lnRho + total.A + total.D * ai + total.T * bi + gA;
            LnFugacityByTemperature[i] = 1 - (total.T + dt * ai + tt * bi + gT);
            PressureByAmount[i] = 1 + total.D + dd * ai + dt * bi + gD;
            for (var j = 0; j < n; j++)
            {
                double aj = _a[j], bj = _b[j];
                double gAj = _partial[j].A - sumA, gDj = _partial[j].D - sumD, gTj = _partial[j].T - sumT;
                var da = hv[i * n + j] * rv - (ai - 1) * (aj - 1);
                var db = ht[i * n + j] * rt - bi * bj;
                var second = _second[i * n + j] - _row[i] - _row[j] + all - gAj;
                Jacobian[i * n + j] = total.D * aj + total.T * bj + gAj
                    + ai * (dd * aj + dt * bj + gDj) + total.D * da
                    + bi * (dt * aj + tt * bj + gTj) + total.T * db
                    + gD * aj + gT * bj + second;
            }
            Jacobian[i * n + i] += 1 / _x[i];
        }
        PressureByTemperature = 1 + total.D - dt;
    }

    private void SetPressure(double density, double d, double dd)
    {
        var rt = Model.GasConstant * Temperature;
        Density = density;
        Pressure = density * rt * (1 + d);
        PressureByDensity = rt * (1 + 2 * d + dd);
    }

    /// <summary>
    /// The density of the liquid at the pressure, starting from a guess; NaN where the liquid branch has no such root. From the dense
    /// side Newton's method converges without crossing the spinodal, because p(ρ) is convex there. A root less dense than the
    /// true branch ever is belongs to a loop of the equation inside the two-phase region and is refused: in units of the reducing density
    /// such loops end at 1.6 (six tenths of the reducing temperature), 1.55 (three quarters) and 1.45 (nine tenths; R-134a 1.41), the
    /// liquid's own branches of the equations at hand begin at 2.2, 1.95 and 1.65.
    /// </summary>
    public double SolveLiquid(double pressure, double guess, double tolerance = 1e-11)
    {
        var rho = guess;
        for (var iteration = 0; iteration < 60; iteration++)
        {
            EvaluateVolume(rho);
            if (PressureByDensity <= 0)
            {
                rho *= 1.06;
                if (rho > 6 * ReducingDensity)
                    return double.NaN;
                continue;
            }
            var step = (pressure - Pressure) / PressureByDensity;
            var limit = 0.1 * rho;
            if (step > limit)
                step = limit;
            else if (step < -limit)
                step = -limit;
            rho += step;
            if (Math.Abs(step) < tolerance * rho)
                return IsLoop(rho) ? double.NaN : rho;
        }
        return double.NaN;
    }

    private bool IsLoop(double rho)
    {
        var reduced = Temperature / ReducingTemperature;
        return reduced < 0.9 && rho < (2.1 - reduced / 1.5) * ReducingDensity;
    }

    /// <summary>The density of the vapour at the pressure; NaN where the vapour branch ends below this pressure.</summary>
    public double SolveVapor(double pressure, double tolerance = 1e-11)
    {
        var rt = Model.GasConstant * Temperature;
        var rho = pressure / rt;
        for (var iteration = 0; iteration < 60; iteration++)
        {
            EvaluateVolume(rho);
            if (PressureByDensity <= 0)
                return double.NaN;
            var step = (pressure - Pressure) / PressureByDensity;
            if (step > 0.5 * rho)
                step = 0.5 * rho;
            else if (step < -0.5 * rho)
                step = -0.5 * rho;
            rho += step;
            if (Math.Abs(step) < tolerance * rho)
                return rho;
        }
        return double.NaN;
    }

    /// <summary>The one density at a pressure above the critical temperature, where p rises with ρ: Newton's method kept in a bracket.</summary>
    public double SolveSupercritical(double pressure)
    {
        double low = 0, high = 5 * ReducingDensity;
        var rho = Math.Min(pressure / (Model.GasConstant * Temperature), ReducingDensity);
        for (var iteration = 0; iteration < 200; iteration++)
        {
            EvaluateVolume(rho);
            var error = pressure - Pressure;
            if (error > 0)
                low = rho;
            else
                high = rho;
            var next = PressureByDensity > 0 ? rho + error / PressureByDensity : double.NaN;
            if (!(next > low && next < high))
                next = 0.5 * (low + high);
            if (Math.Abs(next - rho) < 1e-12 * rho)
                return next;
            rho = next;
        }
        return double.NaN;
    }
}

/// <summary>Caloric properties of an evaluated phase, molar, on the equations' own zero of enthalpy and entropy.</summary>
internal readonly struct CaloricProperties
{
    private CaloricProperties(double enthalpy, double entropy, double cv, double cp, double speedOfSound)
    {
        Enthalpy = enthalpy;
        Entropy = entropy;
        Cv = cv;
        Cp = cp;
        SpeedOfSound = speedOfSound;
    }

    /// <summary>J/mol.</summary>
    public double Enthalpy { get; }

    /// <summary>J/(mol K).</summary>
    public double Entropy { get; }

    /// <summary>J/(mol K).</summary>
    public double Cv { get; }

    /// <summary>J/(mol K).</summary>
    public double Cp { get; }

    /// <summary>m/s.</summary>
    public double SpeedOfSound { get; }

    /// <summary>After <see cref="MixturePhase.Evaluate"/> (Kunz and Wagner 2012, table 5).</summary>
    public static CaloricProperties Of(MixturePhase phase)
    {
        var model = phase.Model;
        double r = model.GasConstant, t = phase.Temperature;
        double a0 = 0, t0 = 0, tt0 = 0, mass = 0;
        for (var i = 0; i < model.Components.Length; i++)
        {
            var eos = model.Components[i];
            var x = phase.X[i];
            var ideal = eos.IdealAt(t);
            a0 += x * (ideal.A + Math.Log(x * phase.Density / eos.ReducingDensity));
            t0 += x * ideal.T;
            tt0 += x * ideal.TT;
            mass += x * eos.MolarMass;
        }
        var res = phase.Total;
        var stiffness = 1 + 2 * res.D + res.DD;
        var thermal = 1 + res.D - res.DT;
        var cv = -(tt0 + res.TT);
        return new CaloricProperties(
            r * t * (1 + t0 + res.T + res.D),
            r * (t0 + res.T - a0 - res.A),
            r * cv,
            r * (cv + thermal * thermal / stiffness),
            Math.Sqrt(r * t / mass * (stiffness + thermal * thermal / cv)));
    }
}
