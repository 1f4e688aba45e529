using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Measurement.Tests.Uncertainty;

/// <summary>What is made of the trials, on samples small enough to count by hand (JCGM 101:2008, 7.6 and 7.7, from memory), and errors drawn from a source that says known numbers.</summary>
public sealed class SampledIntervalTests
{
    // 1 to 20: mean 10.5; squares 2 · (0.5² + 1.5² + … + 9.5²) = 665, /19 = 35, √35 = 5.916.
    [Fact]
    public void Mean_and_deviation_of_a_counted_sample()
    {
        var sample = MonteCarloResult.Of(Enumerable.Range(1, 20).Select(i => (double)i));
        Assert.Equal(10.5, sample.Mean, 1e-12);
        Assert.Equal(Math.Sqrt(35), sample.StandardUncertainty, 1e-12);
    }

    // Of M = 20 values q = pM lie inside and r = (M − q)/2 before them: p 0.9: 18, from the 2nd to the 20th; p 0.5: 10, from the 6th to the 16th.
    [Theory]
    [InlineData(0.9, 2, 20)]
    [InlineData(0.5, 6, 16)]
    [InlineData(0.05, 10, 11)]
    [InlineData(0.999, 1, 20)]
    [InlineData(0.125, 9, 12)] // 2.5 is rounded up to 3
    public void The_interval_with_as_much_on_either_side(double probability, double low, double high)
    {
        Assert.Equal((low, high), MonteCarloResult.Of(Enumerable.Range(1, 20).Reverse().Select(i => (double)i)).SymmetricInterval(probability));
    }

    // Ten values, six of them close together: half of them from 5.0 to 5.5 is the shortest.
    [Theory]
    [InlineData(0.5, 5.0, 5.5)]
    [InlineData(0.6, 4.0, 5.5)]
    [InlineData(0.1, 5.3, 5.35)]
    public void The_shortest_interval(double probability, double low, double high) => Assert.Equal(
        (low, high), MonteCarloResult.Of([0, 2, 4.0, 5.0, 5.1, 5.2, 5.3, 5.35, 5.5, 9]).ShortestInterval(probability));

    // Where two are equally short the first is taken, and the last may be the shortest.
    [Fact]
    public void The_first_of_equals_and_the_last_of_all()
    {
        Assert.Equal((0, 2), MonteCarloResult.Of([0, 1, 2, 3]).ShortestInterval(0.5));
        Assert.Equal((7, 8), MonteCarloResult.Of([0, 3, 7, 8]).ShortestInterval(0.25));
        Assert.Equal((0, 1), MonteCarloResult.Of([0, 1, 7, 9]).ShortestInterval(0.25));
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(double.NaN)]
    public void A_probability_lies_between_nothing_and_certainty(double probability)
    {
        var sample = MonteCarloResult.Of([1, 2, 3]);
        Assert.Throws<ArgumentOutOfRangeException>(() => sample.SymmetricInterval(probability));
        Assert.Throws<ArgumentOutOfRangeException>(() => sample.ShortestInterval(probability));
    }

    // Half a unit of the second digit of u: u 2 → digits of 0.1, 0.05; u 0.03 → 0.0005; u 15 → 0.5 (JCGM 101, 8.1).
    [Theory]
    [InlineData(2.0, 0.05)]
    [InlineData(0.03, 0.0005)]
    [InlineData(15.0, 0.5)]
    [InlineData(0.0, 0.0)]
    public void Two_digits_of_the_standard_uncertainty(double u, double tolerance) =>
        Assert.Equal(tolerance, MonteCarloComparison.Of(Linear(7, u), MonteCarloResult.Of([7, 7])).Tolerance, 1e-12);

    // Two values m ± a have the mean m and the deviation a·√2. Linear: 7 ± 2; within 0.05 both agree.
    [Theory]
    [InlineData(7.00, 2.00, true, true)]
    [InlineData(7.04, 2.00, true, true)]
    [InlineData(7.06, 2.00, false, true)]
    [InlineData(6.96, 2.00, true, true)]
    [InlineData(6.94, 2.00, false, true)]
    [InlineData(7.00, 2.04, true, true)]
    [InlineData(7.00, 2.06, true, false)]
    [InlineData(7.00, 1.96, true, true)]
    [InlineData(7.00, 1.94, true, false)]
    [InlineData(7.06, 1.94, false, false)]
    public void Estimate_and_uncertainty_agree_to_two_digits(double mean, double deviation, bool estimates, bool uncertainties)
    {
        var a = deviation / Math.Sqrt(2);
        var compared = MonteCarloComparison.Of(Linear(7, 2), MonteCarloResult.Of([mean - a, mean + a]));
        Assert.Equal((estimates, uncertainties, estimates && uncertainties), (compared.EstimatesAgree, compared.UncertaintiesAgree, compared.Agrees));
        // U = 2u without degrees of freedom.
        Assert.Equal((3.0, 11.0), (Math.Round(compared.LinearInterval.Low, 9), Math.Round(compared.LinearInterval.High, 9)));
        Assert.Equal((mean - a, mean + a), compared.SampledInterval);
    }

