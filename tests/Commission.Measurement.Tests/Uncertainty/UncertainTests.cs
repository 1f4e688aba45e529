using Commission.Measurement.Uncertainty;
using Commission.Messages;
using CsCheck;

namespace Commission.Measurement.Tests.Uncertainty;

public sealed class UncertainTests
{
    private static readonly RootCause A = new("a".Plain(), "".Plain(), 0.3);
    private static readonly RootCause B = new("b".Plain(), "".Plain(), 0.4);

    [Fact]
    public void Shared_causes_cancel_and_independent_ones_do_not()
    {
        var x = Uncertain.From(5, A, B);
        Assert.Equal(0, (x - x).StandardUncertainty);
        Assert.Empty((x - x).Budget);
        Assert.Equal(0.5, x.StandardUncertainty, 1e-15);
        Assert.Equal(1, x.CorrelationWith(x), 1e-15);
        Assert.Equal(-1, x.CorrelationWith(10 - x), 1e-15);
        Assert.Equal(0, Uncertain.From(1, A).CorrelationWith(Uncertain.From(1, B)));
        Assert.Equal(0.09 / (0.5 * 0.3), x.CorrelationWith(Uncertain.From(1, A)), 1e-15);
        Assert.Equal(Math.Sqrt(2) * 0.3, (Uncertain.From(5, A) - Uncertain.From(5, new RootCause("a".Plain(), "".Plain(), 0.3))).StandardUncertainty, 1e-15);
    }

    [Fact]
    public void Partial_derivatives_are_those_of_calculus() => Gen.Double[0.5, 20].Select(Gen.Double[0.5, 20]).Sample((p, q) =>
    {
        Uncertain x = Uncertain.From(p, A), y = Uncertain.From(q, B);
        Check(x + y, p + q, 1, 1);
        Check(x - y, p - q, 1, -1);
        Check(x * y, p * q, q, p);
        Check(x / y, p / q, 1 / q, -p / (q * q));
        Check(3 * x, 3 * p, 3, 0);
        Check(x / 3, p / 3, 1 / 3.0, 0);
        Check(3 - x, 3 - p, -1, 0);
        Check(x - 3, p - 3, 1, 0);
        Check(-x, -p, -1, 0);

        void Check(Uncertain z, double value, double byX, double byY)
        {
            Assert.Equal(value, z.Value, Math.Abs(value) * 1e-12);
            Assert.Equal(byX, Sensitivity(z, A), Math.Abs(byX) * 1e-12);
            Assert.Equal(byY, Sensitivity(z, B), Math.Abs(byY) * 1e-12);
        }
    });

    [Fact]
    public void Numerical_derivatives_follow_the_exact_ones() => Gen.Double[2, 20].Select(Gen.Double[2, 20]).Sample((p, q) =>
    {
        Uncertain x = Uncertain.From(p, A), y = Uncertain.From(q, B);
        var product = Uncertain.Apply((a, b) => a * b * b, x, y);
        Assert.Equal(q * q, Sensitivity(product, A), q * q * 1e-6);
        Assert.Equal(2 * p * q, Sensitivity(product, B), 2 * p * q * 1e-6);
        var many = Uncertain.Apply(v => v[0] * v[1] * v[1], [x, y]);
        Assert.Equal(product.StandardUncertainty, many.StandardUncertainty, product.StandardUncertainty * 1e-9);
        var three = Uncertain.Apply((a, b, c) => a * b * c, x, y, y);
        Assert.Equal(product.StandardUncertainty, three.StandardUncertainty, product.StandardUncertainty * 1e-6);
        Assert.Equal(1 / p, Sensitivity(Uncertain.Apply(Math.Log, x), A), 1 / p * 2e-3);
    });

    [Fact]
    public void A_function_that_ends_has_a_one_sided_derivative_and_one_that_is_nowhere_has_none()
    {
        var edge = Uncertain.Apply(v => v <= 5 ? 2 * v : double.NaN, Uncertain.From(5, A));
        Assert.Equal(0.6, edge.StandardUncertainty, 1e-9);
        var island = Uncertain.Apply(v => v == 5 ? 1 : double.NaN, Uncertain.From(5, A));
        Assert.True(double.IsNaN(island.StandardUncertainty));
    }

