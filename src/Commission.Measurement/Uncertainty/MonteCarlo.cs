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
