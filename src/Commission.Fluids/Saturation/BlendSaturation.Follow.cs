namespace Commission.Fluids.Saturation;

/// <content>Following a saturation curve from a state that is easy to solve.</content>
internal sealed partial class BlendSaturation
{
    /// <summary>
    /// Follows the curve from a moderate temperature to a temperature or (when that is NaN) to a pressure, predicting each step along the
    /// tangent. Returns false where the curve ends (critical point, retrograde turn) before.
    /// </summary>
    private bool FollowTo(SaturationCurve curve, double temperature, double pressure)
    {
        double tr = 0;
        for (int i = 0; i < _n; i++)
            tr += _model.Composition[i] * _model.Components[i].CriticalTemperature;
        double wanted = double.IsNaN(temperature) ? RoughTemperature(curve, pressure) : temperature;
        ReadOnlySpan<double> starts = [0.9 * wanted, 0.8 * tr, 0.7 * tr, 0.6 * tr, 0.75 * wanted, 1.08 * wanted];
        foreach (double start in starts)
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
        bool givenPressure = !double.IsNaN(pressure);
        double step = 0.02;
        double lnTarget = Math.Log(temperature), lnPressure = Math.Log(pressure);
        for (int count = 0; count < 400; count++)
        {
            double here = _u[_n + 1];
            double remaining = givenPressure
                ? (lnPressure - Math.Log(Pressure)) * Pressure / (Slope * Temperature)
                : lnTarget - here;
            bool last = Math.Abs(remaining) <= step;
            double change = last ? remaining : Math.CopySign(step, remaining);
            Array.Copy(_u, _saved, _u.Length);
            (double savedTemperature, double savedPressure, double savedSlope) = (Temperature, Pressure, Slope);
            Array.Copy(_direction, _tangent, _direction.Length);
            for (int i = 0; i < _u.Length; i++)
                _u[i] += change * _direction[i];
            bool found = Newton(curve, Math.Exp(here + change), last && givenPressure ? pressure : double.NaN)
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
        double incipient = 0;
        for (int i = 0; i < _n; i++)
            incipient += Math.Exp(_saved[i]);
        double gap = Math.Log(incipient) - _saved[_n];
        return curve == SaturationCurve.Bubble ? -gap : gap;
    }
}
