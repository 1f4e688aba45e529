using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A cylinder on the scale before and after.</summary>
public sealed record ScaleReading : JobPart
{
    /// <summary>The cylinder.</summary>
    public Given<string>? Cylinder { get; init; }

    /// <summary>Before.</summary>
    public required Given<Mass> Before { get; init; }

    /// <summary>After.</summary>
    public required Given<Mass> After { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
