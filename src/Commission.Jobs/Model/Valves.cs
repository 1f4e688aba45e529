using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>How the valves stood.</summary>
public sealed record Valves : JobPart
{
    /// <summary>The service valves.</summary>
    public Given<ValveState>? ServiceValves { get; init; }

    /// <summary>Electronic expansion valves.</summary>
    public Given<ValveState>? EEV { get; init; }

    /// <summary>Solenoid valves.</summary>
    public Given<ValveState>? Solenoids { get; init; }

    /// <summary>The reversing valve.</summary>
    public Given<ValveState>? ReversingValve { get; init; }

    /// <summary>Check valves.</summary>
    public Given<ValveState>? CheckValves { get; init; }

    /// <summary>Ball or isolation valves.</summary>
    public Given<ValveState>? IsolationValves { get; init; }
}