    [Fact]
    public void The_budget_is_sorted_and_sums_to_one()
    {
        var y = (2 * Uncertain.From(1, A)) - Uncertain.From(1, B) + Uncertain.From(0, new RootCause("c".Plain(), "".Plain(), 0.4));
        Assert.Equal(["a", "b", "c"], y.Budget.Select(l => l.Cause.ToString()));
        Assert.Equal([0.6, -0.4, 0.4], y.Budget.Select(l => Math.Round(l.Contribution, 12)));
        Assert.Equal(1, y.Budget.Sum(l => l.Share), 1e-12);
    }

    [Fact]
    public void Many_causes_add_as_few_do()
    {
        var causes = Enumerable.Range(0, 200).Select(i => new RootCause($"c{i}".Plain(), "".Plain(), 1)).ToArray();
        var sum = causes.Aggregate(Uncertain.Exact(0), (total, cause) => total + Uncertain.From(1, cause));
        Assert.Equal(Math.Sqrt(200), sum.StandardUncertainty, 1e-12);
        Assert.Equal(2 * Math.Sqrt(200), (sum + sum).StandardUncertainty, 1e-12);
        Assert.Equal(200, sum.Budget.Count);
    }

    [Fact]
    public void Known_causes_give_infinite_freedom_and_k_two()
    {
        var y = Uncertain.From(1, A, B);
        Assert.True(double.IsPositiveInfinity(y.DegreesOfFreedom));
        Assert.Equal(2, y.CoverageFactor, 1e-9);
        Assert.Equal(1.0, y.Expanded, 1e-9);
        Assert.Equal(0, Uncertain.Exact(4).Expanded);
    }

    [Fact]
    public void Halves_of_bounds()
    {
        Assert.Equal(0.5 / Math.Sqrt(3), RootCause.FromHalfWidth("".Plain(), "".Plain(), 0.5).StandardUncertainty, 1e-15);
        Assert.Equal(0.5 / Math.Sqrt(6), RootCause.FromHalfWidth("".Plain(), "".Plain(), 0.5, Distribution.Triangular).StandardUncertainty, 1e-15);
        Assert.Equal(0.5 / Math.Sqrt(2), RootCause.FromHalfWidth("".Plain(), "".Plain(), 0.5, Distribution.UShaped).StandardUncertainty, 1e-15);
        Assert.Equal(0.1 / Math.Sqrt(12), RootCause.FromResolution("".Plain(), "".Plain(), 0.1).StandardUncertainty, 1e-15);
        Assert.Equal(0.3, RootCause.FromExpanded("".Plain(), "".Plain(), 0.6).StandardUncertainty, 1e-15);
    }

    [Fact]
    public void Two_indications_of_one_step_differ_by_a_triangle()
    {
        // GUM 4.3.9: the difference of two equal rectangles, u = √2·d/√12 = d/√6.
        var one = Uncertain.From(0, RootCause.FromResolution("".Plain(), "".Plain(), 0.1)) - Uncertain.From(0, RootCause.FromResolution("".Plain(), "".Plain(), 0.1));
        Assert.Equal(0.1 / Math.Sqrt(6), one.StandardUncertainty, 1e-15);
    }

    // GUM 4.2: the experimental standard deviation of 1, 2, 3 is 1; one observation has none.
    [Fact]
    public void Moments_of_repeats()
    {
        Assert.Equal((2, 1), TypeA.Moments([1.0, 2.0, 3.0]));
        Assert.Equal((32.1, 0), TypeA.Moments([32.1]));
        Assert.Throws<ArgumentException>(() => TypeA.Moments([]));
    }

    private static double Sensitivity(Uncertain y, RootCause cause) =>
        y.Budget.SingleOrDefault(b => ReferenceEquals(b.Cause, cause)) is { } l ? l.Contribution / l.Cause.StandardUncertainty : 0;

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.01)]
    [InlineData(-0.01)]
    [InlineData(-3.0)]
    public void The_size_of_a_value_keeps_its_doubt_near_zero(double value)
    {
        // u(|x|) = u(x): the derivative of |x| is ±1 wherever it has one.
        var size = Uncertain.Abs(Uncertain.From(value, 1.0 * new RootCause("x".Plain(), "".Plain(), 0.3)));
        Assert.Equal(Math.Abs(value), size.Value, 15);
        Assert.Equal(0.3, size.StandardUncertainty, 12);
    }
}
