using System.Globalization;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>
/// Draws the path data of SVG (absolute M, L, C, Q, Z). PDFsharp joins open sub-paths with a line, so each one is stroked by itself.
/// </summary>
internal static class SvgPath
{
    public static void Draw(XGraphics graphics, string data, XPen? pen, XBrush? fill)
    {
        var figures = Read(data);
        if (fill is not null)
        {
            var all = new XGraphicsPath { FillMode = XFillMode.Winding };
            foreach (var figure in figures) figure.AddTo(all, close: true);
            if (figures.Count > 0) graphics.DrawPath(fill, all);
        }

        if (pen is null) return;
        foreach (var figure in figures)
        {
            var path = new XGraphicsPath();
            figure.AddTo(path, figure.IsClosed);
            graphics.DrawPath(pen, path);
        }
    }

    private static List<Figure> Read(string data)
    {
        var figures = new List<Figure>();
        var span = data.AsSpan();
        var current = default(XPoint);
        var command = 'M';
        var i = 0;
        while (true)
        {
            Skip(span, ref i);
            if (i >= span.Length) return figures;
            if (char.IsAsciiLetter(span[i])) command = span[i++];
            switch (command)
            {
                case 'M':
                    current = Point(span, ref i);
                    figures.Add(new Figure(current));
                    command = 'L';
                    break;
                case 'L':
                    figures[^1].LineTo(current = Point(span, ref i));
                    break;
                case 'C':
                    var first = Point(span, ref i);
                    var second = Point(span, ref i);
                    figures[^1].CurveTo(first, second, current = Point(span, ref i));
                    break;
                case 'Q':
                    var control = Point(span, ref i);
                    var end = Point(span, ref i);
                    figures[^1].CurveTo(Between(current, control), Between(end, control), end);
                    current = end;
                    break;
                case 'Z' or 'z':
                    figures[^1].IsClosed = true;
                    break;
                default:
                    throw new InvalidOperationException($"A figure uses the path command {command}, which the PDF painter does not know.");
            }
        }
    }

    // A quadratic curve is a cubic one whose controls lie two thirds of the way to its own.
    private static XPoint Between(XPoint end, XPoint control) => new(end.X + ((control.X - end.X) * 2 / 3), end.Y + ((control.Y - end.Y) * 2 / 3));

    private static void Skip(ReadOnlySpan<char> span, ref int i)
    {
        while (i < span.Length && span[i] is ' ' or ',' or '\n' or '\t' or '\r') i++;
    }

    private static XPoint Point(ReadOnlySpan<char> span, ref int i)
    {
        var x = Number(span, ref i);
        return new XPoint(x, Number(span, ref i));
    }

    private static double Number(ReadOnlySpan<char> span, ref int i)
    {
        Skip(span, ref i);
        var start = i;
        i = SvgNumbers.End(span, i);
        return double.Parse(span[start..i], NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    private sealed class Figure(XPoint start)
    {
        private readonly List<XPoint> _points = [start];
        private readonly List<bool> _curves = [];

        public bool IsClosed { get; set; }

        public void LineTo(XPoint point)
        {
            _points.Add(point);
            _curves.Add(false);
        }

        public void CurveTo(XPoint first, XPoint second, XPoint end)
        {
            _points.Add(first);
            _points.Add(second);
            _points.Add(end);
            _curves.Add(true);
        }

        public void AddTo(XGraphicsPath path, bool close)
        {
            path.StartFigure();
            var at = 0;
            foreach (var isCurve in _curves)
            {
                if (isCurve)
                {
                    path.AddBezier(_points[at], _points[at + 1], _points[at + 2], _points[at + 3]);
                    at += 3;
                }
                else
                {
                    path.AddLine(_points[at], _points[at + 1]);
                    at++;
                }
            }

            if (close) path.CloseFigure();
        }
    }
}
