using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>What the nameplate says.</summary>
public sealed record Nameplate : JobPart
{
    /// <summary>Charge from the factory.</summary>
    public Given<Mass>? FactoryCharge { get; init; }

    /// <summary>Design pressures (PS).</summary>
    public DesignPressure? DesignPressure { get; init; }

    /// <summary>Rated voltage or range.</summary>
    public Given<QuantityRange<Voltage>>? Voltage { get; init; }

    /// <summary>Number of phases.</summary>
    public Given<int>? Phases { get; init; }

    /// <summary>Mains frequency.</summary>
    public Given<Frequency>? Frequency { get; init; }

    /// <summary>Rated load current of the compressor.</summary>
    public Given<ElectricCurrent>? CompressorRLA { get; init; }

    /// <summary>Maximum continuous current of the compressor.</summary>
    public Given<ElectricCurrent>? CompressorMCC { get; init; }

    /// <summary>Locked rotor current of the compressor.</summary>
    public Given<ElectricCurrent>? CompressorLRA { get; init; }

    /// <summary>Rated input current of the unit.</summary>
    public Given<ElectricCurrent>? RatedCurrent { get; init; }

    /// <summary>Rated power input of the unit.</summary>
    public Given<Power>? RatedInput { get; init; }

    /// <summary>Minimum circuit ampacity.</summary>
    public Given<ElectricCurrent>? MCA { get; init; }

    /// <summary>Maximum overcurrent protection.</summary>
    public Given<ElectricCurrent>? MOP { get; init; }

    /// <summary>Full load current of the outdoor fan.</summary>
    public Given<ElectricCurrent>? FanFLA { get; init; }

    /// <summary>Full load current of the indoor fan.</summary>
    public Given<ElectricCurrent>? IndoorFanFLA { get; init; }

    /// <summary>Run capacitor.</summary>
    public Given<Capacitance>? RunCapacitor { get; init; }

    /// <summary>Largest external static pressure.</summary>
    public Given<PressureDifference>? MaxStatic { get; init; }
}
