namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What a crew writes down beside a vacuum log.</summary>
public enum VacuumEventKind
{
    /// <summary>The pump began to pull.</summary>
    PumpStarted,

    /// <summary>The vacuum was broken with dry nitrogen.</summary>
    NitrogenBreak,

    /// <summary>The valve between pump and system was closed.</summary>
    Isolated,

    /// <summary>The hold, or the log, ended.</summary>
    Ended,
}
