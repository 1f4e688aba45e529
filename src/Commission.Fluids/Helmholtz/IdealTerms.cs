namespace Commission.Fluids.Helmholtz;

/// <summary>One kind of term of an ideal-gas Helmholtz energy.</summary>
internal abstract class IdealTerms
{
    /// <summary>Adds the value and derivatives at the reciprocal reduced temperature τ.</summary>
    public abstract void Add(double tau, ref IdealDerivatives sum);
}

/// <summary>The ideal-gas reduced Helmholtz energy without ln δ, and its derivatives: <c>T</c> = τ ∂α0/∂τ, <c>TT</c> = τ² ∂²α0/∂τ².</summary>
internal struct IdealDerivatives
{
    public double A;
    public double T;
    public double TT;
}

/// <summary>ln δ + a1 + a2 τ; ln δ is added by <see cref="EquationOfState"/>. Also carries an offset of enthalpy and entropy, which has the same form.</summary>
internal sealed class LeadTerm(double a1, double a2) : IdealTerms
{
    public override void Add(double tau, ref IdealDerivatives sum)
    {
        sum.A += a1 + a2 * tau;
        sum.T += a2 * tau;
    }
}

/// <summary>a ln τ.</summary>
internal sealed class LogTauTerm(double a) : IdealTerms
{
    public override void Add(double tau, ref IdealDerivatives sum)
    {
        sum.A += a * Math.Log(tau);
        sum.T += a;
        sum.TT -= a;
    }
}

/// <summary>Σ n τ^t.</summary>
internal sealed class IdealPowerTerms(double[] n, double[] t) : IdealTerms
{
    public override void Add(double tau, ref IdealDerivatives sum)
    {
        for (var k = 0; k < n.Length; k++)
        {
            var v = n[k] * Math.Pow(tau, t[k]);
            sum.A += v;
            sum.T += t[k] * v;
            sum.TT += t[k] * (t[k] - 1) * v;
        }
    }
}

/// <summary>
/// Σ n ln(c + d exp(sθτ)): the Planck–Einstein function n ln(1 − exp(−θτ)) has c = 1, d = −1, s = −1; the general form has s = 1 and
/// its own c, d; the form written with a temperature, n ln(1 − exp(−v/T)), has θ = v divided by the reducing temperature.
/// </summary>
internal sealed class PlanckEinsteinTerms(double[] n, double[] theta, double[] c, double[] d) : IdealTerms
{
    /// <summary>The usual form n ln(1 − exp(−θτ)).</summary>
    public static PlanckEinsteinTerms Usual(double[] n, double[] theta)
    {
        double[] negative = new double[theta.Length], one = new double[theta.Length], minus = new double[theta.Length];
        for (var k = 0; k < theta.Length; k++)
        {
            negative[k] = -theta[k];
            one[k] = 1;
            minus[k] = -1;
        }
        return new PlanckEinsteinTerms(n, negative, one, minus);
    }

    public override void Add(double tau, ref IdealDerivatives sum)
    {
        for (var k = 0; k < n.Length; k++)
        {
            var z = theta[k] * tau;
            var e = d[k] * Math.Exp(z);
            var q = e / (c[k] + e);
            sum.A += n[k] * Math.Log(c[k] + e);
            sum.T += n[k] * z * q;
            sum.TT += n[k] * z * z * q * (1 - q);
        }
    }
}

/// <summary>
/// The part of α0 that belongs to cp0/R = Σ c T^t, integrated twice from T0: for t other than 0 and −1
/// −c T^t/(t(t+1)) − c T0^(t+1)/(T(t+1)) + c T0^t/t; for t = 0 c − cτ/τ0 + c ln(τ/τ0); for t = −1 cτ/Tr ln(τ0/τ) + c/Tr (τ − τ0).
/// </summary>
internal sealed class HeatCapacityPolynomialTerms(double[] c, double[] t, double referenceTemperature, double reducingTemperature) : IdealTerms
{
    public override void Add(double tau, ref IdealDerivatives sum)
    {
        var temperature = reducingTemperature / tau;
        var tau0 = reducingTemperature / referenceTemperature;
        for (var k = 0; k < c.Length; k++)
        {
            double tk = t[k], ck = c[k];
            if (tk == 0)
            {
                sum.A += ck - ck * tau / tau0 + ck * Math.Log(tau / tau0);
                sum.T += ck - ck * tau / tau0;
                sum.TT -= ck;
            }
            else if (tk == -1)
            {
                var log = Math.Log(tau0 / tau);
                sum.A += ck / reducingTemperature * (tau * log + tau - tau0);
                sum.T += ck / reducingTemperature * tau * log;
                sum.TT -= ck / reducingTemperature * tau;
            }
            else
            {
                var power = Math.Pow(temperature, tk);
                var linear = ck * Math.Pow(referenceTemperature, tk + 1) / (reducingTemperature * (tk + 1)) * tau;
                sum.A += -ck * power / (tk * (tk + 1)) - linear + ck * Math.Pow(referenceTemperature, tk) / tk;
                sum.T += ck * power / (tk + 1) - linear;
                sum.TT -= ck * power;
            }
        }
    }
}
