namespace Commission.Jobs.Model.Words;

/// <summary>What a safety device guards.</summary>
public enum SafetyDeviceKind
{
    /// <summary>Stops the compressor at high pressure.</summary>
    HighPressureSwitch,

    /// <summary>Stops the compressor at low pressure.</summary>
    LowPressureSwitch,

    /// <summary>Lets refrigerant out before something bursts.</summary>
    ReliefValve,

    /// <summary>Stops before the coil freezes.</summary>
    FreezeProtection,

    /// <summary>Stops when the discharge line is too hot.</summary>
    DischargeThermostat,

    /// <summary>Stops without oil pressure.</summary>
    OilPressureSwitch,

    /// <summary>Stops when condensate rises.</summary>
    FloatSwitch,

    /// <summary>Another device.</summary>
    Other,
}
