using System.Collections.Immutable;
using System.Globalization;
using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using Commission.Documents.Plots.Labels;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Sheets;

/// <content>Curves, reference lines and the places where their labels may stand.</content>
internal sealed partial class XySheet
{
    private const double Between = 20;
    private const int Places = 20;
    private const string OverRangeText = "over range";
    private static readonly Dash OverRangeDash = new(1.2, 1.2);

    /// <summary>Draws the band of a curve, when it has one.</summary>
    public static void Band(Panel panel, FigureCurve curve, SeriesStyle style)
    {
        if (HasSpread(curve))
            panel.Band(Nullable(curve.X), curve.YLow, curve.YHigh, style.Tint);
    }

    /// <summary>Draws readings: few as marks with error bars on a thin line, many as a line.</summary>
    /// <param name="panel">Where.</param>
    /// <param name="curve">The curve.</param>
    /// <param name="style">Its style.</param>
    /// <param name="joined">False for marks alone.</param>
    /// <param name="shift">Distance by which marks and bars stand to the right of their place, so that several at one place are told apart, pt.</param>
    public static void Readings(Panel panel, FigureCurve curve, SeriesStyle style, bool joined = true, double shift = 0)
    {
        var xs = Nullable(curve.X);
        var few = curve.Y.Count(value => value is not null) <= SpreadBars.MostMarks;
        if (joined)
            panel.Curve(xs, curve.Y, few ? style.Stroke with { Width = 0.7 } : style.Stroke with { Dash = null });
        if (!few)
            return;
        if (HasSpread(curve))
            panel.ErrorBars(xs, curve.YLow, curve.YHigh, new Stroke(style.Stroke.Color, 0.8), shift);
        panel.Markers(xs, curve.Y, style.Shape, curve.X.Length > 25 ? 1.4 : 2.1, style.Stroke.Color, style.Stroke.Color, shift);
    }

    /// <summary>Draws a line through the values of a curve.</summary>
    public static void Line(Panel panel, FigureCurve curve, SeriesStyle style) => panel.Curve(Nullable(curve.X), curve.Y, style.Stroke, curve.Role == CurveRole.Isotherm);

    /// <summary>Shades what lies between two tolerances; they come in pairs, lower and upper.</summary>
    public void Zones()
    {
        var edges = _data.Lines.Where(line => line.Axis == AxisName.Y && line.Role == LineRole.Tolerance).ToArray();
        if (edges.Length % 2 != 0)
            return;
        for (var i = 0; i < edges.Length; i += 2)
        {
            double a = Main.Y.Clamped(edges[i].At), b = Main.Y.Clamped(edges[i + 1].At);
            _canvas.Rectangle(new Box(Main.Area.Left, Math.Min(a, b), Main.Area.Right, Math.Max(a, b)), Palette.Zone);
        }
    }

    /// <summary>Draws the horizontal reference lines and asks for their labels.</summary>
    public void References()
    {
        foreach (var line in _data.Lines.Where(line => line.Axis == AxisName.Y))
            Reference(Main, line);
    }

    /// <summary>Draws one horizontal reference line; one beyond the axis is named at the edge it lies behind.</summary>
    public void Reference(Panel panel, FigureLine line)
    {
        var (stroke, color) = SeriesStyle.Of(line.Role);
        var style = new TextStyle(FontFace.Regular, LabelSize, color);
        // Limits are named in any case; what water does at this temperature can wait for the large figure.
        var optional = _canvas.Size.IsSmall && line.Role == LineRole.Saturation;
        if (panel.Y.Holds(line.At))
        {
            panel.Horizontal(line.At, stroke);
            LabelHorizontal(panel, line.Label, panel.Y.At(line.At), style, optional);
            return;
        }

        var above = line.At > panel.Y.High;
        LabelHorizontal(panel, string.Create(CultureInfo.InvariantCulture, $"{line.Label} {(above ? '▲' : '▼')}"), above ? panel.Area.Top : panel.Area.Bottom, style, optional);
    }

