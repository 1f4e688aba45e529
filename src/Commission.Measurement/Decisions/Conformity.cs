using System.Diagnostics;
using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Decisions;

/// <summary>Statements of conformity by ILAC-G8:09/2019 and probabilities by JCGM 106:2012.</summary>
public static class Conformity
{
    /// <summary>Judges a result against a tolerance.</summary>
    /// <remarks>Guarded: with w = U, pass from the limit inwards by w, conditional pass up to the limit, conditional fail beyond it by w, fail further out; of two sides the worse. Simple: pass on the limit and inside, else fail.</remarks>
    /// <param name="y">The result.</param>
    /// <param name="tolerance">The tolerance, in the unit of the result; at least one side, not empty.</param>
    /// <param name="rule">The decision rule.</param>
    /// <exception cref="ArgumentException">The result is not a number, or the tolerance is open on both sides or empty.</exception>
    public static Decision Judge(Uncertain y, Tolerance tolerance, DecisionRule rule)
    {
        if (!double.IsFinite(y.Value) || !double.IsFinite(y.StandardUncertainty))
            throw new ArgumentException("A result that is not finite cannot be judged.", nameof(y));
        if (tolerance.Lower is null && tolerance.Upper is null)
            throw new ArgumentException("A tolerance has at least one side.", nameof(tolerance));
        if (tolerance.IsEmpty)
            throw new ArgumentException($"Nothing lies within a tolerance from {tolerance.Lower} to {tolerance.Upper}.", nameof(tolerance));

        var w = rule == DecisionRule.Guarded ? y.Expanded : 0;
        var acceptance = new Tolerance(tolerance.Lower + w, tolerance.Upper - w);
        var verdict = rule == DecisionRule.Guarded
            ? Worse(Guarded(y.Value - tolerance.Lower, w), Guarded(tolerance.Upper - y.Value, w))
            : y.Value >= (tolerance.Lower ?? y.Value) && y.Value <= (tolerance.Upper ?? y.Value) ? Verdict.Pass : Verdict.Fail;
        return new Decision(
            verdict,
            rule,
            w,
            acceptance.IsEmpty ? null : acceptance,
            ProbabilityWithin(y.Value, y.StandardUncertainty, y.DegreesOfFreedom, tolerance),
            acceptance.IsEmpty ? null : MaximumFalseAccept(y, tolerance, acceptance),
            Adequacy.Of(y, tolerance));
    }

    /// <summary>Probability that the true value is within tolerance: F((TU − y)/u) − F((TL − y)/u), F Student's t with ν degrees of freedom (JCGM 106, 7.2 with 7.4).</summary>
    /// <param name="estimate">The estimate y.</param>
    /// <param name="standardUncertainty">Its standard uncertainty u; zero gives one or zero.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom ν.</param>
    /// <param name="tolerance">The tolerance.</param>
    public static double ProbabilityWithin(double estimate, double standardUncertainty, double degreesOfFreedom, Tolerance tolerance)
    {
        if (standardUncertainty == 0)
            return estimate >= (tolerance.Lower ?? estimate) && estimate <= (tolerance.Upper ?? estimate) ? 1 : 0;

        // The two tails rather than two large areas: near one, the digits that matter are those of the tails.
        var below = tolerance.Lower is { } lower ? CoverageFactor.CumulativeProbability((lower - estimate) / standardUncertainty, degreesOfFreedom) : 0;
        var above = tolerance.Upper is { } upper ? CoverageFactor.CumulativeProbability((estimate - upper) / standardUncertainty, degreesOfFreedom) : 0;
        return Math.Max(0, 1 - below - above);
    }

    private static Verdict? Guarded(double? inside, double w) => inside switch
    {
        null => null,
        var d when d >= w => Verdict.Pass,
        >= 0 => Verdict.ConditionalPass,
        var d when d >= -w => Verdict.ConditionalFail,
        _ => Verdict.Fail,
    };

    private static Verdict Worse(Verdict? left, Verdict? right) => (left, right) switch
    {
        ({ } l, { } r) => l > r ? l : r,
        ({ } l, null) => l,
        (null, { } r) => r,
        _ => throw new UnreachableException(),
    };

    private static double MaximumFalseAccept(Uncertain y, Tolerance tolerance, Tolerance acceptance)
    {
        var most = 0.0;
        foreach (var limit in new[] { acceptance.Lower, acceptance.Upper })
        {
            if (limit is { } at && y.StandardUncertainty > 0)
                most = Math.Max(most, 1 - ProbabilityWithin(at, y.StandardUncertainty, y.DegreesOfFreedom, tolerance));
        }

        return most;
    }
}
