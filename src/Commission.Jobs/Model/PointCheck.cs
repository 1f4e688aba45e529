namespace Commission.Jobs.Model;

/// <summary>A check at a point that nature fixes.</summary>
public sealed record PointCheck : JobPart
{
    /// <summary>What it showed.</summary>
    public required Given<QuantityValue> Read { get; init; }

    /// <summary>What it showed after it was adjusted.</summary>
    public Given<QuantityValue>? Adjusted { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
