using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Commission.Measurement.Uncertainty;

/// <summary>Coverage factors and probabilities from Student's t, the distribution that GUM annex G assigns to a result of finite degrees of freedom.</summary>
public static class CoverageFactor
{
    /// <summary>The probability within two standard deviations of a normal distribution, 95.45 %.</summary>
    public static readonly double TwoSigma = SpecialFunctions.Erf(Math.Sqrt(2));

    // Most results rest on figures taken as known: their k is worked out once.
    private static readonly double NormalTwoSigma = Normal.InvCDF(0, 1, (1 + TwoSigma) / 2);

    /// <summary>k for a two-sided interval of 95.45 %: 2.00 for infinite degrees of freedom, 2.13 for 20, 2.65 for 5 (GUM table G.2).</summary>
    /// <param name="degreesOfFreedom">Degrees of freedom, above zero; need not be whole.</param>
    public static double For(double degreesOfFreedom)
    {
        if (!(degreesOfFreedom > 0))
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom are above zero.");
        return IsNormal(degreesOfFreedom) ? NormalTwoSigma : StudentT.InvCDF(0, 1, degreesOfFreedom, (1 + TwoSigma) / 2);
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

/// <summary>Uncertainty from repeated observations (GUM 4.2).</summary>
public static class TypeA
{
    /// <summary>Mean and experimental standard deviation s (GUM 4.2.2); s is zero for a single observation.</summary>
    /// <param name="observations">The observations, at least one.</param>
    public static (double Mean, double StandardDeviation) Moments(ReadOnlySpan<double> observations)
    {
        if (observations.IsEmpty)
            throw new ArgumentException("There is no observation.", nameof(observations));
        var mean = 0.0;
        foreach (var x in observations)
            mean += x;
        mean /= observations.Length;
        var squares = 0.0;
        foreach (var x in observations)
            squares += (x - mean) * (x - mean);
        return (mean, observations.Length < 2 ? 0 : Math.Sqrt(squares / (observations.Length - 1)));
    }
}
