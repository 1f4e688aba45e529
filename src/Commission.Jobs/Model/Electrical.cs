using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The electrical side.</summary>
public sealed record Electrical : JobPart
{
    /// <summary>The supply circuit.</summary>
    public Supply? Supply { get; init; }

    /// <summary>Before covers were opened.</summary>
    public ProvedDead? ProvedDead { get; init; }

    /// <summary>When running values were read.</summary>
    public Given<JobTime>? At { get; init; }

    /// <summary>Voltages while running: one, or three. Empty when not written.</summary>
    public ImmutableArray<Given<Voltage>> LineToLine { get; init; } = [];

    /// <summary>Compressor current: one, or three. Empty when not written.</summary>
    public ImmutableArray<Given<ElectricCurrent>> Compressor { get; init; } = [];

    /// <summary>Outdoor fan current.</summary>
    public Given<ElectricCurrent>? OutdoorFan { get; init; }

    /// <summary>Indoor fan current.</summary>
    public Given<ElectricCurrent>? IndoorFan { get; init; }

    /// <summary>Current of the whole unit.</summary>
    public Given<ElectricCurrent>? Total { get; init; }

    /// <summary>The sequence of the phases.</summary>
    public Given<PhaseRotation>? PhaseRotation { get; init; }

    /// <summary>Run capacitors. Empty when not written.</summary>
    public ImmutableArray<RunCapacitor> RunCapacitor { get; init; } = [];

    /// <summary>The voltage when the compressor starts.</summary>
    public StartVoltage? VoltageDropAtStart { get; init; }

    /// <summary>Insulation of the compressor's winding.</summary>
    public InsulationTest? Insulation { get; init; }

    /// <summary>Control voltage.</summary>
    public Given<Voltage>? ControlVoltage { get; init; }

    /// <summary>Current of the auxiliary heat.</summary>
    public Given<ElectricCurrent>? AuxiliaryHeat { get; init; }

    /// <summary>The meter, when it is not the one that reads the electrical side. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
