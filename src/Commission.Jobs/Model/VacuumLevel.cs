using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A level written down by hand.</summary>
public sealed record VacuumLevel : JobPart
{
    /// <summary>When.</summary>
    public required Given<JobTime> At { get; init; }

    /// <summary>The level.</summary>
    public required Given<Pressure> Pressure { get; init; }

    /// <summary>Whether the circuit was shut off from the pump. The first such level begins the hold.</summary>
    public Given<bool>? Isolated { get; init; }
}
