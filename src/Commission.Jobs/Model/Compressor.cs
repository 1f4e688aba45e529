using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>The compressor.</summary>
public sealed record Compressor : JobPart
{
    /// <summary>How it changes its capacity.</summary>
    public required Given<CompressorKind> Kind { get; init; }

    /// <summary>The maker.</summary>
    public Given<string>? Maker { get; init; }

    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }

    /// <summary>The serial number.</summary>
    public Given<string>? Serial { get; init; }

    /// <summary>Whether vapor is injected between stages.</summary>
    public Given<bool>? VaporInjection { get; init; }
}
