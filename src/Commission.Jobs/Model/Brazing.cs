using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>How joints were brazed.</summary>
public sealed record Brazing : JobPart
{
    /// <summary>Flow of nitrogen while brazing.</summary>
    public Given<VolumeFlow>? NitrogenFlow { get; init; }

    /// <summary>How joints were looked at.</summary>
    public Given<BrazeInspection>? Inspected { get; init; }
}