    // A t of 6 degrees of freedom may be drawn with √(6/4) = 1.2247 times its u; one of 2 with any.
    [Theory]
    [InlineData(6, 2.49, true)]
    [InlineData(6, 2.51, false)]
    [InlineData(2, 50, true)]
    [InlineData(2, 1.9, false)]
    public void Few_degrees_of_freedom_scatter_more(double freedom, double deviation, bool agree)
    {
        var a = deviation / Math.Sqrt(2);
        var linear = Uncertain.From(7, new RootCause("t".Plain(), "by hand".Plain(), 2, freedom));
        Assert.Equal(agree, MonteCarloComparison.Of(linear, MonteCarloResult.Of([7 - a, 7 + a])).UncertaintiesAgree);
    }

    // Rectangle: √3·(2r − 1); triangle: √6·(r₁ + r₂ − 1); arcsine: √2·cos πr, each times u (JCGM 101, 6.4.2 to 6.4.6, from memory).
    [Theory]
    [InlineData(Distribution.Rectangular, 0.75, 1.7320508 * 0.5)]
    [InlineData(Distribution.Rectangular, 0.0, -1.7320508)]
    [InlineData(Distribution.Triangular, 0.75, 2.4494897 * 0.5)]
    [InlineData(Distribution.Triangular, 0.25, -2.4494897 * 0.5)]
    [InlineData(Distribution.UShaped, 0.0, 1.4142136)]
    [InlineData(Distribution.UShaped, 0.25, 1.0)]
    [InlineData(Distribution.UShaped, 1.0 / 3, 0.7071068)]
    public void An_error_is_drawn_in_its_shape(Distribution shape, double drawn, double error)
    {
        var cause = new RootCause("x".Plain(), "by hand".Plain(), 3, distribution: shape);
        Assert.Equal(7 + (3 * error), new SamplingScope(new Said(drawn)).Reading(7, cause).Value, 1e-6);
        Assert.Equal(7 - (2 * 3 * error), new SamplingScope(new Said(drawn)).Reading(7, -2.0 * cause).Value, 1e-6);
        Assert.Equal(7 + (3 * error), new SamplingScope(new Said(drawn)).Input(Uncertain.From(7, cause)).Value, 1e-6);
        Assert.Equal(7 - (2 * 3 * error), new SamplingScope(new Said(drawn)).Input(Uncertain.From(7, -2.0 * cause)).Value, 1e-6);
        Assert.Equal(0, new SamplingScope(new Said(drawn)).Reading(7, cause).StandardUncertainty);
    }

    // 0.75, then 0.25: +√3/2 and −√3/2.
    [Fact]
    public void A_cause_draws_once_in_a_trial()
    {
        RootCause zero = new("zero".Plain(), "by hand".Plain(), 1, distribution: Distribution.Rectangular), other = new("other".Plain(), "by hand".Plain(), 1, distribution: Distribution.Rectangular);
        var scope = new SamplingScope(new Said(0.75, 0.25, 0.25, 0.75));
        Assert.Equal(0.8660254, scope.Reading(0, zero).Value, 1e-6);
        Assert.Equal(0.8660254, scope.Reading(0, zero).Value, 1e-6);
        Assert.Equal(-0.8660254, scope.Reading(0, other).Value, 1e-6);
        Assert.Equal(0, scope.Reading(0, zero, other).Value, 1e-6);
        scope.NextTrial();
        Assert.Equal(-0.8660254, scope.Reading(0, zero).Value, 1e-6);
        Assert.Equal(0.8660254, scope.Reading(0, other).Value, 1e-6);
    }

    // The square of a t of ν degrees of freedom has the mean ν/(ν − 2): 10 of 12 make 1.2 of a normal's 1.
    [Fact]
    public void A_t_scatters_more_than_a_normal()
    {
        static double Deviation(RootCause cause)
        {
            var scope = new SamplingScope(new Random(7));
            return MonteCarloResult.Of(Enumerable.Range(0, 20_000).Select(_ =>
            {
                scope.NextTrial();
                return scope.Reading(0, cause).Value;
            })).StandardUncertainty;
        }

        Assert.Equal(1, Deviation(new RootCause("normal".Plain(), "by hand".Plain(), 1)), 0.02);
        Assert.Equal(Math.Sqrt(1.2), Deviation(new RootCause("t".Plain(), "by hand".Plain(), 1, 12)), 0.02);
        Assert.Equal(Math.Sqrt(5), Deviation(new RootCause("t".Plain(), "by hand".Plain(), 1, 2.5)), 1.2);
    }

    [Fact]
    public void In_the_linear_scope_readings_keep_their_causes()
    {
        var cause = new RootCause("zero".Plain(), "by hand".Plain(), 1);
        var reading = LinearScope.Instance.Reading(7, 2.0 * cause);
        Assert.Equal((7.0, 2.0), (reading.Value, reading.StandardUncertainty));
        Assert.Same(reading, LinearScope.Instance.Input(reading));
    }

    private static Uncertain Linear(double value, double u) => u > 0 ? Uncertain.From(value, new RootCause("x".Plain(), "by hand".Plain(), u)) : Uncertain.Exact(value);

    // Says what it was told, again and again.
    private sealed class Said(params double[] numbers) : Random(0)
    {
        private int _next;

        public override double NextDouble() => numbers[_next++ % numbers.Length];
    }
}
