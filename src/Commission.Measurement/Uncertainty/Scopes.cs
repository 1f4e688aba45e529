using MathNet.Numerics.Distributions;

namespace Commission.Measurement.Uncertainty;

/// <summary>How readings get their doubt. One computation, written once, runs in the linear scope for the law of propagation, and again and again in a sampling scope for Monte Carlo.</summary>
public interface IUncertaintyScope
{
    /// <summary>A reading and what makes it doubtful.</summary>
    /// <param name="value">The estimate.</param>
    /// <param name="causes">The causes; write <c>cause * sensitivity</c> for one that does not enter one to one.</param>
    Uncertain Reading(double value, params ReadOnlySpan<RootTerm> causes);

    /// <summary>An estimate that already carries its causes, such as the parameters of a fit.</summary>
    /// <param name="estimate">The estimate.</param>
    Uncertain Input(Uncertain estimate);
}

/// <summary>Readings that carry their causes: the law of propagation of uncertainty (GUM 5).</summary>
public sealed class LinearScope : IUncertaintyScope
{
    private LinearScope()
    {
    }

    /// <summary>The only one: it holds no state.</summary>
    public static LinearScope Instance { get; } = new();

    /// <inheritdoc/>
    public Uncertain Reading(double value, params ReadOnlySpan<RootTerm> causes) => Uncertain.From(value, causes);

    /// <inheritdoc/>
    public Uncertain Input(Uncertain estimate) => estimate;
}

/// <summary>Readings with drawn errors (JCGM 101): every cause draws once for a trial, so that readings that share a cause share its error.</summary>
/// <param name="random">Where randomness comes from; the same seed gives the same trials.</param>
public sealed class SamplingScope(Random random) : IUncertaintyScope
{
    private readonly Dictionary<RootCause, double> _drawn = new(ReferenceEqualityComparer.Instance);

    /// <summary>Forgets the errors drawn: the next readings belong to a new trial.</summary>
    public void NextTrial() => _drawn.Clear();

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
        if (!_drawn.TryGetValue(cause, out var error))
            _drawn[cause] = error = cause.StandardUncertainty * Standardized(cause);
        return error;
    }

    // Mean zero; standard deviation one, except the t, whose own standard deviation is larger (JCGM 101, 6.4.9).
    private double Standardized(RootCause cause) => cause.Distribution switch
    {
        Distribution.Rectangular => Math.Sqrt(3) * ((2 * random.NextDouble()) - 1),
        Distribution.Triangular => Math.Sqrt(6) * (random.NextDouble() + random.NextDouble() - 1),
        Distribution.UShaped => Math.Sqrt(2) * Math.Cos(Math.PI * random.NextDouble()),
        _ => Normal.Sample(random, 0, 1) * StudentScale(cause.DegreesOfFreedom),
    };

    private double StudentScale(double degreesOfFreedom) => double.IsInfinity(degreesOfFreedom)
        ? 1
        : Math.Sqrt(degreesOfFreedom / Gamma.Sample(random, degreesOfFreedom / 2, 0.5));
}
