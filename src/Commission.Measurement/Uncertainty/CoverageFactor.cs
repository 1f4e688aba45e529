using System.Collections.Concurrent;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Commission.Measurement.Uncertainty;

/// <summary>Coverage factors and probabilities from Student's t, the distribution that GUM annex G assigns to a result of finite degrees of freedom.</summary>
public static class CoverageFactor
{
    /// <summary>The probability within two standard deviations of a normal distribution, 95.45 %.</summary>
    public static readonly double TwoSigma = SpecialFunctions.Erf(Math.Sqrt(2));

    // Finding a quantile takes microseconds and the same few degrees of freedom come again and again; bounded, so that a long batch cannot grow it.
    private const int CacheLimit = 4096;
    private static readonly ConcurrentDictionary<(double Probability, double Freedom), double> Cache = new();

    /// <summary>k for a two-sided interval of 95.45 %: 2.00 for infinite degrees of freedom, 2.13 for 20, 2.65 for 5 (GUM table G.2).</summary>
    /// <param name="degreesOfFreedom">Degrees of freedom, above zero; need not be whole.</param>
    public static double For(double degreesOfFreedom) => For(TwoSigma, degreesOfFreedom);

    /// <summary>k for a two-sided interval of this probability.</summary>
    /// <param name="probability">Coverage probability between 0 and 1.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom, above zero; need not be whole.</param>
    public static double For(double probability, double degreesOfFreedom)
    {
        if (!(probability is > 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A coverage probability is between 0 and 1.");
        if (!(degreesOfFreedom > 0))
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom are above zero.");
        var key = (probability, degreesOfFreedom);
        if (Cache.TryGetValue(key, out var known))
            return known;
        var upper = (1 + probability) / 2;
        var factor = IsNormal(degreesOfFreedom) ? Normal.InvCDF(0, 1, upper) : StudentT.InvCDF(0, 1, degreesOfFreedom, upper);
        if (Cache.Count >= CacheLimit)
            Cache.Clear();
        Cache[key] = factor;
        return factor;
    }

    /// <summary>Probability that the standardised variable is not above x: Student's t, or the normal for infinite degrees of freedom.</summary>
    /// <param name="x">Distance from the mean in standard uncertainties.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom, above zero.</param>
    public static double CumulativeProbability(double x, double degreesOfFreedom)
    {
        if (double.IsPositiveInfinity(x))
            return 1;
        if (double.IsNegativeInfinity(x))
            return 0;
        return IsNormal(degreesOfFreedom) ? Normal.CDF(0, 1, x) : StudentT.CDF(0, 1, degreesOfFreedom, x);
    }

    // Beyond this the quantiles of t and normal differ by less than 3e-8, and the incomplete beta function is no better.
    private static bool IsNormal(double degreesOfFreedom) => degreesOfFreedom > 1e8;
}
