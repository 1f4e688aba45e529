using System.Collections.Immutable;
using Commission.Messages;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>
/// A vacuum log: times (s), absolute pressures (Pa), rows at which the gauge only said "above my range", and the gaps.
/// Times rise strictly; every row is either a finite pressure ≥ 0 or marked over range.
/// </summary>
internal sealed class VacuumSeries
{
    // A logger that misses two or three rows is slow; one that misses more than this was off.
    private const double GapInIntervals = 5.5;

    private readonly double[] _times;
    private readonly double[] _pressures;
    private readonly bool[] _overRange;

    private VacuumSeries(double[] times, double[] pressures, bool[] overRange, int[] sourceRows, int unreadable, int outOfOrder)
    {
        _times = times;
        _pressures = pressures;
        _overRange = overRange;
        SourceRows = ImmutableArray.Create(sourceRows);
        UnreadableRows = unreadable;
        OutOfOrderRows = outOfOrder;
        MedianInterval = SampledMedian.OfSteps(times);
        Gaps = FindGaps(times, MedianInterval);
    }

    /// <summary>Number of usable rows, over-range rows included.</summary>
    public int Count => _times.Length;

    /// <summary>Times, s, strictly rising.</summary>
    public ReadOnlySpan<double> Times => _times;

    /// <summary>Absolute pressures, Pa. At an over-range row: the upper end of the gauge where the log states it, else NaN.</summary>
    public ReadOnlySpan<double> Pressures => _pressures;

    /// <summary>True at rows where the gauge showed no number because the pressure was above its range.</summary>
    public ReadOnlySpan<bool> OverRange => _overRange;

    /// <summary>For each row, its index in the arrays the series was made from.</summary>
    public ImmutableArray<int> SourceRows { get; }

    /// <summary>Rows left out because time or pressure was not a finite number, or the pressure was below zero.</summary>
    public int UnreadableRows { get; }

    /// <summary>Rows left out because their time did not come after the row before.</summary>
    public int OutOfOrderRows { get; }

    /// <summary>Median time between rows, s; 0 with fewer than two rows.</summary>
    public double MedianInterval { get; }

    /// <summary>Stretches without rows, longer than five usual intervals.</summary>
    public ImmutableArray<SeriesGap> Gaps { get; }

    /// <summary>
    /// Takes a log as read. Rows that cannot be used are left out and counted, never repaired.
    /// </summary>
    /// <param name="times">Times, s.</param>
    /// <param name="pressures">Absolute pressures, Pa; NaN or the gauge's upper end at over-range rows.</param>
    /// <param name="overRange">Over-range flags; null when no row is over range.</param>
    /// <returns>The series; it may be empty.</returns>
    /// <exception cref="ArgumentException">The lists differ in length: a fault of the caller, not of the log.</exception>
    public static VacuumSeries From(IReadOnlyList<double> times, IReadOnlyList<double> pressures, IReadOnlyList<bool>? overRange = null)
    {
        ArgumentNullException.ThrowIfNull(times);
        ArgumentNullException.ThrowIfNull(pressures);
        if (pressures.Count != times.Count || (overRange is not null && overRange.Count != times.Count))
            throw new ArgumentException("Times, pressures and flags must have the same length.", nameof(pressures));

        var t = new List<double>(times.Count);
        var p = new List<double>(times.Count);
        var above = new List<bool>(times.Count);
        var rows = new List<int>(times.Count);
        var unreadable = 0;
        var outOfOrder = 0;
        for (var i = 0; i < times.Count; i++)
        {
            var isAbove = overRange is not null && overRange[i];
            if (!double.IsFinite(times[i]) || (!isAbove && !(double.IsFinite(pressures[i]) && pressures[i] >= 0)))
            {
                unreadable++;
                continue;
            }

            if (t.Count > 0 && times[i] <= t[^1])
            {
                outOfOrder++;
                continue;
            }

            t.Add(times[i]);
            p.Add(pressures[i]);
            above.Add(isAbove);
            rows.Add(i);
        }

        return new VacuumSeries([.. t], [.. p], [.. above], [.. rows], unreadable, outOfOrder);
    }

    /// <summary>Index of the first row at or after a time; <see cref="Count"/> when there is none.</summary>
    /// <param name="time">Time, s.</param>
    public int IndexAtOrAfter(double time)
    {
        var i = Array.BinarySearch(_times, time);
        return i >= 0 ? i : ~i;
    }

