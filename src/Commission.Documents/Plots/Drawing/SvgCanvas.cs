using System.Globalization;
using System.Security;
using System.Text;

namespace Commission.Documents.Plots.Drawing;

/// <summary>
/// Writes one figure as SVG in points, with the few elements that the PDF side knows too. Coordinates are rounded to 0.01 pt, so the
/// same data gives the same bytes; every text carries its <c>textLength</c>, so that a page without our typeface keeps the layout.
/// </summary>
internal sealed class SvgCanvas
{
    private readonly StringBuilder _svg = new(8192);
    private int _clips;
    private int _open;

    /// <summary>Begins an empty figure.</summary>
    /// <param name="size">Outer size, pt.</param>
    public SvgCanvas(PlotSize size)
    {
        Size = size;
        _svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").Append(N(size.Width)).Append("\" height=\"").Append(N(size.Height))
            .Append("\" viewBox=\"0 0 ").Append(N(size.Width)).Append(' ').Append(N(size.Height))
            .Append("\" font-family=\"'Source Sans 3', sans-serif\">");
    }

    /// <summary>Outer size, pt.</summary>
    public PlotSize Size { get; }

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, Stroke stroke)
    {
        _svg.Append("<line x1=\"").Append(N(x1)).Append("\" y1=\"").Append(N(y1)).Append("\" x2=\"").Append(N(x2)).Append("\" y2=\"").Append(N(y2)).Append('"');
        Write(stroke);
        _svg.Append("/>");
    }

    /// <summary>A line through points.</summary>
    public void Polyline(ReadOnlySpan<Point> points, Stroke stroke)
    {
        _svg.Append("<polyline fill=\"none\" points=\"");
        for (var i = 0; i < points.Length; i++)
        {
            if (i > 0)
                _svg.Append(' ');
            _svg.Append(N(points[i].X)).Append(',').Append(N(points[i].Y));
        }

        _svg.Append('"');
        Write(stroke);
        _svg.Append(" stroke-linejoin=\"round\"/>");
    }

    /// <summary>A filled closed shape, with or without an outline.</summary>
    public void Polygon(ReadOnlySpan<Point> points, string fill, Stroke? outline = null)
    {
        _svg.Append("<path d=\"");
        for (var i = 0; i < points.Length; i++)
            _svg.Append(i == 0 ? 'M' : 'L').Append(N(points[i].X)).Append(' ').Append(N(points[i].Y));
        _svg.Append("Z\" fill=\"").Append(fill).Append('"');
        if (outline is { } stroke)
            Write(stroke);
        _svg.Append("/>");
    }

    /// <summary>A filled rectangle.</summary>
    public void Rectangle(Box box, string fill, Stroke? outline = null)
    {
        _svg.Append("<rect x=\"").Append(N(box.Left)).Append("\" y=\"").Append(N(box.Top)).Append("\" width=\"").Append(N(box.Width))
            .Append("\" height=\"").Append(N(box.Height)).Append("\" fill=\"").Append(fill).Append('"');
        if (outline is { } stroke)
            Write(stroke);
        _svg.Append("/>");
    }

    /// <summary>A filled circle.</summary>
    public void Circle(double x, double y, double radius, string fill, Stroke? outline = null)
    {
        _svg.Append("<ellipse cx=\"").Append(N(x)).Append("\" cy=\"").Append(N(y)).Append("\" rx=\"").Append(N(radius)).Append("\" ry=\"")
            .Append(N(radius)).Append("\" fill=\"").Append(fill).Append('"');
        if (outline is { } stroke)
            Write(stroke);
        _svg.Append("/>");
    }

    /// <summary>One line of text; the position is on its baseline.</summary>
    public void Text(double x, double y, string text, TextStyle style, TextAnchor anchor = TextAnchor.Start)
    {
        if (text.Length == 0)
            return;
        _svg.Append("<text x=\"").Append(N(x)).Append("\" y=\"").Append(N(y)).Append("\" font-size=\"").Append(N(style.Size)).Append('"');
        if (style.Bold)
            _svg.Append(" font-weight=\"600\"");
        if (anchor != TextAnchor.Start)
            _svg.Append(" text-anchor=\"").Append(anchor == TextAnchor.Middle ? "middle" : "end").Append('"');
        _svg.Append(" fill=\"").Append(style.Color).Append("\" textLength=\"").Append(N(style.Width(text)))
            .Append("\" lengthAdjust=\"spacingAndGlyphs\">").Append(SecurityElement.Escape(text)).Append("</text>");
    }

    /// <summary>The rectangle that a text would cover.</summary>
    public static Box TextBox(double x, double y, string text, TextStyle style, TextAnchor anchor = TextAnchor.Start)
    {
        var width = style.Width(text);
        var left = anchor switch { TextAnchor.Start => x, TextAnchor.Middle => x - width / 2, _ => x - width };
        return new Box(left, y - style.Ascent, left + width, y + style.Descent);
    }

    /// <summary>What follows is cut off at a rectangle, until <see cref="EndClip"/>.</summary>
    public void BeginClip(Box box)
    {
        _clips++;
        _open++;
        var id = string.Create(CultureInfo.InvariantCulture, $"clip-{_clips}");
        _svg.Append("<clipPath id=\"").Append(id).Append("\"><rect x=\"").Append(N(box.Left)).Append("\" y=\"").Append(N(box.Top)).Append("\" width=\"")
            .Append(N(box.Width)).Append("\" height=\"").Append(N(box.Height)).Append("\"/></clipPath><g clip-path=\"url(#").Append(id).Append(")\">");
    }

    /// <summary>Ends the innermost clip.</summary>
    public void EndClip()
    {
        _open--;
        _svg.Append("</g>");
    }

    /// <summary>Finishes the figure.</summary>
    /// <returns>The svg element.</returns>
    /// <exception cref="InvalidOperationException">A clip was left open: a mistake in a plot.</exception>
    public string Finish()
    {
        if (_open != 0)
            throw new InvalidOperationException("A figure was finished with a clip still open.");
        return _svg.Append("</svg>").ToString();
    }

    private void Write(Stroke stroke)
    {
        _svg.Append(" stroke=\"").Append(stroke.Color).Append("\" stroke-width=\"").Append(N(stroke.Width)).Append('"');
        if (stroke.Dash.Length > 0)
            _svg.Append(" stroke-dasharray=\"").Append(stroke.Dash).Append('"');
    }

    private static string N(double value)
    {
        // Adding zero turns −0 into 0, which would otherwise be printed with its sign.
        return (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
    }
}
