namespace Commission.Measurement.Uncertainty;

/// <summary>Root causes that were estimated together from one set of observations: they share one number of degrees of freedom, and Welch–Satterthwaite counts them once (GUM G.4.1, H.2). Identity is the reference.</summary>
/// <param name="name">What was observed.</param>
/// <param name="degreesOfFreedom">Degrees of freedom of the set, above zero.</param>
public sealed class RootGroup(string name, double degreesOfFreedom)
{
    /// <summary>What was observed.</summary>
    public string Name { get; } = name;

    /// <summary>Degrees of freedom of the set.</summary>
    public double DegreesOfFreedom { get; } = degreesOfFreedom > 0
        ? degreesOfFreedom
        : throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom are above zero.");
}
