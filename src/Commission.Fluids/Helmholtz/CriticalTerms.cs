namespace Commission.Fluids.Helmholtz;

/// <summary>
/// n Δ^b δ ψ with Δ = θ² + B((δ−1)²)^a, θ = (1−τ) + A((δ−1)²)^(1/(2β)), ψ = exp(−C(δ−1)² − D(τ−1)²)
/// (Span and Wagner 1996, table 32; IAPWS R6-95, table 5). At δ = 1 exactly the δ derivatives of Δ are taken at a distance of 1e-10,
/// where they differ from the limit by less than rounding and stay finite.
/// </summary>
internal sealed class NonAnalyticTerms(double[] n, double[] a, double[] b, double[] beta, double[] aa, double[] bb, double[] cc, double[] dd) : ResidualTerms
{
    public override int WorkLength => 0;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
    }

    public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum) =>
        Add(table, tau, work, ref sum);

    public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var delta = table.Delta;
        var y = delta - 1;
        if (Math.Abs(y) < 1e-10)
            y = y < 0 ? -1e-10 : 1e-10;
        var x = tau - 1;
        var y2 = y * y;
        for (var k = 0; k < n.Length; k++)
        {
            var psi = Math.Exp(-cc[k] * y2 - dd[k] * x * x);
            if (psi < 1e-300)
                continue;
            var inv = 1 / (2 * beta[k]);
            var ya = Math.Pow(y2, a[k]);
            var yb = Math.Pow(y2, inv);
            var theta = -x + aa[k] * yb;
            var big = theta * theta + bb[k] * ya;

            // Derivatives of Δ in δ (y²^p has the derivative 2p y²^p / y).
            var thetaY = 2 * inv * aa[k] * yb / y;
            var thetaYY = 2 * inv * (2 * inv - 1) * aa[k] * yb / y2;
            var bigD = 2 * theta * thetaY + 2 * a[k] * bb[k] * ya / y;
            var bigDD = 2 * thetaY * thetaY + 2 * theta * thetaYY + 2 * a[k] * (2 * a[k] - 1) * bb[k] * ya / y2;

            var e = b[k];
            var pow = Math.Pow(big, e);
            var pow1 = e * pow / big;
            var pow2 = (e - 1) * pow1 / big;
            var fD = pow1 * bigD;
            var fDD = pow1 * bigDD + pow2 * bigD * bigD;
            // ∂Δ/∂τ = −2θ, ∂²Δ/∂τ² = 2, ∂²Δ/∂δ∂τ = −2 ∂θ/∂δ.
            var fT = -2 * theta * pow1;
            var fTT = 2 * pow1 + 4 * theta * theta * pow2;
            var fDT = -2 * thetaY * pow1 - 2 * theta * bigD * pow2;

            var psiD = -2 * cc[k] * y * psi;
            var psiDD = (4 * cc[k] * cc[k] * y2 - 2 * cc[k]) * psi;
            var psiT = -2 * dd[k] * x * psi;
            var psiTT = (4 * dd[k] * dd[k] * x * x - 2 * dd[k]) * psi;
            var psiDT = 4 * cc[k] * dd[k] * x * y * psi;

            var nk = n[k];
            sum.A += nk * pow * delta * psi;
            sum.D += nk * delta * (pow * (psi + delta * psiD) + fD * delta * psi);
            sum.DD += nk * delta * delta * (pow * (2 * psiD + delta * psiDD) + 2 * fD * (psi + delta * psiD) + fDD * delta * psi);
            sum.T += nk * tau * delta * (fT * psi + pow * psiT);
            sum.TT += nk * tau * tau * delta * (fTT * psi + 2 * fT * psiT + pow * psiTT);
            sum.DT += nk * tau * delta * (pow * (psiT + delta * psiDT) + delta * fD * psiT + fT * (psi + delta * psiD) + fDT * delta * psi);
        }
    }
}

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
        foreach (var li in l)
            _mask |= li > 0 ? 1 << li : 0;
    }

    public override int WorkLength => 3 * _n.Length;

    public override int DecayMask => _mask;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
        var count = _n.Length;
        for (var k = 0; k < count; k++)
        {
            var m = _m[k];
            var v = m > 0 ? Math.Exp(m * lnTau) : 0;
            var c = _n[k] * Math.Exp(_t[k] * lnTau - v);
            var q = _t[k] - m * v;
            work[k] = c;
            work[count + k] = c * q;
            work[2 * count + k] = c * (q * (q - 1) - m * m * v);
        }
    }

    public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var count = _n.Length;
        for (var k = 0; k < count; k++)
        {
            int d = _d[k], l = _l[k];
            var u = l == 0 ? 0 : table.Power[l];
            var f = table.Power[d] * table.Decay[l];
            var p = d - l * u;
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
        for (var k = 0; k < _n.Length; k++)
        {
            int d = _d[k], l = _l[k];
            var u = l == 0 ? 0 : table.Power[l];
            var p = d - l * u;
            var c = work[k] * table.Power[d] * table.Decay[l];
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * (p - 1) - l * (double)l * u);
        }
    }
}
