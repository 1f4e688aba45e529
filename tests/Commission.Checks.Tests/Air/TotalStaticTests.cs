using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>
/// Static pressure across the whole air handler: from before the filter to after the coil. Taps inside leave the drop of coil or filter out,
/// which then is added (definition of total static pressure). 0.2 + 0.3 inwc between the taps, filter 0.12, coil 0.25 inwc; sums by hand.
/// </summary>
public sealed class TotalStaticTests
{
    private const double InchOfWater = 249.08891;

    [Theory]
    [InlineData("after filter", "before coil", 0.50)]
    [InlineData("before filter", "before coil", 0.62)]
    [InlineData("after filter", "after coil", 0.75)]
    [InlineData("before filter", "after coil", 0.87)]
    public void Drops_that_the_taps_leave_out_are_added(string returnTap, string supplyTap, double inches)
    {
        var finding = AirJobs.All(
            "air.static", $"{{filter drop: 0.12 inwc, coil drop: 0.25 inwc, static: {{return: -0.2 inwc, supply: 0.3 inwc, return tap: {returnTap}, supply tap: {supplyTap}}}}}")
            .Single(f => f.Subject == "total");
        Assert.Equal(inches, finding.Measured!.Value.Si / InchOfWater, 1e-4);
        // A plate rates the external pressure: nothing is said of a total beside it.
        Assert.Empty(finding.Limits);
        Assert.EndsWith("inwc.", finding.Statement, StringComparison.Ordinal);
        Assert.DoesNotContain("rat", finding.Statement, StringComparison.Ordinal);
    }
}
