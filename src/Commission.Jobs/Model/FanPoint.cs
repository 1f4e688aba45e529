using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A point of a fan table.</summary>
public sealed record FanPoint : JobPart
{
    /// <summary>External static pressure.</summary>
    public required Given<PressureDifference> Static { get; init; }

    /// <summary>Air flow.</summary>
    public required Given<VolumeFlow> Airflow { get; init; }
}
