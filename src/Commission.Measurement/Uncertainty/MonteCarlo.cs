namespace Commission.Measurement.Uncertainty;

/// <summary>The distribution that Monte Carlo found.</summary>
public sealed class MonteCarloResult
{
    private readonly double[] _sorted;

    internal MonteCarloResult(double[] values)
    {
        // Two passes: the mean first, so that a large mean does not eat the digits of a small scatter.
        Mean = values.Average();
        var squares = 0.0;
        foreach (var value in values)
            squares += (value - Mean) * (value - Mean);
        StandardUncertainty = Math.Sqrt(squares / (values.Length - 1));
        _sorted = values;
        Array.Sort(_sorted);
    }

    /// <summary>From values that were drawn elsewhere, one a trial.</summary>
    /// <param name="values">The values, two or more.</param>
    public static MonteCarloResult Of(IEnumerable<double> values) => new([.. values]);

    /// <summary>Mean of the trials: the estimate (JCGM 101, 7.6).</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of the trials: the standard uncertainty (JCGM 101, 7.6).</summary>
    public double StandardUncertainty { get; }

    /// <summary>Coverage interval with the same probability outside on both sides (JCGM 101, 7.7.2).</summary>
    /// <param name="probability">Coverage probability between 0 and 1.</param>
    public (double Low, double High) SymmetricInterval(double probability)
    {
        var inside = Inside(probability);
        var first = (_sorted.Length - inside) / 2;
        return (_sorted[first], _sorted[first + inside]);
    }

    /// <summary>The shortest coverage interval (JCGM 101, 7.7.4).</summary>
    /// <param name="probability">Coverage probability between 0 and 1.</param>
    public (double Low, double High) ShortestInterval(double probability)
    {
        var inside = Inside(probability);
        var best = 0;
        for (var i = 1; i + inside < _sorted.Length; i++)
        {
            if (_sorted[i + inside] - _sorted[i] < _sorted[best + inside] - _sorted[best])
                best = i;
        }

        return (_sorted[best], _sorted[best + inside]);
    }

    private int Inside(double probability)
    {
        if (!(probability is > 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A coverage probability is between 0 and 1.");
        return Math.Min(_sorted.Length - 1, (int)Math.Round(probability * _sorted.Length, MidpointRounding.AwayFromZero));
    }
}

/// <summary>Whether the law of propagation and Monte Carlo say the same (JCGM 101, 8): estimate and standard uncertainty to the digits of the latter that mean something. The intervals may differ for good reasons, so they are shown and not judged.</summary>
/// <param name="Tolerance">Half a unit of the last digit of the standard uncertainty that means something.</param>
/// <param name="StandardUncertainty">Of the law of propagation.</param>
/// <param name="EstimateDifference">Mean of the trials less the estimate.</param>
/// <param name="UncertaintyDifference">By how much the standard deviation of the trials leaves what the law of propagation allows; zero inside.</param>
/// <param name="LinearInterval">Interval y ± k·u at the probability compared.</param>
/// <param name="SampledInterval">Interval of the trials at the same probability, symmetric in probability.</param>
public sealed record MonteCarloComparison(
    double Tolerance,
    double StandardUncertainty,
    double EstimateDifference,
    double UncertaintyDifference,
    (double Low, double High) LinearInterval,
    (double Low, double High) SampledInterval)
{
    /// <summary>Estimate and mean agree within the tolerance.</summary>
    public bool EstimatesAgree => Math.Abs(EstimateDifference) <= Tolerance;

    /// <summary>The standard uncertainties agree within it.</summary>
    public bool UncertaintiesAgree => Math.Abs(UncertaintyDifference) <= Tolerance;

    /// <summary>Estimate and standard uncertainty agree.</summary>
    public bool Agrees => EstimatesAgree && UncertaintiesAgree;

    /// <summary>Compares at the probability of the coverage factor, 95.45 %.</summary>
    /// <param name="linear">The result of the law of propagation.</param>
    /// <param name="sampled">The result of the trials of the same computation.</param>
    public static MonteCarloComparison Of(Uncertain linear, MonteCarloResult sampled)
    {
        // A t of ν degrees of freedom is drawn with its own, larger standard deviation √(ν/(ν − 2)); below three it has none.
        var freedom = linear.DegreesOfFreedom;
        var spread = double.IsInfinity(freedom) ? 1 : freedom > 2 ? Math.Sqrt(freedom / (freedom - 2)) : double.PositiveInfinity;
        return Of((linear.Value, linear.StandardUncertainty, linear.Expanded), spread, sampled, digits: 2);
    }

    /// <summary>Compares a result that is known by its numbers.</summary>
    /// <param name="linear">Estimate, standard uncertainty and expanded uncertainty of the law of propagation.</param>
    /// <param name="spread">How much wider than the standard uncertainty the trials may scatter: one, but for few degrees of freedom.</param>
    /// <param name="sampled">The result of the trials.</param>
    /// <param name="digits">Significant digits of the standard uncertainty that mean something: one or two (JCGM 101, 7.9.2).</param>
    public static MonteCarloComparison Of((double Value, double U, double Expanded) linear, double spread, MonteCarloResult sampled, int digits)
    {
        ArgumentNullException.ThrowIfNull(sampled);
        var least = linear.U;
        return new MonteCarloComparison(
            least > 0 ? 0.5 * Math.Pow(10, Math.Floor(Math.Log10(least)) + 1 - digits) : 0,
            least,
            sampled.Mean - linear.Value,
            sampled.StandardUncertainty - Math.Clamp(sampled.StandardUncertainty, least, least * spread),
            (linear.Value - linear.Expanded, linear.Value + linear.Expanded),
            sampled.SymmetricInterval(CoverageFactor.TwoSigma));
    }

    /// <summary>Agreement where so many trials leave a scatter of their own: two standard deviations of their mean and of their standard deviation are added to the tolerance.</summary>
    /// <param name="trials">Number of trials.</param>
    public bool AgreesAfter(int trials) =>
        Math.Abs(EstimateDifference) <= Tolerance + (2 * StandardUncertainty / Math.Sqrt(trials))
        && Math.Abs(UncertaintyDifference) <= Tolerance + (2 * StandardUncertainty / Math.Sqrt(2.0 * trials));
}
