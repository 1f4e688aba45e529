using System.Globalization;
using System.Xml;
using Commission.Documents.Fonts;
using Commission.Documents.Plots;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Commission.Documents.Typesetting;

/// <summary>
/// Draws a figure's SVG as PDF vectors. Knows the vocabulary of our plots and nothing else: svg, g and clipPath, rect, ellipse,
/// circle, path (M L C Q Z), line, polyline, polygon, text.
/// </summary>
public static class SvgPainter
{
    private static readonly XPdfFontOptions Unicode = new(PdfFontEncoding.Unicode);

    /// <summary>Draws a figure into a rectangle of a page, scaled evenly to its width.</summary>
    /// <param name="graphics">The page.</param>
    /// <param name="figure">The figure.</param>
    /// <param name="place">Where it goes, in points from the upper left corner.</param>
    /// <exception cref="InvalidOperationException">The figure uses an element this painter does not know: a mistake in a plot.</exception>
    public static void Draw(XGraphics graphics, SvgFigure figure, XRect place)
    {
        ArgumentNullException.ThrowIfNull(graphics);
        ArgumentNullException.ThrowIfNull(figure);
        EmbeddedFonts.Register();
        var state = graphics.Save();
        graphics.TranslateTransform(place.X, place.Y);
        var scale = place.Width / figure.Width;
        if (Math.Abs(scale - 1) > 1e-6) graphics.ScaleTransform(scale);
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreWhitespace = false, IgnoreComments = true };
        using var reader = XmlReader.Create(new StringReader(figure.Svg), settings);
        new Painter(graphics, reader).Run();
        graphics.Restore(state);
    }

    private sealed class Painter(XGraphics graphics, XmlReader svg)
    {
        private readonly Dictionary<string, XRect> _clips = new(StringComparer.Ordinal);
        private readonly Stack<XGraphicsState?> _groups = new();
        private readonly Dictionary<(XFontStyleEx Style, double Size), XFont> _fonts = [];

        public void Run()
        {
            while (svg.Read())
            {
                if (svg.NodeType == XmlNodeType.Element) Element(svg.LocalName);
                else if (svg.NodeType == XmlNodeType.EndElement && svg.LocalName == "g" && _groups.Pop() is { } state) graphics.Restore(state);
            }
        }

        private void Element(string name)
        {
            switch (name)
            {
                case "svg" or "title" or "desc":
                    break;
                case "g":
                    Group();
                    break;
                case "clipPath":
                    ClipPath();
                    break;
                case "rect":
                    Shape(path => path.AddRectangle(Rect()));
                    break;
                case "ellipse" or "circle":
                    Shape(path => path.AddEllipse(Ellipse()));
                    break;
                case "line":
                    if (Pen() is { } pen) graphics.DrawLine(pen, Number("x1"), Number("y1"), Number("x2"), Number("y2"));
                    break;
                case "polyline":
                    Polyline(closed: false);
                    break;
                case "polygon":
                    Polyline(closed: true);
                    break;
                case "path":
                    SvgPath.Draw(graphics, svg.GetAttribute("d") ?? "", Pen(), Fill());
                    break;
                case "text":
                    Text();
                    break;
                default:
                    throw new InvalidOperationException($"A figure uses <{name}>, which the PDF painter does not know.");
            }
        }

        private void Group()
        {
            var clip = svg.GetAttribute("clip-path");
            XGraphicsState? state = null;
            if (clip is not null && _clips.TryGetValue(clip[(clip.IndexOf('#') + 1)..^1], out var rect))
            {
                state = graphics.Save();
                graphics.IntersectClip(rect);
            }

            if (!svg.IsEmptyElement) _groups.Push(state);
            else if (state is not null) graphics.Restore(state);
        }

        private void ClipPath()
        {
            var id = svg.GetAttribute("id") ?? "";
            while (svg.Read() && svg.LocalName != "clipPath")
            {
                if (svg.NodeType == XmlNodeType.Element && svg.LocalName == "rect") _clips[id] = Rect();
            }
        }

        private void Shape(Action<XGraphicsPath> add)
        {
            var path = new XGraphicsPath();
            add(path);
            Paint(path, Pen(), Fill());
        }

        private void Paint(XGraphicsPath path, XPen? pen, XBrush? fill)
        {
            if (pen is not null && fill is not null) graphics.DrawPath(pen, fill, path);
            else if (fill is not null) graphics.DrawPath(fill, path);
            else if (pen is not null) graphics.DrawPath(pen, path);
        }

        private void Polyline(bool closed)
        {
            var numbers = SvgNumbers.Read(svg.GetAttribute("points") ?? "");
            if (numbers.Count < 4) return;
            var points = new XPoint[numbers.Count / 2];
            for (var i = 0; i < points.Length; i++) points[i] = new XPoint(numbers[2 * i], numbers[(2 * i) + 1]);
            if (closed)
            {
                var path = new XGraphicsPath();
                path.AddPolygon(points);
                Paint(path, Pen(), Fill());
            }
            else if (Pen() is { } pen)
            {
                graphics.DrawLines(pen, points);
            }
        }

        private void Text()
        {
            var x = Number("x");
            var y = Number("y");
            var size = Number("font-size", 8);
            var weight = svg.GetAttribute("font-weight");
            var style = weight is "600" or "700" or "bold" ? XFontStyleEx.Bold : svg.GetAttribute("font-style") is "italic" ? XFontStyleEx.Italic : XFontStyleEx.Regular;
            var anchor = svg.GetAttribute("text-anchor");
            var transform = svg.GetAttribute("transform");
            var brush = Fill() ?? XBrushes.Black;
            var text = Content();
            if (text.Length == 0) return;
            var face = style == XFontStyleEx.Bold ? FontFace.SemiBold : style == XFontStyleEx.Italic ? FontFace.Italic : FontFace.Regular;
            if (anchor is "middle") x -= face.Width(text, size) / 2;
            else if (anchor is "end") x -= face.Width(text, size);
            var state = Rotated(transform);
            graphics.DrawString(text, Font(style, size), brush, x, y);
            if (state is not null) graphics.Restore(state);
        }

        private string Content()
        {
            var text = "";
            if (svg.IsEmptyElement) return text;
            while (svg.Read() && svg.NodeType != XmlNodeType.EndElement)
            {
                if (svg.NodeType == XmlNodeType.Text) text += svg.Value;
            }

            return string.Create(text.Length, text, static (output, source) =>
            {
                for (var i = 0; i < source.Length; i++) output[i] = FontFace.Regular.Twin(source[i]);
            });
        }

        private XGraphicsState? Rotated(string? transform)
        {
            if (transform is null || !transform.StartsWith("rotate(", StringComparison.Ordinal)) return null;
            var numbers = SvgNumbers.Read(transform.AsSpan("rotate(".Length).TrimEnd(')'));
            var state = graphics.Save();
            graphics.RotateAtTransform(numbers[0], numbers.Count > 2 ? new XPoint(numbers[1], numbers[2]) : default);
            return state;
        }

        private XFont Font(XFontStyleEx style, double size)
        {
            if (_fonts.TryGetValue((style, size), out var font)) return font;
            font = new XFont(EmbeddedFonts.Family, size, style, Unicode);
            _fonts.Add((style, size), font);
            return font;
        }

        private XRect Rect() => new(Number("x"), Number("y"), Number("width"), Number("height"));

        private XRect Ellipse()
        {
            var rx = Number("rx", Number("r"));
            var ry = Number("ry", Number("r"));
            return new XRect(Number("cx") - rx, Number("cy") - ry, 2 * rx, 2 * ry);
        }

        private XPen? Pen()
        {
            if (SvgColor.Read(svg.GetAttribute("stroke"), Number("stroke-opacity", 1)) is not { } color) return null;
            var width = Number("stroke-width", 1);
            var pen = new XPen(color, width) { LineJoin = XLineJoin.Round };
            if (svg.GetAttribute("stroke-linecap") is "round") pen.LineCap = XLineCap.Round;
            if (svg.GetAttribute("stroke-dasharray") is { Length: > 0 } dashes && dashes != "none")
            {
                // PDFsharp counts dashes in widths of the pen.
                var pattern = SvgNumbers.Read(dashes);
                pen.DashPattern = [.. pattern.Select(length => length / width)];
            }

            return pen;
        }

        private XSolidBrush? Fill() =>
            SvgColor.Read(svg.GetAttribute("fill") ?? "#000000", Number("fill-opacity", 1)) is { } color ? new XSolidBrush(color) : null;

        private double Number(string attribute, double otherwise = 0) =>
            svg.GetAttribute(attribute) is { } text && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : otherwise;
    }
}
