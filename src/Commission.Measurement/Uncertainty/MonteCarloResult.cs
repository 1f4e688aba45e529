namespace Commission.Measurement.Uncertainty;

/// <summary>The distribution that Monte Carlo found.</summary>
public sealed class MonteCarloResult
{
    private readonly double[] sorted;

    internal MonteCarloResult(double[] values)
    {
        // Two passes: the mean first, so that a large mean does not eat the digits of a small scatter.
        Mean = values.Average();
        var squares = 0.0;
        foreach (var value in values)
            squares += (value - Mean) * (value - Mean);
        StandardUncertainty = Math.Sqrt(squares / (values.Length - 1));
        sorted = values;
        Array.Sort(sorted);
    }

    /// <summary>From values that were drawn elsewhere, one a trial.</summary>
    /// <param name="values">The values, two or more.</param>
    public static MonteCarloResult Of(IEnumerable<double> values) => new([.. values]);

    /// <summary>How many trials.</summary>
    public int Trials => sorted.Length;

    /// <summary>Mean of the trials: the estimate (JCGM 101, 7.6).</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of the trials: the standard uncertainty (JCGM 101, 7.6).</summary>
    public double StandardUncertainty { get; }

    /// <summary>Coverage interval with the same probability outside on both sides (JCGM 101, 7.7.2).</summary>
    /// <param name="probability">Coverage probability between 0 and 1.</param>
    public (double Low, double High) SymmetricInterval(double probability)
    {
        var inside = Inside(probability);
        var first = (sorted.Length - inside) / 2;
        return (sorted[first], sorted[first + inside]);
    }

    /// <summary>The shortest coverage interval (JCGM 101, 7.7.4).</summary>
    /// <param name="probability">Coverage probability between 0 and 1.</param>
    public (double Low, double High) ShortestInterval(double probability)
    {
        var inside = Inside(probability);
        var best = 0;
        for (var i = 1; i + inside < sorted.Length; i++)
        {
            if (sorted[i + inside] - sorted[i] < sorted[best + inside] - sorted[best])
                best = i;
        }

        return (sorted[best], sorted[best + inside]);
    }

    private int Inside(double probability)
    {
        if (!(probability is > 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A coverage probability is between 0 and 1.");
        return Math.Min(sorted.Length - 1, (int)Math.Round(probability * sorted.Length, MidpointRounding.AwayFromZero));
    }
}
