using Commission.Documents.Pictures;
using Commission.Documents.Plots.Axes;
using Commission.Documents.Plots.Labels;

namespace Commission.Documents.Plots.Sheets;

/// <summary>One pair of axes in a figure: draws values, and notes the ink so that labels keep off it.</summary>
/// <param name="canvas">The figure.</param>
/// <param name="ink">All ink of the figure.</param>
/// <param name="faintInk">The part of it that a label may interrupt.</param>
/// <param name="area">The rectangle between the axes, pt.</param>
/// <param name="x">The horizontal scale.</param>
/// <param name="y">The vertical scale.</param>
internal sealed class Panel(Canvas canvas, InkMap ink, InkMap faintInk, Box area, AxisMap x, AxisMap y)
{
    private const int CurveInk = 120;
    private const int ReferenceInk = 100;
    private const int FaintInk = 2;

    /// <summary>The rectangle between the axes, pt.</summary>
    public Box Area => area;

    /// <summary>The horizontal scale.</summary>
    public AxisMap X => x;

    /// <summary>The vertical scale.</summary>
    public AxisMap Y => y;

    /// <summary>The figure this panel is part of.</summary>
    public Canvas Canvas => canvas;

    /// <summary>Ink of the figure.</summary>
    public InkMap Ink => ink;

    /// <summary>Horizontal hair lines at labelled marks, and the numbers beside them.</summary>
    public void VerticalAxis(IReadOnlyList<Tick> ticks, TextStyle style, bool onRight)
    {
        var edge = onRight ? area.Right : area.Left;
        var outwards = onRight ? 1 : -1;
        foreach (var tick in ticks)
        {
            var at = y.At(tick.Value);
            if (tick.Label.Length == 0)
            {
                canvas.Line(edge + 2 * outwards, at, edge, at, new Stroke(Palette.Axis, 0.4));
                continue;
            }

            canvas.Line(area.Left, at, area.Right, at, new Stroke(Palette.Grid, 0.5));
            canvas.Line(edge + 3 * outwards, at, edge, at, new Stroke(Palette.Axis, 0.5));
            canvas.Text(edge + 4.5 * outwards, at + style.CapHeight / 2, tick.Label, style, onRight ? TextAnchor.Start : TextAnchor.End);
        }

        canvas.Line(edge, area.Top, edge, area.Bottom, new Stroke(Palette.Axis, 0.6));
        ink.Line(new Point(edge, area.Top), new Point(edge, area.Bottom), ReferenceInk);
    }

    /// <summary>The base line with its marks, and the numbers below it when wanted.</summary>
    public void HorizontalAxis(IReadOnlyList<Tick> ticks, TextStyle style, bool numbers = true)
    {
        canvas.Line(area.Left, area.Bottom, area.Right, area.Bottom, new Stroke(Palette.Axis, 0.6));
        ink.Line(new Point(area.Left, area.Bottom), new Point(area.Right, area.Bottom), ReferenceInk);
        var free = double.NegativeInfinity;
        foreach (var tick in ticks)
        {
            var at = x.At(tick.Value);
            canvas.Line(at, area.Bottom, at, area.Bottom + (tick.Label.Length > 0 ? 3 : 2), new Stroke(Palette.Axis, 0.5));
            if (!numbers || tick.Label.Length == 0)
                continue;
            var half = style.Width(tick.Label) / 2;
            if (at - half < free || at + half > canvas.Size.Width)
                continue;
            canvas.Text(at, area.Bottom + 4.5 + style.CapHeight + 0.5, tick.Label, style, TextAnchor.Middle);
            free = at + half + 4;
        }
    }

    /// <summary>What is drawn until <see cref="EndClip"/> stays inside the axes.</summary>
    public void BeginClip() => canvas.BeginClip(new Box(area.Left - 3, area.Top - 0.4, area.Right + 3, area.Bottom + 0.4));

    /// <summary>Ends the clip.</summary>
    public void EndClip() => canvas.EndClip();

