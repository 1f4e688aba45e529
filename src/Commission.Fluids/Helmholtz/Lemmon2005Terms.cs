namespace Commission.Fluids.Helmholtz;

/// <summary>n τ^t δ^d exp(−δ^l) exp(−τ^m), each exponential only where l &gt; 0 or m &gt; 0 (Lemmon and Jacobsen 2005, R-125).</summary>
internal sealed class Lemmon2005Terms : ResidualTerms
{
    private readonly double[] _n;
    private readonly double[] _t;
    private readonly int[] _d;
    private readonly int[] _l;
    private readonly double[] _m;
    private readonly int _mask;

    public Lemmon2005Terms(double[] n, double[] t, int[] d, int[] l, double[] m)
    {
        _n = n;
        _t = t;
        _d = d;
        _l = l;
        _m = m;
        foreach (int li in l)
            _mask |= li > 0 ? 1 << li : 0;
    }

    public override int Count => _n.Length;

    public override int WorkLength => 3 * _n.Length;

    public override int DecayMask => _mask;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
        int count = _n.Length;
        for (int k = 0; k < count; k++)
        {
            double m = _m[k];
            double v = m > 0 ? Math.Exp(m * lnTau) : 0;
            double c = _n[k] * Math.Exp(_t[k] * lnTau - v);
            double q = _t[k] - m * v;
            work[k] = c;
            work[count + k] = c * q;
            work[2 * count + k] = c * (q * (q - 1) - m * m * v);
        }
    }

    public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        int count = _n.Length;
        for (int k = 0; k < count; k++)
        {
            int d = _d[k], l = _l[k];
            double u = l == 0 ? 0 : table.Power[l];
            double f = table.Power[d] * table.Decay[l];
            double p = d - l * u;
            double c = work[k] * f, q = work[count + k] * f;
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * (p - 1) - l * (double)l * u);
            sum.T += q;
            sum.DT += q * p;
            sum.TT += work[2 * count + k] * f;
        }
    }

    public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        for (int k = 0; k < _n.Length; k++)
        {
            int d = _d[k], l = _l[k];
            double u = l == 0 ? 0 : table.Power[l];
            double p = d - l * u;
            double c = work[k] * table.Power[d] * table.Decay[l];
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * (p - 1) - l * (double)l * u);
        }
    }
}
