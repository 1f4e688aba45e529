using System.Globalization;

namespace Commission.Measurement.Uncertainty;

/// <summary>A number with the root causes that make it doubtful, by the law of propagation of uncertainty (GUM 5). Results that share causes are correlated without anybody having to say so.</summary>
/// <remarks>Immutable. The order of the causes is the order in which they entered, so that the same computation gives the same bytes.</remarks>
public sealed partial class Uncertain
{
    private readonly Contribution[] _contributions;
    private double _degreesOfFreedom = double.NaN;
    private double _coverageFactor = double.NaN;

    private Uncertain(double value, Contribution[] contributions)
    {
        Value = value;
        _contributions = contributions;
        StandardUncertainty = RootSumOfSquares(contributions);
    }

    /// <summary>The estimate.</summary>
    public double Value { get; }

    /// <summary>Combined standard uncertainty, the root of the sum of the squared contributions of the independent causes.</summary>
    public double StandardUncertainty { get; }

    /// <summary>Effective degrees of freedom by Welch–Satterthwaite (GUM G.2b); infinite when every cause is taken as known.</summary>
    public double DegreesOfFreedom => double.IsNaN(_degreesOfFreedom) ? _degreesOfFreedom = WelchSatterthwaite() : _degreesOfFreedom;

    /// <summary>k, the two-sided 95.45 % quantile of Student's t with the effective degrees of freedom.</summary>
    public double CoverageFactor => double.IsNaN(_coverageFactor) ? _coverageFactor = Uncertainty.CoverageFactor.For(DegreesOfFreedom) : _coverageFactor;

    /// <summary>Expanded uncertainty U = k·u.</summary>
    public double Expanded => StandardUncertainty == 0 ? 0 : CoverageFactor * StandardUncertainty;

    /// <summary>The budget: one line a cause, the largest first; equal ones in the order in which they entered.</summary>
    public IReadOnlyList<BudgetLine> Budget
    {
        get
        {
            var variance = StandardUncertainty * StandardUncertainty;
            return [.. _contributions
                .OrderByDescending(c => Math.Abs(c.Amount))
                .Select(c => new BudgetLine(c.Cause, c.Amount, c.Amount * c.Amount / variance))];
        }
    }

    internal IReadOnlyList<Contribution> Contributions => _contributions;

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
            foreach (var c in input._contributions)
                sum.Add(c.Cause, partial * c.Amount);
        }

        return new Uncertain(value, sum.ToArray());
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
        foreach (var c in _contributions)
        {
            // Relative shares keep the fourth powers inside the range of a double.
            var share = c.Amount / StandardUncertainty;
            var variance = share * share;
            denominator += variance * variance / c.Cause.DegreesOfFreedom;
        }

        return denominator == 0 ? double.PositiveInfinity : 1 / denominator;
    }
}

/// <summary>One line of an uncertainty budget.</summary>
/// <param name="Cause">The root cause.</param>
/// <param name="Contribution">Signed standard contribution to the result, sensitivity times standard uncertainty, in the unit of the result.</param>
/// <param name="Share">Part of the variance of the result, 0 to 1.</param>
public sealed record BudgetLine(RootCause Cause, double Contribution, double Share)
{
}

/// <summary>What one cause adds to a result: signed, in the unit of the result.</summary>
internal readonly record struct Contribution(RootCause Cause, double Amount);

/// <summary>Adds contributions by cause and keeps the order of first appearance.</summary>
internal ref struct ContributionSum(int capacity)
{
    // A budget has a dozen causes as a rule: looking through them is faster than hashing, until it is not.
    private const int IndexFrom = 24;
    private readonly List<Contribution> _items = new(capacity);
    private Dictionary<RootCause, int>? _index;

    public void Add(RootCause cause, double amount)
    {
        if (amount == 0)
            return;
        var at = Find(cause);
        if (at >= 0)
        {
            _items[at] = new Contribution(cause, _items[at].Amount + amount);
            return;
        }

        _items.Add(new Contribution(cause, amount));
        if (_index is not null)
            _index[cause] = _items.Count - 1;
    }

    public readonly Contribution[] ToArray()
    {
        _items.RemoveAll(c => c.Amount == 0);
        return [.. _items];
    }

    private int Find(RootCause cause)
    {
        if (_items.Count < IndexFrom)
        {
            for (var i = 0; i < _items.Count; i++)
            {
                if (ReferenceEquals(_items[i].Cause, cause))
                    return i;
            }

            return -1;
        }

        if (_index is null)
        {
            _index = new Dictionary<RootCause, int>(ReferenceEqualityComparer.Instance);
            for (var i = 0; i < _items.Count; i++)
                _index[_items[i].Cause] = i;
        }

        return _index.GetValueOrDefault(cause, -1);
    }
}