    /// <summary>
    /// Pressure at a time, by a straight line between the numbered rows on either side.
    /// </summary>
    /// <param name="time">Time, s.</param>
    /// <param name="longestBridge">Longest time between the two rows, s: a longer one is not bridged.</param>
    /// <returns>The pressure, Pa, or null: outside the log, beside an over-range row, or in a gap.</returns>
    public double? PressureAt(double time, double longestBridge = double.PositiveInfinity)
    {
        var after = IndexAtOrAfter(time);
        if (after < Count && _times[after] == time)
            return _overRange[after] ? null : _pressures[after];
        if (after == 0 || after == Count || _overRange[after] || _overRange[after - 1])
            return null;
        var step = _times[after] - _times[after - 1];
        if (step > longestBridge)
            return null;
        return _pressures[after - 1] + (_pressures[after] - _pressures[after - 1]) * ((time - _times[after - 1]) / step);
    }

    private static ImmutableArray<SeriesGap> FindGaps(double[] times, double interval)
    {
        var gaps = ImmutableArray.CreateBuilder<SeriesGap>();
        for (var i = 1; i < times.Length; i++)
        {
            if (times[i] - times[i - 1] > GapInIntervals * interval)
                gaps.Add(new SeriesGap(times[i - 1], times[i]));
        }

        return gaps.ToImmutable();
    }
}

/// <summary>One event written beside a vacuum log.</summary>
/// <param name="Time">On the clock of the log, s.</param>
/// <param name="Kind">What happened.</param>
internal readonly record struct VacuumEvent(double Time, VacuumEventKind Kind);

/// <summary>What a crew writes down beside a vacuum log.</summary>
internal enum VacuumEventKind
{
    /// <summary>The pump began to pull.</summary>
    PumpStarted,

    /// <summary>The vacuum was broken with dry nitrogen.</summary>
    NitrogenBreak,

    /// <summary>The valve between pump and system was closed.</summary>
    Isolated,

    /// <summary>The hold, or the log, ended.</summary>
    Ended,
}

/// <summary>What is known about the vacuum gauge, as far as it matters for a hold.</summary>
/// <param name="Resolution">Smallest step of the display or log, Pa, ≥ 0. Where the log itself moves in larger steps, those count.</param>
/// <param name="GainHalfWidth">Half-width of the gain error, relative (0.10 for ±10 % of reading), rectangular. It does not average out.</param>
/// <param name="ZeroHalfWidth">Half-width of the zero error, Pa, rectangular. It cancels in a rise and counts in a level.</param>
internal sealed record GaugeCharacter(double Resolution, double GainHalfWidth, double ZeroHalfWidth);

/// <summary>A vacuum log cut into pulls, breaks and holds.</summary>
/// <param name="Segments">The parts, in time order, without overlap.</param>
/// <param name="Isolation">Moment of the last isolation, s; null when it is neither written down nor visible.</param>
/// <param name="IsolationBasis">How <paramref name="Isolation"/> is known; null with it.</param>
/// <param name="HoldEnd">End of the last hold, s; null without isolation.</param>
/// <param name="Remarks">Plain sentences: what was found and not given, where log and events disagree, gaps, rows left out.</param>
internal sealed record SegmentedSeries(
    ImmutableArray<SeriesSegment> Segments,
    double? Isolation,
    SegmentBasis? IsolationBasis,
    double? HoldEnd,
    ImmutableArray<Message> Remarks)
{
    /// <summary>The last hold, the one that is judged; null when there is none.</summary>
    public SeriesSegment? Hold => Segments.LastOrDefault(s => s.Kind == SegmentKind.Hold);

    /// <summary>Times of breaks that are written and that the log would show and does not, s.</summary>
    public ImmutableArray<double> MissedBreaks { get; init; } = [];

    /// <summary>Number of breaks.</summary>
    public int Breaks => Segments.Count(s => s.Kind == SegmentKind.Break);
}

/// <summary>A stretch of a pressure log in which the logger wrote nothing.</summary>
/// <param name="From">Time of the last row before the gap, s.</param>
/// <param name="To">Time of the first row after the gap, s.</param>
internal readonly record struct SeriesGap(double From, double To)
{
    /// <summary>Length of the gap, s.</summary>
    public double Length => To - From;
}

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
internal sealed record SeriesSegment(
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

/// <summary>How the limits of a part of a log are known.</summary>
internal enum SegmentBasis
{
    /// <summary>From an event the crew wrote down.</summary>
    Given,

    /// <summary>Found from the shape of the log, because no event says it.</summary>
    FoundInData,
}

/// <summary>What was being done during a part of a vacuum log.</summary>
internal enum SegmentKind
{
    /// <summary>The pump was pulling on the system.</summary>
    Pull,

    /// <summary>Gas was let in: a break of the vacuum.</summary>
    Break,

    /// <summary>The system stood isolated from the pump.</summary>
    Hold,
}
