namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What was being done during a part of a vacuum log.</summary>
public enum SegmentKind
{
    /// <summary>The pump was pulling on the system.</summary>
    Pull,

    /// <summary>Gas was let in: a break of the vacuum.</summary>
    Break,

    /// <summary>The system stood isolated from the pump.</summary>
    Hold,
}
