namespace Commission.Jobs.Model.Words;

/// <summary>Something fitted to the circuit beyond the standard parts.</summary>
public enum Accessory
{
    /// <summary>Heats the oil while the compressor stands.</summary>
    CrankcaseHeater,

    /// <summary>Shuts the liquid line.</summary>
    LiquidSolenoid,

    /// <summary>An added thermostatic expansion valve.</summary>
    TXV,

    /// <summary>A start capacitor and relay.</summary>
    StartKit,

    /// <summary>Traps in the risers.</summary>
    OilTraps,

    /// <summary>Catches liquid before the compressor.</summary>
    SuctionAccumulator,

    /// <summary>Returns oil from the discharge line.</summary>
    OilSeparator,

    /// <summary>A drier in the liquid line.</summary>
    LiquidDrier,

    /// <summary>A clean-up drier in the suction line.</summary>
    SuctionDrier,

    /// <summary>Keeps the head pressure up in cold weather.</summary>
    LowAmbientKit,
}
