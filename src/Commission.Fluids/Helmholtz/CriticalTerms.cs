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
        double delta = table.Delta;
        double y = delta - 1;
        if (Math.Abs(y) < 1e-10)
            y = y < 0 ? -1e-10 : 1e-10;
        double x = tau - 1;
        double y2 = y * y;
        for (int k = 0; k < n.Length; k++)
        {
            double psi = Math.Exp(-cc[k] * y2 - dd[k] * x * x);
            if (psi < 1e-300)
                continue;
            double inv = 1 / (2 * beta[k]);
            double ya = Math.Pow(y2, a[k]);
            double yb = Math.Pow(y2, inv);
            double theta = -x + aa[k] * yb;
            double big = theta * theta + bb[k] * ya;

            // Derivatives of Δ in δ (y²^p has the derivative 2p y²^p / y).
            double thetaY = 2 * inv * aa[k] * yb / y;
            double thetaYY = 2 * inv * (2 * inv - 1) * aa[k] * yb / y2;
            double bigD = 2 * theta * thetaY + 2 * a[k] * bb[k] * ya / y;
            double bigDD = 2 * thetaY * thetaY + 2 * theta * thetaYY + 2 * a[k] * (2 * a[k] - 1) * bb[k] * ya / y2;

            double e = b[k];
            double pow = Math.Pow(big, e);
            double pow1 = e * pow / big;
            double pow2 = (e - 1) * pow1 / big;
            double fD = pow1 * bigD;
            double fDD = pow1 * bigDD + pow2 * bigD * bigD;
            // ∂Δ/∂τ = −2θ, ∂²Δ/∂τ² = 2, ∂²Δ/∂δ∂τ = −2 ∂θ/∂δ.
            double fT = -2 * theta * pow1;
            double fTT = 2 * pow1 + 4 * theta * theta * pow2;
            double fDT = -2 * thetaY * pow1 - 2 * theta * bigD * pow2;

            double psiD = -2 * cc[k] * y * psi;
            double psiDD = (4 * cc[k] * cc[k] * y2 - 2 * cc[k]) * psi;
            double psiT = -2 * dd[k] * x * psi;
            double psiTT = (4 * dd[k] * dd[k] * x * x - 2 * dd[k]) * psi;
            double psiDT = 4 * cc[k] * dd[k] * x * y * psi;

            double nk = n[k];
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
        foreach (int li in l)
            _mask |= li > 0 ? 1 << li : 0;
    }

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
