using Commission.Documents.Pictures;

namespace Commission.Documents.Plots.Labels;

/// <summary>
/// Puts labels where they cover least: never on another label, never outside their area. Labels are placed one after the other in a
/// fixed order, those that can stand beside what they name before those that will have to go farther off, and then each is offered a
/// better place once the others stand. The same figure always gives the same places.
/// </summary>
internal sealed class LabelPlacer(InkMap ink)
{
    /// <summary>Ink under a label from which on it touches a curve; below it there are only faint lines, which a label may interrupt.</summary>
    public const int Crowded = 100;

    private const double Clearance = 1.2;
    private const int Passes = 3;

    // A label this far from what it names, pt, needs a thin line to it.
    private const double Beside = 6;

    // What such a line costs for each point on which it crosses a curve, and when it runs through another label or a label stands on it.
    private const int Crossing = 12;
    private const int Through = 10_000;
    private readonly List<Box> _taken = [];

    /// <summary>Reserves an area that no label may touch (tick labels, titles).</summary>
    public void Reserve(Box box) => _taken.Add(box);

    /// <summary>Places labels.</summary>
    /// <param name="requests">The labels.</param>
    /// <returns>Those that found a place, in the order asked for; an optional one may be missing.</returns>
    public IReadOnlyList<PlacedLabel> Place(IReadOnlyList<LabelRequest> requests)
    {
        var places = new PlacedLabel?[requests.Count];
        var order = Enumerable.Range(0, requests.Count).OrderBy(i => requests[i].Optional).ThenBy(i => !StandsBeside(requests[i])).ThenBy(i => requests[i].Order).ThenBy(i => i).ToArray();
        for (var pass = 0; pass < Passes; pass++)
        {
            foreach (var index in order)
            {
                places[index] = null;
                places[index] = Best(requests[index], places);
            }
        }

        return [.. places.OfType<PlacedLabel>()];
    }

    private bool StandsBeside(LabelRequest request) => Listed(request, []).Least < Crowded;

    // The best of the places that were asked for.
    private Search Listed(LabelRequest request, PlacedLabel?[] others)
    {
        var search = new Search(request, request.Style.Fit(request.Text, request.Within.Width), others);
        foreach (var spot in request.Spots)
            Consider(search, spot, leadsTo: null, spot.Penalty);
        return search;
    }

    private PlacedLabel? Best(LabelRequest request, PlacedLabel?[] others)
    {
        var search = Listed(request, others);
        if (search.Best is not null && (search.Least < Crowded || request.Targets.Count == 0) && !(request.Optional && search.Least >= Crowded))
            return search.Best;
        if (request.Optional || request.Targets.Count == 0)
            return request.Optional ? null : search.Best;

        for (var y = request.Within.Top + request.Style.Ascent; y <= request.Within.Bottom - request.Style.Descent; y += 3)
        {
            for (var x = request.Within.Left; x <= request.Within.Right; x += 6)
            {
                var box = request.Style.BoxOf(x, y, search.Text);
                if (!request.Within.Grow(0.01).Holds(box))
                    continue;
                var (target, away) = Nearest(box, request.Targets);
                Consider(search, new LabelSpot(x, y, TextAnchor.Start), away > Beside ? target : null, 16 + 0.6 * away);
            }
        }

        return search.Best;
    }

    private void Consider(Search search, LabelSpot spot, Point? leadsTo, double penalty)
    {
        if (penalty >= search.Least)
            return;
        var request = search.Request;
        var box = request.Style.BoxOf(spot.X, spot.Y, search.Text, spot.Anchor);
        if (!request.Within.Grow(0.01).Holds(box))
            return;
        var cost = penalty + ink.Under(box);
        if (cost >= search.Least || !IsFree(box.Grow(Clearance), search.Others))
            return;
        foreach (var leader in search.Leaders)
            cost += leader.Meets(box) ? Through : 0;
        if (leadsTo is { } target)
            cost += CostOfLeading(new Leader(PlacedLabel.LeaderFrom(box, target), target), search);
        if (cost >= search.Least)
            return;
        search.Least = cost;
        search.Best = new PlacedLabel(request, search.Text, spot, box, leadsTo);
    }

    private int CostOfLeading(Leader leader, Search search)
    {
        foreach (var box in _taken)
        {
            if (leader.Meets(box))
                return Through;
        }

        foreach (var other in search.Others)
        {
            if (other is not null && leader.Meets(other.Box))
                return Through;
        }

        var crossed = 0;
        for (var at = 1.0; at < leader.Length; at++)
        {
            var point = leader.At(at);
            if (ink.Under(new Box(point.X, point.Y, point.X + 0.5, point.Y + 0.5)) >= Crowded)
                crossed++;
        }

        return crossed * Crossing;
    }

    private bool IsFree(Box box, PlacedLabel?[] others)
    {
        foreach (var taken in _taken)
        {
            if (taken.Meets(box))
                return false;
        }

        foreach (var other in others)
        {
            if (other is not null && other.Box.Meets(box))
                return false;
        }

        return true;
    }

