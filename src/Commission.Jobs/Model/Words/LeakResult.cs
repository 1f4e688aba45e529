namespace Commission.Jobs.Model.Words;

/// <summary>What the leak search found.</summary>
public enum LeakResult
{
    /// <summary>No leak found.</summary>
    None,

    /// <summary>A leak.</summary>
    Leak,

    /// <summary>A leak, repaired and looked at again.</summary>
    LeakRepaired,
}
