using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>Draws the shapes of a figure on a page.</summary>
internal sealed class PicturePainter(XGraphics graphics, PenCase pens)
{
    /// <summary>Draws shapes; the origin of the graphics is the upper left corner of the figure.</summary>
    public void Draw(IReadOnlyList<Shape> shapes)
    {
        foreach (var shape in shapes)
        {
            switch (shape)
            {
                case LineShape line:
                    graphics.DrawLine(pens.Pen(line.Stroke), line.From.X, line.From.Y, line.To.X, line.To.Y);
                    break;
                case PolylineShape { Points.Length: > 1 } line:
                    graphics.DrawLines(pens.Pen(line.Stroke), Array.ConvertAll(line.Points, static point => new XPoint(point.X, point.Y)));
                    break;
                case PolylineShape:
                    break;
                case PolygonShape polygon:
                    var corners = new XGraphicsPath();
                    corners.AddPolygon(Array.ConvertAll(polygon.Points, static point => new XPoint(point.X, point.Y)));
                    Paint(corners, polygon.Fill, polygon.Outline);
                    break;
                case RectangleShape rectangle:
                    var edges = new XGraphicsPath();
                    edges.AddRectangle(new XRect(rectangle.Corner.X, rectangle.Corner.Y, rectangle.Width, rectangle.Height));
                    Paint(edges, rectangle.Fill, rectangle.Outline);
                    break;
                case CircleShape circle:
                    var rim = new XGraphicsPath();
                    rim.AddEllipse(circle.Center.X - circle.Radius, circle.Center.Y - circle.Radius, 2 * circle.Radius, 2 * circle.Radius);
                    Paint(rim, circle.Fill, circle.Outline);
                    break;
                case TextShape text:
                    Text(text);
                    break;
                case ClippedShapes clipped:
                    var state = graphics.Save();
                    graphics.IntersectClip(new XRect(clipped.Corner.X, clipped.Corner.Y, clipped.Width, clipped.Height));
                    Draw(clipped.Inside);
                    graphics.Restore(state);
                    break;
                default:
                    throw new InvalidOperationException($"PDF pages do not know how to draw a {shape.GetType().Name}.");
            }
        }
    }

    private void Paint(XGraphicsPath path, Rgb fill, Stroke? outline)
    {
        if (outline is { } stroke)
            graphics.DrawPath(pens.Pen(stroke), pens.Brush(fill), path);
        else
            graphics.DrawPath(pens.Brush(fill), path);
    }

    private void Text(TextShape shape)
    {
        // A PDF maps a glyph back to one character only.
        var text = string.Create(shape.Text.Length, shape.Text, static (output, source) =>
        {
            for (var i = 0; i < source.Length; i++)
                output[i] = FontFace.Regular.Twin(source[i]);
        });
        var width = shape.Style.Face.Width(text, shape.Style.Size);
        var x = shape.Anchor switch { TextAnchor.Start => shape.At.X, TextAnchor.Middle => shape.At.X - width / 2, _ => shape.At.X - width };
        graphics.DrawString(text, pens.Font(shape.Style), pens.Brush(shape.Style.Color), x, shape.At.Y);
    }
}
