using MathNet.Numerics.Distributions;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// Half-width of the 95 % interval of a sum of a scattered part (t with ν degrees of freedom times u) and a bounded part
/// (rectangular ± a), found from the exact distribution of the sum. A gain error is bounded and does not average: adding it
/// as if it were normal would cover 100 % where it dominates.
/// </summary>
internal static class CoverageHalfWidth
{
    internal const double Probability = 0.95;

    /// <summary>Two-sided Student factor for 95 %.</summary>
    internal static double Student(double freedom) =>
        StudentT.InvCDF(0, 1, Math.Max(freedom, 1), (1 + Probability) / 2);

    internal static double Of(double u, double freedom, double a)
    {
        // Below two degrees of freedom the closed form has no moment to stand on.
        var nu = Math.Max(freedom, 1.5);
        var t = Student(nu) * u;
        if (a <= 1e-6 * t)
            return t;
        if (t <= 1e-6 * a)
            return Probability * a;
        var low = Math.Max(t, Probability * a) * 0.999;
        var high = t + a;
        for (var i = 0; i < 40; i++)
        {
            var h = (low + high) / 2;
            if (Inside(h, u, nu, a) < Probability)
                low = h;
            else
                high = h;
        }

        return (low + high) / 2;
    }

    // P(|u·T + a·R| ≤ h) with R uniform on ±1: the mean of the t distribution function over the width of R, in closed form.
    private static double Inside(double h, double u, double nu, double a) =>
        u / a * (Integral((h + a) / u, nu) - Integral((h - a) / u, nu)) - 1;

    // ∫F dx = x·F(x) + (ν + x²)/(ν − 1)·f(x).
    private static double Integral(double x, double nu) =>
        x * StudentT.CDF(0, 1, nu, x) + (nu + x * x) / (nu - 1) * StudentT.PDF(0, 1, nu, x);
}
