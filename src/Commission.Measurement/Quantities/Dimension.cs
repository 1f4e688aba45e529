namespace Commission.Measurement.Quantities;

/// <summary>What a number is a number of: tells which units may stand beside it and whether gauge or absolute must be said.</summary>
public enum Dimension
{
    /// <summary>Pressure stated as gauge, absolute or depth below atmosphere; the reference must be written.</summary>
    Pressure,

    /// <summary>Absolute pressure far below atmosphere, as proof of dehydration: micron, mTorr, Torr, Pa, mbar. A depth (inHg vac) is refused.</summary>
    VacuumLevel,

    /// <summary>A barometer reading: always absolute, so plain inHg, hPa or kPa will do.</summary>
    AtmosphericPressure,

    /// <summary>A pressure difference: plain psi, bar, kPa, inwc.</summary>
    PressureDifference,

    /// <summary>A temperature.</summary>
    Temperature,

    /// <summary>A difference of temperatures.</summary>
    TemperatureDifference,

    /// <summary>Mass.</summary>
    Mass,

    /// <summary>Length.</summary>
    Length,

    /// <summary>Area.</summary>
    Area,

    /// <summary>Volume.</summary>
    Volume,

    /// <summary>A span of time.</summary>
    Duration,

    /// <summary>Volume flow.</summary>
    VolumeFlow,

    /// <summary>Mass flow, also a leak rate.</summary>
    MassFlow,

    /// <summary>Velocity.</summary>
    Velocity,

    /// <summary>Power or heat rate.</summary>
    Power,

    /// <summary>Torque.</summary>
    Torque,

    /// <summary>Electric current.</summary>
    ElectricCurrent,

    /// <summary>Voltage.</summary>
    Voltage,

    /// <summary>Capacitance.</summary>
    Capacitance,

    /// <summary>Resistance.</summary>
    Resistance,

    /// <summary>Frequency or speed of rotation.</summary>
    Frequency,

    /// <summary>A pure number or a percentage.</summary>
    Ratio,

    /// <summary>Mass for each length.</summary>
    MassPerLength,

    /// <summary>Density or mass concentration.</summary>
    Density,

    /// <summary>Enthalpy for each mass.</summary>
    SpecificEnthalpy,

    /// <summary>Gas throughput, pV for each time.</summary>
    Throughput,

    /// <summary>Rate of change of pressure.</summary>
    PressureRate,

    /// <summary>Power for each air flow.</summary>
    PowerPerFlow,

    /// <summary>Air flow for each capacity.</summary>
    FlowPerPower,
}
