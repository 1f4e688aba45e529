using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A level that must not be passed within a time after isolation.</summary>
public sealed record DecayLimit : JobPart
{
    /// <summary>The level.</summary>
    public required Given<Pressure> Level { get; init; }

    /// <summary>The time after isolation.</summary>
    public required Given<Duration> After { get; init; }

    /// <summary>Where the figure is written.</summary>
    public Given<string>? From { get; init; }
}
