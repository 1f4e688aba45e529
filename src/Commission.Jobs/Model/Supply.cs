using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The supply circuit.</summary>
public sealed record Supply : JobPart
{
    /// <summary>Breaker.</summary>
    public Given<ElectricCurrent>? Breaker { get; init; }

    /// <summary>Or fuse.</summary>
    public Given<ElectricCurrent>? Fuse { get; init; }

    /// <summary>The conductors.</summary>
    public Given<string>? Wire { get; init; }

    /// <summary>What the conductors may carry.</summary>
    public Given<ElectricCurrent>? Ampacity { get; init; }

    /// <summary>Whether a disconnect is in sight of the unit.</summary>
    public Given<bool>? DisconnectWithinSight { get; init; }

    /// <summary>The equipment ground.</summary>
    public Given<ContinuityResult>? EquipmentGround { get; init; }

    /// <summary>Resistance of the protective earth.</summary>
    public Given<Resistance>? ProtectiveEarth { get; init; }

    /// <summary>Residual current device.</summary>
    public Given<string>? RCD { get; init; }

    /// <summary>Torque on the terminals.</summary>
    public Given<Torque>? TerminalTorque { get; init; }
}
