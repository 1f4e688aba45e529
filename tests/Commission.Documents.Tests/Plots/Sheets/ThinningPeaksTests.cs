using Commission.Documents.Pictures;
using Commission.Documents.Plots.Sheets;
using Xunit;

namespace Commission.Documents.Tests.Plots.Sheets;

/// <summary>
/// A column of half a point keeps its first, lowest, highest and last reading wherever they lie in it: two peaks of one reading each, up and
/// down, in either order, in the middle of a column of ten readings.
/// </summary>
public class ThinningPeaksTests
{
    [Theory]
    [InlineData(4323, 4326)]
    [InlineData(4326, 4323)]
    [InlineData(4321, 4328)]
    [InlineData(4328, 4321)]
    public void Both_peaks_of_one_column_are_drawn(int low, int high)
    {
        var points = Enumerable.Range(0, 10_000).Select(i => new Point(i * 0.05, i == low ? 3.0 : i == high ? 180 : 100)).ToArray();
        Assert.Equal(216, Math.Floor(points[4320].X));
        var kept = Thinning.Reduce(points);
        Assert.Contains(points[low], kept);
        Assert.Contains(points[high], kept);
        Assert.True(kept.Select(p => p.X).SequenceEqual(kept.Select(p => p.X).Order()), "The line goes from left to right.");
        Assert.InRange(kept.Count, 6, 16);
    }

    [Fact]
    public void Few_readings_are_all_kept_but_for_straight_runs()
    {
        var points = Enumerable.Range(0, 60).Select(i => new Point(i * 0.05, i % 2 == 0 ? 10 : 90)).ToArray();
        Assert.Equal(points, Thinning.Reduce(points));
    }
}
