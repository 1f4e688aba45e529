using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A vacuum gauge on a closed rig.</summary>
public sealed record BlankOffCheck : JobPart
{
    /// <summary>The level with the rig closed.</summary>
    public required Given<Pressure> Level { get; init; }

    /// <summary>How far it rose.</summary>
    public Given<Pressure>? Rise { get; init; }

    /// <summary>In what time.</summary>
    public Given<Duration>? After { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
