namespace Commission.Measurement.Uncertainty;

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
