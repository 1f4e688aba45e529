namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Why a hold does not tell its cause.</summary>
public enum CannotTellReason
{
    /// <summary>No usable rows after isolation.</summary>
    NoRows,

    /// <summary>Too few independent readings for the number of parameters: hold too short for how slowly the readings wander.</summary>
    TooFewBlocks,

    /// <summary>A rise that would count could hide in the scatter.</summary>
    ScatterHidesRise,

    /// <summary>The hold is shorter than two time constants, or the scatter too large, to tell a steady rise from a source.</summary>
    LineOrSource,

    /// <summary>A source is seen, and a steady rise beneath it can be neither shown nor excluded.</summary>
    SourceWithOrWithoutLine,

    /// <summary>A steady rise is seen, and a source on top of it can be neither shown nor excluded.</summary>
    LineWithOrWithoutSource,

    /// <summary>The pressure fell by more than the scatter: temperature, gauge or absorption, and a rise could hide behind it.</summary>
    Falling,

    /// <summary>The pressure left the range of the gauge before the end of the hold.</summary>
    OverRange,
}
