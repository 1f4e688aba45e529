namespace Commission.Measurement.Units;

/// <summary>What a printed number stands for; decides its unit and decimals.</summary>
public enum DisplayKind
{
    /// <summary>A pressure above the atmosphere.</summary>
    Pressure,

    /// <summary>An absolute pressure.</summary>
    AbsolutePressure,

    /// <summary>A vacuum level.</summary>
    Vacuum,

    /// <summary>The rise of a vacuum.</summary>
    VacuumRise,

    /// <summary>A barometer reading.</summary>
    AtmosphericPressure,

    /// <summary>A difference of refrigerant pressures.</summary>
    PressureDifference,

    /// <summary>Static pressure of air.</summary>
    StaticPressure,

    /// <summary>A temperature.</summary>
    Temperature,

    /// <summary>A difference of temperatures.</summary>
    TemperatureDifference,

    /// <summary>A length of line, a height.</summary>
    Length,

    /// <summary>Elevation of a site.</summary>
    Elevation,

    /// <summary>The diameter of a tube.</summary>
    TubeDiameter,

    /// <summary>A mass of refrigerant.</summary>
    Mass,

    /// <summary>Charge for each length of line.</summary>
    MassPerLength,

    /// <summary>An area.</summary>
    Area,

    /// <summary>A volume of a room or a circuit.</summary>
    Volume,

    /// <summary>A span of time.</summary>
    Duration,

    /// <summary>Air flow.</summary>
    AirFlow,

    /// <summary>Air flow for each capacity.</summary>
    FlowPerCapacity,

    /// <summary>Mass flow of refrigerant.</summary>
    MassFlow,

    /// <summary>A leak rate by mass.</summary>
    LeakRate,

    /// <summary>A leak rate by pressure and volume.</summary>
    Throughput,

    /// <summary>Gas velocity.</summary>
    Velocity,

    /// <summary>Electrical power.</summary>
    Power,

    /// <summary>Heat rate.</summary>
    Capacity,

    /// <summary>Fan power for each air flow.</summary>
    FanPower,

    /// <summary>Torque.</summary>
    Torque,

    /// <summary>Electric current.</summary>
    Current,

    /// <summary>Voltage.</summary>
    Voltage,

    /// <summary>Capacitance.</summary>
    Capacitance,

    /// <summary>Insulation resistance.</summary>
    Resistance,

    /// <summary>Frequency.</summary>
    Frequency,

    /// <summary>A percentage.</summary>
    Percentage,

    /// <summary>A pure number.</summary>
    Number,

    /// <summary>Density.</summary>
    Density,

    /// <summary>Enthalpy of a unit of mass.</summary>
    Enthalpy,
}
