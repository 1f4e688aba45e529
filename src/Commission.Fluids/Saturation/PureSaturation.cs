using Commission.Fluids.Helmholtz;

namespace Commission.Fluids.Saturation;

/// <summary>
/// Saturation of a pure fluid by the Maxwell criterion: equal pressure and equal Gibbs energy of both phases, Newton's method in the
/// two densities (Akasaka, J. Therm. Sci. Technol. 3 (2008) 442) from the auxiliary equations. Not thread-safe.
/// </summary>
internal sealed class PureSaturation(EquationOfState eos)
{
    private readonly double[] _work = new double[eos.Residual.WorkLength];
    private readonly DensityTable _table = new();
    private readonly double _floor = 0.98 * eos.LowestTemperature;
    private double _tau;

    /// <summary>K of the last solution.</summary>
    public double Temperature { get; private set; }

    /// <summary>Pa.</summary>
    public double Pressure { get; private set; }

    /// <summary>mol/m³.</summary>
    public double Liquid { get; private set; }

    /// <summary>mol/m³.</summary>
    public double Vapor { get; private set; }

    /// <summary>dp/dT by Clapeyron's equation from the entropies and volumes of the two phases, Pa/K.</summary>
    public double Slope { get; private set; }

    /// <summary>Solves at a temperature; false when no pair of densities was found.</summary>
    public bool AtTemperature(double temperature)
    {
        double liquid = eos.LiquidDensity.At(temperature), vapor = eos.VaporDensity.At(temperature);
        var guess = eos.VaporPressure.At(temperature);
        var ideal = guess / (eos.GasConstant * temperature);
        // The three auxiliary equations of a few fluids contradict each other: a saturated vapour has Z between about 0.25 and 1.
        if (!(vapor > 0.98 * ideal && vapor < 4.5 * ideal))
            vapor = 1.05 * ideal;
        if (Solve(temperature, liquid, vapor) && IsNear(guess))
            return true;
        // Near the critical point the auxiliary equations may be too coarse: widen the gap between the phases step by step.
        var gap = Math.Pow(1 - temperature / eos.CriticalTemperature, 0.325);
        for (var width = 1.2; width < 4; width += 0.3)
        {
            if (Solve(temperature, eos.CriticalDensity * (1 + width * gap), eos.CriticalDensity * Math.Max(0.02, 1 - width * gap)) && IsNear(guess))
                return true;
        }
        return false;
    }

    /// <summary>Solves at a pressure below the critical: Newton's method on ln p in T with the slope of Clapeyron.</summary>
    public bool AtPressure(double pressure)
    {
        var temperature = RoughTemperature(pressure);
        var lnTarget = Math.Log(pressure);
        double low = _floor, high = eos.CriticalTemperature;
        for (var iteration = 0; iteration < 50; iteration++)
        {
            var near = iteration > 0 && Math.Abs(temperature - Temperature) < 0.02 * temperature;
            var dT = temperature - Temperature;
            var found = near && Solve(temperature, Liquid, Vapor * Math.Exp(Slope / Pressure * dT));
            if (!found && !AtTemperature(temperature))
                return false;
            var error = lnTarget - Math.Log(Pressure);
            if (error > 0)
                low = Math.Max(low, temperature);
            else
                high = Math.Min(high, temperature);
            // In 1/T the vapour pressure is nearly straight: Newton's step in that variable.
            var next = 1 / (1 / temperature - error * Pressure / (Slope * temperature * temperature));
            if (Math.Abs(next - temperature) < 1e-13 * temperature || Math.Abs(error) < 2e-14)
                return true;
            if (!(next > low && next < high))
                next = 0.5 * (low + high);
            temperature = next;
        }
        return Math.Abs(Math.Log(Pressure) - lnTarget) < 1e-11;
    }

    /// <summary>
    /// Older equations have a further loop inside the two-phase region and with it a second pair of equal pressures and Gibbs energies;
    /// the auxiliary equation, within a few per cent everywhere, tells them apart.
    /// </summary>
    private bool IsNear(double auxiliary) => Pressure > 0.5 * auxiliary && Pressure < 2 * auxiliary;

