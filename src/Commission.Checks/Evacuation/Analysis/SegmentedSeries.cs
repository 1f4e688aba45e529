using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>A vacuum log cut into pulls, breaks and holds.</summary>
/// <param name="Segments">The parts, in time order, without overlap.</param>
/// <param name="Isolation">Moment of the last isolation, s; null when it is neither written down nor visible.</param>
/// <param name="IsolationBasis">How <paramref name="Isolation"/> is known; null with it.</param>
/// <param name="HoldEnd">End of the last hold, s; null without isolation.</param>
/// <param name="Remarks">Plain sentences: what was found and not given, where log and events disagree, gaps, rows left out.</param>
public sealed record SegmentedSeries(
    ImmutableArray<SeriesSegment> Segments,
    double? Isolation,
    SegmentBasis? IsolationBasis,
    double? HoldEnd,
    ImmutableArray<string> Remarks)
{
    /// <summary>The last hold, the one that is judged; null when there is none.</summary>
    public SeriesSegment? Hold => Segments.LastOrDefault(s => s.Kind == SegmentKind.Hold);

    /// <summary>Number of breaks.</summary>
    public int Breaks => Segments.Count(s => s.Kind == SegmentKind.Break);
}
