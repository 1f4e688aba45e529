namespace Commission.Jobs.Model.Words;

/// <summary>How brazed joints were looked at.</summary>
public enum BrazeInspection
{
    /// <summary>By eye.</summary>
    Visual,

    /// <summary>A joint was cut out and opened.</summary>
    CutOut,

    /// <summary>Not at all.</summary>
    None,
}
