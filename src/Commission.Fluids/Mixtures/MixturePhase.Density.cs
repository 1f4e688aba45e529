namespace Commission.Fluids.Mixtures;

/// <content>Density at a temperature and pressure.</content>
internal sealed partial class MixturePhase
{
    /// <summary>
    /// The density of the liquid at the pressure, starting from a guess; NaN where the liquid branch has no such root. From the dense
    /// side Newton's method converges without crossing the spinodal, because p(ρ) is convex there.
    /// </summary>
    public double SolveLiquid(double pressure, double guess)
    {
        double rho = guess;
        for (int iteration = 0; iteration < 60; iteration++)
        {
            EvaluateVolume(rho);
            if (PressureByDensity <= 0)
            {
                rho *= 1.06;
                if (rho > 6 * ReducingDensity)
                    return double.NaN;
                continue;
            }
            double step = (pressure - Pressure) / PressureByDensity;
            double limit = 0.1 * rho;
            if (step > limit)
                step = limit;
            else if (step < -limit)
                step = -limit;
            rho += step;
            if (Math.Abs(step) < 1e-11 * rho)
                return rho;
        }
        return double.NaN;
    }

    /// <summary>The density of the vapour at the pressure; NaN where the vapour branch ends below this pressure.</summary>
    public double SolveVapor(double pressure)
    {
        double rt = Model.GasConstant * Temperature;
        double rho = pressure / rt;
        for (int iteration = 0; iteration < 60; iteration++)
        {
            EvaluateVolume(rho);
            if (PressureByDensity <= 0)
                return double.NaN;
            double step = (pressure - Pressure) / PressureByDensity;
            if (step > 0.5 * rho)
                step = 0.5 * rho;
            else if (step < -0.5 * rho)
                step = -0.5 * rho;
            rho += step;
            if (Math.Abs(step) < 1e-11 * rho)
                return rho;
        }
        return double.NaN;
    }

    /// <summary>The one density at a pressure above the critical temperature, where p rises with ρ: Newton's method kept in a bracket.</summary>
    public double SolveSupercritical(double pressure)
    {
        double low = 0, high = 5 * ReducingDensity;
        double rho = Math.Min(pressure / (Model.GasConstant * Temperature), ReducingDensity);
        for (int iteration = 0; iteration < 200; iteration++)
        {
            EvaluateVolume(rho);
            double error = pressure - Pressure;
            if (error > 0)
                low = rho;
            else
                high = rho;
            double next = PressureByDensity > 0 ? rho + error / PressureByDensity : double.NaN;
            if (!(next > low && next < high))
                next = 0.5 * (low + high);
            if (Math.Abs(next - rho) < 1e-12 * rho)
                return next;
            rho = next;
        }
        return double.NaN;
    }
}
