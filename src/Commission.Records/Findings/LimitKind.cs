namespace Commission.Records.Findings;

/// <summary>What a limit asks of the measured quantity.</summary>
public enum LimitKind
{
    /// <summary>The quantity must reach the lower limit.</summary>
    AtLeast,

    /// <summary>The quantity must not exceed the upper limit.</summary>
    AtMost,

    /// <summary>The quantity must lie between two limits.</summary>
    Within,

    /// <summary>The quantity must lie within a tolerance of a target.</summary>
    Target,

    /// <summary>A requirement in words, without a number.</summary>
    Statement,
}
