namespace Commission.Jobs.Model;

/// <summary>Who watched a step.</summary>
public sealed record Witness : JobPart
{
    /// <summary>The name.</summary>
    public required Given<string> By { get; init; }

    /// <summary>In what role.</summary>
    public Given<string>? Role { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
