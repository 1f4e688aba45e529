namespace Commission.Jobs.Model;

/// <summary>Two instruments on the same thing.</summary>
public sealed record PairCheck : JobPart
{
    /// <summary>The other instrument.</summary>
    public required Given<string> With { get; init; }

    /// <summary>What this one showed.</summary>
    public required Given<QuantityValue> Read { get; init; }

    /// <summary>What the other one showed.</summary>
    public required Given<QuantityValue> Other { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
