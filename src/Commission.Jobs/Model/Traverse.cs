using System.Collections.Immutable;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Velocities across a duct.</summary>
public sealed record Traverse : JobPart
{
    /// <summary>Area of the duct.</summary>
    public required Given<Area> Area { get; init; }

    /// <summary>The velocities. Empty when not written.</summary>
    public ImmutableArray<Given<Velocity>> Velocities { get; init; } = [];
}
