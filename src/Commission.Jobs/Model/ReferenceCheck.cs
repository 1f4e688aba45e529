namespace Commission.Jobs.Model;

/// <summary>A check against a known value.</summary>
public sealed record ReferenceCheck : JobPart
{
    /// <summary>The known value.</summary>
    public required Given<QuantityValue> Applied { get; init; }

    /// <summary>What the instrument showed.</summary>
    public required Given<QuantityValue> Read { get; init; }

    /// <summary>What it showed after it was adjusted.</summary>
    public Given<QuantityValue>? Adjusted { get; init; }

    /// <summary>What the known value comes from.</summary>
    public Given<string>? Reference { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
