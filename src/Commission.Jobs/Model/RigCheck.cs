using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The rig without the circuit.</summary>
public sealed record RigCheck : JobPart
{
    /// <summary>The level with the gauge on the pump.</summary>
    public Given<Pressure>? PumpAlone { get; init; }

    /// <summary>The level of the rig with its end closed.</summary>
    public Given<Pressure>? BlankedOff { get; init; }

    /// <summary>How far it rose with the pump shut off.</summary>
    public Given<Pressure>? Rise { get; init; }

    /// <summary>In what time.</summary>
    public Given<Duration>? After { get; init; }

    /// <summary>Whether the oil was changed.</summary>
    public Given<bool>? OilChanged { get; init; }
}
