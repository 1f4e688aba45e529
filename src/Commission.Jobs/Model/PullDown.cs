using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The box's pull-down.</summary>
public sealed record PullDown : JobPart
{
    /// <summary>The temperature it began at.</summary>
    public required Given<Temperature> From { get; init; }

    /// <summary>The temperature it reached.</summary>
    public required Given<Temperature> To { get; init; }

    /// <summary>In what time.</summary>
    public required Given<Duration> In { get; init; }
}
