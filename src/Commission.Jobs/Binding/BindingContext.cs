using Commission.Jobs.Schema;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>What the binder knows while it walks the file.</summary>
internal sealed class BindingContext
{
    private readonly Stack<AnyDimensions> _any = new();
    private bool _unitsAdvised;

    public BindingContext(ProblemList problems, HashSet<SourceNode> rejected, IReadOnlyCollection<string> refrigerantNames)
    {
        Problems = problems;
        Rejected = rejected;
        RefrigerantNames = refrigerantNames;
    }

    public JobSchema Schema { get; } = JobSchema.Instance;

    public ProblemList Problems { get; }

    /// <summary>Nodes about which the schema has spoken: the binder leaves them alone.</summary>
    public HashSet<SourceNode> Rejected { get; }

    public IReadOnlyCollection<string> RefrigerantNames { get; }

    /// <summary>What bare numbers mean, by the file they stand in: a kit file says so for itself.</summary>
    public Dictionary<string, UnitDefaults> Units { get; } = new(StringComparer.Ordinal);

    /// <summary>How each scalar is printed in the record.</summary>
    public Dictionary<SourceScalar, string> Canonical { get; } = new(ReferenceEqualityComparer.Instance);

    public AnyDimensions Any => _any.TryPeek(out var any) ? any : AnyDimensions.Unknown;

    public UnitDefaults UnitsAt(SourceNode node) => Units.GetValueOrDefault(node.Location.File) ?? UnitDefaults.None;

    /// <summary>True the first time: the advice to write <c>units</c> is wanted once a file, not beside each number.</summary>
    public bool AdviseUnitsOnce() => !_unitsAdvised && (_unitsAdvised = true);

    public void Enter(AnyDimensions any) => _any.Push(any);

    public void Leave() => _any.Pop();

    public void Complain(SourceNode node, string found, string expected, string advice, string code) =>
        Problems.Add(node.Location, found, expected, advice, code, node.Length);
}
