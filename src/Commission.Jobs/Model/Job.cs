using System.Collections.Immutable;

namespace Commission.Jobs.Model;

/// <summary>A job file: one circuit, one visit, what was done and what was read.</summary>
public sealed record Job : JobPart
{
    /// <summary>The version of this file's format.</summary>
    public required Given<int> Commission { get; init; }

    /// <summary>What a number without a unit means: us, si, or one of them with exceptions.</summary>
    public UnitChoice? Units { get; init; }

    /// <summary>Which job this is.</summary>
    public required JobIdentity Identity { get; init; }

    /// <summary>What the work was done on.</summary>
    public required Equipment Equipment { get; init; }

    /// <summary>The maker's figures, each with the page it is from.</summary>
    public MakerLimits? Limits { get; init; }

    /// <summary>The instruments used, or a kit file with today's field checks. Empty when not written.</summary>
    public ImmutableArray<Instrument> Instruments { get; init; } = [];

    /// <summary>The test with dry nitrogen.</summary>
    public PressureTest? PressureTest { get; init; }

    /// <summary>Refrigerant recovered before the circuit was opened.</summary>
    public Recovery? Recovery { get; init; }

    /// <summary>The evacuation.</summary>
    public Evacuation? Evacuation { get; init; }

    /// <summary>The charge and the readings on the running system.</summary>
    public Charging? Charging { get; init; }

    /// <summary>The air side.</summary>
    public AirSide? Air { get; init; }

    /// <summary>The electrical side.</summary>
    public Electrical? Electrical { get; init; }

    /// <summary>Flares, insulation, traps, supports.</summary>
    public PipingChecks? PipingChecks { get; init; }

    /// <summary>Rooms, flammable refrigerant, safety devices.</summary>
    public Safety? Safety { get; init; }

    /// <summary>The refrigerant cylinders of this job. Empty when not written.</summary>
    public ImmutableArray<Cylinder> Cylinders { get; init; } = [];

    /// <summary>What was tried and whether it works.</summary>
    public Functional? Functional { get; init; }

    /// <summary>What was written on the unit.</summary>
    public ChargeLabel? Label { get; init; }

    /// <summary>The leak check after start.</summary>
    public LeakCheck? LeakCheck { get; init; }

    /// <summary>What was found before any work.</summary>
    public AsFound? AsFound { get; init; }

    /// <summary>Photos beside the job file. Empty when not written.</summary>
    public ImmutableArray<Photo> Photos { get; init; } = [];

    /// <summary>Who stands for the work. Empty when not written.</summary>
    public ImmutableArray<Signature> Signatures { get; init; } = [];
}
