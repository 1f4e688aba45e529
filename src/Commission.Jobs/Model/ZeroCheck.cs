namespace Commission.Jobs.Model;

/// <summary>A check with nothing applied.</summary>
public sealed record ZeroCheck : JobPart
{
    /// <summary>What it showed.</summary>
    public required Given<QuantityValue> Read { get; init; }

    /// <summary>What it showed after it was zeroed.</summary>
    public Given<QuantityValue>? Adjusted { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
