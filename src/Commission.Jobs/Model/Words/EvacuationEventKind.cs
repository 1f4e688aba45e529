namespace Commission.Jobs.Model.Words;

/// <summary>What happened during the evacuation.</summary>
public enum EvacuationEventKind
{
    /// <summary>The pump was started again.</summary>
    PumpOn,

    /// <summary>Vacuum broken with dry nitrogen.</summary>
    NitrogenBreak,

    /// <summary>The circuit was shut off from the pump.</summary>
    Isolated,

    /// <summary>Heat was put on the circuit.</summary>
    HeatApplied,

    /// <summary>The pump's oil was changed.</summary>
    PumpOilChanged,

    /// <summary>The gauge was cleaned or changed.</summary>
    GaugeCleaned,

    /// <summary>The circuit was opened to the air.</summary>
    Opened,

    /// <summary>The hold was ended.</summary>
    End,
}
