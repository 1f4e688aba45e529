using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Tests.VacuumAnalysis.Simulation;
using Commission.Checks.VacuumAnalysis;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

/// <summary>How often the analysis is right on simulated holds whose truth is known. Seeds are fixed.</summary>
public sealed class HoldAnalysisRatesTests(ITestOutputHelper output)
{
    private static readonly HoldConclusion[] Kinds =
        [HoldConclusion.Held, HoldConclusion.SteadyRise, HoldConclusion.Source, HoldConclusion.SteadyRiseAndSource];

    [Theory]
    [InlineData(nameof(HoldConclusion.Held))]
    [InlineData(nameof(HoldConclusion.SteadyRise))]
    [InlineData(nameof(HoldConclusion.Source))]
    [InlineData(nameof(HoldConclusion.SteadyRiseAndSource))]
    public void At_a_correlation_of_0_98_all_four_are_told(string conclusion)
    {
        var kind = Enum.Parse<HoldConclusion>(conclusion);
        // 1 Hz, 60 min, wander of 0.3 Pa that remembers 50 s: AICc on the raw rows would see structure in it.
        var simulator = new HoldSimulator(98);
        var right = 0;
        for (var i = 0; i < 30; i++)
        {
            var drawn = simulator.Draw(kind, correlation: 0.98, leastNoise: 0.3, mostNoise: 0.3);
            var truth = drawn with { Length = 3600, Interval = 1, Resolution = 0.133322 };
            truth = truth with { Tau = 700, Step = kind is HoldConclusion.Source or HoldConclusion.SteadyRiseAndSource ? 60 : 0 };
            truth = truth with { Slope = kind is HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource ? 40.0 / 3600 : 0 };
            right += Analyze(simulator.Log(truth), truth).Conclusion == kind ? 1 : 0;
        }

        output.WriteLine($"{kind}: {right} of 30");
        Assert.True(right >= 28, $"{right} of 30");
    }

    [Fact]
    public void A_source_slower_than_the_hold_is_never_excluded_by_a_steady_rise_beyond_its_bound()
    {
        // A source with τ of 2 to 20 holds is a straight line within any noise: then the bound that is stated must hold.
        var simulator = new HoldSimulator(7);
        var (straight, bounded) = (0, 0);
        for (var i = 0; i < 80; i++)
        {
            var drawn = simulator.Draw(HoldConclusion.Source, leastNoise: 0.02, mostNoise: 0.5);
            var tau = drawn.Length * simulator.LogUniform(2, 20);
            var truth = drawn with { Tau = tau, Step = 4 * drawn.Counting / (1 - Math.Exp(-drawn.Length / tau)) };
            var result = Analyze(simulator.Log(truth), truth);
            Assert.NotEqual(HoldConclusion.Held, result.Conclusion);
            if (result.Conclusion == HoldConclusion.SteadyRise)
            {
                straight++;
                bounded += result.SourcesExcludedUpTo < tau ? 1 : 0;
            }
        }

        output.WriteLine($"called steady {straight} of 80, true time constant above the stated bound in {bounded}");
        Assert.True(straight >= 10);
        Assert.True(bounded >= 0.9 * straight, $"{bounded} of {straight}");
    }

    [Fact]
    public void Intervals_of_plateau_and_time_constant_cover_the_truth()
    {
        var simulator = new HoldSimulator(11);
        var (count, plateau, tau) = (0, 0, 0);
        for (var i = 0; i < 240 && count < 90; i++)
        {
            var truth = simulator.Draw(HoldConclusion.Source);
            if (Identifiability.Of(truth) != Identifiability.Class.Clear)
                continue;
            var result = Analyze(simulator.Log(truth), truth);
            if (result.Plateau is not { } p || result.TimeConstant is not { } t)
                continue;
            count++;
            plateau += p.Covers(truth.Level + truth.Step) ? 1 : 0;
            tau += t.Covers(truth.Tau) ? 1 : 0;
        }

        output.WriteLine($"plateau {plateau}, time constant {tau} of {count}");

        // 95 % of 90 with three standard deviations of a binomial count.
        Assert.True(count >= 60);
        Assert.InRange((double)plateau / count, 0.88, 1);
        Assert.InRange((double)tau / count, 0.88, 1);
    }

    [Fact]
    public void The_time_that_would_tell_mostly_does()
    {
        var simulator = new HoldSimulator(5);
        var (planned, told) = (0, 0);
        for (var i = 0; i < 120; i++)
        {
            var truth = simulator.Draw(Kinds[i % 4], mostNoise: 1);
            if (Analyze(simulator.Log(truth), truth).TimeToTell is not { } time || time > 14_400)
                continue;
            var longer = truth with { Length = time };
            planned++;
            told += Analyze(simulator.Log(longer), longer).Conclusion != HoldConclusion.CannotTell ? 1 : 0;
        }

        output.WriteLine($"{told} of {planned} told after the stated time");
        Assert.True(planned >= 10);
        Assert.True(told >= 0.7 * planned, $"{told} of {planned}");
    }

    private static HoldResult Analyze(VacuumSeries log, HoldTruth truth) =>
        HoldAnalysis.Analyze(log, 0, truth.Length, truth.Gauge, truth.Options);
}
