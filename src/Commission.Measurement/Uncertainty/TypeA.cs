namespace Commission.Measurement.Uncertainty;

/// <summary>Uncertainty from repeated observations (GUM 4.2).</summary>
public static class TypeA
{
    /// <summary>Mean of repeats: u = s/√n with n − 1 degrees of freedom. Repeats that scatter less than the indication can show have u = d/√12, which no averaging lowers (GUM F.2.2.1).</summary>
    /// <param name="name">What was observed, for the budget.</param>
    /// <param name="observations">The observations; a single one needs a resolution.</param>
    /// <param name="resolution">One step d of the indication, if known.</param>
    /// <exception cref="ArgumentException">No observation, or a single one without a resolution.</exception>
    public static Uncertain Mean(string name, ReadOnlySpan<double> observations, double? resolution = null)
    {
        var (mean, deviation) = Moments(observations);
        var floor = resolution.GetValueOrDefault() / Math.Sqrt(12);
        if (observations.Length < 2 && resolution is null)
            throw new ArgumentException("One observation says nothing of its scatter.", nameof(observations));
        if (observations.Length < 2 || deviation <= floor)
            return Uncertain.From(mean, RootCause.FromResolution(name, "resolution: the repeats scatter less than one step", resolution.GetValueOrDefault()));
        var n = observations.Length;
        return Uncertain.From(mean, new RootCause(name, $"scatter of {n} observations", deviation / Math.Sqrt(n), n - 1));
    }

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

    /// <summary>Means of quantities that were observed together, with the correlation the observations show (GUM 5.2.3, H.2). Each set of simultaneous observations is a cause of its own that moves all the means; the causes form one group with n − 1 degrees of freedom.</summary>
    /// <param name="name">What was observed, for the budget.</param>
    /// <param name="series">One array for each quantity, all of the same length of two or more.</param>
    public static IReadOnlyList<Uncertain> SimultaneousMeans(string name, IReadOnlyList<double[]> series)
    {
        var n = series[0].Length;
        if (n < 2 || series.Any(s => s.Length != n))
            throw new ArgumentException("Simultaneous series have the same length of two or more.", nameof(series));
        var group = new RootGroup(name, n - 1);
        var sets = Enumerable.Range(1, n).Select(k => new RootCause($"{name}: set {k}", $"scatter of {n} sets", 1, group: group)).ToArray();
        var scale = 1 / Math.Sqrt(n * (n - 1.0));
        return [.. series.Select(values =>
        {
            var mean = values.Average();
            var terms = sets.Select((set, k) => set * ((values[k] - mean) * scale)).ToArray();
            return Uncertain.From(mean, terms);
        })];
    }
}
