namespace Commission.Checks.EvacuationAnalysis;

/// <summary>How the limits of a part of a log are known.</summary>
public enum SegmentBasis
{
    /// <summary>From an event the crew wrote down.</summary>
    Given,

    /// <summary>Found from the shape of the log, because no event says it.</summary>
    FoundInData,
}
