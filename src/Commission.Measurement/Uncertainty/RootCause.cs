using Commission.Messages;

namespace Commission.Measurement.Uncertainty;

/// <summary>What the standard uncertainty of a cause is a number of, where it is not the unit of the reading it acts on.</summary>
public enum CauseKind
{
    /// <summary>The unit of the reading, or one that is entered with the cause.</summary>
    Reading,

    /// <summary>The maker's accuracy statement: a share of a bound that differs from reading to reading.</summary>
    Accuracy,

    /// <summary>A share of a distance: of a thermocouple from its ice point, of a clamp from the air around it.</summary>
    ShareOfDistance,

    /// <summary>Kelvin for each kelvin that the instrument itself warms.</summary>
    ColdJunction,

    /// <summary>The last digit of a number that somebody wrote down: nothing else is known of its doubt.</summary>
    LastDigit,
}

/// <summary>One physical cause of doubt: a gauge's zero, its gain, the barometer, a probe. Two results that share a cause share the same object, and their correlation follows from it; identity is the reference, never the name.</summary>
public sealed class RootCause
{
    /// <summary>A root cause with its standard uncertainty.</summary>
    /// <param name="name">What it is, in words for the budget.</param>
    /// <param name="source">Where the figure comes from.</param>
    /// <param name="standardUncertainty">Standard uncertainty in the unit of the cause, zero or above.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom, above zero; infinite where the figure is taken as known.</param>
    /// <param name="distribution">The distribution assigned.</param>
    /// <param name="kind">What its standard uncertainty is a number of.</param>
    public RootCause(
        Message name,
        Message source,
        double standardUncertainty,
        double degreesOfFreedom = double.PositiveInfinity,
        Distribution distribution = Distribution.Normal,
        CauseKind kind = CauseKind.Reading)
    {
        if (!(standardUncertainty >= 0) || double.IsInfinity(standardUncertainty))
            throw new ArgumentOutOfRangeException(nameof(standardUncertainty), standardUncertainty, "A standard uncertainty is finite and not negative.");
        if (!(degreesOfFreedom > 0))
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom are above zero.");
        Name = name;
        Source = source;
        StandardUncertainty = standardUncertainty;
        DegreesOfFreedom = degreesOfFreedom;
        Distribution = distribution;
        Kind = kind;
    }

    /// <summary>What it is, in words for the budget.</summary>
    public Message Name { get; }

    /// <summary>Where the figure comes from.</summary>
    public Message Source { get; }

    /// <summary>Standard uncertainty in the unit of the cause.</summary>
    public double StandardUncertainty { get; }

    /// <summary>Degrees of freedom; infinite where the figure is taken as known.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>The distribution assigned.</summary>
    public Distribution Distribution { get; }

    /// <summary>What its standard uncertainty is a number of.</summary>
    public CauseKind Kind { get; }

    /// <summary>The cause acting through a sensitivity, for a reading it does not enter one to one.</summary>
    public static RootTerm operator *(RootCause cause, double sensitivity) => new(cause, sensitivity);

    /// <summary>The cause acting through a sensitivity, for a reading it does not enter one to one.</summary>
    public static RootTerm operator *(double sensitivity, RootCause cause) => new(cause, sensitivity);

    /// <summary>A bound that is never exceeded: ±halfWidth, u = a/√3, a/√6 or a/√2 by distribution (GUM 4.3.7, 4.3.9; EA-4/02 for the U shape). Normal is refused.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="source">Where the bound comes from.</param>
    /// <param name="halfWidth">Half the distance between the bounds, zero or above.</param>
    /// <param name="distribution">Rectangular, triangular or U-shaped.</param>
    /// <param name="kind">What its standard uncertainty is a number of.</param>
    public static RootCause FromHalfWidth(Message name, Message source, double halfWidth, Distribution distribution = Distribution.Rectangular, CauseKind kind = CauseKind.Reading)
    {
        var divisor = distribution switch
        {
            Distribution.Rectangular => Math.Sqrt(3),
            Distribution.Triangular => Math.Sqrt(6),
            Distribution.UShaped => Math.Sqrt(2),
            _ => throw new ArgumentOutOfRangeException(nameof(distribution), distribution, "A normal distribution has no bounds: state U and k."),
        };
        return new RootCause(name, source, halfWidth / divisor, distribution: distribution, kind: kind);
    }

    /// <summary>From an expanded uncertainty with its coverage factor, as a certificate states it: u = U/k (GUM 4.3.3).</summary>
    /// <param name="name">What it is.</param>
    /// <param name="source">Where the figure comes from.</param>
    /// <param name="expanded">Expanded uncertainty U.</param>
    /// <param name="coverageFactor">Coverage factor k, above zero.</param>
    public static RootCause FromExpanded(Message name, Message source, double expanded, double coverageFactor = 2) =>
        new(name, source, expanded / coverageFactor);

    /// <summary>One step of a digital indication: rectangular, u = d/√12 (GUM F.2.2.1).</summary>
    /// <param name="name">What it is.</param>
    /// <param name="source">Where the step comes from.</param>
    /// <param name="step">Smallest step of the indication.</param>
    /// <param name="kind">What its standard uncertainty is a number of.</param>
    public static RootCause FromResolution(Message name, Message source, double step, CauseKind kind = CauseKind.Reading) => FromHalfWidth(name, source, step / 2, kind: kind);

    /// <inheritdoc/>
    public override string ToString() => MessageWriter.Words.Format(Name, Language.English);
}

/// <summary>A root cause and how strongly it moves a reading.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Sensitivity">Change of the reading for each unit of the cause, signed.</param>
public readonly record struct RootTerm(RootCause Cause, double Sensitivity)
{
    /// <summary>A cause that enters one to one.</summary>
    public static implicit operator RootTerm(RootCause cause) => new(cause, 1);
}

/// <summary>The probability distribution assigned to a root cause (GUM 4.3, JCGM 101 6.4).</summary>
public enum Distribution
{
    /// <summary>Normal; with finite degrees of freedom the scaled and shifted t.</summary>
    Normal,

    /// <summary>Rectangular: bounds and nothing else known.</summary>
    Rectangular,

    /// <summary>Triangular: bounds with the middle more likely, or the difference of two equal rectangles.</summary>
    Triangular,

    /// <summary>U-shaped (arc sine): something that swings between its bounds.</summary>
    UShaped,
}
