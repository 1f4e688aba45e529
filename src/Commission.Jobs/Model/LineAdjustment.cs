using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Charge for longer lines.</summary>
public sealed record LineAdjustment : JobPart
{
    /// <summary>Mass for each length of liquid line.</summary>
    public required Given<MassPerLength> Figure { get; init; }

    /// <summary>The length it counts for, when it is not length minus what the factory charge covers.</summary>
    public Given<Length>? Length { get; init; }

    /// <summary>Where the figure is written.</summary>
    public required Given<string> From { get; init; }
}
