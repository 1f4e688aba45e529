using System.Globalization;
using System.Security;
using System.Text;
using Commission.Documents.Fonts;

namespace Commission.Documents.Pictures;

/// <summary>
/// Writes a figure as SVG. Every text carries its <c>textLength</c>, so that a page without our typeface keeps the layout.
/// </summary>
internal sealed class SvgWriter
{
    private readonly StringBuilder _svg = new(8192);
    private readonly string _clipPrefix;
    private int _clips;

    private SvgWriter(string clipPrefix)
    {
        _clipPrefix = clipPrefix;
    }

    /// <summary>Writes what stands inside the svg element of a figure.</summary>
    /// <param name="picture">The figure.</param>
    /// <param name="clipPrefix">What the identifiers of its clips begin with; unique on the page.</param>
    public static string Inside(Picture picture, string clipPrefix)
    {
        var writer = new SvgWriter(clipPrefix);
        writer.Write(picture.Shapes);
        return writer._svg.ToString();
    }

    private void Write(IReadOnlyList<Shape> shapes)
    {
        foreach (var shape in shapes)
        {
            switch (shape)
            {
                case LineShape line:
                    _svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{line.From.X:0.##}\" y1=\"{line.From.Y:0.##}\" x2=\"{line.To.X:0.##}\" y2=\"{line.To.Y:0.##}\"");
                    Painted(null, line.Stroke);
                    break;
                case PolylineShape line:
                    _svg.Append("<polyline fill=\"none\" points=\"");
                    for (var i = 0; i < line.Points.Length; i++)
                        _svg.Append(CultureInfo.InvariantCulture, $"{(i > 0 ? " " : "")}{line.Points[i].X:0.##},{line.Points[i].Y:0.##}");
                    _svg.Append('"');
                    Painted(null, line.Stroke, " stroke-linejoin=\"round\"");
                    break;
                case PolygonShape polygon:
                    _svg.Append("<path d=\"");
                    for (var i = 0; i < polygon.Points.Length; i++)
                        _svg.Append(CultureInfo.InvariantCulture, $"{(i > 0 ? 'L' : 'M')}{polygon.Points[i].X:0.##} {polygon.Points[i].Y:0.##}");
                    _svg.Append("Z\"");
                    Painted(polygon.Fill, polygon.Outline);
                    break;
                case RectangleShape rectangle:
                    Rectangle(rectangle.Corner, rectangle.Width, rectangle.Height);
                    Painted(rectangle.Fill, rectangle.Outline);
                    break;
                case CircleShape circle:
                    _svg.Append(CultureInfo.InvariantCulture, $"<ellipse cx=\"{circle.Center.X:0.##}\" cy=\"{circle.Center.Y:0.##}\" rx=\"{circle.Radius:0.##}\" ry=\"{circle.Radius:0.##}\"");
                    Painted(circle.Fill, circle.Outline);
                    break;
                case TextShape text:
                    Text(text);
                    break;
                case ClippedShapes clipped:
                    var number = ++_clips;
                    _svg.Append(CultureInfo.InvariantCulture, $"<clipPath id=\"{_clipPrefix}{number}\">");
                    Rectangle(clipped.Corner, clipped.Width, clipped.Height);
                    _svg.Append(CultureInfo.InvariantCulture, $"/></clipPath><g clip-path=\"url(#{_clipPrefix}{number})\">");
                    Write(clipped.Inside);
                    _svg.Append("</g>");
                    break;
                default:
                    throw new InvalidOperationException($"SVG pages do not know how to draw a {shape.GetType().Name}.");
            }
        }
    }

    private void Rectangle(Point corner, double width, double height) =>
        _svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{corner.X:0.##}\" y=\"{corner.Y:0.##}\" width=\"{width:0.##}\" height=\"{height:0.##}\"");

    private void Text(TextShape text)
    {
        var style = text.Style;
        _svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{text.At.X:0.##}\" y=\"{text.At.Y:0.##}\" font-size=\"{style.Size:0.##}\"");
        if (style.Face == FontFace.SemiBold)
            _svg.Append(" font-weight=\"600\"");
        if (text.Anchor != TextAnchor.Start)
            _svg.Append(CultureInfo.InvariantCulture, $" text-anchor=\"{(text.Anchor == TextAnchor.Middle ? "middle" : "end")}\"");
        _svg.Append(CultureInfo.InvariantCulture, $" fill=\"{style.Color.Hex}\" textLength=\"{Math.Round(style.Width(text.Text), 2):0.##}\" lengthAdjust=\"spacingAndGlyphs\">{SecurityElement.Escape(text.Text)}</text>");
    }

    private void Painted(Rgb? fill, Stroke? stroke, string more = "")
    {
        if (fill is { } color)
            _svg.Append(CultureInfo.InvariantCulture, $" fill=\"{color.Hex}\"");
        if (stroke is { } line)
        {
            _svg.Append(CultureInfo.InvariantCulture, $" stroke=\"{line.Color.Hex}\" stroke-width=\"{line.Width:0.##}\"");
            if (line.Dash is { } dash)
            {
                _svg.Append(" stroke-dasharray=\"");
                for (var i = 0; i < dash.Lengths.Length; i++)
                    _svg.Append(CultureInfo.InvariantCulture, $"{(i > 0 ? " " : "")}{dash.Lengths[i]:0.##}");
                _svg.Append('"');
            }
        }

        _svg.Append(more).Append("/>");
    }
}
