using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A hose between circuit and pump.</summary>
public sealed record Hose : JobPart
{
    /// <summary>Inside diameter.</summary>
    public required Given<Length> Bore { get; init; }

    /// <summary>Length.</summary>
    public required Given<Length> Length { get; init; }

    /// <summary>How many alike, side by side.</summary>
    public Given<int>? Count { get; init; }
}