    /// <summary>Asks for a label beside a curve.</summary>
    /// <param name="panel">Where the curve is.</param>
    /// <param name="curve">The curve.</param>
    /// <param name="style">Its style.</param>
    /// <param name="favourite">Share of the way along the curve where the label reads best, 0 to 1.</param>
    /// <param name="optional">True when the figure reads well without it.</param>
    /// <param name="order">Lower goes first.</param>
    /// <param name="shift">Distance by which the marks of the curve stand to the right of their place, pt.</param>
    public void Label(Panel panel, FigureCurve curve, SeriesStyle style, double favourite = 0.8, bool optional = false, int order = 10, double shift = 0)
    {
        if (curve.Label.Length == 0)
            return;
        var text = new TextStyle(FontFace.Regular, optional ? LabelSize - 0.8 : LabelSize, style.Text);
        var runs = panel.Runs(Nullable(curve.X), curve.Y).Select(run => run.Select(p => new Point(p.X + shift, p.Y)).Where(p => panel.Area.Grow(0.5).Holds(new Box(p.X, p.Y, p.X, p.Y))).ToArray()).Where(run => run.Length > 0).ToArray();
        Point[] points = [.. runs.SelectMany(run => run)];
        if (points.Length == 0)
            return;
        var spots = new List<LabelSpot>();
        foreach (var share in Shares(points.Length))
        {
            var p = points[(int)Math.Round(share * (points.Length - 1))];
            var (above, below) = Neighbours(panel, curve, p);
            Around(spots, p, text, 14 * Math.Abs(share - favourite), points.Length <= SpreadBars.MostMarks ? 4.5 : 3, above ? Between : 0, below ? Between : 0);
        }

        _labels.Add(new LabelRequest(curve.Label, text, spots, panel.Area.Grow(-1)) { Targets = [.. runs.SelectMany(Along)], Optional = optional, Order = order });
    }

    /// <summary>Notes the values of a curve for people who point at it.</summary>
    /// <param name="panel">Where the curve is.</param>
    /// <param name="curve">The curve.</param>
    public void Hover(Panel panel, FigureCurve curve)
    {
        var last = double.NegativeInfinity;
        // About a hundred places a curve: closer ones could not be told apart by a finger.
        var apart = curve.X.Length > 110 ? panel.Area.Width / 100 : 0;
        for (var i = 0; i < curve.X.Length; i++)
        {
            if (curve.Y[i] is not { } value || !double.IsFinite(value) || !panel.X.Holds(curve.X[i]))
                continue;
            var at = new Point(panel.X.At(curve.X[i]), panel.Y.At(value));
            if (Math.Abs(at.X - last) < apart)
                continue;
            last = at.X;
            var spread = HasSpread(curve) && curve.YLow[i] is { } low && curve.YHigh[i] is { } high ? string.Create(CultureInfo.InvariantCulture, $" ({YText(low)} to {YText(high)})") : "";
            if (panel.Area.Grow(2).Holds(new Box(at.X, at.Y, at.X, at.Y)))
                _hover.Add(new HoverPoint(at.X, at.Y, string.Create(CultureInfo.InvariantCulture, $"{curve.Label}: {YText(value)}{spread} at {XText(curve.X[i])}")));
        }
    }

    /// <summary>Whether a curve has a band or error bars.</summary>
    /// <param name="curve">The curve.</param>
    /// <returns>True when it has.</returns>
    public static bool HasSpread(FigureCurve curve) => curve.YLow.Length == curve.X.Length && curve.YHigh.Length == curve.X.Length && curve.X.Length > 0;

    private static ImmutableArray<double?> Nullable(ImmutableArray<double> values) => [.. values.Select(value => (double?)value)];

    private void LabelHorizontal(Panel panel, string label, double y, TextStyle style, bool optional)
    {
        if (label.Length == 0)
            return;
        var spots = new List<LabelSpot>();
        var above = y - 2.2 - style.Descent * 0.3;
        var below = y + 2.2 + style.CapHeight;
        var half = style.Width(label) / 2;
        double first = panel.Area.Left + 4 + half, last = panel.Area.Right - 3 - half;
        for (var i = 0; i <= Places; i++)
        {
            // The right end reads best, then the left end; in between it is a matter of free space.
            var penalty = i == 0 ? 0 : i == Places ? 5 : 8 + 0.2 * i;
            var x = last + (first - last) * i / Places;
            spots.Add(new LabelSpot(x, above, TextAnchor.Middle, penalty));
            spots.Add(new LabelSpot(x, below, TextAnchor.Middle, penalty + 6));
        }

        _labels.Add(new LabelRequest(label, style, spots, panel.Area.Grow(-1)) { Targets = Along([new Point(panel.Area.Left + 12, y), new Point(panel.Area.Right - 12, y)]), Optional = optional, Order = 2 });
    }

