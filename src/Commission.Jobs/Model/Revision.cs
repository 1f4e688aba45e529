namespace Commission.Jobs.Model;

/// <summary>A corrected job file says what it replaces.</summary>
public sealed record Revision : JobPart
{
    /// <summary>2 for the first correction.</summary>
    public required Given<int> Number { get; init; }

    /// <summary>The digest of the record that is replaced.</summary>
    public required Given<string> Replaces { get; init; }

    /// <summary>Why.</summary>
    public required Given<string> Reason { get; init; }
}
