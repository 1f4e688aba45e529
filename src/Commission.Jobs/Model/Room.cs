using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A room where a leak could collect.</summary>
public sealed record Room : JobPart
{
    /// <summary>The room.</summary>
    public Given<string>? Name { get; init; }

    /// <summary>Floor area.</summary>
    public required Given<Area> Area { get; init; }

    /// <summary>Volume.</summary>
    public Given<Volume>? Volume { get; init; }

    /// <summary>How high refrigerant would come out.</summary>
    public Given<Mounting>? Mounting { get; init; }

    /// <summary>Or that height itself.</summary>
    public Given<Length>? ReleaseHeight { get; init; }

    /// <summary>Height of the ceiling.</summary>
    public Given<Length>? CeilingHeight { get; init; }

    /// <summary>Areas of all rooms served by the ducts. Empty when not written.</summary>
    public ImmutableArray<Given<Area>> DuctedAreas { get; init; } = [];

    /// <summary>Whether it is below ground.</summary>
    public Given<bool>? BelowGround { get; init; }

    /// <summary>Whether permanent openings join it to other rooms.</summary>
    public Given<bool>? ConnectedByOpenings { get; init; }

    /// <summary>Who uses it.</summary>
    public Given<Occupancy>? Occupancy { get; init; }
}
