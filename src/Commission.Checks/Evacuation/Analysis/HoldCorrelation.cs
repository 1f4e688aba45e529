namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// How long the readings of a hold remember each other. A first-order process with lag-1 correlation ρ asks for blocks of
/// (1+ρ)/(1−ρ) rows; ρ is taken from the residuals of the richest curve and corrected for the parameters that were fitted.
/// </summary>
internal static class HoldCorrelation
{
    private const double Most = 0.9995;

    /// <summary>Lag-1 correlation of residuals, pairs across dropped rows left out, corrected for <paramref name="parameters"/>.</summary>
    internal static double Lag1(ReadOnlySpan<double> residuals, ReadOnlySpan<double> times, double interval, int parameters)
    {
        double mean = 0;
        foreach (var r in residuals)
            mean += r;
        mean /= Math.Max(residuals.Length, 1);
        double products = 0;
        double squares = 0;
        var pairs = 0;
        for (var i = 1; i < residuals.Length; i++)
        {
            if (times[i] - times[i - 1] > 1.5 * interval)
                continue;
            var a = residuals[i - 1] - mean;
            var b = residuals[i] - mean;
            products += a * b;
            squares += (a * a + b * b) / 2;
            pairs++;
        }

        if (pairs < 3 || squares <= 0)
            return 0;
        var rho = products / squares;

        // Kendall (1954) for a mean, −(1+3ρ)/n; each further slow regressor takes about (1+ρ)/n more.
        var corrected = rho + (parameters + (parameters + 2) * Math.Max(rho, 0)) / pairs;
        return Math.Clamp(corrected, 0, Most);
    }

    /// <summary>(1+ρ)/(1−ρ).</summary>
    internal static double BlockLength(double rho) => (1 + rho) / (1 - rho);

    /// <summary>
    /// Correlation of the means of neighbouring blocks for a process that forgets with time constant θ, blocks x·θ long:
    /// (1−e^(−x))²/(2(x−1+e^(−x))).
    /// </summary>
    internal static double BetweenBlocks(double x)
    {
        if (x < 1e-3)
            return 1 - 2 * x / 3;
        var e = Math.Exp(-x);
        return (1 - e) * (1 - e) / (2 * (x - 1 + e));
    }

    /// <summary>The x at which <see cref="BetweenBlocks"/> takes a value in (0, 1).</summary>
    internal static double InverseBetweenBlocks(double correlation)
    {
        double low = 1e-3;
        double high = 1e3;
        for (var i = 0; i < 60; i++)
        {
            var x = Math.Sqrt(low * high);
            if (BetweenBlocks(x) > correlation)
                low = x;
            else
                high = x;
        }

        return Math.Sqrt(low * high);
    }

    /// <summary>
    /// By how much the long-run variance of block means exceeds their variance, for an AR(1) process with correlation ρ in
    /// blocks of m rows: m·(1+ρ)/(1−ρ) / (m + 2·Σ(m−k)·ρ^k).
    /// </summary>
    internal static double Inflation(double rho, double m)
    {
        if (rho <= 0)
            return 1;

        // Σ_{k=1}^{m−1} (m−k)ρ^k = ρ(m(1−ρ) − (1−ρ^m))/(1−ρ)²
        var sum = rho * (m * (1 - rho) - (1 - Math.Pow(rho, m))) / ((1 - rho) * (1 - rho));
        return Math.Max(1, m * (1 + rho) / (1 - rho) / (m + 2 * sum));
    }

    /// <summary>
    /// Sum of squared correlations between block means, 1 + 2Σr_k², by which correlated residuals count for fewer degrees of
    /// freedom (r_k = r_1·ρ^(m(k−1)) for AR(1)).
    /// </summary>
    internal static double FreedomLoss(double rho, double m)
    {
        if (rho <= 0)
            return 1;
        var x = -Math.Log(rho) * m;
        var r1 = BetweenBlocks(x);
        return 1 + 2 * r1 * r1 / (1 - Math.Exp(-2 * x));
    }
}
