using System.Collections.Immutable;
using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>One side of a chart.</summary>
public sealed record ChartAxis : JobPart
{
    /// <summary>The reading.</summary>
    public required Given<ChartReading> Reading { get; init; }

    /// <summary>Its values, rising. Empty when not written.</summary>
    public ImmutableArray<Given<QuantityValue>> At { get; init; } = [];
}
