using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>What the work was done on.</summary>
public sealed record Equipment : JobPart
{
    /// <summary>The kind of system.</summary>
    public required Given<SystemKind> System { get; init; }

    /// <summary>Which circuit of how many; one circuit a file.</summary>
    public Given<string>? Circuit { get; init; }

    /// <summary>The compressor; the kind alone will do.</summary>
    public Compressor? Compressor { get; init; }

    /// <summary>The outdoor or condensing unit.</summary>
    public EquipmentUnit? Outdoor { get; init; }

    /// <summary>The indoor unit or units. Empty when not written.</summary>
    public ImmutableArray<IndoorUnit> Indoor { get; init; } = [];

    /// <summary>The refrigerant.</summary>
    public required Given<string> Refrigerant { get; init; }

    /// <summary>The metering device; the kind alone will do.</summary>
    public Metering? Metering { get; init; }

    /// <summary>Whether the circuit has a liquid receiver.</summary>
    public Given<bool>? Receiver { get; init; }

    /// <summary>How the head pressure is kept up in the cold.</summary>
    public Given<HeadPressureControl>? HeadPressureControl { get; init; }

    /// <summary>What the cold is for.</summary>
    public Given<Application>? Application { get; init; }

    /// <summary>Whether the air runs through ducts.</summary>
    public Given<bool>? Ducted { get; init; }

    /// <summary>The temperature the box is to hold.</summary>
    public Given<Temperature>? BoxTemperature { get; init; }

    /// <summary>Design saturated suction temperature.</summary>
    public Given<Temperature>? DesignSST { get; init; }

    /// <summary>Rated cooling capacity.</summary>
    public Given<Power>? Capacity { get; init; }

    /// <summary>Capacity at the lowest stage or speed; oil must come back at that.</summary>
    public Given<Power>? MinimumCapacity { get; init; }

    /// <summary>What the nameplate says.</summary>
    public Nameplate? Nameplate { get; init; }

    /// <summary>The line set, or one entry for each run. Empty when not written.</summary>
    public ImmutableArray<PipingRun> Piping { get; init; } = [];

    /// <summary>Branch boxes or selectors. Empty when not written.</summary>
    public ImmutableArray<BranchBox> BranchBoxes { get; init; } = [];

    /// <summary>Internal volume of the circuit if it is known.</summary>
    public Given<Volume>? CircuitVolume { get; init; }

    /// <summary>Whether the maker labels the circuit hermetically sealed.</summary>
    public Given<bool>? HermeticallySealed { get; init; }

    /// <summary>Whether a fixed leak detection system is installed.</summary>
    public Given<bool>? LeakDetectionSystem { get; init; }

    /// <summary>The filter drier.</summary>
    public Drier? Drier { get; init; }

    /// <summary>The compressor's oil.</summary>
    public Oil? Oil { get; init; }

    /// <summary>What is fitted beyond the standard parts. Empty when not written.</summary>
    public ImmutableArray<Given<Accessory>> Accessories { get; init; } = [];

    /// <summary>The certificate or list entry that matches outdoor and indoor unit.</summary>
    public Given<string>? RatingReference { get; init; }

    /// <summary>Whether the maker lists this pair of units.</summary>
    public Given<bool>? Matched { get; init; }

    /// <summary>The thermostat.</summary>
    public Given<string>? Thermostat { get; init; }

    /// <summary>The compressor's running hours.</summary>
    public Given<Duration>? RunHours { get; init; }

    /// <summary>The day the system was first started.</summary>
    public Given<DateOnly>? StartUpDate { get; init; }

    /// <summary>Where the logbook is kept.</summary>
    public Given<string>? Logbook { get; init; }
}
