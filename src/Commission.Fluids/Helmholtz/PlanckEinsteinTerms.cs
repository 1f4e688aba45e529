namespace Commission.Fluids.Helmholtz;

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
        for (int k = 0; k < theta.Length; k++)
        {
            negative[k] = -theta[k];
            one[k] = 1;
            minus[k] = -1;
        }
        return new PlanckEinsteinTerms(n, negative, one, minus);
    }

    public override void Add(double tau, ref IdealDerivatives sum)
    {
        for (int k = 0; k < n.Length; k++)
        {
            double z = theta[k] * tau;
            double e = d[k] * Math.Exp(z);
            double q = e / (c[k] + e);
            sum.A += n[k] * Math.Log(c[k] + e);
            sum.T += n[k] * z * q;
            sum.TT += n[k] * z * z * q * (1 - q);
        }
    }
}
