using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The vacuum pump.</summary>
public sealed record VacuumPump : JobPart
{
    /// <summary>The maker.</summary>
    public Given<string>? Maker { get; init; }

    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }

    /// <summary>The serial number.</summary>
    public Given<string>? Serial { get; init; }

    /// <summary>Free air displacement.</summary>
    public Given<VolumeFlow>? Displacement { get; init; }

    /// <summary>Number of stages.</summary>
    public Given<int>? Stages { get; init; }

    /// <summary>Whether the oil was changed for this job.</summary>
    public Given<bool>? OilChanged { get; init; }

    /// <summary>Whether it may pump flammable refrigerant.</summary>
    public Given<bool>? RatedForFlammable { get; init; }

    /// <summary>Whether its exhaust led outdoors.</summary>
    public Given<bool>? ExhaustOutdoors { get; init; }
}
