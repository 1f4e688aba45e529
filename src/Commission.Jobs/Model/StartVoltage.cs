using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The voltage when the compressor starts.</summary>
public sealed record StartVoltage : JobPart
{
    /// <summary>Before.</summary>
    public required Given<Voltage> Before { get; init; }

    /// <summary>The lowest at start.</summary>
    public required Given<Voltage> Lowest { get; init; }
}
