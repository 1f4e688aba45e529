using System.Diagnostics;
using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Decisions;

/// <summary>Statements of conformity by ILAC-G8:09/2019 and probabilities by JCGM 106:2012.</summary>
public static class Conformity
{
    private const double Rounding = 1e-11;

    /// <summary>Judges a result against a tolerance.</summary>
    /// <remarks>
    /// With w = U. Guarded: pass from the limit inwards by w, conditional up to the limit, fail beyond it. Simple: pass from the limit inwards by w, pass within
    /// uncertainty up to the limit, fail beyond it. Of two sides the worse. A result that differs from a limit only by the rounding of doubles lies on it.
    /// </remarks>
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
        var near = rule == DecisionRule.Guarded ? Verdict.Conditional : Verdict.PassWithinUncertainty;
        var verdict = Worse(
            Side(Inside(y.Value, tolerance.Lower, 1), y.Expanded, near),
            Side(Inside(y.Value, tolerance.Upper, -1), y.Expanded, near));
        return new Decision(
            verdict,
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

    // 187.2 V of 208 V less 10 % lies on its limit, whatever the last bit of a double says.
    private static double? Inside(double y, double? limit, int sign) => limit is not { } at ? null
        : Math.Abs(y - at) <= Rounding * Math.Abs(at) ? 0
        : sign * (y - at);

    private static Verdict? Side(double? inside, double w, Verdict near) => inside switch
    {
        null => null,
        < 0 => Verdict.Fail,
        var d when d >= w => Verdict.Pass,
        _ => near,
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

/// <summary>A verdict and what it rests on.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="ProbabilityOfConformity">Probability that the true value is within tolerance, from the scaled and shifted t of the result.</param>
/// <param name="MaximumFalseAccept">Largest probability of being out of tolerance that a plain pass can have (the specific risk at the acceptance limit, flat prior); nothing when no pass is possible.</param>
/// <param name="Adequacy">How fine the measurement is against the limit.</param>
public sealed record Decision(
    Verdict Verdict,
    double ProbabilityOfConformity,
    double? MaximumFalseAccept,
    Adequacy Adequacy);

/// <summary>What is allowed, in the unit of the result; a missing side is open.</summary>
/// <param name="Lower">Lowest allowed, or nothing.</param>
/// <param name="Upper">Highest allowed, or nothing.</param>
public sealed record Tolerance(double? Lower, double? Upper)
{
    /// <summary>Half the width of a two-sided tolerance; nothing for a one-sided one.</summary>
    public double? HalfWidth => Upper is { } upper && Lower is { } lower ? (upper - lower) / 2 : null;

    /// <summary>Whether nothing can satisfy it: the lower side is above the upper.</summary>
    public bool IsEmpty => Lower > Upper;
}

/// <summary>What a check says: statements of ILAC-G8:09/2019, and words for what cannot be judged. Worse comes later down to <see cref="Fail"/>.</summary>
public enum Verdict
{
    /// <summary>Inside the tolerance by at least the guard band.</summary>
    Pass,

    /// <summary>Inside a field tolerance, nearer to its limit than U: a pass with its probability, never a condition.</summary>
    PassWithinUncertainty,

    /// <summary>Inside a safety or legal limit, nearer to it than U, or resting on something that was not shown: a condition of the outcome.</summary>
    Conditional,

    /// <summary>Outside the tolerance.</summary>
    Fail,

    /// <summary>U is wider than the tolerance: the instruments cannot tell.</summary>
    CannotDecide,

    /// <summary>Could not be judged; the reason is given.</summary>
    NotEvaluated,

    /// <summary>Nothing sets a limit.</summary>
    Information,
}

/// <summary>How uncertainty enters a verdict.</summary>
public enum DecisionRule
{
    /// <summary>Simple acceptance: pass or fail at the limit, a pass within U of it marked with its probability. For makers' and field tolerances that already allow for instruments.</summary>
    Simple,

    /// <summary>Guarded acceptance, w = U: pass, conditional, fail. For safety and legal maxima.</summary>
    Guarded,
}

/// <summary>How fine a measurement is against its limit: tolerance over U for two sides, distance from the limit over U for one.</summary>
/// <param name="Ratio">The ratio; nothing for a result without uncertainty.</param>
public sealed record Adequacy(double? Ratio)
{
    /// <summary>Of a result against a tolerance.</summary>
    /// <param name="y">The result.</param>
    /// <param name="tolerance">The tolerance, in the unit of the result.</param>
    public static Adequacy Of(Uncertain y, Tolerance tolerance)
    {
        if (y.Expanded == 0)
            return new Adequacy(Ratio: null);
        var distance = tolerance.HalfWidth ?? Math.Abs(y.Value - (tolerance.Upper ?? tolerance.Lower ?? throw new ArgumentException("A tolerance has at least one side.", nameof(tolerance))));
        return new Adequacy(distance / y.Expanded);
    }
}

/// <summary>Whether two routes to one quantity agree. Causes the routes share cancel in the difference, so that only what is independent counts.</summary>
/// <param name="Difference">First minus second, with what remains of the uncertainty.</param>
/// <param name="NormalizedError">E_n = |a − b| / U(a − b); without shared causes √(U_a² + U_b²) stands below (ISO 13528 and ISO/IEC 17043, from memory). Zero for equal exact values, infinite for different ones.</param>
public sealed record Agreement(Uncertain Difference, double NormalizedError)
{
    /// <summary>E_n is one or less.</summary>
    public bool Agrees => NormalizedError <= 1;

    /// <summary>Compares two routes.</summary>
    /// <param name="first">First result.</param>
    /// <param name="second">Second result.</param>
    public static Agreement Of(Uncertain first, Uncertain second)
    {
        var difference = first - second;
        var size = Math.Abs(difference.Value);
        return new Agreement(difference, size == 0 ? 0 : size / difference.Expanded);
    }
}
