using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Corrections;

/// <summary>Corrects an instrument along the line through the points where it was checked. The zero is always removed; the gain only where the reference states its uncertainty; beyond the points by a quarter of their span at most, with the uncertainty the longer lever gives. Made once for an instrument.</summary>
public sealed class PointToPointCheck
{
    /// <summary>How far beyond the checked points the line is followed, as a part of their span. Common practice, no source.</summary>
    public const double Reach = 0.25;

    private readonly string name;
    private readonly ZeroCheck? zero;
    private readonly KnownPoint[] silent;
    private readonly Node[] nodes;

    /// <summary>A check at known points.</summary>
    /// <param name="name">The instrument, for the budget.</param>
    /// <param name="zero">Its zero check; nothing when none was made.</param>
    /// <param name="points">The known points, in any order, of different readings.</param>
    /// <param name="resolution">One step of the indication, SI; nothing when unknown.</param>
    public PointToPointCheck(string name, ZeroCheck? zero, IEnumerable<KnownPoint> points, double? resolution)
    {
        this.name = name;
        this.zero = zero;
        var all = points.ToArray();
        silent = [.. all.Where(p => p.StandardUncertainty is null)];
        nodes = [.. all.Where(p => p.StandardUncertainty is not null).OrderBy(p => p.Read).Select((p, i) => new Node(p, Applied(p, i), Read(p, i, resolution)))];
    }

    /// <summary>Corrects a reading.</summary>
    /// <param name="scope">The scope of the computation.</param>
    /// <param name="reading">The reading, SI, from the instrument's own zero.</param>
    /// <param name="print">How numbers are written.</param>
    public Corrected Correct(IUncertaintyScope scope, Uncertain reading, CorrectionPrinter print)
    {
        var start = zero?.Correct(scope, reading, print) ?? new Corrected(reading, []);
        foreach (var point in silent)
            start = start.Then(value => Corrected.Unchanged(value, CorrectionKind.KnownPoints, Report(point, print)));
        return nodes.Length == 0 ? start : start.Then(value => Follow(scope, value, print));
    }

    private Corrected Follow(IUncertaintyScope scope, Uncertain value, CorrectionPrinter print)
    {
        var offset = zero is null ? Uncertain.Exact(0) : scope.Input(zero.Zero);
        List<(Uncertain Read, Uncertain Applied)> line = [.. nodes.Select(n => (scope.Input(n.Read) - offset, scope.Input(n.Applied)))];
        if (zero is not null)
            line.Add((Uncertain.Exact(0), Uncertain.Exact(0)));
        line = [.. line.OrderBy(n => n.Read.Value)];

        var where = Describe(print);
        if (line.Count == 1)
        {
            var shifted = value + line[0].Applied - line[0].Read;
            return Corrected.Of(value, shifted, CorrectionKind.KnownPoints, $"{where}: {print.Value(value.Value)} becomes {print.Value(shifted.Value)} (one point: shifted, not stretched).");
        }

        double low = line[0].Read.Value, high = line[^1].Read.Value, reach = Reach * (high - low);
        if (value.Value < low - reach || value.Value > high + reach)
            return Corrected.Unchanged(value, CorrectionKind.KnownPoints, $"{where}: {print.Value(value.Value)} lies more than a quarter of the checked span beyond, so nothing more is corrected.");

        var right = line.FindIndex(1, n => n.Read.Value >= value.Value);
        if (right < 0)
            right = line.Count - 1;
        var (read0, applied0) = line[right - 1];
        var (read1, applied1) = line[right];
        if (read0.Value.Equals(read1.Value))
            return Corrected.Unchanged(value, CorrectionKind.KnownPoints, $"{where}: two points have the same reading, so nothing more is corrected.");
        var after = applied0 + ((value - read0) * ((applied1 - applied0) / (read1 - read0)));
        var beyond = value.Value < low || value.Value > high ? " (beyond the points, within a quarter of their span)" : "";
        return Corrected.Of(value, after, CorrectionKind.KnownPoints, $"{where}: {print.Value(value.Value)} becomes {print.Value(after.Value)}{beyond}.");
    }

    private string Describe(CorrectionPrinter print) =>
        $"{name} read " + string.Join(", ", nodes.Select(n => $"{print.Value(n.Point.Read)} at {print.Value(n.Point.Applied)} ({n.Point.Reference})"));

    private string Report(KnownPoint point, CorrectionPrinter print)
    {
        var deviation = point.Read - (zero?.Zero.Value ?? 0) - point.Applied;
        return $"{name} read {print.Value(point.Read)} at {print.Value(point.Applied)} ({point.Reference}), {print.Difference(deviation)} off{(zero is null ? "" : " after its zero")}; the reference states no uncertainty, so this is reported and not corrected.";
    }

    private Uncertain Applied(KnownPoint point, int index) => Uncertain.From(
        point.Applied, new RootCause($"{name}: known point {index + 1}", point.Reference, point.StandardUncertainty.GetValueOrDefault()));

    private Uncertain Read(KnownPoint point, int index, double? resolution) => resolution is { } step
        ? Uncertain.From(point.Read, RootCause.FromResolution($"{name}: reading at known point {index + 1}", "smallest step of the indication", step))
        : Uncertain.Exact(point.Read);

    private sealed record Node(KnownPoint Point, Uncertain Applied, Uncertain Read);
}