    /// <summary>Splits values into unbroken lines; a missing value breaks.</summary>
    public IReadOnlyList<IReadOnlyList<Point>> Runs(IReadOnlyList<double?> xs, IReadOnlyList<double?> ys)
    {
        var runs = new List<IReadOnlyList<Point>>();
        var run = new List<Point>();
        for (var i = 0; i < xs.Count; i++)
        {
            if (Place(xs[i], ys[i]) is { } point)
            {
                run.Add(point);
                continue;
            }

            if (run.Count > 0)
                runs.Add(run);
            run = [];
        }

        if (run.Count > 0)
            runs.Add(run);
        return runs;
    }

    /// <summary>A line through values; a run of a single value becomes a short dash so that it is not lost.</summary>
    public void Curve(IReadOnlyList<double?> xs, IReadOnlyList<double?> ys, Stroke stroke, bool faint = false)
    {
        foreach (var run in Runs(xs, ys))
        {
            var points = Thinning.Reduce(run);
            if (points.Count == 1)
                points = [new Point(points[0].X - 0.7, points[0].Y), new Point(points[0].X + 0.7, points[0].Y)];
            canvas.Polyline([.. points], stroke);
            ink.Polyline(points, faint ? FaintInk : CurveInk);
            if (faint)
                faintInk.Polyline(points, FaintInk);
        }
    }

    /// <summary>The area between two lines.</summary>
    public void Band(IReadOnlyList<double?> xs, IReadOnlyList<double?> low, IReadOnlyList<double?> high, Rgb fill)
    {
        var lower = new List<Point>();
        var upper = new List<Point>();
        for (var i = 0; i <= xs.Count; i++)
        {
            if (i < xs.Count && Place(xs[i], low[i]) is { } bottom && Place(xs[i], high[i]) is { } top)
            {
                lower.Add(Kept(bottom));
                upper.Add(Kept(top));
                continue;
            }

            if (lower.Count > 1)
            {
                var edge = Thinning.Reduce(upper);
                var back = Thinning.Reduce(lower);
                canvas.Polygon([.. edge, .. back.Reverse()], fill);
            }

            lower.Clear();
            upper.Clear();
        }
    }

    /// <summary>Vertical bars with small feet.</summary>
    public void ErrorBars(IReadOnlyList<double?> xs, IReadOnlyList<double?> low, IReadOnlyList<double?> high, Stroke stroke, double shift = 0)
    {
        for (var i = 0; i < xs.Count; i++)
        {
            if (Place(xs[i], low[i], shift) is not { } bottom || Place(xs[i], high[i], shift) is not { } top)
                continue;
            var width = 1.8;
            canvas.Line(bottom.X, bottom.Y, top.X, top.Y, stroke);
            canvas.Line(bottom.X - width, bottom.Y, bottom.X + width, bottom.Y, stroke);
            canvas.Line(top.X - width, top.Y, top.X + width, top.Y, stroke);
            ink.Line(bottom, top, CurveInk);
        }
    }

    /// <summary>A mark at each value.</summary>
    public void Markers(IReadOnlyList<double?> xs, IReadOnlyList<double?> ys, MarkerShape shape, double radius, Rgb fill, Rgb outline, double shift = 0)
    {
        for (var i = 0; i < xs.Count; i++)
        {
            if (Place(xs[i], ys[i], shift) is not { } at)
                continue;
            Marker.Draw(canvas, at, shape, radius, fill, new Stroke(outline, 0.8));
            ink.Fill(new Box(at.X - radius, at.Y - radius, at.X + radius, at.Y + radius), CurveInk);
        }
    }

    /// <summary>A horizontal line across the panel.</summary>
    public void Horizontal(double value, Stroke stroke)
    {
        var at = y.At(value);
        canvas.Line(area.Left, at, area.Right, at, stroke);
        ink.Line(new Point(area.Left, at), new Point(area.Right, at), ReferenceInk);
    }

    // Far outside is far outside: coordinates of astronomic size cost digits and upset viewers.
    private static double Near(double at) => Math.Clamp(at, -5000, 5000);

    private Point? Place(double? xValue, double? yValue, double shift = 0)
        => xValue is { } h && yValue is { } v && double.IsFinite(h) && double.IsFinite(v) ? new Point(Near(x.At(h) + shift), Near(y.At(v))) : null;

    // A band that reaches far outside (a logarithm of nothing) is drawn to just beyond the edge: huge coordinates cost digits and confuse viewers.
    private Point Kept(Point p) => new(p.X, Math.Clamp(p.Y, area.Top - 20, area.Bottom + 20));
}
