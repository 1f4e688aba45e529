using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Something to be done on another day.</summary>
public sealed record ReturnVisit : JobPart
{
    /// <summary>What.</summary>
    public required Given<string> What { get; init; }

    /// <summary>When it is at least this warm outdoors.</summary>
    public Given<Temperature>? OutdoorAtLeast { get; init; }

    /// <summary>At the latest.</summary>
    public Given<DateOnly>? By { get; init; }
}
