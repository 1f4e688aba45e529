using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Compressor off, condenser fan on, until liquid line and air agree.</summary>
public sealed record StandingTest : JobPart
{
    /// <summary>How long the compressor had been off.</summary>
    public Given<Duration>? OffFor { get; init; }

    /// <summary>Whether the condenser fan ran.</summary>
    public Given<bool>? CondenserFanOn { get; init; }

    /// <summary>Liquid pressure.</summary>
    public required Given<StatedPressure> LiquidPressure { get; init; }

    /// <summary>Liquid line temperature.</summary>
    public Given<Temperature>? LiquidLine { get; init; }

    /// <summary>Outdoor air.</summary>
    public Given<Temperature>? OutdoorDryBulb { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
