using MathNet.Numerics.Distributions;

namespace Commission.Checks.Evidence;

/// <summary>How probable it is that two readings of something that moves show the same digits.</summary>
internal static class Coincidence
{
    /// <summary>
    /// Probability that two readings are written alike: the difference of two normal values of standard deviation σ each, read with a step
    /// s whose position is random, P = ∫ (1 − |d|/s)⁺ φ(d; √2·σ) dd = 2·Φ(a) − 1 − 2·(φ(0) − φ(a))/a with a = s/(√2·σ).
    /// </summary>
    /// <param name="step">Smallest step of the number as written.</param>
    /// <param name="scatter">Standard deviation of the quantity from reading to reading, in the same unit.</param>
    /// <returns>Between 0 and 1; 1 when nothing moves.</returns>
    public static double OfEqualDigits(double step, double scatter)
    {
        if (!(scatter > 0))
            return 1;
        var a = step / (Math.Sqrt(2) * scatter);
        return (2 * Normal.CDF(0, 1, a)) - 1 - (2 * (Normal.PDF(0, 1, 0) - Normal.PDF(0, 1, a)) / a);
    }
}
