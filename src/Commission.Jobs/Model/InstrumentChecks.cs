namespace Commission.Jobs.Model;

/// <summary>Field checks of an instrument.</summary>
public sealed record InstrumentChecks : JobPart
{
    /// <summary>In crushed ice and water.</summary>
    public PointCheck? IcePoint { get; init; }

    /// <summary>In a warm bath beside a reference.</summary>
    public ReferenceCheck? WarmPoint { get; init; }

    /// <summary>In boiling water.</summary>
    public PointCheck? BoilingPoint { get; init; }

    /// <summary>Open to the air, or unloaded.</summary>
    public ZeroCheck? Zero { get; init; }

    /// <summary>Against a known pressure.</summary>
    public ReferenceCheck? KnownPressure { get; init; }

    /// <summary>On a rested cylinder of virgin refrigerant.</summary>
    public CylinderCheck? Cylinder { get; init; }

    /// <summary>Two instruments on the same thing.</summary>
    public PairCheck? Pair { get; init; }

    /// <summary>With a known mass.</summary>
    public ReferenceCheck? CheckWeight { get; init; }

    /// <summary>The vacuum gauge on the pump alone and on the closed rig.</summary>
    public BlankOffCheck? RigBlankedOff { get; init; }

    /// <summary>Two gauges on the same circuit.</summary>
    public PairCheck? AgainstSecondGauge { get; init; }

    /// <summary>A leak detector on a known leak.</summary>
    public ReferenceLeakCheck? ReferenceLeak { get; init; }

    /// <summary>The wick of a psychrometer.</summary>
    public WickCheck? Wick { get; init; }
}
