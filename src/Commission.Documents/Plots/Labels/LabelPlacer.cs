using Commission.Documents.Plots.Drawing;

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
    /// <param name="box">The area.</param>
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
        var text = request.Style.Fit(request.Text, request.Within.Width);
        PlacedLabel? best = null;
        var least = double.MaxValue;
        foreach (var spot in request.Spots)
            Consider(request, text, spot, false, spot.Penalty, others, ref best, ref least);

        if (best is not null && (least < Crowded || request.Target is null) && !(request.Optional && least >= Crowded))
            return best;
        if (request.Optional || request.Target is not { } target)
            return request.Optional ? null : best;

        for (var y = request.Within.Top + request.Style.Ascent; y <= request.Within.Bottom - request.Style.Descent; y += 3)
        {
            for (var x = request.Within.Left; x <= request.Within.Right; x += 6)
            {
                var spot = new LabelSpot(x, y, TextAnchor.Start);
                var box = SvgCanvas.TextBox(x, y, text, request.Style);
                var away = Away(box, target);
                Consider(request, text, spot, away > 6, 16 + 0.6 * away, others, ref best, ref least);
            }
        }

        return best;
    }

    private void Consider(LabelRequest request, string text, LabelSpot spot, bool leads, double penalty, PlacedLabel?[] others, ref PlacedLabel? best, ref double least)
    {
        if (penalty >= least)
            return;
        var box = SvgCanvas.TextBox(spot.X, spot.Y, text, request.Style, spot.Anchor);
        if (!request.Within.Grow(0.01).Holds(box))
            return;
        var cost = penalty + ink.Under(box);
        if (cost >= least || !IsFree(box.Grow(Clearance), others))
            return;
        least = cost;
        best = new PlacedLabel(request, text, spot, box, leads);
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
}
