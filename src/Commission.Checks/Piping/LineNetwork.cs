using System.Collections.Immutable;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>The lines as a tree: from the outdoor unit over branch boxes to the indoor units. A run without a start begins at the outdoor unit.</summary>
internal sealed class LineNetwork : IAnalysis<LineNetwork>
{
    private const string Outdoor = "";

    private readonly List<Run> _runs = [];

    private LineNetwork(CheckContext context)
    {
        var written = context.Job.Equipment.Piping;
        var ends = written.Select((r, i) => r.To?.Value ?? FormattableString.Invariant($"#{i}")).ToImmutableArray();
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        for (var i = 0; i < written.Length; i++)
        {
            var tube = written[i].Liquid ?? written[i].Vapor;
            if (tube is null)
                continue;

            // What no run leads to is the outdoor unit, whatever it is called.
            var from = written[i].From?.Value is { } start && ends.Contains(start, StringComparer.Ordinal) ? start : Outdoor;
            var name = written.Length == 1 ? PipingMessages.NetworkLine : written[i].To is { } end ? PipingMessages.NetworkLineTo(new(end.Value)) : PipingMessages.NetworkLineToEnd;
            var length = Written.Reading(context, context.Present.Text(PipingMessages.ReadingLength(name)), tube.Length, DisplayKind.Length);
            var rise = (written[i].Liquid?.Rise ?? written[i].Vapor?.Rise) is { } up ? Written.Reading(context, context.Present.Text(PipingMessages.ReadingRiseOf(name)), up, DisplayKind.Length) : null;
            uses.AddRange(length.Uses);
            if (rise is not null)
                uses.AddRange(rise.Uses);
            _runs.Add(new Run(from, ends[i], new Distance(length.AfterZero, length.Value), rise is null ? null : new Distance(rise.AfterZero, rise.Value)));
        }

        Uses = uses.ToImmutable();
        if (_runs.Count == 0)
            return;
        Total = _runs.Select(r => r.Length.Value).Aggregate((a, b) => a + b);
        var leaves = new List<Leaf>();
        foreach (var run in _runs.Where(r => r.From == Outdoor))
            Follow(run, new Leaf(run.Length, run.Rise, new Distance(0, Uncertain.Exact(0)), false), [run.To], leaves);
        if (leaves.Count == 0)
            return;
        Longest = leaves.Select(l => l.Length).MaxBy(l => l.Written)!.Value;
        Height = leaves.Select(l => l.Rise).OfType<Distance>().MaxBy(h => Math.Abs(h.Written)) is { } height ? Uncertain.Abs(height.Value) : null;
        FirstBranch = leaves.Where(l => l.IsBranched).Select(l => l.AfterBranch).MaxBy(l => l.Written)?.Value;
    }

    /// <summary>Length of all runs together, m; null when none is written.</summary>
    public Uncertain? Total { get; }

    /// <summary>Longest way from the outdoor unit to an indoor unit, m.</summary>
    public Uncertain? Longest { get; }

    /// <summary>Longest way from the first branch to an indoor unit, m; null when nothing branches.</summary>
    public Uncertain? FirstBranch { get; }

    /// <summary>Largest height between outdoor and indoor unit, m; null when no rise is written.</summary>
    public Uncertain? Height { get; }

    /// <summary>Lengths and rises as written.</summary>
    public ImmutableArray<ReadingUse> Uses { get; }

    /// <inheritdoc/>
    public static LineNetwork Create(CheckContext context) => new(context);

    // A run that leads back to where the way has been is left out: lines of a circuit do not turn in a ring here.
    private void Follow(Run run, Leaf way, ImmutableHashSet<string> seen, List<Leaf> leaves)
    {
        var next = _runs.Where(r => r.From == run.To && r.From != Outdoor && !seen.Contains(r.To)).ToArray();
        if (next.Length == 0)
        {
            leaves.Add(way);
            return;
        }

        foreach (var branch in next)
        {
            var rise = (way.Rise, branch.Rise) switch { ({ } a, { } b) => a + b, ({ } a, null) => a, (null, var b) => b };
            Follow(branch, new Leaf(way.Length + branch.Length, rise, way.AfterBranch + branch.Length, true), seen.Add(branch.To), leaves);
        }
    }

    // Which way is the longest, the written numbers decide: were it the doubtful ones, the longest of several would grow with their doubt.
    private sealed record Distance(double Written, Uncertain Value)
    {
        public static Distance operator +(Distance a, Distance b) => new(a.Written + b.Written, a.Value + b.Value);
    }

    private sealed record Run(string From, string To, Distance Length, Distance? Rise);

    private sealed record Leaf(Distance Length, Distance? Rise, Distance AfterBranch, bool IsBranched);
}

/// <summary>Inside diameter of a line: outside diameter less its wall, which without being written is that of refrigeration tube of this size.</summary>
/// <param name="Metres">m; null when it is not known.</param>
/// <param name="Source">Where the wall comes from.</param>
/// <param name="Uses">What of the job it rests on.</param>
internal sealed record LineBore(double? Metres, string Source, IReadOnlyList<ReadingUse> Uses)
{
    /// <summary>The bore of a tube.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="name">What the line is called.</param>
    /// <param name="tube">The tube.</param>
    public static LineBore Of(CheckContext context, Message name, Tube tube)
    {
        var uses = new List<ReadingUse> { new(context.Present.Text(PipingMessages.ReadingDiameter(name)), tube.Od.Text, tube.Od.At, null) };
        if (tube.Wall is { } wall)
        {
            uses.Add(wall.Use(context.Present.Text(PipingMessages.ReadingWall(name))));
            var bore = tube.Od.Value.Si - (2 * wall.Value.Si);
            return new LineBore(bore > 0 ? bore : null, context.Present.Text(PipingMessages.SourceWall), uses);
        }

        var standard = AcrTube.Find(tube.Od.Value);
        return new LineBore(standard?.Bore, standard is null ? "" : context.Present.Text(standard.Source), uses);
    }
}

