namespace Commission.Jobs.Model.Words;

/// <summary>A name for a reading, so that an instrument can say what was read on it.</summary>
public enum ReadingName
{
    /// <summary>Pressure at the vapor service valve.</summary>
    VaporPressure,

    /// <summary>Pressure at the liquid service valve.</summary>
    LiquidPressure,

    /// <summary>Pressure at the compressor inlet.</summary>
    TrueSuctionPressure,

    /// <summary>Pressure at the compressor outlet.</summary>
    DischargePressure,

    /// <summary>Temperature of the vapor line.</summary>
    VaporLine,

    /// <summary>Temperature of the liquid line.</summary>
    LiquidLine,

    /// <summary>Temperature of the discharge line.</summary>
    DischargeLine,

    /// <summary>Temperature of the suction line at the compressor.</summary>
    CompressorSuctionLine,

    /// <summary>Temperature of the liquid line after the drier.</summary>
    LiquidAfterDrier,

    /// <summary>Temperature of the vapor line at the bulb.</summary>
    EvaporatorOutlet,

    /// <summary>Temperature of the liquid leaving the indoor coil in heating.</summary>
    IndoorCoilOutlet,

    /// <summary>Temperature of the compressor's oil sump.</summary>
    Sump,

    /// <summary>Outdoor dry and wet bulb.</summary>
    OutdoorAir,

    /// <summary>Return dry and wet bulb.</summary>
    ReturnAir,

    /// <summary>Supply dry and wet bulb.</summary>
    SupplyAir,

    /// <summary>Temperature of the cold room.</summary>
    BoxTemperature,

    /// <summary>Pressure of the nitrogen.</summary>
    PressureTest,

    /// <summary>Temperature of the nitrogen.</summary>
    PressureTestTemperature,

    /// <summary>Vacuum level.</summary>
    Evacuation,

    /// <summary>Pressure after recovery.</summary>
    Recovery,

    /// <summary>Mass of refrigerant.</summary>
    Charge,

    /// <summary>Voltages and currents.</summary>
    Electrical,

    /// <summary>Voltages.</summary>
    Voltage,

    /// <summary>Currents.</summary>
    Current,

    /// <summary>Capacitors.</summary>
    Capacitance,

    /// <summary>Insulation resistance.</summary>
    Insulation,

    /// <summary>Sequence of the phases.</summary>
    PhaseRotation,

    /// <summary>Air pressures.</summary>
    StaticPressure,

    /// <summary>Air flow.</summary>
    Airflow,

    /// <summary>Air velocity.</summary>
    AirVelocity,

    /// <summary>Torque on flare nuts.</summary>
    Torque,

    /// <summary>Leak search.</summary>
    LeakSearch,

    /// <summary>Barometer.</summary>
    StationPressure,

    /// <summary>Time.</summary>
    Time,
}
