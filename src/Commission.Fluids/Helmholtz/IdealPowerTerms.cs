namespace Commission.Fluids.Helmholtz;

/// <summary>Σ n τ^t.</summary>
internal sealed class IdealPowerTerms(double[] n, double[] t) : IdealTerms
{
    public override void Add(double tau, ref IdealDerivatives sum)
    {
        for (int k = 0; k < n.Length; k++)
        {
            double v = n[k] * Math.Pow(tau, t[k]);
            sum.A += v;
            sum.T += t[k] * v;
            sum.TT += t[k] * (t[k] - 1) * v;
        }
    }
}
