using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Measurement.Tests.Decisions;

public sealed class ConformityTests
{
    // Computed from the formula of JCGM 106 by an independent program: limits ±5.
    [Theory]
    [InlineData(4.6, 0.5, "0.7881")]
    [InlineData(3.9, 0.5, "0.9861")]
    [InlineData(5.2, 0.5, "0.3446")]
    [InlineData(4.1, 0.5477, "0.9498")]
    public void Probability_of_conformity(double y, double u, string printed) =>
        Printed.Agrees(printed, Conformity.ProbabilityWithin(y, u, double.PositiveInfinity, Tolerance.Within(-5, 5)));

    // JCGM 106, example of a Zener diode's breakdown voltage, from memory: y −5.47 V, u 0.05 V, not above −5.40 V.
    [Fact]
    public void Zener_diode() =>
        Printed.Agrees("0.92", Conformity.ProbabilityWithin(-5.47, 0.05, double.PositiveInfinity, Tolerance.AtMost(-5.40)));

    // Largest probability of false accept at the acceptance limit, one limit far from the other, by w/U with U = 2u; ILAC-G8:09/2019 prints 50 % and < 2.5 %.
    [Theory]
    [InlineData(0.0, "50.000")]
    [InlineData(0.5, "15.87")]
    [InlineData(0.83, "4.85")]
    [InlineData(1.0, "2.275")]
    [InlineData(1.5, "0.135")]
    public void False_accept_by_guard_band(double guard, string printed)
    {
        var tolerance = Tolerance.AtMost(10);
        Printed.Agrees(printed, 100 * (1 - Conformity.ProbabilityWithin(10 - (guard * 2), 1, double.PositiveInfinity, tolerance)));
    }

    [Fact]
    public void A_guarded_pass_is_false_at_most_once_in_44()
    {
        var decision = Conformity.Judge(Result(0, 1), Tolerance.AtMost(10), DecisionRule.Guarded);
        Printed.Agrees("2.275", 100 * decision.MaximumFalseAccept!.Value);
        Printed.Agrees("50.000", 100 * Conformity.Judge(Result(0, 1), Tolerance.AtMost(10), DecisionRule.Simple).MaximumFalseAccept!.Value);

        // k follows the degrees of freedom, and with it the guard band: the risk stays the same.
        Printed.Agrees("2.275", 100 * Conformity.Judge(Uncertain.From(0, new RootCause("x".Plain(), "".Plain(), 1, 5)), Tolerance.AtMost(10), DecisionRule.Guarded).MaximumFalseAccept!.Value);
    }

    // ILAC-G8:09/2019, the non-binary statement: TL − w, TL, TL + w with w = U = 2.
    [Theory]
    [InlineData(7.9, Verdict.Pass)]
    [InlineData(8.0, Verdict.Pass)]
    [InlineData(8.1, Verdict.Conditional)]
    [InlineData(10.0, Verdict.Conditional)]
    [InlineData(10.00000000001, Verdict.Conditional)]
    [InlineData(10.000000001, Verdict.Fail)]
    [InlineData(10.1, Verdict.Fail)]
    [InlineData(12.1, Verdict.Fail)]
    public void Guarded_acceptance(double y, Verdict verdict)
    {
        Assert.Equal(verdict, Conformity.Judge(Result(y, 1 - 1e-12), Tolerance.AtMost(10), DecisionRule.Guarded).Verdict);
        Assert.Equal(verdict, Conformity.Judge(Result(-y, 1 - 1e-12), Tolerance.AtLeast(-10), DecisionRule.Guarded).Verdict);
        Assert.Equal(verdict, Conformity.Judge(Result(y, 1 - 1e-12), Tolerance.Within(-10, 10), DecisionRule.Guarded).Verdict);
        Assert.Equal(verdict, Conformity.Judge(Result(-y, 1 - 1e-12), Tolerance.Within(-10, 10), DecisionRule.Guarded).Verdict);
    }

    [Theory]
    [InlineData(7.9, Verdict.Pass)]
    [InlineData(8.1, Verdict.PassWithinUncertainty)]
    [InlineData(10.0, Verdict.PassWithinUncertainty)]
    [InlineData(10.1, Verdict.Fail)]
    [InlineData(-10.1, Verdict.Fail)]
    public void Simple_acceptance(double y, Verdict verdict) =>
        Assert.Equal(verdict, Conformity.Judge(Result(y, 1), Tolerance.Within(-10, 10), DecisionRule.Simple).Verdict);

