namespace Commission.Fluids.Helmholtz;

/// <summary>n τ^t δ^d exp(−η(δ−ε)² − β(τ−γ)²) (Setzmann and Wagner 1991; Lemmon, McLinden and Wagner 2009, eq. 10).</summary>
internal sealed class GaussianTerms(double[] n, double[] t, int[] d, double[] eta, double[] epsilon, double[] beta, double[] gamma) : ResidualTerms
{
    public override int WorkLength => 3 * n.Length;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
        var m = n.Length;
        for (var k = 0; k < m; k++)
        {
            var x = tau - gamma[k];
            var c = n[k] * Math.Exp(t[k] * lnTau - beta[k] * x * x);
            var q = t[k] - 2 * beta[k] * tau * x;
            work[k] = c;
            work[m + k] = c * q;
            work[2 * m + k] = c * (q * q - t[k] - 2 * beta[k] * tau * tau);
        }
    }

    public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var m = n.Length;
        var delta = table.Delta;
        for (var k = 0; k < m; k++)
        {
            var y = delta - epsilon[k];
            var f = table.Power[d[k]] * Math.Exp(-eta[k] * y * y);
            var p = d[k] - 2 * eta[k] * delta * y;
            double c = work[k] * f, q = work[m + k] * f;
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * p - d[k] - 2 * eta[k] * delta * delta);
            sum.T += q;
            sum.DT += q * p;
            sum.TT += work[2 * m + k] * f;
        }
    }

    public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var delta = table.Delta;
        for (var k = 0; k < n.Length; k++)
        {
            var y = delta - epsilon[k];
            var p = d[k] - 2 * eta[k] * delta * y;
            var c = work[k] * table.Power[d[k]] * Math.Exp(-eta[k] * y * y);
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * p - d[k] - 2 * eta[k] * delta * delta);
        }
    }
}

/// <summary>n τ^t δ^d exp(−η(δ−ε)² − β(δ−γ)), the special terms of a departure function (Kunz and Wagner 2012, eq. 22).</summary>
internal sealed class GergTerms(double[] n, double[] t, int[] d, double[] eta, double[] epsilon, double[] beta, double[] gamma) : ResidualTerms
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
        var delta = table.Delta;
        for (var k = 0; k < m; k++)
        {
            var y = delta - epsilon[k];
            var f = table.Power[d[k]] * Math.Exp(-eta[k] * y * y - beta[k] * (delta - gamma[k]));
            var p = d[k] - 2 * eta[k] * delta * y - beta[k] * delta;
            double c = work[k] * f, q = work[m + k] * f;
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * p - d[k] - 2 * eta[k] * delta * delta);
            sum.T += q;
            sum.DT += q * p;
            sum.TT += work[2 * m + k] * f;
        }
    }

    public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var delta = table.Delta;
        for (var k = 0; k < n.Length; k++)
        {
            var y = delta - epsilon[k];
            var p = d[k] - 2 * eta[k] * delta * y - beta[k] * delta;
            var c = work[k] * table.Power[d[k]] * Math.Exp(-eta[k] * y * y - beta[k] * (delta - gamma[k]));
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * p - d[k] - 2 * eta[k] * delta * delta);
        }
    }
}

/// <summary>n τ^t δ^d exp(η(δ−ε)² + 1/(β(τ−γ)² + b)), η &lt; 0 (Gao, Wu, Bell, Harvey and Lemmon 2020, ammonia).</summary>
internal sealed class GaoBTerms(double[] n, double[] t, int[] d, double[] eta, double[] epsilon, double[] beta, double[] gamma, double[] b) : ResidualTerms
{
    public override int WorkLength => 3 * n.Length;

    public override void Prepare(double tau, double lnTau, Span<double> work)
    {
        var m = n.Length;
        for (var k = 0; k < m; k++)
        {
            var x = tau - gamma[k];
            var w = 1 / (beta[k] * x * x + b[k]);
            var c = n[k] * Math.Exp(t[k] * lnTau + w);
            // ln of the temperature part: t ln τ + w; its scaled first derivative q and second derivative.
            var w1 = -2 * beta[k] * x * w * w;
            var w2 = -2 * beta[k] * w * w + 8 * beta[k] * beta[k] * x * x * w * w * w;
            var q = t[k] + tau * w1;
            work[k] = c;
            work[m + k] = c * q;
            work[2 * m + k] = c * (q * q - t[k] + tau * tau * w2);
        }
    }

    public override void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var m = n.Length;
        var delta = table.Delta;
        for (var k = 0; k < m; k++)
        {
            var y = delta - epsilon[k];
            var f = table.Power[d[k]] * Math.Exp(eta[k] * y * y);
            var p = d[k] + 2 * eta[k] * delta * y;
            double c = work[k] * f, q = work[m + k] * f;
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * p - d[k] + 2 * eta[k] * delta * delta);
            sum.T += q;
            sum.DT += q * p;
            sum.TT += work[2 * m + k] * f;
        }
    }

    public override void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum)
    {
        var delta = table.Delta;
        for (var k = 0; k < n.Length; k++)
        {
            var y = delta - epsilon[k];
            var p = d[k] + 2 * eta[k] * delta * y;
            var c = work[k] * table.Power[d[k]] * Math.Exp(eta[k] * y * y);
            sum.A += c;
            sum.D += c * p;
            sum.DD += c * (p * p - d[k] + 2 * eta[k] * delta * delta);
        }
    }
}
