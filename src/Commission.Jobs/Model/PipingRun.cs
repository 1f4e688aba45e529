using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A run of two lines.</summary>
public sealed record PipingRun : JobPart
{
    /// <summary>The indoor unit or branch box it leads to.</summary>
    public Given<string>? To { get; init; }

    /// <summary>The unit or branch box it starts at.</summary>
    public Given<string>? From { get; init; }

    /// <summary>The liquid line.</summary>
    public Tube? Liquid { get; init; }

    /// <summary>The vapor line.</summary>
    public Tube? Vapor { get; init; }

    /// <summary>Length that the factory charge covers.</summary>
    public Given<Length>? CoveredByFactoryCharge { get; init; }

    /// <summary>Whether old lines were used again.</summary>
    public Given<bool>? Reused { get; init; }

    /// <summary>Whether they were flushed.</summary>
    public Given<bool>? Flushed { get; init; }
}
