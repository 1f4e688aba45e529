namespace Commission.Fluids.Helmholtz;

/// <summary>n τ^t δ^d, and n τ^t δ^d exp(−δ^l) where l &gt; 0 (e.g. Tillner-Roth and Yokozeki 1997, eq. 4).</summary>
internal sealed class PowerTerms : ResidualTerms
{
    private readonly double[] _n;
    private readonly double[] _t;
    private readonly int[] _d;
    private readonly int[] _l;
    private readonly int _mask;
    private readonly TemperaturePowers _powers;

    public PowerTerms(double[] n, double[] t, int[] d, int[] l)
    {
        _n = n;
        _t = t;
        _d = d;
        _l = l;
        _powers = new TemperaturePowers(t);
        foreach (var li in l)
            _mask |= li > 0 ? 1 << li : 0;
    }

    public override int WorkLength => 3 * _n.Length;

    public override int DecayMask => _mask;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
        var m = _n.Length;
        Span<double> c = work[..m], q = work.Slice(m, m), qq = work.Slice(2 * m, m);
        _powers.Fill(tau, lnTau, c);
        for (var k = 0; k < m; k++)
        {
            var t = _t[k];
            var value = _n[k] * c[k];
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

/// <summary>
/// τ^t of all terms. Most equations have exponents in quarters between −8 and 56: those are products of two shared powers, and only the
/// others need an exponential, each once.
/// </summary>
internal sealed class TemperaturePowers
{
    private const int Quarters = 4;
    private const int Units = 8;
    private const int Eights = 8;

    private readonly double[] _t;

    // Of a term in quarters 4t + 32, of another −1, or −2 less the earlier term with the same exponent.
    private readonly int[] _plan;
    private readonly int _highest;
    private readonly bool _anyQuarter;

    public TemperaturePowers(double[] t)
    {
        _t = t;
        _plan = new int[t.Length];
        for (var k = 0; k < t.Length; k++)
        {
            var quarters = Quarters * (t[k] + Units);
            if (quarters == Math.Floor(quarters) && quarters >= 0 && quarters < Quarters * Units * Eights)
            {
                _plan[k] = (int)quarters;
                _highest = Math.Max(_highest, (int)quarters / (Quarters * Units));
                _anyQuarter = true;
            }
            else
            {
                var earlier = Array.IndexOf(t, t[k], 0, k);
                _plan[k] = earlier < 0 ? -1 : -2 - earlier;
            }
        }
    }

    public void Fill(double tau, double lnTau, Span<double> values)
    {
        Span<double> fine = stackalloc double[Quarters * Units];
        Span<double> coarse = stackalloc double[Eights];
        if (_anyQuarter)
        {
            double half = Math.Sqrt(tau), quarter = Math.Sqrt(half), three = half * quarter, unit = 1;
            for (var i = 0; i < Quarters * Units; i += Quarters)
            {
                fine[i] = unit;
                fine[i + 1] = unit * quarter;
                fine[i + 2] = unit * half;
                fine[i + 3] = unit * three;
                unit *= tau;
            }
            coarse[0] = 1 / unit;
            coarse[1] = 1;
            for (var i = 2; i <= _highest; i++)
                coarse[i] = coarse[i - 1] * unit;
        }
        for (var k = 0; k < values.Length; k++)
        {
            var plan = _plan[k];
            values[k] = plan >= 0 ? fine[plan & (Quarters * Units - 1)] * coarse[plan >> 5]
                : plan == -1 ? Math.Exp(_t[k] * lnTau)
                : values[-2 - plan];
        }
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
