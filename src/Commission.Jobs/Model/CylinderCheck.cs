using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A pressure gauge on a rested cylinder.</summary>
public sealed record CylinderCheck : JobPart
{
    /// <summary>What is in the cylinder.</summary>
    public required Given<string> Refrigerant { get; init; }

    /// <summary>The pressure shown.</summary>
    public required Given<StatedPressure> Read { get; init; }

    /// <summary>The cylinder's temperature.</summary>
    public required Given<Temperature> Temperature { get; init; }

    /// <summary>How long it rested.</summary>
    public Given<Duration>? Rested { get; init; }

    /// <summary>Whether the refrigerant is new.</summary>
    public Given<bool>? Virgin { get; init; }

    /// <summary>Whether there is liquid in it.</summary>
    public Given<bool>? LiquidPresent { get; init; }

    /// <summary>Whether it stood out of the sun.</summary>
    public Given<bool>? Shaded { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