    // Points along a line, about equally far from each other, whether its own are few or many.
    private static List<Point> Along(Point[] line)
    {
        const double Apart = 8;
        var points = new List<Point> { line[0] };
        for (var i = 1; i < line.Length; i++)
        {
            var (from, to) = (points[^1], line[i]);
            var steps = (int)(Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y)) / Apart);
            for (var step = 1; step <= steps; step++)
                points.Add(new Point(from.X + (to.X - from.X) * step / steps, from.Y + (to.Y - from.Y) * step / steps));
        }

        return points;
    }

    private static IEnumerable<double> Shares(int count)
    {
        var steps = Math.Min(count, 25);
        for (var i = 0; i < steps; i++)
            yield return steps == 1 ? 0 : (double)i / (steps - 1);
    }

    // Whether another curve runs close above or below: a label between two curves could belong to either.
    private (bool Above, bool Below) Neighbours(Panel panel, FigureCurve own, Point p)
    {
        bool above = false, below = false;
        foreach (var other in _data.Curves)
        {
            if (ReferenceEquals(other, own) || other.Role is CurveRole.Isotherm or CurveRole.Limit || _plan.InMain(other) != (panel == Main))
                continue;
            if (HeightAt(panel, other, p.X) is not { } y)
                continue;
            above |= y <= p.Y && p.Y - y < 24;
            below |= y > p.Y && y - p.Y < 24;
        }

        return (above, below);
    }

    private static double? HeightAt(Panel panel, FigureCurve curve, double x)
    {
        for (var i = 1; i < curve.X.Length; i++)
        {
            double left = panel.X.At(curve.X[i - 1]), right = panel.X.At(curve.X[i]);
            if (x < left - 0.5 || x > right + 0.5 || curve.Y[i - 1] is not { } from || curve.Y[i] is not { } to)
                continue;
            var share = right - left < 1e-9 ? 0 : Math.Clamp((x - left) / (right - left), 0, 1);
            return panel.Y.At(from) + share * (panel.Y.At(to) - panel.Y.At(from));
        }

        return null;
    }

    private static void Around(List<LabelSpot> spots, Point p, TextStyle style, double penalty, double away, double above = 0, double below = 0)
    {
        spots.Add(new LabelSpot(p.X, p.Y - away - style.Descent, TextAnchor.Middle, penalty + above));
        spots.Add(new LabelSpot(p.X, p.Y + away + style.Ascent, TextAnchor.Middle, penalty + below + 1));
        spots.Add(new LabelSpot(p.X + away + 1, p.Y + style.CapHeight / 2, TextAnchor.Start, penalty + 2));
        spots.Add(new LabelSpot(p.X - away - 1, p.Y + style.CapHeight / 2, TextAnchor.End, penalty + 3));
        var aside = away > 4 ? 3.5 : 2;
        spots.Add(new LabelSpot(p.X + aside, p.Y - away - style.Descent, TextAnchor.Start, penalty + above + 1));
        spots.Add(new LabelSpot(p.X - aside, p.Y - away - style.Descent, TextAnchor.End, penalty + above + 2));
        spots.Add(new LabelSpot(p.X + aside, p.Y + away + style.Ascent, TextAnchor.Start, penalty + below + 2));
        spots.Add(new LabelSpot(p.X - aside, p.Y + away + style.Ascent, TextAnchor.End, penalty + below + 3));
    }

    /// <summary>Marks every stretch of missing values by an arrow and a thin line at the top edge, and names one of them, the longest where there is room; a small figure without room leaves the arrow to speak.</summary>
    public void OverRange(FigureCurve curve, SeriesStyle style)
    {
        var text = new TextStyle(FontFace.Regular, LabelSize - 0.4, style.Text);
        var spots = new List<LabelSpot>();
        foreach (var (from, to) in Gaps(curve).OrderByDescending(gap => gap.To - gap.From))
        {
            double left = Main.X.Clamped(from), right = Main.X.Clamped(to);
            var middle = new Point((left + right) / 2, Main.Area.Top + 5);
            if (right - left > 1)
                _canvas.Line(left, middle.Y, right, middle.Y, new Stroke(style.Stroke.Color, 0.8, OverRangeDash));
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
            _labels.Add(new LabelRequest(OverRangeText, text, spots, Main.Area.Grow(-1)) { Optional = _canvas.Size.IsSmall, Order = 4 });
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
