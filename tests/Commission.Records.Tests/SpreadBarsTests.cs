using Commission.Records.Series;
using Xunit;

namespace Commission.Records.Tests;

public sealed class SpreadBarsTests
{
    // A mark takes a twenty-fifth of the axis at most: on one from 0 to 100 a bar of 4 hides behind it.
    [Theory]
    [InlineData(1.9, AxisScale.Linear, 1, false)]
    [InlineData(2.1, AxisScale.Linear, 1, true)]
    [InlineData(2.1, AxisScale.Linear, 2, false)]
    [InlineData(4.1, AxisScale.Linear, 2, true)]
    public void A_bar_is_seen_when_it_leaves_its_mark(double u, AxisScale scale, int panels, bool isSeen) =>
        Assert.Equal(isSeen, SpreadBars.AreSeen(Curve(3, 50, u), 0, 100, scale, panels));

    // From 1 to 10 000 are four decades; a bar must span 0.16 of one, a factor of 1.45.
    [Theory]
    [InlineData(100, 15, false)]
    [InlineData(100, 25, true)]
    [InlineData(1000, 25, false)]
    public void On_a_logarithm_it_is_the_ratio_that_counts(double value, double u, bool isSeen) =>
        Assert.Equal(isSeen, SpreadBars.AreSeen(Curve(3, value, u), 1, 10_000, AxisScale.Log10));

    [Fact]
    public void Many_readings_are_a_line_without_bars()
    {
        Assert.True(SpreadBars.AreSeen(Curve(SpreadBars.MostMarks, 50, 20), 0, 100, AxisScale.Linear));
        Assert.False(SpreadBars.AreSeen(Curve(SpreadBars.MostMarks + 1, 50, 20), 0, 100, AxisScale.Linear));
        Assert.False(SpreadBars.AreSeen(Curve(3, 50, 20) with { YLow = [], YHigh = [] }, 0, 100, AxisScale.Linear));
    }

    private static FigureCurve Curve(int count, double value, double u) => new()
    {
        Label = "reading",
        Role = CurveRole.Measured,
        X = [.. Enumerable.Range(0, count).Select(i => (double)i)],
        Y = [.. Enumerable.Repeat<double?>(value, count)],
        YLow = [.. Enumerable.Repeat<double?>(value - u, count)],
        YHigh = [.. Enumerable.Repeat<double?>(value + u, count)],
    };
}
