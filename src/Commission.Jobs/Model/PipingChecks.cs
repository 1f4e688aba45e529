using System.Collections.Immutable;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Flares, insulation, traps, supports.</summary>
public sealed record PipingChecks : JobPart
{
    /// <summary>Flare nuts. Empty when not written.</summary>
    public ImmutableArray<FlareCheck> Flares { get; init; } = [];

    /// <summary>Whether the vapor line is insulated all the way.</summary>
    public Given<bool>? VaporLineInsulated { get; init; }

    /// <summary>Whether the liquid line is insulated where it should be.</summary>
    public Given<bool>? LiquidLineInsulated { get; init; }

    /// <summary>Thickness of the insulation.</summary>
    public Given<Length>? InsulationThickness { get; init; }

    /// <summary>Whether its joints are sealed.</summary>
    public Given<bool>? InsulationJointsSealed { get; init; }

    /// <summary>Whether it is protected outdoors.</summary>
    public Given<bool>? InsulationWeatherproof { get; init; }

    /// <summary>Traps in risers.</summary>
    public Given<int>? RiserTraps { get; init; }

    /// <summary>Whether the vapor line falls towards the compressor.</summary>
    public Given<bool>? VaporLineSlopesToCompressor { get; init; }

    /// <summary>Distance of supports.</summary>
    public Given<Length>? SupportsEvery { get; init; }

    /// <summary>Whether wall openings are sealed.</summary>
    public Given<bool>? PenetrationsSealed { get; init; }

    /// <summary>Whether the pipe is rated for this refrigerant's pressure.</summary>
    public Given<bool>? PipeRatedForRefrigerant { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
