using Commission.Documents.Plots.Labels;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Drawing;

/// <content>Stretches where a gauge could not follow.</content>
internal sealed partial class XySheet
{
    private const string OverRangeText = "over range";

    /// <summary>Marks every stretch of missing values by an arrow and a thin line at the top edge, and names one of them, the longest where there is room.</summary>
    /// <param name="curve">The readings.</param>
    /// <param name="style">Their style.</param>
    public void OverRange(FigureCurve curve, SeriesStyle style)
    {
        var text = new TextStyle(LabelSize - 0.4, style.Text);
        var spots = new List<LabelSpot>();
        foreach (var (from, to) in Gaps(curve).OrderByDescending(gap => gap.To - gap.From))
        {
            double left = Main.X.Clamped(from), right = Main.X.Clamped(to);
            var middle = new Point((left + right) / 2, Main.Area.Top + 5);
            if (right - left > 1)
                _canvas.Line(left, middle.Y, right, middle.Y, new Stroke(style.Stroke.Color, 0.8, "1.2 1.2"));
            Marker.Draw(_canvas, middle with { Y = middle.Y - 0.6 }, MarkerShape.Triangle, 2, style.Stroke.Color, new Stroke(style.Stroke.Color, 0.4));
            _ink.Fill(new Box(middle.X - 3, middle.Y - 4, middle.X + 3, middle.Y + 2), 120);
            _ink.Line(new Point(left, middle.Y), new Point(right, middle.Y), 120);

            var later = 2.0 * spots.Count;
            var beside = middle.Y + text.CapHeight / 2 - 0.6;
            spots.Add(new LabelSpot(right + 3, beside, TextAnchor.Start, later));
            spots.Add(new LabelSpot(left - 3, beside, TextAnchor.End, later + 1));
            spots.Add(new LabelSpot(middle.X, middle.Y + 4 + text.Ascent, TextAnchor.Middle, later + 1));
            spots.Add(new LabelSpot(Math.Max(left, Main.Area.Left + 2), middle.Y + 4 + text.Ascent, TextAnchor.Start, later + 2));
            spots.Add(new LabelSpot(middle.X + 5, beside, TextAnchor.Start, later + 3));
            spots.Add(new LabelSpot(middle.X - 5, beside, TextAnchor.End, later + 3));
        }

        if (spots.Count > 0)
            _labels.Add(new LabelRequest(OverRangeText, text, spots, Main.Area.Grow(-1)) { Order = 4 });
    }

    // From the last value before a gap to the first one after it; at the ends of the series, from or to its own end.
    private static IEnumerable<(double From, double To)> Gaps(FigureCurve curve)
    {
        var start = -1;
        for (var i = 0; i <= curve.X.Length; i++)
        {
            var missing = i < curve.X.Length && curve.Y[i] is null;
            if (missing && start < 0)
                start = i;
            if (missing || start < 0)
                continue;
            yield return (curve.X[Math.Max(start - 1, 0)], curve.X[Math.Min(i, curve.X.Length - 1)]);
            start = -1;
        }
    }
}
