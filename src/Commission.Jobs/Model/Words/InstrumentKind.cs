namespace Commission.Jobs.Model.Words;

/// <summary>What an instrument measures.</summary>
public enum InstrumentKind
{
    /// <summary>Gauge or transducer for refrigerant or nitrogen.</summary>
    PressureGauge,

    /// <summary>Gauge for levels far below atmosphere.</summary>
    VacuumGauge,

    /// <summary>Station pressure.</summary>
    Barometer,

    /// <summary>Temperature of a pipe.</summary>
    PipeClamp,

    /// <summary>Temperature of air, water or a surface.</summary>
    Thermometer,

    /// <summary>Dry and wet bulb, or relative humidity.</summary>
    Psychrometer,

    /// <summary>Relative humidity.</summary>
    Hygrometer,

    /// <summary>Mass of cylinders.</summary>
    Scale,

    /// <summary>Current without opening the circuit, often voltage too.</summary>
    ClampMeter,

    /// <summary>Voltage, resistance, current.</summary>
    Multimeter,

    /// <summary>Capacitance.</summary>
    CapacitanceMeter,

    /// <summary>Insulation resistance.</summary>
    InsulationTester,

    /// <summary>Sequence of the phases.</summary>
    PhaseRotationMeter,

    /// <summary>Air pressure in ducts: digital or U-tube.</summary>
    Manometer,

    /// <summary>Air velocity.</summary>
    Anemometer,

    /// <summary>Air flow at a grille.</summary>
    FlowHood,

    /// <summary>Torque on flare nuts.</summary>
    TorqueWrench,

    /// <summary>Refrigerant or tracer leaks.</summary>
    LeakDetector,

    /// <summary>Time.</summary>
    Stopwatch,

    /// <summary>Something else.</summary>
    Other,
}
