namespace Commission.Jobs.Model.Words;

/// <summary>What was done to the circuit.</summary>
public enum WorkKind
{
    /// <summary>A new system, or new lines to it, filled for the first time.</summary>
    NewInstallation,

    /// <summary>An existing circuit was opened and closed again.</summary>
    OpenedCircuit,

    /// <summary>A leak was found and repaired.</summary>
    LeakRepair,

    /// <summary>The compressor was changed.</summary>
    CompressorReplacement,

    /// <summary>The circuit was changed to another refrigerant.</summary>
    RefrigerantChange,

    /// <summary>Refrigerant was added or removed, the circuit was not opened.</summary>
    ChargeAdjustment,

    /// <summary>Readings only.</summary>
    SeasonalCheck,

    /// <summary>The refrigerant was recovered for good.</summary>
    Decommissioning,
}
