namespace Commission.Fluids.Helmholtz;

/// <summary>n τ^t δ^d exp(−g δ^l) with a factor g of its own in each term (Platzer, Polt and Maurer 1990; Huber et al. 2025).</summary>
internal sealed class ExponentialTerms(double[] n, double[] t, int[] d, int[] l, double[] g) : ResidualTerms
{
    public override int Count => n.Length;

    public override int WorkLength => 3 * n.Length;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
        int m = n.Length;
        for (int k = 0; k < m; k++)
        {
            double c = n[k] * Math.Exp(t[k] * lnTau);
            work[k] = c;
            work[m + k] = c * t[k];
            work[2 * m + k] = c * t[k] * (t[k] - 1);
        }
    }

    public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        int m = n.Length;
        for (int k = 0; k < m; k++)
        {
            double u = g[k] * table.Power[l[k]];
            double f = table.Power[d[k]] * Math.Exp(-u);
            double p = d[k] - l[k] * u;
            double c = work[k] * f, q = work[m + k] * f;
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * (p - 1) - l[k] * (double)l[k] * u);
            sum.T += q;
            sum.DT += q * p;
            sum.TT += work[2 * m + k] * f;
        }
    }

    public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        for (int k = 0; k < n.Length; k++)
        {
            double u = g[k] * table.Power[l[k]];
            double p = d[k] - l[k] * u;
            double c = work[k] * table.Power[d[k]] * Math.Exp(-u);
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * (p - 1) - l[k] * (double)l[k] * u);
        }
    }
}
