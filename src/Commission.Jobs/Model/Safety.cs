using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Rooms, flammable refrigerant, safety devices.</summary>
public sealed record Safety : JobPart
{
    /// <summary>The room or rooms where a leak could collect. Empty when not written.</summary>
    public ImmutableArray<Room> Room { get; init; } = [];

    /// <summary>What limits a leak's effect.</summary>
    public Given<Mitigation>? Mitigation { get; init; }

    /// <summary>Charge that a leak can release, when valves hold some back.</summary>
    public Given<Mass>? ReleasableCharge { get; init; }

    /// <summary>Steps for flammable refrigerant.</summary>
    public FlammableSteps? Flammable { get; init; }

    /// <summary>The unit's leak sensor.</summary>
    public LeakSensorTest? LeakSensor { get; init; }

    /// <summary>Safety devices. Empty when not written.</summary>
    public ImmutableArray<SafetyDevice> Devices { get; init; } = [];

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