    // Superheat budget of R-410A at 118 psig: u 0.516 °F, ±5 °F with w = U accepts |deviation| up to 3.97 °F.
    [Fact]
    public void Superheat_budget()
    {
        var line = Uncertain.From(0, new RootCause("line temperature".Plain(), "".Plain(), 0.5));
        var pressure = Uncertain.From(0, new RootCause("pressure".Plain(), "".Plain(), 0.3));
        var superheat = line - (pressure * (5 / 11.76));
        Printed.Agrees("0.516", superheat.StandardUncertainty);
        Printed.Agrees("1.03", superheat.Expanded);
        Assert.Equal(Verdict.Pass, Conformity.Judge(superheat + 3.965, Tolerance.Around(0, 5), DecisionRule.Guarded).Verdict);
        Assert.Equal(Verdict.Conditional, Conformity.Judge(superheat + 3.975, Tolerance.Around(0, 5), DecisionRule.Guarded).Verdict);
    }

    [Fact]
    public void An_uncertainty_beyond_the_tolerance_leaves_no_pass()
    {
        foreach (var y in new[] { -3.0, -1, 0, 1, 3 })
        {
            var decision = Conformity.Judge(Result(y, 1), Tolerance.Around(0, 1.5), DecisionRule.Guarded);
            Assert.NotEqual(Verdict.Pass, decision.Verdict);
            Assert.Null(decision.MaximumFalseAccept);
            Assert.Equal(0.75, decision.Adequacy.Ratio!.Value, 1e-9);
        }
    }

    // Two sides: half the tolerance over U. One side: the distance from the limit over U. By hand, U = 2·0.5.
    [Theory]
    [InlineData(4.0)]
    [InlineData(0.9)]
    public void Adequacy_is_tolerance_or_distance_over_U(double ratio)
    {
        Assert.Equal(ratio, Adequacy.Of(Result(0.3, 0.5), Tolerance.Around(0, ratio)).Ratio!.Value, 1e-9);
        Assert.Equal(ratio, Adequacy.Of(Result(-ratio, 0.5), Tolerance.AtMost(0)).Ratio!.Value, 1e-9);
        Assert.Equal(ratio, Adequacy.Of(Result(-ratio, 0.5), Tolerance.AtLeast(0)).Ratio!.Value, 1e-9);
    }

    [Fact]
    public void An_exact_result_is_judged_plainly()
    {
        var decision = Conformity.Judge(Uncertain.Exact(10), Tolerance.AtMost(10), DecisionRule.Guarded);
        Assert.Equal((Verdict.Pass, 1.0, 0.0), (decision.Verdict, decision.ProbabilityOfConformity, decision.MaximumFalseAccept));
        Assert.Null(decision.Adequacy.Ratio);
        Assert.Equal(0, Conformity.Judge(Uncertain.Exact(10.1), Tolerance.AtMost(10), DecisionRule.Simple).ProbabilityOfConformity);
    }

    [Fact]
    public void Few_degrees_of_freedom_make_the_tails_heavier()
    {
        // Student's t, ν 4, at t 2.1318: 95 % below (any table of the distribution).
        Printed.Agrees("0.9500", Conformity.ProbabilityWithin(0, 1, 4, Tolerance.AtMost(2.1318)));
    }

    [Fact]
    public void Our_own_mistakes_throw()
    {
        Assert.Throws<ArgumentException>(() => Conformity.Judge(Result(double.NaN, 1), Tolerance.AtMost(1), DecisionRule.Simple));
        Assert.Throws<ArgumentException>(() => Conformity.Judge(Result(0, 1), new Tolerance(null, null), DecisionRule.Simple));
        Assert.Throws<ArgumentException>(() => Conformity.Judge(Result(0, 1), Tolerance.Within(2, 1), DecisionRule.Simple));
    }

    [Fact]
    public void Two_routes_agree_within_their_uncertainty()
    {
        // Without shared causes E_n = |a − b|/√(U_a² + U_b²): 5/√(9 + 16) = 1.
        var a = Result(10, 1.5);
        var b = Result(15, 2);
        Assert.Equal(1, Agreement.Of(a, b).NormalizedError, 1e-9);
        Assert.True(Agreement.Of(a, Result(14.9, 2)).Agrees);
        Assert.False(Agreement.Of(a, Result(15.1, 2)).Agrees);

        // A gauge both used cannot excuse the difference.
        var gauge = new RootCause("gauge".Plain(), "".Plain(), 50);
        var shared = Agreement.Of(Uncertain.From(10, gauge, new RootCause("a".Plain(), "".Plain(), 1.5)), Uncertain.From(15, gauge, new RootCause("b".Plain(), "".Plain(), 2)));
        Assert.Equal(1, shared.NormalizedError, 1e-9);
        Assert.Equal(0, Agreement.Of(a, a).NormalizedError);
        Assert.False(Agreement.Of(Uncertain.Exact(1), Uncertain.Exact(2)).Agrees);
    }

    private static Uncertain Result(double value, double u) => Uncertain.From(value, new RootCause("x".Plain(), "".Plain(), u));
}
