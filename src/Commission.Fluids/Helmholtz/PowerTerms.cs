namespace Commission.Fluids.Helmholtz;

/// <summary>n τ^t δ^d, and n τ^t δ^d exp(−δ^l) where l &gt; 0 (e.g. Tillner-Roth and Yokozeki 1997, eq. 4).</summary>
internal sealed class PowerTerms : ResidualTerms
{
    private readonly double[] _n;
    private readonly double[] _t;
    private readonly int[] _d;
    private readonly int[] _l;
    private readonly int _mask;

    public PowerTerms(double[] n, double[] t, int[] d, int[] l)
    {
        _n = n;
        _t = t;
        _d = d;
        _l = l;
        foreach (var li in l)
            _mask |= li > 0 ? 1 << li : 0;
    }

    public override int WorkLength => 3 * _n.Length;

    public override int DecayMask => _mask;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
        var m = _n.Length;
        Span<double> c = work[..m], q = work.Slice(m, m), qq = work.Slice(2 * m, m);
        for (var k = 0; k < m; k++)
        {
            var t = _t[k];
            var value = _n[k] * Math.Exp(t * lnTau);
            c[k] = value;
            q[k] = value * t;
            qq[k] = value * t * (t - 1);
        }
    }

    public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var m = _n.Length;
        ReadOnlySpan<double> c = work[..m], q = work.Slice(m, m), qq = work.Slice(2 * m, m);
        ReadOnlySpan<int> ds = _d.AsSpan(0, m), ls = _l.AsSpan(0, m);
        double[] power = table.Power, decay = table.Decay;
        double a = 0, ad = 0, at = 0, add = 0, adt = 0, att = 0;
        for (var k = 0; k < m; k++)
        {
            int d = ds[k], l = ls[k];
            var u = l == 0 ? 0 : power[l];
            var g = power[d] * decay[l];
            var p = d - l * u;
            var pp = p * (p - 1) - l * (double)l * u;
            double cg = c[k] * g, qg = q[k] * g;
            a += cg;
            ad += cg * p;
            add += cg * pp;
            at += qg;
            adt += qg * p;
            att += qq[k] * g;
        }
        sum.A += a;
        sum.D += ad;
        sum.T += at;
        sum.DD += add;
        sum.DT += adt;
        sum.TT += att;
    }

    public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var m = _n.Length;
        var c = work[..m];
        ReadOnlySpan<int> ds = _d.AsSpan(0, m), ls = _l.AsSpan(0, m);
        double[] power = table.Power, decay = table.Decay;
        double a = 0, ad = 0, add = 0;
        for (var k = 0; k < m; k++)
        {
            int d = ds[k], l = ls[k];
            var u = l == 0 ? 0 : power[l];
            var p = d - l * u;
            var cg = c[k] * power[d] * decay[l];
            a += cg;
            ad += cg * p;
            add += cg * (p * (p - 1) - l * (double)l * u);
        }
        sum.A += a;
        sum.D += ad;
        sum.DD += add;
    }
}

/// <summary>n τ^t δ^d exp(−g δ^l) with a factor g of its own in each term (Platzer, Polt and Maurer 1990; Huber et al. 2025).</summary>
internal sealed class ExponentialTerms(double[] n, double[] t, int[] d, int[] l, double[] g) : ResidualTerms
{
    public override int WorkLength => 3 * n.Length;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
        var m = n.Length;
        for (var k = 0; k < m; k++)
        {
            var c = n[k] * Math.Exp(t[k] * lnTau);
            work[k] = c;
            work[m + k] = c * t[k];
            work[2 * m + k] = c * t[k] * (t[k] - 1);
        }
    }

    public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var m = n.Length;
        for (var k = 0; k < m; k++)
        {
            var u = g[k] * table.Power[l[k]];
            var f = table.Power[d[k]] * Math.Exp(-u);
            var p = d[k] - l[k] * u;
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
        for (var k = 0; k < n.Length; k++)
        {
            var u = g[k] * table.Power[l[k]];
            var p = d[k] - l[k] * u;
            var c = work[k] * table.Power[d[k]] * Math.Exp(-u);
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * (p - 1) - l[k] * (double)l[k] * u);
        }
    }
}
