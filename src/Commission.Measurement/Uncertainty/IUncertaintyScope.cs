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
