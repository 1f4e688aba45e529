using System.Collections.Immutable;
using Commission.Checks.EvacuationAnalysis;

namespace Commission.Checks.Evacuation;

/// <summary>
/// Thins a log for a figure: of each bundle of rows the lowest and the highest stay, in their order, so that no spike and no break is
/// lost, and an over-range stretch stays a gap.
/// </summary>
internal static class CurveThinning
{
    /// <summary>Most points of a curve in a record.</summary>
    public const int MostPoints = 2000;

    // Lowest, highest and the mark of an over-range stretch.
    private const int PointsOfBundle = 3;

    /// <summary>Rows of a stretch, thinned.</summary>
    /// <param name="series">The readings.</param>
    /// <param name="from">Begin, s.</param>
    /// <param name="to">End, s.</param>
    /// <returns>Times (s) and pressures (Pa); null where the gauge was over range.</returns>
    public static (ImmutableArray<double> Times, ImmutableArray<double?> Pressures) Of(VacuumSeries series, double from, double to)
    {
        var first = series.IndexAtOrAfter(from);
        var last = series.IndexAtOrAfter(to);
        if (last < series.Count && series.Times[last] == to)
            last++;
        var count = Math.Max(last - first, 0);
        var size = Math.Max(1, (count + (MostPoints / PointsOfBundle) - 1) / (MostPoints / PointsOfBundle));
        if (count <= MostPoints)
            size = 1;
        var times = ImmutableArray.CreateBuilder<double>();
        var pressures = ImmutableArray.CreateBuilder<double?>();
        for (var i = first; i < last; i += size)
            AddBundle(series, i, Math.Min(i + size, last), times, pressures);
        return (times.ToImmutable(), pressures.ToImmutable());
    }

    private static void AddBundle(VacuumSeries series, int from, int to, ImmutableArray<double>.Builder times, ImmutableArray<double?>.Builder pressures)
    {
        var (low, high, over) = (-1, -1, -1);
        for (var i = from; i < to; i++)
        {
            if (series.OverRange[i])
            {
                over = over < 0 ? i : over;
                continue;
            }

            if (low < 0 || series.Pressures[i] < series.Pressures[low])
                low = i;
            if (high < 0 || series.Pressures[i] > series.Pressures[high])
                high = i;
        }

        foreach (var row in new[] { low, high, over }.Where(r => r >= 0).Distinct().Order())
        {
            times.Add(series.Times[row]);
            pressures.Add(series.OverRange[row] ? null : series.Pressures[row]);
        }
    }
}
