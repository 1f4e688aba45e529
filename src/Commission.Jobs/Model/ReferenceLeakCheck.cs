using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A leak detector on a known leak.</summary>
public sealed record ReferenceLeakCheck : JobPart
{
    /// <summary>The known leak.</summary>
    public required Given<MassFlow> Leak { get; init; }

    /// <summary>Whether it was found.</summary>
    public required Given<bool> Found { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