    private double RoughTemperature(double pressure)
    {
        var tc = eos.CriticalTemperature;
        var t1 = 0.7 * tc;
        var p1 = Math.Log(eos.VaporPressure.At(t1));
        var target = Math.Log(pressure);
        // From 0.7 Tc to the critical point ln p is nearly straight in 1/T.
        var b = (Math.Log(eos.CriticalPressure) - p1) / (1 / t1 - 1 / tc);
        var t = 1 / (1 / t1 + (p1 - target) / b);
        for (var i = 0; i < 4; i++)
        {
            t = Math.Clamp(t, _floor, 0.9999 * tc);
            var p = Math.Log(eos.VaporPressure.At(t));
            if (Math.Abs(t - t1) > 1e-9 * t && p != p1)
                b = (p - p1) / (1 / t1 - 1 / t);
            t1 = t;
            p1 = p;
            t = 1 / (1 / t + (p - target) / b);
            if (Math.Abs(t - t1) < 1e-4 * t)
                break;
        }
        return Math.Clamp(t, _floor, 0.99999 * tc);
    }

    private bool Solve(double temperature, double liquid, double vapor)
    {
        _tau = eos.ReducingTemperature / temperature;
        eos.Residual.Prepare(_tau, Math.Log(_tau), _work);
        double x = liquid / eos.ReducingDensity, y = vapor / eos.ReducingDensity;
        var mask = eos.Residual.DecayMask;
        var done = false;
        for (var iteration = 0; iteration < 60; iteration++)
        {
            _table.Fill(x, mask);
            eos.Residual.EvaluateVolume(_table, _tau, _work, out var l);
            _table.Fill(y, mask);
            eos.Residual.EvaluateVolume(_table, _tau, _work, out var v);
            double jl = x * (1 + l.D), jv = y * (1 + v.D);
            double kl = l.D + l.A + Math.Log(x), kv = v.D + v.A + Math.Log(y);
            double sl = 1 + 2 * l.D + l.DD, sv = 1 + 2 * v.D + v.DD;
            if (sl <= 0 || sv <= 0)
            {
                // Inside the spinodal: step outward.
                if (sl <= 0)
                    x *= 1.03;
                if (sv <= 0)
                    y *= 0.9;
                if (x > 5 || y < 1e-12)
                    return false;
                continue;
            }
            // dJ/dx = sl, dK/dx = sl/x for each phase.
            var determinant = sv * (sl / x) - sl * (sv / y);
            double dk = kv - kl, dj = jv - jl;
            var dx = (dk * sv - dj * sv / y) / determinant;
            var dy = (dk * sl - dj * sl / x) / determinant;
            var scale = 1.0;
            if (Math.Abs(dx) > 0.1 * x)
                scale = 0.1 * x / Math.Abs(dx);
            if (Math.Abs(dy) * scale > 0.4 * y)
                scale = 0.4 * y / Math.Abs(dy);
            x += scale * dx;
            y += scale * dy;
            if (Math.Abs(dx) < 1e-10 * x && Math.Abs(dy) < 1e-10 * y)
            {
                done = true;
                break;
            }
        }
        if (!done || !(x > y * 1.0001))
            return false;

        _table.Fill(x, mask);
        eos.Residual.Evaluate(_table, _tau, _work, out var liquidEnd);
        _table.Fill(y, mask);
        eos.Residual.Evaluate(_table, _tau, _work, out var vaporEnd);
        var rt = eos.GasConstant * temperature;
        Temperature = temperature;
        Liquid = x * eos.ReducingDensity;
        Vapor = y * eos.ReducingDensity;
        Pressure = Vapor * rt * (1 + vaporEnd.D);
        var entropy = eos.GasConstant * (vaporEnd.T - vaporEnd.A - liquidEnd.T + liquidEnd.A + Math.Log(x / y));
        Slope = entropy / (1 / Vapor - 1 / Liquid);
        return Pressure > 0;
    }
}
