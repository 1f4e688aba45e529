using Commission.Documents.Pictures;
using Commission.Documents.Plots.Sheets;
using CsCheck;
using Xunit;

namespace Commission.Documents.Tests.Plots.Sheets;

/// <summary>Thinning may leave out what cannot be seen, and nothing else.</summary>
public class ThinningTests
{
    [Fact]
    public void A_spike_of_one_reading_in_ten_thousand_survives()
    {
        var points = Enumerable.Range(0, 10_000).Select(i => new Point(i * 0.05, i == 4321 ? 3.0 : 100)).ToArray();
        var kept = Thinning.Reduce(points);
        Assert.Contains(points[4321], kept);
        Assert.InRange(kept.Count, 5, 12);
    }

    [Fact]
    public void A_straight_line_keeps_its_ends_only()
        => Assert.Equal([new Point(0, 0), new Point(100, 50)], Thinning.Reduce([.. Enumerable.Range(0, 101).Select(i => new Point(i, i / 2.0))]));

    [Fact]
    public void No_reading_lies_farther_from_the_drawn_line_than_the_width_of_a_hair()
        => Gen.Double[0, 200].Array[2, 400].Sample(heights =>
        {
            var points = heights.Select((y, i) => new Point(i * 0.3, y)).ToArray();
            var kept = Thinning.Reduce(points);
            foreach (var p in points)
                Assert.True(Enumerable.Range(1, kept.Count - 1).Min(i => Distance(p, kept[i - 1], kept[i])) <= 0.6, $"{p} lost");
        }, iter: 200);

    [Fact]
    public void A_closed_cycle_keeps_its_corners()
    {
        Point[] cycle = [new(0, 0), new(50, 0), new(100, 0), new(100, 80), new(0, 80), new(0, 0)];
        Assert.Equal([new Point(0, 0), new(100, 0), new(100, 80), new(0, 80), new(0, 0)], Thinning.Reduce(cycle));
    }

    private static double Distance(Point p, Point a, Point b)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y;
        var length = dx * dx + dy * dy;
        var along = length == 0 ? 0 : Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / length, 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - along * dx, 2) + Math.Pow(p.Y - a.Y - along * dy, 2));
    }
}
