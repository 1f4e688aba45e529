using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Measurement.Tests.Uncertainty;

/// <summary>Worked examples of JCGM 101:2008, from memory, with a million trials and a fixed seed; the tolerance is what the standard's own adaptive procedure asks, half a unit of the digit printed.</summary>
public sealed class MonteCarloTests
{
    private const int Trials = 1_000_000;

    // 9.2.2 and 9.2.3: four inputs of mean 0 and standard deviation 1.
    [Theory]
    [InlineData(Distribution.Normal, "3.92")]
    [InlineData(Distribution.Rectangular, "3.88")]
    public void Sum_of_four(Distribution distribution, string half)
    {
        var causes = Enumerable.Range(1, 4).Select(i => new RootCause($"x{i}".Plain(), "JCGM 101, 9.2".Plain(), 1, distribution: distribution)).ToArray();
        Uncertain Model(IUncertaintyScope scope) =>
            scope.Reading(0, causes[0]) + scope.Reading(0, causes[1]) + scope.Reading(0, causes[2]) + scope.Reading(0, causes[3]);

        var linear = Model(LinearScope.Instance);
        Printed.Agrees("3.92", Helpers.Quantile(0.95, linear.DegreesOfFreedom) * linear.StandardUncertainty);
        var trials = MonteCarlo.Run(Model, new Random(20260618), Trials);
        Assert.Equal(0, trials.Mean, 0.01);
        Printed.Agrees("2.00", trials.StandardUncertainty);
        var (low, high) = trials.SymmetricInterval(0.95);
        Printed.Agrees(half, high, 1);
        Printed.Agrees("-" + half, low, 1);
    }

    // 9.2.4: one of the four rectangles is ten times as wide.
    [Fact]
    public void One_dominant_rectangle()
    {
        var causes = Enumerable.Range(1, 4).Select(i => new RootCause($"x{i}".Plain(), "JCGM 101, 9.2.4".Plain(), i == 4 ? 10 : 1, distribution: Distribution.Rectangular)).ToArray();
        Uncertain Model(IUncertaintyScope scope) =>
            scope.Reading(0, causes[0]) + scope.Reading(0, causes[1]) + scope.Reading(0, causes[2]) + scope.Reading(0, causes[3]);

        var linear = Model(LinearScope.Instance);
        Printed.Agrees("10.1", linear.StandardUncertainty);
        Printed.Agrees("19.9", Helpers.Quantile(0.95, linear.DegreesOfFreedom) * linear.StandardUncertainty);
        var trials = MonteCarlo.Run(Model, new Random(20260618), Trials);
        Printed.Agrees("10.1", trials.StandardUncertainty);
        Printed.Agrees("17.0", trials.SymmetricInterval(0.95).High);
        Printed.Agrees("-17.0", trials.ShortestInterval(0.95).Low, 1);
    }

    // EA-4/02 S9 and S10, from memory: one rectangle rules (k 1.65); two rectangles make a trapezoid (k 1.83).
    [Fact]
    public void EA402_S9_rectangular()
    {
        // S9: hand-held multimeter at 100 V, 0.1 V a digit. The example takes k of the rectangle that rules it, 0.95·√3.
        var resolution = RootCause.FromResolution("resolution".Plain(), "S9".Plain(), 0.1);
        var certificate = RootCause.FromExpanded("calibrator".Plain(), "S9".Plain(), 0.002, 2);
        var specification = RootCause.FromHalfWidth("specification of the calibrator".Plain(), "S9".Plain(), 0.011);
        Printed.Agrees("0.030", Uncertain.From(0.1, resolution, certificate, specification).StandardUncertainty);
        var trials = MonteCarlo.Run(scope => scope.Reading(0.1, resolution), new Random(9), Trials);
        var (low, high) = trials.SymmetricInterval(0.95);
        Printed.Agrees("1.65", (high - low) / 2 / trials.StandardUncertainty, 1);
    }

    [Fact]
    public void EA402_S10_trapezoidal()
    {
        // S10: vernier caliper; the budget prints 0.46, 1.7, 15 and 29 µm and their sum 33 µm.
        Printed.Agrees("33", Uncertain.From(0, new RootCause("gauge block".Plain(), "S10".Plain(), 0.46), new RootCause("temperature".Plain(), "S10".Plain(), 1.7), new RootCause("resolution".Plain(), "S10".Plain(), 15), new RootCause("mechanical".Plain(), "S10".Plain(), 29)).StandardUncertainty);

        // k of the trapezoid that the resolution, ±25 µm, and the mechanical effects, ±50 µm, make.
        var resolution = RootCause.FromResolution("resolution".Plain(), "S10".Plain(), 50);
        var mechanical = RootCause.FromHalfWidth("mechanical effects".Plain(), "S10".Plain(), 50);
        var trials = MonteCarlo.Run(scope => scope.Reading(0, resolution, mechanical), new Random(10), Trials);
        var (low, high) = trials.SymmetricInterval(0.95);
        Printed.Agrees("1.83", (high - low) / 2 / trials.StandardUncertainty, 1);
    }

