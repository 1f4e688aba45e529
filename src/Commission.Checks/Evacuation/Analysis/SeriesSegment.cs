namespace Commission.Checks.EvacuationAnalysis;

/// <summary>A part of a vacuum log: a pull, a break or a hold.</summary>
/// <param name="Kind">What was being done.</param>
/// <param name="From">Start, s.</param>
/// <param name="To">End, s.</param>
/// <param name="Basis">Whether the start was written down or found.</param>
/// <param name="PressureAtStart">Pressure of the first numbered row of the part, Pa; null when all of it is over range or without rows.</param>
/// <param name="PressureAtEnd">Pressure of the last numbered row of the part, Pa; null as above.</param>
/// <param name="Lowest">Lowest pressure of the part, Pa; null as above.</param>
/// <param name="Highest">Highest pressure of the part, Pa; null as above. With <paramref name="OverRangeRows"/> the true highest was above the gauge.</param>
/// <param name="OverRangeRows">Rows of the part where the gauge was over range.</param>
public sealed record SeriesSegment(
    SegmentKind Kind,
    double From,
    double To,
    SegmentBasis Basis,
    double? PressureAtStart,
    double? PressureAtEnd,
    double? Lowest,
    double? Highest,
    int OverRangeRows)
{
    /// <summary>Length, s.</summary>
    public double Length => To - From;
}
