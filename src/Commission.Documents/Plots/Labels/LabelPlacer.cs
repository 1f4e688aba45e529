using Commission.Documents.Pictures;

namespace Commission.Documents.Plots.Labels;

/// <summary>
/// Puts labels where they cover least: never on another label, never outside their area. Labels are placed one after the other in a
/// fixed order, then each is offered a better place once the others stand. The same figure always gives the same places.
/// </summary>
internal sealed class LabelPlacer(InkMap ink)
{
    /// <summary>Ink under a label from which on it touches a curve; below it there are only faint lines, which a label may interrupt.</summary>
    public const int Crowded = 100;

    private const double Clearance = 1.2;
    private const int Passes = 3;
    private readonly List<Box> _taken = [];

    /// <summary>Reserves an area that no label may touch (tick labels, titles).</summary>
    public void Reserve(Box box) => _taken.Add(box);

    /// <summary>Places labels.</summary>
    /// <param name="requests">The labels.</param>
    /// <returns>Those that found a place, in the order asked for; an optional one may be missing.</returns>
    public IReadOnlyList<PlacedLabel> Place(IReadOnlyList<LabelRequest> requests)
    {
        var places = new PlacedLabel?[requests.Count];
        var order = Enumerable.Range(0, requests.Count).OrderBy(i => requests[i].Order).ThenBy(i => i).ToArray();
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

    private PlacedLabel? Best(LabelRequest request, PlacedLabel?[] others)
    {
        var search = new Search(request, request.Style.Fit(request.Text, request.Within.Width), others);
        foreach (var spot in request.Spots)
            Consider(search, spot, leads: false, spot.Penalty);

        if (search.Best is not null && (search.Least < Crowded || request.Target is null) && !(request.Optional && search.Least >= Crowded))
            return search.Best;
        if (request.Optional || request.Target is not { } target)
            return request.Optional ? null : search.Best;

        for (var y = request.Within.Top + request.Style.Ascent; y <= request.Within.Bottom - request.Style.Descent; y += 3)
        {
            for (var x = request.Within.Left; x <= request.Within.Right; x += 6)
            {
                var away = Away(request.Style.BoxOf(x, y, search.Text), target);
                Consider(search, new LabelSpot(x, y, TextAnchor.Start), away > 6, 16 + 0.6 * away);
            }
        }

        return search.Best;
    }

    private void Consider(Search search, LabelSpot spot, bool leads, double penalty)
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
        search.Least = cost;
        search.Best = new PlacedLabel(request, search.Text, spot, box, leads);
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

        public PlacedLabel? Best { get; set; }

        public double Least { get; set; } = double.MaxValue;
    }
}

/// <summary>A label that wants a place.</summary>
/// <param name="Text">The text.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Spots">Where it may stand, in order of liking.</param>
/// <param name="Within">The area it must not leave.</param>
internal sealed record LabelRequest(string Text, TextStyle Style, IReadOnlyList<LabelSpot> Spots, Box Within)
{
    /// <summary>A point of the thing named; when no listed spot is free the label goes to the nearest free place and a thin line leads here.</summary>
    public Point? Target { get; init; }

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
/// <param name="Leads">True when a thin line to the target is needed.</param>
internal sealed record PlacedLabel(LabelRequest Request, string Text, LabelSpot Spot, Box Box, bool Leads);
