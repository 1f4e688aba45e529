using Commission.Documents.Plots.Axes;
using Xunit;

namespace Commission.Documents.Tests.Plots.Axes;

/// <summary>Positions along an axis, worked out by hand.</summary>
public class AxisMapTests
{
    [Fact]
    public void Even_scale_upside_down()
    {
        var map = new AxisMap(0, 10, 200, 100, false);
        Assert.Equal(200, map.At(0));
        Assert.Equal(150, map.At(5));
        Assert.Equal(90, map.At(11), 9);
        Assert.Equal(100, map.Clamped(11));
    }

    [Fact]
    public void Logarithmic_scale()
    {
        var map = new AxisMap(100, 10_000, 200, 100, true);
        Assert.Equal(150, map.At(1000), 9);
        Assert.Equal(200 - 50 * 0.69897000433, map.At(500), 8); // log10 5
        Assert.True(map.At(0) > 1000); // far below the low end, on an axis that grows upwards
    }
}
