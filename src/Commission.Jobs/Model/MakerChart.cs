using System.Collections.Immutable;
using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>A chart of the maker: one figure for each reading, or for each pair of readings.</summary>
public sealed record MakerChart : JobPart
{
    /// <summary>What the chart gives.</summary>
    public required Given<ChartQuantity> For { get; init; }

    /// <summary>For which mode.</summary>
    public Given<OperatingMode>? Mode { get; init; }

    /// <summary>The readings along the top.</summary>
    public required ChartAxis Across { get; init; }

    /// <summary>The readings down the side; without it the chart has one row.</summary>
    public ChartAxis? Down { get; init; }

    /// <summary>The rows; a dash in the maker's chart is written none. SI values; null where the chart has a dash. Empty when not written.</summary>
    public ImmutableArray<ImmutableArray<double?>> Values { get; init; } = [];

    /// <summary>How far a reading may be off.</summary>
    public Given<QuantityValue>? Tolerance { get; init; }

    /// <summary>Where the chart is printed.</summary>
    public required Given<string> From { get; init; }
}
