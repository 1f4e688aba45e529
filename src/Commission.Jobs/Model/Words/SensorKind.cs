namespace Commission.Jobs.Model.Words;

/// <summary>What the sensor is.</summary>
public enum SensorKind
{
    /// <summary>IEC 60584 type K class 1.</summary>
    ThermocoupleKClass1,

    /// <summary>IEC 60584 type K class 2.</summary>
    ThermocoupleKClass2,

    /// <summary>ASTM E230 type K special tolerance.</summary>
    ThermocoupleKSpecial,

    /// <summary>ASTM E230 type K standard tolerance.</summary>
    ThermocoupleKStandard,

    /// <summary>IEC 60584 type T class 1.</summary>
    ThermocoupleTClass1,

    /// <summary>IEC 60584 type T class 2.</summary>
    ThermocoupleTClass2,

    /// <summary>A thermistor.</summary>
    Thermistor,

    /// <summary>A resistance thermometer.</summary>
    RTD,

    /// <summary>IEC 60751 class A.</summary>
    RTDClassA,

    /// <summary>IEC 60751 class B.</summary>
    RTDClassB,

    /// <summary>A heat-loss vacuum gauge: it is set for air.</summary>
    Thermal,

    /// <summary>A diaphragm vacuum gauge: the gas does not matter.</summary>
    Capacitance,

    /// <summary>A piezo-resistive pressure sensor.</summary>
    Piezo,

    /// <summary>A wet wick.</summary>
    Wick,

    /// <summary>A capacitive humidity sensor.</summary>
    CapacitiveHumidity,
}
