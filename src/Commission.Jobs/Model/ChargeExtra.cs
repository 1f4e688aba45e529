using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A further adjustment.</summary>
public sealed record ChargeExtra : JobPart
{
    /// <summary>What for.</summary>
    public Given<string>? What { get; init; }

    /// <summary>Diameter of the line it is for.</summary>
    public Given<Length>? Line { get; init; }

    /// <summary>Length of that line.</summary>
    public Given<Length>? Length { get; init; }

    /// <summary>Mass for each length.</summary>
    public Given<MassPerLength>? Figure { get; init; }

    /// <summary>Or a mass.</summary>
    public Given<Mass>? Mass { get; init; }

    /// <summary>Where it is written.</summary>
    public Given<string>? From { get; init; }
}
