using Commission.Documents.Plots.Axes;
using CsCheck;
using Xunit;

namespace Commission.Documents.Tests.Plots.Axes;

/// <summary>Marks are where people expect them.</summary>
public class AxisTicksTests
{
    [Fact]
    public void Even_steps_are_round()
    {
        Assert.Equal(["0", "2", "4", "6", "8", "10"], Labels(AxisTicks.Linear(0, 10, 5)));
        Assert.Equal(["−0.2", "0.0", "0.2"], Labels(AxisTicks.Linear(-0.25, 0.25, 3)));
        Assert.Equal(["0", "500,000", "1,000,000"], Labels(AxisTicks.Linear(0, 1_000_000, 2)));
    }

    [Fact]
    public void Minutes_step_as_a_clock_does()
    {
        Assert.Equal(["0", "15", "30", "45", "60", "75", "90"], Labels(AxisTicks.Minutes(0, 95, 7)));
        Assert.Equal(["0", "60", "120", "180"], Labels(AxisTicks.Minutes(0, 200, 4)));
        Assert.Equal(["0.0", "0.2", "0.4"], Labels(AxisTicks.Minutes(0, 0.5, 3)));
    }

    [Fact]
    public void A_clock_goes_on_after_midnight()
        => Assert.Equal(["23:30", "00:00", "00:30"], Labels(AxisTicks.Clock(1405, 1475, 3)));

    [Fact]
    public void Decades_carry_the_numbers_and_the_rest_marks_only()
    {
        var ticks = AxisTicks.Log(100, 1_000_000, 12);
        Assert.Equal(["100", "1,000", "10,000", "100,000", "1,000,000"], Labels(ticks).Where(label => label.Length > 0));
        Assert.Equal(37, ticks.Count); // four decades of nine marks, and the end
        Assert.Equal(["0.5", "1", "2", "5"], Labels(AxisTicks.Log(0.5, 5, 10)).Where(label => label.Length > 0));
    }

    [Fact]
    public void Ends_are_rounded_outwards()
    {
        Assert.Equal((200, 2000), AxisTicks.RoundOutLog(342, 1000.5));
        Assert.Equal((0, 1000), AxisTicks.RoundOut(12, 970, 5));
        var (low, high) = AxisTicks.RoundOut(3, 3, 5);
        Assert.True(low < 3 && high > 3);
    }

    [Fact]
    public void Marks_lie_within_the_ends_in_order_and_near_the_number_wanted()
        => Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1e-3, 1e6], Gen.Int[2, 12]).Sample((low, span, wanted) =>
        {
            var ticks = AxisTicks.Linear(low, low + span, wanted);
            Assert.InRange(ticks.Count, 0, wanted + 1);
            for (var i = 0; i < ticks.Count; i++)
            {
                Assert.InRange(ticks[i].Value, low - span * 1e-5, low + span * (1 + 1e-5));
                Assert.True(i == 0 || ticks[i].Value > ticks[i - 1].Value);
            }
        }, iter: 2000);

    private static IEnumerable<string> Labels(IEnumerable<Tick> ticks) => ticks.Select(tick => tick.Label);
}
