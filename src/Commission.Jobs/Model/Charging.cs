using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The charge and the readings on the running system.</summary>
public sealed record Charging : JobPart
{
    /// <summary>What the outdoor unit held when it came.</summary>
    public Given<ArrivalCharge>? UnitArrived { get; init; }

    /// <summary>How the vacuum was broken.</summary>
    public FirstCharge? FirstCharge { get; init; }

    /// <summary>The scale before and after, for each cylinder. Empty when not written.</summary>
    public ImmutableArray<ScaleReading> Scale { get; init; } = [];

    /// <summary>How the refrigerant left the cylinder.</summary>
    public Given<RefrigerantPhase>? As { get; init; }

    /// <summary>Mass added, when no scale readings are written.</summary>
    public Given<Mass>? Added { get; init; }

    /// <summary>Mass taken out.</summary>
    public Given<Mass>? Removed { get; init; }

    /// <summary>When refrigerant was last added before this job.</summary>
    public Given<DateOnly>? PreviousAddition { get; init; }

    /// <summary>Mass left in the hoses.</summary>
    public Given<Mass>? LeftInHoses { get; init; }

    /// <summary>Number of hoses it may be left in.</summary>
    public Given<int>? Hoses { get; init; }

    /// <summary>The maker's figure for longer lines.</summary>
    public LineAdjustment? LineAdjustment { get; init; }

    /// <summary>Further adjustments of the maker. Empty when not written.</summary>
    public ImmutableArray<ChargeExtra> Extra { get; init; } = [];

    /// <summary>How the charge was set.</summary>
    public Given<ChargeMethod>? Method { get; init; }

    /// <summary>Since when the crankcase heater was on.</summary>
    public Given<JobTime>? CrankcaseHeaterOnSince { get; init; }

    /// <summary>When the compressor was started; elapsed times count from here.</summary>
    public Given<JobTime>? CompressorStarted { get; init; }

    /// <summary>When refrigerant was last added or removed.</summary>
    public Given<JobTime>? LastChange { get; init; }

    /// <summary>What the system was doing.</summary>
    public Given<OperatingMode>? Mode { get; init; }

    /// <summary>How the compressor ran.</summary>
    public Given<RunningState>? Running { get; init; }

    /// <summary>The compressor's speed.</summary>
    public Given<Frequency>? Speed { get; init; }

    /// <summary>Whether the condenser was partly covered to raise the head pressure.</summary>
    public Given<bool>? HeadPressureRaised { get; init; }

    /// <summary>Where readings were taken.</summary>
    public ReadingPlaces? ReadAt { get; init; }

    /// <summary>The readings; two will do. Empty when not written.</summary>
    public ImmutableArray<Reading> Readings { get; init; } = [];

    /// <summary>Refrigerant added or removed between readings. Empty when not written.</summary>
    public ImmutableArray<ChargeEvent> Events { get; init; } = [];

    /// <summary>What the sight glass shows now.</summary>
    public Given<SightGlass>? SightGlass { get; init; }

    /// <summary>How full the receiver is.</summary>
    public Given<Ratio>? ReceiverLevel { get; init; }

    /// <summary>The test for non-condensables with the compressor off.</summary>
    public StandingTest? StandingTest { get; init; }

    /// <summary>Oil added.</summary>
    public Oil? OilAdded { get; init; }

    /// <summary>What must be done on another day.</summary>
    public ReturnVisit? ReturnVisit { get; init; }

    /// <summary>The scale, when it is not the one that reads the charge. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>Who watched.</summary>
    public Witness? Witnessed { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
