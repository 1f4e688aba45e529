namespace Commission.Jobs.Model;

/// <summary>The part that failed.</summary>
public sealed record FailedPart : JobPart
{
    /// <summary>The part.</summary>
    public required Given<string> What { get; init; }

    /// <summary>The maker.</summary>
    public Given<string>? Maker { get; init; }

    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }

    /// <summary>The serial number.</summary>
    public Given<string>? Serial { get; init; }
}
