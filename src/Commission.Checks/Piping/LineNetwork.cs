using System.Collections.Immutable;
using Commission.Checks.Air;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>The lines as a tree: from the outdoor unit over branch boxes to the indoor units. A run without a start begins at the outdoor unit.</summary>
internal sealed class LineNetwork : IAnalysis<LineNetwork>
{
    private const string Outdoor = "";

    private readonly List<Run> runs = [];

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
            var name = written.Length == 1 ? "line" : $"line to {written[i].To?.Value ?? "its end"}";
            var length = WrittenFigure.Of(context, $"{name}: length", tube.Length, DisplayKind.Length);
            var rise = (written[i].Liquid?.Rise ?? written[i].Vapor?.Rise) is { } up ? WrittenFigure.Of(context, $"{name}: rise", up, DisplayKind.Length) : null;
            uses.AddRange(length.Uses);
            if (rise is not null)
                uses.AddRange(rise.Uses);
            runs.Add(new Run(from, ends[i], length.Value, rise?.Value));
        }

        Uses = uses.ToImmutable();
        if (runs.Count == 0)
            return;
        Total = runs.Select(r => r.Length).Aggregate((a, b) => a + b);
        var leaves = new List<Leaf>();
        foreach (var run in runs.Where(r => r.From == Outdoor))
            Follow(run, new Leaf(run.Length, run.Rise, Uncertain.Exact(0), false), [run.To], leaves);
        if (leaves.Count == 0)
            return;
        Longest = leaves.Select(l => l.Length).MaxBy(l => l.Value);
        Height = leaves.Select(l => l.Rise).OfType<Uncertain>().MaxBy(h => Math.Abs(h.Value)) is { } height ? Uncertain.Abs(height) : null;
        FirstBranch = leaves.Where(l => l.IsBranched).Select(l => l.AfterBranch).MaxBy(l => l.Value);
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
        var next = runs.Where(r => r.From == run.To && r.From != Outdoor && !seen.Contains(r.To)).ToArray();
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

    private sealed record Run(string From, string To, Uncertain Length, Uncertain? Rise);

    private sealed record Leaf(Uncertain Length, Uncertain? Rise, Uncertain AfterBranch, bool IsBranched);
}