    [Fact]
    public void Shapes_have_the_standard_deviation_they_claim()
    {
        foreach (var distribution in Enum.GetValues<Distribution>())
        {
            var cause = new RootCause("x".Plain(), "".Plain(), 3, distribution: distribution);
            var trials = MonteCarlo.Run(scope => scope.Reading(7, cause), new Random(1), 200_000);
            Assert.Equal(7, trials.Mean, 0.03);
            Assert.Equal(3, trials.StandardUncertainty, 0.02);
        }

        // A t of 6 degrees of freedom has a standard deviation of √(6/4) (JCGM 101, 6.4.9.4).
        var t = new RootCause("t".Plain(), "".Plain(), 3, 6);
        Assert.Equal(3 * Math.Sqrt(1.5), MonteCarlo.Run(scope => scope.Reading(7, t), new Random(1), 400_000).StandardUncertainty, 0.05);
    }

    [Fact]
    public void The_linear_result_and_the_trials_agree_for_a_shared_cause()
    {
        var zero = RootCause.FromHalfWidth("zero".Plain(), "".Plain(), 1);
        var gain = RootCause.FromHalfWidth("gain".Plain(), "".Plain(), 0.01);
        Uncertain Model(IUncertaintyScope scope)
        {
            var g = scope.Reading(0, gain);
            var start = scope.Reading(440, zero) * (1 + g);
            var end = scope.Reading(446, zero) * (1 + g);
            return end - start;
        }

        var linear = Model(LinearScope.Instance);
        Assert.Equal(6, linear.Value, 1e-12);
        Assert.Equal(6 * 0.01 / Math.Sqrt(3), linear.StandardUncertainty, 1e-12);
        Assert.Equal(linear.StandardUncertainty, MonteCarlo.Run(Model, new Random(3), 200_000).StandardUncertainty, 0.0005);
    }

    [Fact]
    public void The_comparison_judges_estimate_and_uncertainty_and_shows_the_intervals()
    {
        var causes = Enumerable.Range(1, 4).Select(i => new RootCause($"x{i}".Plain(), "".Plain(), i == 4 ? 10 : 1, distribution: Distribution.Rectangular)).ToArray();
        Uncertain Model(IUncertaintyScope scope) => scope.Reading(0, causes[0]) + scope.Reading(0, causes[1]) + scope.Reading(0, causes[2]) + scope.Reading(0, causes[3]);
        var same = MonteCarloComparison.Of(Model(LinearScope.Instance), MonteCarlo.Run(Model, new Random(4), 200_000));
        Assert.True(same.Agrees);
        Assert.Equal(0.5, same.Tolerance, 1e-12);
        Assert.True(same.SampledInterval.High < same.LinearInterval.High);

        // x² at zero: the linear result sees no uncertainty at all.
        Uncertain Square(IUncertaintyScope scope)
        {
            var x = scope.Reading(0, causes[0]);
            return x * x;
        }

        Assert.False(MonteCarloComparison.Of(Square(LinearScope.Instance), MonteCarlo.Run(Square, new Random(4), 10_000)).Agrees);
    }

    [Fact]
    public void The_same_seed_gives_the_same_trials()
    {
        var cause = new RootCause("x".Plain(), "".Plain(), 1);
        var first = MonteCarlo.Run(scope => scope.Reading(0, cause), new Random(5), 1000);
        var second = MonteCarlo.Run(scope => scope.Reading(0, cause), new Random(5), 1000);
        Assert.Equal(first.SymmetricInterval(0.9), second.SymmetricInterval(0.9));
        Assert.Equal(first.Mean, second.Mean);
    }

    [Fact]
    public void A_correlated_input_keeps_its_correlation_in_the_trials()
    {
        var means = Helpers.SimultaneousMeans([1.0, 2.0, 3.0, 4.0], [2.1, 3.9, 6.2, 7.8]);
        var linear = means[1] - (2 * means[0]);
        var trials = MonteCarlo.Run(scope => scope.Input(means[1]) - (2 * scope.Input(means[0])), new Random(2), 400_000);
        Assert.Equal(linear.StandardUncertainty, trials.StandardUncertainty, linear.StandardUncertainty * 0.01);
    }
}
