namespace Commission.Jobs.Model;

/// <summary>A branch box or selector.</summary>
public sealed record BranchBox : JobPart
{
    /// <summary>A short name used in piping.</summary>
    public required Given<string> Id { get; init; }

    /// <summary>The maker.</summary>
    public Given<string>? Maker { get; init; }

    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }

    /// <summary>The serial number.</summary>
    public Given<string>? Serial { get; init; }
}
