using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>The simulator itself: what it draws is what it says. Expected values are worked by hand.</summary>
public sealed class SimulatedHoldTests
{
    private const double Micron = SimulatedGauge.Micron;

    [Theory]
    [InlineData(1, 456.4, 456)]
    [InlineData(3, 456.4, 460)]
    [InlineData(4, 1234, 1230)]
    [InlineData(4, 12_345, 12_300)]
    [InlineData(5, 99.94, 99.9)]
    [InlineData(0, 30_000, 25_000)]
    public void A_gauge_shows_its_steps_and_no_more_than_its_full_scale(int gauge, double micron, double shown) =>
        Assert.Equal(shown, SimulatedGauge.All[gauge].Shown(micron * Micron) / Micron, 1e-6);

    [Fact]
    public void Noise_has_the_size_and_the_memory_that_it_is_given()
    {
        var hold = new SimulatedHold { Pressure = _ => 50, Length = 40_000, Interval = 1, PumpDown = 0, Gauge = SimulatedGauge.All[0], White = 0.3, Wander = 0.4, Memory = 20 };
        var rows = hold.Rows(HoldDraws.Of(1, 1)).Select(r => r.Pressure - 50).ToArray();
        double Covariance(int lag) => Enumerable.Range(0, rows.Length - lag).Average(i => rows[i] * rows[i + lag]);
        // Variance 0.3² + 0.4² and, after 20 s, 0.4²/e; 1000 memories give them to about a twelfth.
        Assert.InRange(Covariance(0), 0.25 * 0.9, 0.25 * 1.1);
        Assert.InRange(Covariance(20), 0.16 / Math.E * 0.75, 0.16 / Math.E * 1.25);
    }

    [Fact]
    public void Noise_makes_a_clear_hold_unclear()
    {
        // 60 Pa towards a plateau, time constant a fifth of the hold: 1000 rows of 0.1 Pa tell it, of 40 Pa do not.
        var hold = new SimulatedHold { Pressure = t => 40 + 60 * (1 - Math.Exp(-t / 400)), Length = 2000, Interval = 2, White = 0.1 };
        Assert.True(HoldClarity.IsClear(hold, HoldFamily.Source, counting: 10));
        Assert.False(HoldClarity.IsStraight(hold, 10));
        Assert.False(HoldClarity.IsClear(hold with { White = 400 }, HoldFamily.Source, counting: 10));
        Assert.True(HoldClarity.IsStraight(hold with { White = 400 }, 10));
    }

    [Fact]
    public void A_source_slower_than_the_hold_is_a_line_to_everybody()
    {
        // Over a tenth of its time constant an exponential bends by t²/2τ² = 0.5 % of 100 Pa; least squares leave a twelfth of it or so, below 0.3 Pa of noise in 100 rows.
        var hold = new SimulatedHold { Pressure = t => 40 + 100 * (1 - Math.Exp(-t / 10_000)), Length = 1000, Interval = 10, White = 0.3 };
        Assert.True(HoldClarity.IsStraight(hold, 5));
        Assert.False(HoldClarity.IsClear(hold, HoldFamily.Source, 5));
    }

    [Fact]
    public void A_memory_costs_readings()
    {
        // The same noise white and wandering over a fifth of the hold: what a thousand rows tell, ten memories do not.
        var hold = new SimulatedHold { Pressure = t => 40 + 0.04 * t, Length = 1000, Interval = 1, White = 2, Gauge = SimulatedGauge.All[0] };
        Assert.True(HoldClarity.IsClear(hold, HoldFamily.Line, 5));
        Assert.False(HoldClarity.IsClear(hold with { White = 0, Wander = 2, Memory = 200 }, HoldFamily.Line, 5));
    }

    [Theory]
    [InlineData("1/t")]
    [InlineData("power")]
    [InlineData("√t diffusion")]
    [InlineData("many sites")]
    public void Every_law_of_outgassing_slows_down_and_never_falls(string law)
    {
        for (var i = 0; i < 40; i++)
        {
            var drawn = Outgassing.Draw(7, i);
            if (drawn.Law != law)
                continue;
            var (p, length) = (drawn.Hold.Pressure, drawn.Hold.Length);
            var rises = Enumerable.Range(0, 10).Select(k => p((k + 1) * length / 10) - p(k * length / 10)).ToArray();
            Assert.All(rises, r => Assert.True(r > 0));
            Assert.All(rises.Zip(rises.Skip(1)), pair => Assert.True(pair.Second <= pair.First * (1 + 1e-9)));
        }
    }
}
