using Commission.Jobs.Times;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>What the binder knows while it walks the file.</summary>
/// <param name="problems">Receives what is wrong.</param>
/// <param name="rejected">Nodes about which the schema has spoken: the binder leaves them alone.</param>
/// <param name="refrigerants">Names of the refrigerants the program knows, with their designations.</param>
/// <param name="logs">Reads the log that a value names; null when a problem was added.</param>
internal sealed class BindingContext(ProblemList problems, HashSet<SourceNode> rejected, IReadOnlyDictionary<string, string> refrigerants, Func<SourceScalar, ReadOnlyMemory<byte>?> logs)
{
    private readonly Stack<AnyDimensions> _any = new();
    private bool _unitsAdvised;

    public ProblemList Problems { get; } = problems;

    public HashSet<SourceNode> Rejected { get; } = rejected;

    public IReadOnlyDictionary<string, string> Refrigerants { get; } = refrigerants;

    public Func<SourceScalar, ReadOnlyMemory<byte>?> Logs { get; } = logs;

    public JobTimeline Timeline { get; } = new(problems);

    /// <summary>What bare numbers mean, by the file they stand in: a kit file says so for itself.</summary>
    public Dictionary<string, UnitDefaults> Units { get; } = new(StringComparer.Ordinal);

    /// <summary>How each scalar is printed in the record.</summary>
    public Dictionary<SourceScalar, string> Canonical { get; } = new(ReferenceEqualityComparer.Instance);

    public AnyDimensions Any => _any.TryPeek(out var any) ? any : AnyDimensions.Unknown;

    public UnitDefaults UnitsAt(SourceNode node) => Units.GetValueOrDefault(node.Location.File) ?? UnitDefaults.None;

    /// <summary>True the first time: the advice to write <c>units</c> is wanted once a file, not beside each number.</summary>
    public bool AdviseUnitsOnce() => !_unitsAdvised && (_unitsAdvised = true);

    /// <summary>Until the result is disposed, values whose kind follows from another key are of these kinds.</summary>
    public IDisposable Measuring(AnyDimensions any)
    {
        _any.Push(any);
        return new Leaving(_any);
    }

    public void Complain(SourceNode node, Message found, Message? expected, Message advice, string code) =>
        Problems.Add(node.Location, found, expected, advice, code, node.Length);

    private sealed class Leaving(Stack<AnyDimensions> any) : IDisposable
    {
        public void Dispose() => any.Pop();
    }
}

/// <summary>Which quantities a field may hold whose kind follows from another key: an instrument's from its kind.</summary>
/// <param name="Values">Kinds of value, the usual one first.</param>
/// <param name="Differences">Kinds of step or deviation, the usual one first.</param>
internal sealed record AnyDimensions(IReadOnlyList<Dimension> Values, IReadOnlyList<Dimension> Differences)
{
    private static readonly Dimension[] Everything =
    [
        Dimension.Pressure, Dimension.VacuumLevel, Dimension.PressureDifference, Dimension.Temperature, Dimension.Mass, Dimension.Length, Dimension.Duration,
        Dimension.VolumeFlow, Dimension.MassFlow, Dimension.Velocity, Dimension.Power, Dimension.Torque, Dimension.ElectricCurrent, Dimension.Voltage,
        Dimension.Capacitance, Dimension.Resistance, Dimension.Frequency, Dimension.Ratio,
    ];

    /// <summary>What a number without a unit is: nothing where it may be one of several, as a clamp meter's amperes or volts; humidity beside a temperature carries its %.</summary>
    public Dimension? Usual => Values.Count == 1 || Values[0] == Dimension.Temperature ? Values[0] : null;

    /// <summary>Nothing is known about the kind.</summary>
    public static AnyDimensions Unknown { get; } = new(Everything, Everything);

    public static AnyDimensions Of(params Dimension[] values) => new(values, [.. values.Select(DifferenceOf)]);

    private static Dimension DifferenceOf(Dimension value) => value switch
    {
        Dimension.Pressure or Dimension.VacuumLevel or Dimension.AtmosphericPressure => Dimension.PressureDifference,
        Dimension.Temperature => Dimension.TemperatureDifference,
        _ => value,
    };
}
