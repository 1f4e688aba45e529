namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Medians of long series from an evenly spaced sample: a log of a day must not be sorted to learn its usual step.</summary>
internal static class SampledMedian
{
    private const int Most = 4001;

    /// <summary>Median of at most 4,001 of the values; 0 without values.</summary>
    internal static double Of(ReadOnlySpan<double> values)
    {
        if (values.Length == 0)
            return 0;
        var stride = (values.Length + Most - 1) / Most;
        var sample = new double[(values.Length + stride - 1) / stride];
        for (var i = 0; i < sample.Length; i++)
            sample[i] = values[i * stride];
        Array.Sort(sample);
        return sample[sample.Length / 2];
    }

    /// <summary>Median of the differences between neighbours; 0 with fewer than two values.</summary>
    internal static double OfSteps(ReadOnlySpan<double> values)
    {
        var steps = new double[Math.Max(values.Length - 1, 0)];
        for (var i = 0; i < steps.Length; i++)
            steps[i] = values[i + 1] - values[i];
        return Of(steps);
    }
}
