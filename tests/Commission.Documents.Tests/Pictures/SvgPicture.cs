using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Pictures;

namespace Commission.Documents.Tests.Pictures;

/// <summary>A figure read back from its SVG text, as a stranger would: nothing here uses the code that wrote it.</summary>
internal sealed class SvgPicture
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public SvgPicture(Picture picture)
    {
        Root = XDocument.Parse(Written(picture)).Root!;
        Width = picture.Size.Width;
        Height = picture.Size.Height;
        Texts = [.. Root.Descendants(Svg + "text").Select(element => new SvgText(element))];
    }

    /// <summary>A figure as an SVG file.</summary>
    public static string Written(Picture picture) => $"<svg xmlns=\"{Svg}\">{SvgWriter.Inside(picture, "clip-")}</svg>";

    public XElement Root { get; }

    public double Width { get; }

    public double Height { get; }

    public IReadOnlyList<SvgText> Texts { get; }

    public SvgText Text(string words) => Texts.Single(text => text.Words == words);

    public IEnumerable<XElement> All(string name) => Root.Descendants(Svg + name);

    /// <summary>The lines and curves, in words, that run through a text: grid lines are fainter than type and do not count.</summary>
    public IEnumerable<string> LinesThrough(SvgText text)
    {
        var straight = All("line").Where(line => line.Attribute("stroke")!.Value != Palette.Grid.Hex)
            .Select(line => (Name: line.ToString(), Points: (IReadOnlyList<(double X, double Y)>)[(Number(line, "x1"), Number(line, "y1")), (Number(line, "x2"), Number(line, "y2"))]));
        var bent = All("polyline").Select(line => (Name: "curve " + line.Attribute("stroke")!.Value, Points: Points(line)));
        return straight.Concat(bent).Where(line => line.Points.Zip(line.Points.Skip(1)).Any(piece => Passes(piece.First, piece.Second))).Select(line => line.Name);

        bool Passes((double X, double Y) from, (double X, double Y) to)
        {
            var steps = (int)Math.Ceiling(2 * Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y))) + 1;
            return Enumerable.Range(0, steps + 1).Select(i => (X: from.X + ((to.X - from.X) * i / steps), Y: from.Y + ((to.Y - from.Y) * i / steps)))
                .Any(at => at.X > text.Left && at.X < text.Right && at.Y > text.Top && at.Y < text.Baseline);
        }
    }

    public static double Number(XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    public static IReadOnlyList<(double X, double Y)> Points(XElement polyline) =>
    [
        .. polyline.Attribute("points")!.Value.Split(' ').Select(pair => pair.Split(',')).Select(pair => (double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture))),
    ];
}

internal sealed class SvgText
{
    // Digits and capitals of Source Sans 3 are 0.66 em high (OS/2 sCapHeight); g and p reach 0.2 em below.
    private const double CapHeight = 0.66;
    private const double Depth = 0.2;

    public SvgText(XElement element)
    {
        Words = element.Value;
        Size = SvgPicture.Number(element, "font-size");
        var width = SvgPicture.Number(element, "textLength");
        var x = SvgPicture.Number(element, "x");
        Baseline = SvgPicture.Number(element, "y");
        Left = element.Attribute("text-anchor")?.Value switch { "middle" => x - width / 2, "end" => x - width, _ => x };
        Right = Left + width;
        Anchor = x;
    }

    public string Words { get; }

    public double Size { get; }

    public double Baseline { get; }

    public double Anchor { get; }

    public double Left { get; }

    public double Right { get; }

    public double Top => Baseline - CapHeight * Size;

    public double Bottom => Baseline + Depth * Size;

    /// <summary>Height of the tick that this number stands beside.</summary>
    public double MiddleOfDigits => Baseline - CapHeight * Size / 2;

    public bool Meets(SvgText other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"\"{Words}\" {Left:F1}–{Right:F1} × {Top:F1}–{Bottom:F1}");
}
