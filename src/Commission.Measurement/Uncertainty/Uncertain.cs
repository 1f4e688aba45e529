using System.Globalization;

namespace Commission.Measurement.Uncertainty;

/// <summary>A number with the root causes that make it doubtful, by the law of propagation of uncertainty (GUM 5). Results that share causes are correlated without anybody having to say so.</summary>
/// <remarks>Immutable. The order of the causes is the order in which they entered, so that the same computation gives the same bytes.</remarks>
public sealed partial class Uncertain
{
    private readonly Contribution[] contributions;
    private double degreesOfFreedom = double.NaN;
    private double coverageFactor = double.NaN;

    private Uncertain(double value, Contribution[] contributions)
    {
        Value = value;
        this.contributions = contributions;
        StandardUncertainty = RootSumOfSquares(contributions);
    }

    /// <summary>The estimate.</summary>
    public double Value { get; }

    /// <summary>Combined standard uncertainty, the root of the sum of the squared contributions of the independent causes.</summary>
    public double StandardUncertainty { get; }

    /// <summary>Effective degrees of freedom by Welch–Satterthwaite over groups (GUM G.2b); infinite when every cause is taken as known.</summary>
    public double DegreesOfFreedom => double.IsNaN(degreesOfFreedom) ? degreesOfFreedom = WelchSatterthwaite() : degreesOfFreedom;

    /// <summary>k, the two-sided 95.45 % quantile of Student's t with the effective degrees of freedom.</summary>
    public double CoverageFactor => double.IsNaN(coverageFactor) ? coverageFactor = Uncertainty.CoverageFactor.For(DegreesOfFreedom) : coverageFactor;

    /// <summary>Expanded uncertainty U = k·u.</summary>
    public double Expanded => StandardUncertainty == 0 ? 0 : CoverageFactor * StandardUncertainty;

    /// <summary>The budget: one line a cause, the largest first; equal ones in the order in which they entered.</summary>
    public IReadOnlyList<BudgetLine> Budget
    {
        get
        {
            var variance = StandardUncertainty * StandardUncertainty;
            return [.. contributions
                .OrderByDescending(c => Math.Abs(c.Amount))
                .Select(c => new BudgetLine(c.Cause, c.Amount, c.Amount * c.Amount / variance))];
        }
    }

    internal IReadOnlyList<Contribution> Contributions => contributions;

    /// <summary>A number without doubt.</summary>
    /// <param name="value">The number.</param>
    public static Uncertain Exact(double value) => new(value, []);

    /// <summary>A reading and what makes it doubtful. A cause given twice adds up with its signs.</summary>
    /// <param name="value">The estimate.</param>
    /// <param name="causes">The causes; write <c>cause * sensitivity</c> for one that does not enter one to one.</param>
    public static Uncertain From(double value, params ReadOnlySpan<RootTerm> causes)
    {
        var sum = new ContributionSum(causes.Length);
        foreach (var term in causes)
            sum.Add(term.Cause, term.Sensitivity * term.Cause.StandardUncertainty);
        return new Uncertain(value, sum.ToArray());
    }

    /// <summary>A result whose partial derivatives are known.</summary>
    /// <param name="value">The estimate.</param>
    /// <param name="inputs">Each input with the derivative of the result by it.</param>
    public static Uncertain WithPartials(double value, params ReadOnlySpan<(Uncertain Input, double Partial)> inputs)
    {
        var sum = new ContributionSum(8);
        foreach (var (input, partial) in inputs)
        {
            foreach (var c in input.contributions)
                sum.Add(c.Cause, partial * c.Amount);
        }

        return new Uncertain(value, sum.ToArray());
    }

    /// <summary>Covariance with another result: the sum over shared causes.</summary>
    /// <param name="other">The other result.</param>
    public double CovarianceWith(Uncertain other)
    {
        var mine = new Dictionary<RootCause, double>(contributions.Length, ReferenceEqualityComparer.Instance);
        foreach (var c in contributions)
            mine[c.Cause] = c.Amount;
        var covariance = 0.0;
        foreach (var c in other.contributions)
        {
            if (mine.TryGetValue(c.Cause, out var amount))
                covariance += amount * c.Amount;
        }

        return covariance;
    }

    /// <summary>Correlation coefficient with another result, −1 to 1; zero when either is exact.</summary>
    /// <param name="other">The other result.</param>
    public double CorrelationWith(Uncertain other)
    {
        var scale = StandardUncertainty * other.StandardUncertainty;
        return scale == 0 ? 0 : CovarianceWith(other) / scale;
    }

    /// <summary>Value and standard uncertainty, for logs and debuggers; pages use <c>QuantityFormat</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value:G10} (u {StandardUncertainty:G3})");

    private static double RootSumOfSquares(Contribution[] contributions)
    {
        var sum = 0.0;
        foreach (var c in contributions)
            sum += c.Amount * c.Amount;
        return Math.Sqrt(sum);
    }

    private double WelchSatterthwaite()
    {
        if (StandardUncertainty == 0 || !double.IsFinite(StandardUncertainty))
            return double.PositiveInfinity;
        var denominator = 0.0;
        Dictionary<RootGroup, double>? groups = null;
        foreach (var c in contributions)
        {
            // Relative shares keep the fourth powers inside the range of a double.
            var share = c.Amount / StandardUncertainty;
            var variance = share * share;
            if (c.Cause.Group is { } group)
            {
                groups ??= new Dictionary<RootGroup, double>(ReferenceEqualityComparer.Instance);
                groups[group] = groups.GetValueOrDefault(group) + variance;
            }
            else
            {
                denominator += variance * variance / c.Cause.DegreesOfFreedom;
            }
        }

        if (groups is not null)
        {
            foreach (var (group, variance) in groups)
                denominator += variance * variance / group.DegreesOfFreedom;
        }

        return denominator == 0 ? double.PositiveInfinity : 1 / denominator;
    }
}
