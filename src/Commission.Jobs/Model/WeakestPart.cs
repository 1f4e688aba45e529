using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The part that sets the ceiling.</summary>
public sealed record WeakestPart : JobPart
{
    /// <summary>The part.</summary>
    public required Given<string> What { get; init; }

    /// <summary>Its rated pressure.</summary>
    public required Given<StatedPressure> Rated { get; init; }

    /// <summary>Where that is written.</summary>
    public Given<string>? From { get; init; }
}
