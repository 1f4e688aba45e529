using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>One line.</summary>
public sealed record Tube : JobPart
{
    /// <summary>Outside diameter.</summary>
    public required Given<Length> Od { get; init; }

    /// <summary>Length.</summary>
    public required Given<Length> Length { get; init; }

    /// <summary>How much higher the indoor end is; negative when lower.</summary>
    public Given<Length>? Rise { get; init; }

    /// <summary>Wall thickness; without it that of refrigeration tube of this diameter.</summary>
    public Given<Length>? Wall { get; init; }

    /// <summary>Number of elbows; only for the pressure drop.</summary>
    public Given<int>? Elbows { get; init; }

    /// <summary>Number of oil traps.</summary>
    public Given<int>? Traps { get; init; }
}
