using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <summary>
/// Critical point of a blend (Heidemann and Khalil, AIChE J. 26 (1980) 769): the smallest eigenvalue λ of √(z_i z_j) n ∂ln f_i/∂n_j
/// is zero, and so is its derivative along the eigenvector at constant volume.
/// </summary>
internal sealed class BlendCriticalPoint
{
    private readonly MixtureModel _model;
    private readonly MixturePhase _phase;
    private readonly int _n;
    private readonly double[] _matrix;
    private readonly double[] _vector;
    private readonly double[] _shifted;

    public BlendCriticalPoint(MixtureModel model)
    {
        _model = model;
        _phase = new MixturePhase(model);
        _n = model.Components.Length;
        _matrix = new double[_n * _n];
        _vector = new double[_n];
        _shifted = new double[_n];
    }

    public CriticalPoint? Find()
    {
        _phase.SetComposition(_model.Composition);
        var rhoR = _phase.ReducingDensity;
        var temperature = _phase.ReducingTemperature;
        // C changes sign once between a dilute and a dense state: scan, then bisect with secants.
        double previousRho = double.NaN, previousC = double.NaN, previousT = double.NaN;
        for (var factor = 1.6; factor > 0.55; factor -= 0.05)
        {
            var rho = factor * rhoR;
            var t = SpinodalTemperature(rho, double.IsNaN(previousT) ? temperature : previousT);
            if (double.IsNaN(t))
                continue;
            var c = Cubic(t, rho);
            if (!double.IsNaN(previousC) && c * previousC <= 0)
                return Refine(previousRho, previousC, rho, c, t);
            (previousRho, previousC, previousT) = (rho, c, t);
        }
        return null;
    }

    private CriticalPoint? Refine(double rho0, double c0, double rho1, double c1, double temperature)
    {
        var t = temperature;
        for (var i = 0; i < 60 && Math.Abs(rho1 - rho0) > 1e-9 * rho0; i++)
        {
            var rho = i % 3 == 2 ? 0.5 * (rho0 + rho1) : rho0 - c0 * (rho1 - rho0) / (c1 - c0);
            if (!(rho > Math.Min(rho0, rho1) && rho < Math.Max(rho0, rho1)))
                rho = 0.5 * (rho0 + rho1);
            t = SpinodalTemperature(rho, t);
            if (double.IsNaN(t))
                return null;
            var c = Cubic(t, rho);
            if (c * c0 <= 0)
                (rho1, c1) = (rho, c);
            else
                (rho0, c0) = (rho, c);
        }
        var density = 0.5 * (rho0 + rho1);
        t = SpinodalTemperature(density, t);
        if (double.IsNaN(t))
            return null;
        Set(t, density);
        return new CriticalPoint(t, _phase.Pressure, density * _model.MolarMass);
    }

    /// <summary>T at which the smallest eigenvalue vanishes at a density: secant from a guess.</summary>
    private double SpinodalTemperature(double rho, double guess)
    {
        double t0 = guess, l0 = Smallest(t0, rho);
        double t1 = l0 > 0 ? guess * 0.995 : guess * 1.005, l1 = Smallest(t1, rho);
        for (var i = 0; i < 50; i++)
        {
            var step = -l1 * (t1 - t0) / (l1 - l0);
            if (!double.IsFinite(step))
                return double.NaN;
            step = Math.Clamp(step, -0.05 * t1, 0.05 * t1);
            t0 = t1;
            l0 = l1;
            t1 += step;
            if (Math.Abs(step) < 1e-11 * t1)
                return t1;
            l1 = Smallest(t1, rho);
        }
        return double.NaN;
    }

    private void Set(double temperature, double rho)
    {
        _phase.SetComposition(_model.Composition);
        _phase.SetTemperature(temperature);
        _phase.Evaluate(rho);
        _phase.EvaluateFugacity();
    }

    private double Smallest(double temperature, double rho)
    {
        Set(temperature, rho);
        for (var i = 0; i < _n; i++)
        {
            for (var j = 0; j < _n; j++)
                _matrix[i * _n + j] = Math.Sqrt(_phase.X[i] * _phase.X[j]) * _phase.Jacobian[i * _n + j];
        }
        return SymmetricEigen.Smallest(_matrix, _n, _vector);
    }

    private double Cubic(double temperature, double rho)
    {
        Smallest(temperature, rho);
        // A fixed sign of the vector, so that C keeps its sign along the scan.
        var sum = 0.0;
        for (var i = 0; i < _n; i++)
            sum += _vector[i] * Math.Sqrt(_model.Composition[i]);
        double sign = sum < 0 ? -1 : 1;
        const double h = 1e-4;
        return sign * (Quadratic(temperature, rho, h) - Quadratic(temperature, rho, -h)) / (2 * h);
    }

    /// <summary>Σ Δn_i Δn_j ∂ln f_i/∂n_j at n = z + s Δn, Δn_i = √z_i v_i.</summary>
    private double Quadratic(double temperature, double rho, double s)
    {
        var total = 0.0;
        for (var i = 0; i < _n; i++)
        {
            _shifted[i] = _model.Composition[i] + s * Math.Sqrt(_model.Composition[i]) * _vector[i];
            total += _shifted[i];
        }
        for (var i = 0; i < _n; i++)
            _shifted[i] /= total;
        _phase.SetComposition(_shifted);
        _phase.SetTemperature(temperature);
        _phase.Evaluate(rho * total);
        _phase.EvaluateFugacity();
        var sum = 0.0;
        for (var i = 0; i < _n; i++)
        {
            for (var j = 0; j < _n; j++)
                sum += Math.Sqrt(_model.Composition[i] * _model.Composition[j]) * _vector[i] * _vector[j] * _phase.Jacobian[i * _n + j];
        }
        return sum / total;
    }
}
