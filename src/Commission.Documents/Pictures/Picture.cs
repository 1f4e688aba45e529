namespace Commission.Documents.Pictures;

/// <summary>The outer size of a figure in PDF points (1 pt = 1/72 in), positive and finite.</summary>
/// <param name="Width">Width, pt.</param>
/// <param name="Height">Height, pt.</param>
internal readonly record struct PictureSize(double Width, double Height)
{
    /// <summary>Width of a figure that spans the text of a page: 7.1 in.</summary>
    public const double FullWidth = 7.1 * 72;

    /// <summary>Width of the variant drawn for a telephone held upright, where a full-width figure would shrink below reading size.</summary>
    public const double NarrowWidth = 264;

    /// <summary>True below the width at which a figure drops its second line of comfort: fewer ticks, shorter labels.</summary>
    public bool IsNarrow => Width < 360;

    /// <summary>True for a figure that only recalls another (page 1): labels of the second rank are left out before they stand on a line.</summary>
    public bool IsSmall => IsNarrow && Height < 150;
}

/// <summary>A place in a figure that can say its values when pointed at; the text is made of record fields, never read back from pixels.</summary>
/// <param name="X">Distance from the left edge, pt.</param>
/// <param name="Y">Distance from the top edge, pt.</param>
/// <param name="Text">What is shown there.</param>
internal readonly record struct HoverPoint(double X, double Y, string Text);

/// <summary>
/// A drawn figure: what <see cref="Canvas"/> was told, in the order of drawing. <see cref="SvgWriter"/> writes it into a web page and the
/// typesetter's ink draws it on a page of a PDF; whoever adds a shape teaches both.
/// </summary>
/// <param name="Size">Outer size, pt.</param>
/// <param name="Shapes">What is drawn.</param>
/// <param name="Hover">Places that say their values when pointed at, ordered from left to right within each curve.</param>
internal sealed record Picture(PictureSize Size, IReadOnlyList<Shape> Shapes, IReadOnlyList<HoverPoint> Hover);

/// <summary>Something drawn; coordinates are pt from the upper left corner of the figure, rounded to 0.01 pt.</summary>
internal abstract record Shape;

/// <summary>A straight line.</summary>
internal sealed record LineShape(Point From, Point To, Stroke Stroke) : Shape;

/// <summary>A line through points, with round joins.</summary>
internal sealed record PolylineShape(Point[] Points, Stroke Stroke) : Shape;

/// <summary>A filled closed shape, with or without an outline.</summary>
internal sealed record PolygonShape(Point[] Points, Rgb Fill, Stroke? Outline) : Shape;

/// <summary>A filled rectangle, with or without an outline.</summary>
internal sealed record RectangleShape(Point Corner, double Width, double Height, Rgb Fill, Stroke? Outline) : Shape;

/// <summary>A filled circle, with or without an outline.</summary>
internal sealed record CircleShape(Point Center, double Radius, Rgb Fill, Stroke? Outline) : Shape;

/// <summary>One line of text; the position is on its baseline.</summary>
internal sealed record TextShape(Point At, string Text, TextStyle Style, TextAnchor Anchor) : Shape;

/// <summary>Shapes of which only what lies inside a rectangle is seen.</summary>
internal sealed record ClippedShapes(Point Corner, double Width, double Height, IReadOnlyList<Shape> Inside) : Shape;

/// <summary>Takes down what a plot draws. The same data give the same shapes: coordinates are rounded here, for every page alike.</summary>
internal sealed class Canvas(PictureSize size)
{
    private readonly Stack<(Box Clip, List<Shape> Outside)> _clips = new();
    private List<Shape> _shapes = [];

    /// <summary>Outer size, pt.</summary>
    public PictureSize Size => size;

    public void Line(double x1, double y1, double x2, double y2, Stroke stroke) => _shapes.Add(new LineShape(At(x1, y1), At(x2, y2), stroke));

    public void Polyline(ReadOnlySpan<Point> points, Stroke stroke) => _shapes.Add(new PolylineShape(Rounded(points), stroke));

    public void Polygon(ReadOnlySpan<Point> points, Rgb fill, Stroke? outline = null) => _shapes.Add(new PolygonShape(Rounded(points), fill, outline));

    public void Rectangle(Box box, Rgb fill, Stroke? outline = null) =>
        _shapes.Add(new RectangleShape(At(box.Left, box.Top), Rounded(box.Width), Rounded(box.Height), fill, outline));

    public void Circle(double x, double y, double radius, Rgb fill, Stroke? outline = null) =>
        _shapes.Add(new CircleShape(At(x, y), Rounded(radius), fill, outline));

    /// <summary>One line of text; the position is on its baseline.</summary>
    public void Text(double x, double y, string text, TextStyle style, TextAnchor anchor = TextAnchor.Start)
    {
        if (text.Length > 0)
            _shapes.Add(new TextShape(At(x, y), text, style, anchor));
    }

    /// <summary>What follows is cut off at a rectangle, until <see cref="EndClip"/>.</summary>
    public void BeginClip(Box box)
    {
        _clips.Push((box, _shapes));
        _shapes = [];
    }

    /// <summary>Ends the innermost clip.</summary>
    public void EndClip()
    {
        var (box, outside) = _clips.Pop();
        outside.Add(new ClippedShapes(At(box.Left, box.Top), Rounded(box.Width), Rounded(box.Height), _shapes));
        _shapes = outside;
    }

    /// <summary>Finishes the figure.</summary>
    /// <param name="hover">Places that say their values when pointed at.</param>
    /// <exception cref="InvalidOperationException">A clip was left open: a mistake in a plot.</exception>
    public Picture Finish(IReadOnlyList<HoverPoint> hover) =>
        _clips.Count == 0 ? new Picture(size, _shapes, hover) : throw new InvalidOperationException("A figure was finished with a clip still open.");

    private static Point At(double x, double y) => new(Rounded(x), Rounded(y));

    private static Point[] Rounded(ReadOnlySpan<Point> points)
    {
        var rounded = new Point[points.Length];
        for (var i = 0; i < points.Length; i++)
            rounded[i] = At(points[i].X, points[i].Y);
        return rounded;
    }

    // Adding zero turns −0 into 0, which would otherwise be printed with its sign.
    private static double Rounded(double value) => Math.Round(value, 2) + 0.0;
}

/// <summary>A place in a figure, pt from its top left corner.</summary>
/// <param name="X">Distance from the left edge.</param>
/// <param name="Y">Distance from the top edge.</param>
internal readonly record struct Point(double X, double Y);

/// <summary>An upright rectangle, pt from the top left corner of the figure.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Top">Top edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Bottom">Bottom edge.</param>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width, pt.</summary>
    public double Width => Right - Left;

    /// <summary>Height, pt.</summary>
    public double Height => Bottom - Top;

    /// <summary>Whether two rectangles share area.</summary>
    /// <param name="other">The other one.</param>
    /// <returns>True when they overlap.</returns>
    public bool Meets(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether another rectangle lies wholly inside.</summary>
    /// <param name="other">The other one.</param>
    /// <returns>True when it does.</returns>
    public bool Holds(Box other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    /// <summary>Grows (or with a negative number shrinks) every side.</summary>
    public Box Grow(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}
