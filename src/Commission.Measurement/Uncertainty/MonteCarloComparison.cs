namespace Commission.Measurement.Uncertainty;

/// <summary>Whether the law of propagation and Monte Carlo say the same (JCGM 101, 8): estimate and standard uncertainty to two digits of the latter. The intervals may differ for good reasons, so they are shown and not judged.</summary>
/// <param name="ToleranceOfTwoDigits">Half a unit of the second digit of the standard uncertainty.</param>
/// <param name="EstimatesAgree">Estimate and mean agree within it.</param>
/// <param name="UncertaintiesAgree">The standard uncertainties agree within it.</param>
/// <param name="LinearInterval">Interval y ± k·u at the probability compared.</param>
/// <param name="SampledInterval">Interval of the trials at the same probability, symmetric in probability.</param>
public sealed record MonteCarloComparison(
    double ToleranceOfTwoDigits,
    bool EstimatesAgree,
    bool UncertaintiesAgree,
    (double Low, double High) LinearInterval,
    (double Low, double High) SampledInterval)
{
    /// <summary>Estimate and standard uncertainty agree.</summary>
    public bool Agrees => EstimatesAgree && UncertaintiesAgree;

    /// <summary>Compares at the probability of the coverage factor, 95.45 %.</summary>
    /// <param name="linear">The result of the law of propagation.</param>
    /// <param name="sampled">The result of the trials of the same computation.</param>
    public static MonteCarloComparison Of(Uncertain linear, MonteCarloResult sampled)
    {
        var tolerance = linear.StandardUncertainty > 0
            ? 0.5 * Math.Pow(10, Math.Floor(Math.Log10(linear.StandardUncertainty)) - 1)
            : 0;

        // A t of ν degrees of freedom is drawn with its own, larger standard deviation √(ν/(ν − 2)); below three it has none.
        var freedom = linear.DegreesOfFreedom;
        var spread = double.IsInfinity(freedom) ? 1 : freedom > 2 ? Math.Sqrt(freedom / (freedom - 2)) : double.PositiveInfinity;
        return new MonteCarloComparison(
            tolerance,
            Math.Abs(linear.Value - sampled.Mean) <= tolerance,
            sampled.StandardUncertainty >= linear.StandardUncertainty - tolerance && sampled.StandardUncertainty <= (linear.StandardUncertainty * spread) + tolerance,
            (linear.Value - linear.Expanded, linear.Value + linear.Expanded),
            sampled.SymmetricInterval(CoverageFactor.TwoSigma));
    }
}
