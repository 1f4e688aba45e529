using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The evacuation.</summary>
public sealed record Evacuation : JobPart
{
    /// <summary>The vacuum pump.</summary>
    public VacuumPump? Pump { get; init; }

    /// <summary>What was under vacuum.</summary>
    public Given<CircuitSection>? Section { get; init; }

    /// <summary>The section's own name.</summary>
    public Given<string>? SectionName { get; init; }

    /// <summary>How the valves stood.</summary>
    public Valves? Valves { get; init; }

    /// <summary>What happened to the valve cores.</summary>
    public Given<ValveCores>? ValveCores { get; init; }

    /// <summary>From how many ports.</summary>
    public Given<PortCount>? Ports { get; init; }

    /// <summary>The hoses; only for the pump-down diagnosis. Empty when not written.</summary>
    public ImmutableArray<Hose> Hoses { get; init; } = [];

    /// <summary>Where the vacuum gauge sat.</summary>
    public Given<GaugePlace>? Gauge { get; init; }

    /// <summary>Which valve separated circuit and pump.</summary>
    public Given<IsolationPlace>? IsolatedAt { get; init; }

    /// <summary>The rig without the circuit.</summary>
    public RigCheck? RigCheck { get; init; }

    /// <summary>Temperature around the circuit.</summary>
    public Given<Temperature>? Ambient { get; init; }

    /// <summary>Temperature of the coldest part, at isolation.</summary>
    public Given<Temperature>? ColdestPart { get; init; }

    /// <summary>The same at the end of the hold.</summary>
    public Given<Temperature>? ColdestPartAtEnd { get; init; }

    /// <summary>Whether water may be inside: opened in the rain, frozen, burst.</summary>
    public Given<bool>? Wet { get; init; }

    /// <summary>When the pump was started.</summary>
    public Given<JobTime>? Started { get; init; }

    /// <summary>Which gauge logged.</summary>
    public LogIdentity? Log { get; init; }

    /// <summary>The log.</summary>
    public LogFile? Series { get; init; }

    /// <summary>Levels written down by hand; two will do. Empty when not written.</summary>
    public ImmutableArray<VacuumLevel> Levels { get; init; } = [];

    /// <summary>What happened, in order. Empty when not written.</summary>
    public ImmutableArray<EvacuationEvent> Events { get; init; } = [];

    /// <summary>The level to reach.</summary>
    public Given<Pressure>? Target { get; init; }

    /// <summary>The level not to be passed after isolation.</summary>
    public DecayLimit? DecayLimit { get; init; }

    /// <summary>The gauge, when it is not the one that reads the evacuation. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>Who watched.</summary>
    public Witness? Witnessed { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