/// <summary>
/// What flows in the lines: heat taken up per mass and densities from the judged readings in cooling, and with a capacity the mass flow. A rated
/// capacity holds at rated temperatures, which is the largest doubt in it.
/// </summary>
internal sealed class CircuitFlow : IAnalysis<CircuitFlow>
{
    private readonly CheckContext _context;
    private readonly Lazy<Uncertain> _capacityDoubt;

    private CircuitFlow(CheckContext context)
    {
        _context = context;
        _capacityDoubt = new(() => context.Scope.Reading(
            0, 1.0 * context.Causes.Enter(RootCause.FromHalfWidth(PipingMessages.CauseCapacity, PipingMessages.SourceCapacity, context.Assume(LimitIds.AssumptionCapacityRated)), DisplayKind.Percentage)));
        var analysis = context.Get<ChargeAnalysis>();
        HasReadings = analysis.Rows.Any(r => r.Mode == OperatingMode.Cooling && r.Written is { VaporPressure: not null, LiquidPressure: not null });
        Row = analysis.Judged(OperatingMode.Cooling, ChargeCycle.Has);
        if (Row is null)
        {
            var last = analysis.Last(OperatingMode.Cooling, ChargeCycle.Has);
            (WhyNot, Todo) = last?.Settling.Block is { } early
                ? (early, last.Settling.Todo!)
                : (PipingMessages.FlowNoReading, PipingMessages.FlowNoReadingNext);
            return;
        }

        Cycle = ChargeCycle.Of(context, Row);
        if (Cycle.WhyNot is { } why)
        {
            (WhyNot, Todo) = (why, PipingMessages.FlowStatesNext);
            return;
        }

        var fluid = context.Get<CircuitRefrigerant>().Fluid!;
        double Density(double p, double t, Fluids.Phase phase) => fluid.At(t, p, phase) is { Ok: true, Value: var state } ? state.Density : double.NaN;
        Vapor = Uncertain.Apply((p, t) => Density(p, t, Fluids.Phase.Vapor), Row.VaporPressure!.Value, Row.VaporLine!.Value);
        Liquid = Uncertain.Apply((p, t) => Density(p, t, Fluids.Phase.Liquid), Row.LiquidPressure!.Value, Row.LiquidLine!.Value);
    }

    /// <summary>Whether both sides were read in cooling; a system without a liquid port, or started in winter, has nothing to work a flow out of.</summary>
    public bool HasReadings { get; }

    /// <summary>The row; null when none could be judged.</summary>
    public ChargeRow? Row { get; }

    /// <summary>Why the states are not known, without a full stop; null when they are.</summary>
    public Message? WhyNot { get; }

    /// <summary>What would help; null when they are known.</summary>
    public Message? Todo { get; }

    /// <summary>Density of the vapor at the service valve, kg/m³.</summary>
    public Uncertain Vapor { get; } = Uncertain.Exact(0);

    /// <summary>Density of the liquid at the service valve, kg/m³.</summary>
    public Uncertain Liquid { get; } = Uncertain.Exact(0);

    private ChargeCycle? Cycle { get; }

    /// <inheritdoc/>
    public static CircuitFlow Create(CheckContext context) => new(context);

    /// <summary>Mass flow at a capacity, kg/s.</summary>
    public Uncertain At(Given<Power> capacity) =>
        Written.Rating(_context, _context.Present.Text(ReadingsMessages.Capacity), capacity, DisplayKind.Capacity).Value * (1.0 + (capacity.Stated is null ? _capacityDoubt.Value : Uncertain.Exact(0))) / Cycle!.Capacity;

    /// <summary>Names in a finding what the states rest on.</summary>
    public FindingBuilder UseIn(FindingBuilder finding)
    {
        if (Row is null)
            return finding;
        Row.Settling.NameIn(finding);
        return finding.UseAll(new[] { Row.VaporPressure, Row.VaporLine, Row.LiquidPressure, Row.LiquidLine }.OfType<CorrectedReading>());
    }

    /// <summary>The steps to a mass flow.</summary>
    /// <param name="capacity">The capacity.</param>
    /// <param name="what">Which capacity it is.</param>
    public ImmutableArray<TraceStep> Steps(Given<Power> capacity, Message what)
    {
        var present = _context.Present;
        return
        [
            new TraceStep("q", present.Text(PipingMessages.StepHeat), present.Text(PipingMessages.StepHeatFormula), $"{present.Text(Cycle!.Suction.Enthalpy, DisplayKind.Enthalpy)} − {present.Text(Cycle.Liquid.Enthalpy, DisplayKind.Enthalpy)}", present.Text(Cycle.Capacity, DisplayKind.Enthalpy), _context.Get<CircuitSaturation>().Source),
            new TraceStep("ṁ", present.Text(PipingMessages.StepMassFlow(what)), "Q / q", $"{capacity.Text} / {present.Text(Cycle.Capacity.Value, DisplayKind.Enthalpy)}", present.Text(At(capacity), DisplayKind.MassFlow), present.Text(PipingMessages.Definition)),
        ];
    }
}