    private static (Point Target, double Away) Nearest(Box box, IReadOnlyList<Point> targets)
    {
        var (nearest, least) = (targets[0], double.MaxValue);
        foreach (var target in targets)
        {
            if (Away(box, target) is var away && away < least)
                (nearest, least) = (target, away);
        }

        return (nearest, least);
    }

    private static double Away(Box box, Point target)
    {
        var dx = Math.Max(0, Math.Max(box.Left - target.X, target.X - box.Right));
        var dy = Math.Max(0, Math.Max(box.Top - target.Y, target.Y - box.Bottom));
        return Math.Sqrt(dx * dx + dy * dy);
    }

    // One label on its way to the best place, and the others as they stand.
    private sealed class Search(LabelRequest request, string text, PlacedLabel?[] others)
    {
        public LabelRequest Request => request;

        public string Text => text;

        public PlacedLabel?[] Others => others;

        /// <summary>The thin lines of the others.</summary>
        public IReadOnlyList<Leader> Leaders { get; } = [.. others.Where(other => other?.LeadsTo is not null).Select(other => new Leader(PlacedLabel.LeaderFrom(other!.Box, other.LeadsTo!.Value), other.LeadsTo.Value))];

        public PlacedLabel? Best { get; set; }

        public double Least { get; set; } = double.MaxValue;
    }
}

/// <summary>A thin line from a label to what it names, without its end, which lies on it.</summary>
internal readonly record struct Leader
{
    private const double End = 2.5;
    private readonly Point _from;
    private readonly double _dx;
    private readonly double _dy;

    /// <summary>A line from the edge of a label to a point of what it names.</summary>
    public Leader(Point from, Point to)
    {
        double dx = to.X - from.X, dy = to.Y - from.Y;
        var whole = Math.Sqrt(dx * dx + dy * dy);
        Length = Math.Max(0, whole - End);
        _from = from;
        (_dx, _dy) = whole > 0 ? (dx / whole, dy / whole) : (0, 0);
    }

    /// <summary>Its length, pt.</summary>
    public double Length { get; }

    /// <summary>A point of it, so many pt from the label.</summary>
    public Point At(double distance) => new(_from.X + _dx * distance, _from.Y + _dy * distance);

    /// <summary>Whether it runs through a rectangle.</summary>
    public bool Meets(Box box)
    {
        double first = 0, last = Length;
        return Cut(_from.X, _dx, box.Left, box.Right, ref first, ref last) && Cut(_from.Y, _dy, box.Top, box.Bottom, ref first, ref last) && first < last;
    }

    // What of the line lies between two edges.
    private static bool Cut(double from, double slope, double low, double high, ref double first, ref double last)
    {
        if (Math.Abs(slope) < 1e-12)
            return from > low && from < high;
        double a = (low - from) / slope, b = (high - from) / slope;
        first = Math.Max(first, Math.Min(a, b));
        last = Math.Min(last, Math.Max(a, b));
        return true;
    }
}

/// <summary>A label that wants a place.</summary>
/// <param name="Text">The text.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Spots">Where it may stand, in order of liking.</param>
/// <param name="Within">The area it must not leave.</param>
internal sealed record LabelRequest(string Text, TextStyle Style, IReadOnlyList<LabelSpot> Spots, Box Within)
{
    /// <summary>Points of the thing named; when no listed spot is free the label goes to a free place near one of them and a thin line leads there.</summary>
    public IReadOnlyList<Point> Targets { get; init; } = [];

    /// <summary>True when the figure reads well without it: it is left out before it crowds another label or hides a curve.</summary>
    public bool Optional { get; init; }

    /// <summary>Lower goes first.</summary>
    public int Order { get; init; } = 10;
}

/// <summary>A place where a label may stand.</summary>
/// <param name="X">Position of the anchor, pt.</param>
/// <param name="Y">Baseline, pt.</param>
/// <param name="Anchor">Which point of the text stands at <paramref name="X"/>.</param>
/// <param name="Penalty">How much less this place is liked than the best, in the units of <see cref="InkMap"/>.</param>
internal readonly record struct LabelSpot(double X, double Y, TextAnchor Anchor, double Penalty = 0);

/// <summary>A label with its place.</summary>
/// <param name="Request">What was asked for.</param>
/// <param name="Text">The text that is written: shortened where the room is smaller than the text.</param>
/// <param name="Spot">Where it stands.</param>
/// <param name="Box">What it covers.</param>
/// <param name="LeadsTo">Where a thin line from the label ends; null when it stands beside what it names.</param>
internal sealed record PlacedLabel(LabelRequest Request, string Text, LabelSpot Spot, Box Box, Point? LeadsTo)
{
    /// <summary>Where the thin line leaves a label: the point of its edge that lies nearest to the other end.</summary>
    public static Point LeaderFrom(Box box, Point to) => new(
        Math.Clamp(to.X, box.Left, box.Right),
        to.Y < box.Top ? box.Top : to.Y > box.Bottom ? box.Bottom : (box.Top + box.Bottom) / 2);
}
