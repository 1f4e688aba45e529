using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// A vacuum log: times (s), absolute pressures (Pa), rows at which the gauge only said "above my range", and the gaps.
/// Times rise strictly; every row is either a finite pressure ≥ 0 or marked over range.
/// </summary>
public sealed class VacuumSeries
{
    // A logger that misses two or three rows is slow; one that misses more than this was off.
    private const double GapInIntervals = 5.5;

    private readonly double[] times;
    private readonly double[] pressures;
    private readonly bool[] overRange;

    private VacuumSeries(double[] times, double[] pressures, bool[] overRange, int[] sourceRows, int unreadable, int outOfOrder)
    {
        this.times = times;
        this.pressures = pressures;
        this.overRange = overRange;
        SourceRows = ImmutableArray.Create(sourceRows);
        UnreadableRows = unreadable;
        OutOfOrderRows = outOfOrder;
        MedianInterval = SampledMedian.OfSteps(times);
        Gaps = FindGaps(times, MedianInterval);
    }

    /// <summary>Number of usable rows, over-range rows included.</summary>
    public int Count => times.Length;

    /// <summary>Times, s, strictly rising.</summary>
    public ReadOnlySpan<double> Times => times;

    /// <summary>Absolute pressures, Pa. At an over-range row: the upper end of the gauge where the log states it, else NaN.</summary>
    public ReadOnlySpan<double> Pressures => pressures;

    /// <summary>True at rows where the gauge showed no number because the pressure was above its range.</summary>
    public ReadOnlySpan<bool> OverRange => overRange;

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
        var i = Array.BinarySearch(times, time);
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
        if (after < Count && times[after] == time)
            return overRange[after] ? null : pressures[after];
        if (after == 0 || after == Count || overRange[after] || overRange[after - 1])
            return null;
        var step = times[after] - times[after - 1];
        if (step > longestBridge)
            return null;
        return pressures[after - 1] + (pressures[after] - pressures[after - 1]) * ((time - times[after - 1]) / step);
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
