using MathNet.Numerics.Distributions;

namespace Commission.Measurement.Uncertainty;

/// <summary>Readings with drawn errors (JCGM 101): every cause draws once for a trial, so that readings that share a cause share its error.</summary>
/// <param name="random">Where randomness comes from; the same seed gives the same trials.</param>
public sealed class SamplingScope(Random random) : IUncertaintyScope
{
    private readonly Dictionary<RootCause, double> drawn = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<RootGroup, double> groupScale = new(ReferenceEqualityComparer.Instance);

    /// <summary>Forgets the errors drawn: the next readings belong to a new trial.</summary>
    public void NextTrial()
    {
        drawn.Clear();
        groupScale.Clear();
    }

    /// <inheritdoc/>
    public Uncertain Reading(double value, params ReadOnlySpan<RootTerm> causes)
    {
        foreach (var (cause, sensitivity) in causes)
            value += sensitivity * ErrorOf(cause);
        return Uncertain.Exact(value);
    }

    /// <inheritdoc/>
    public Uncertain Input(Uncertain estimate)
    {
        var value = estimate.Value;
        foreach (var (cause, amount) in estimate.Contributions)
            value += amount / cause.StandardUncertainty * ErrorOf(cause);
        return Uncertain.Exact(value);
    }

    private double ErrorOf(RootCause cause)
    {
        if (!drawn.TryGetValue(cause, out var error))
            drawn[cause] = error = cause.StandardUncertainty * Standardized(cause);
        return error;
    }

    // Mean zero; standard deviation one, except the t, whose own standard deviation is larger (JCGM 101, 6.4.9).
    private double Standardized(RootCause cause) => cause.Distribution switch
    {
        Distribution.Rectangular => Math.Sqrt(3) * ((2 * random.NextDouble()) - 1),
        Distribution.Triangular => Math.Sqrt(6) * (random.NextDouble() + random.NextDouble() - 1),
        Distribution.UShaped => Math.Sqrt(2) * Math.Cos(Math.PI * random.NextDouble()),
        _ => Normal.Sample(random, 0, 1) * StudentScale(cause),
    };

    // One observation set has one estimate of its scatter: the members of a group share it (multivariate t).
    private double StudentScale(RootCause cause)
    {
        if (double.IsInfinity(cause.DegreesOfFreedom))
            return 1;
        if (cause.Group is not { } group)
            return DrawScale(cause.DegreesOfFreedom);
        if (!groupScale.TryGetValue(group, out var scale))
            groupScale[group] = scale = DrawScale(group.DegreesOfFreedom);
        return scale;
    }

    private double DrawScale(double degreesOfFreedom) =>
        Math.Sqrt(degreesOfFreedom / Gamma.Sample(random, degreesOfFreedom / 2, 0.5));
}
