using Commission.Documents.Archive;
using Commission.Documents.Fonts;
using Commission.Documents.Media;
using Commission.Documents.Pictures;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using PdfSharp.UniversalAccessibility;

namespace Commission.Documents.Typesetting;

/// <summary>
/// What slabs draw with: PDFsharp's graphics of the current page together with the structure tree. Coordinates are points from the
/// upper left corner of the page. Page by page only: a finished page cannot be drawn on again.
/// </summary>
internal sealed class Ink : IDisposable
{
    private readonly PdfDocument _document;
    private readonly StructureBuilder _tags;
    private readonly IReadOnlyDictionary<string, PagePlace> _places;
    private readonly PenCase _pens = new();
    private XGraphics? _graphics;
    private int _artifacts;

    /// <param name="document">The document to draw in.</param>
    /// <param name="tags">Its structure.</param>
    /// <param name="places">Where each id stands, for links.</param>
    public Ink(PdfDocument document, StructureBuilder tags, IReadOnlyDictionary<string, PagePlace> places)
    {
        _document = document;
        _tags = tags;
        _places = places;
        EmbeddedFonts.Register();
    }

    /// <summary>The page being drawn.</summary>
    public PdfPage? Page { get; private set; }

    private XGraphics Graphics => _graphics ?? throw new InvalidOperationException("No page was begun.");

    /// <summary>Begins a page.</summary>
    public void BeginPage(double width, double height)
    {
        _graphics?.Dispose();
        Page = _document.AddPage();
        Page.Width = XUnit.FromPoint(width);
        Page.Height = XUnit.FromPoint(height);

        // Whoever moves through links by key goes in reading order.
        Page.Elements.SetName("/Tabs", "/S");
        _graphics = XGraphics.FromPdfPage(Page);
    }

    /// <summary>Begins a structure element.</summary>
    public void Open(TagStart tag)
    {
        switch (tag.Name)
        {
            case "Sect" or "Div":
                _tags.BeginGroupingElement(tag.Name);
                break;
            case "Lbl" or "Span":
                _tags.BeginInlineLevelElement(tag.Name);
                break;
            default:
                _tags.BeginBlockLevelElement(tag.Name);
                break;
        }

        if (tag.Scope is not null || tag.ColumnSpan > 1)
            AddTableAttributes(tag);
    }

    /// <summary>Begins a figure with its words for people who do not see it.</summary>
    public void OpenFigure(string alt, XRect place) =>
        _tags.BeginElement(PdfIllustrationElementTag.Figure, alt, Graphics.Transformer.WorldToDefaultPage(place));

    /// <summary>Puts an empty signature field on the page.</summary>
    /// <param name="name">Its name, unique within the document.</param>
    /// <param name="statement">Who signs, and what is attested.</param>
    /// <param name="place">Where.</param>
    public void SignatureField(string name, string statement, XRect place)
    {
        var widget = new SignatureWidget(_document, Page!, name, statement, new PdfRectangle(Graphics.Transformer.WorldToDefaultPage(place)));
        Page!.Annotations.Add(widget);
        _tags.BeginBlockLevelElement("Form");
        widget.Form = _tags.CurrentStructureElement;
        var reference = new PdfDictionary(_document);
        reference.Elements.SetName("/Type", "/OBJR");
        reference.Elements.SetReference("/Obj", widget);
        reference.Elements.SetReference("/Pg", Page);
        widget.Form.Elements.SetObject("/K", reference);
        widget.Form.Elements.SetString("/Alt", statement);
        _tags.End();
    }

    /// <summary>Ends the innermost structure element.</summary>
    public void Close() => _tags.End();

    /// <summary>Begins something that is decoration or was already told.</summary>
    public void BeginArtifact()
    {
        if (_artifacts++ == 0)
            _tags.BeginArtifact();
    }

    /// <summary>Ends it.</summary>
    public void EndArtifact()
    {
        if (--_artifacts == 0)
            _tags.End();
    }

    /// <summary>Draws a set line with its links.</summary>
    public void Line(TextLine line, double x, double baseline)
    {
        foreach (var piece in line.Pieces)
        {
            var style = piece.Run.Style;
            if (_artifacts == 0 && piece.Run.Link is { } link && _places.TryGetValue(link, out var target))
                LinkedText(piece, x + piece.X, baseline, target);
            else
                Graphics.DrawString(piece.Text, _pens.Font(style), _pens.Brush(style.Color), x + piece.X, baseline);
        }
    }

    /// <summary>Draws a text in one style.</summary>
    public void Text(string text, TextStyle style, double x, double baseline) =>
        Graphics.DrawString(text, _pens.Font(style), _pens.Brush(style.Color), x, baseline);

    /// <summary>Fills a rectangle.</summary>
    public void Fill(XRect place, Rgb color) => Graphics.DrawRectangle(_pens.Brush(color), place);

    /// <summary>Fills rectangles that do not overlap as one shape.</summary>
    public void Fill(IReadOnlyList<XRect> places, Rgb color)
    {
        var shape = new XGraphicsPath { FillMode = XFillMode.Winding };
        foreach (var place in places)
            shape.AddRectangle(place);
        Graphics.DrawPath(_pens.Brush(color), shape);
    }

    /// <summary>Draws a horizontal rule.</summary>
    public void Rule(double x1, double y, double x2, Rgb color, double thickness) =>
        Graphics.DrawRectangle(_pens.Brush(color), new XRect(x1, y - (thickness / 2), x2 - x1, thickness));

    /// <summary>Fills a closed shape.</summary>
    public void Solid(XPoint[] corners, Rgb color) => Graphics.DrawPolygon(_pens.Brush(color), corners, XFillMode.Winding);

    /// <summary>Draws a closed outline.</summary>
    public void Outline(XPoint[] corners, Rgb color, double thickness) =>
        Graphics.DrawPolygon(_pens.Pen(new Stroke(color, thickness)), corners);

    /// <summary>Draws a figure.</summary>
    public void Picture(Picture picture, double x, double y)
    {
        var state = Graphics.Save();
        Graphics.TranslateTransform(x, y);
        new PicturePainter(Graphics, _pens).Draw(picture.Shapes);
        Graphics.Restore(state);
    }

    /// <summary>Draws a photo upright.</summary>
    public void Photo(EmbeddedPhoto photo, XRect place)
    {
        // The stored picture lies with its upper left corner at the origin; turned and mirrored it lies in the place (EXIF 2.32, tag 274).
        var (width, height) = photo.IsAcross ? (place.Height, place.Width) : (place.Width, place.Height);
        var turn = photo.Orientation switch
        {
            2 => new XMatrix(-1, 0, 0, 1, width, 0),
            3 => new XMatrix(-1, 0, 0, -1, width, height),
            4 => new XMatrix(1, 0, 0, -1, 0, height),
            5 => new XMatrix(0, 1, 1, 0, 0, 0),
            6 => new XMatrix(0, 1, -1, 0, height, 0),
            7 => new XMatrix(0, -1, -1, 0, height, width),
            8 => new XMatrix(0, -1, 1, 0, 0, width),
            _ => new XMatrix(1, 0, 0, 1, 0, 0),
        };
        var state = Graphics.Save();
        Graphics.TranslateTransform(place.X, place.Y);
        Graphics.MultiplyTransform(turn);
        using var image = XImage.FromStream(new MemoryStream(photo.Jpeg.ToArray()));
        Graphics.DrawImage(image, 0, 0, width, height);
        Graphics.Restore(state);
    }

    public void Dispose() => _graphics?.Dispose();

    private void LinkedText(TextPiece piece, double x, double baseline, PagePlace target)
    {
        var style = piece.Run.Style;
        var area = new XRect(x, baseline - (style.Size * 0.8), piece.Width, style.Size * 1.05);
        var link = PdfLinkAnnotation.CreateDocumentLink(
            new PdfRectangle(Graphics.Transformer.WorldToDefaultPage(area)), target.Page + 1, new XPoint(0, target.TopFromBelow));

        // Printed or not, a link must be allowed to print (PDF/A), the reader needs no frame around it,
        // and a clock and a random name have no place in a file that must come out the same again.
        link.Elements.SetInteger("/F", 4);
        link.Elements.SetString("/Contents", piece.Text);
        link.Elements.Remove("/M");
        link.Elements.Remove("/NM");
        link.Elements.SetObject("/Border", new PdfArray(_document, new PdfInteger(0), new PdfInteger(0), new PdfInteger(0)));
        _tags.BeginElement(link, piece.Text);
        Graphics.DrawString(piece.Text, _pens.Font(style), _pens.Brush(style.Color), x, baseline);
        _tags.End();
    }

    private void AddTableAttributes(TagStart tag)
    {
        var attributes = new PdfDictionary(_document);
        attributes.Elements.SetName("/O", "/Table");
        if (tag.Scope is not null)
            attributes.Elements.SetName("/Scope", "/" + tag.Scope);
        if (tag.ColumnSpan > 1)
            attributes.Elements.SetInteger("/ColSpan", tag.ColumnSpan);
        _tags.CurrentStructureElement.Elements["/A"] = attributes;
    }
}

/// <summary>The fonts, brushes and pens of one document, each made once.</summary>
internal sealed class PenCase
{
    private static readonly XPdfFontOptions Unicode = new(PdfFontEncoding.Unicode);

    private readonly Dictionary<(FontFace Face, double Size), XFont> _fonts = [];
    private readonly Dictionary<Rgb, XSolidBrush> _brushes = [];
    private readonly Dictionary<Stroke, XPen> _pens = [];

    public XFont Font(TextStyle style)
    {
        if (_fonts.TryGetValue((style.Face, style.Size), out var font))
            return font;
        var look = style.Face == FontFace.SemiBold ? XFontStyleEx.Bold : style.Face == FontFace.Italic ? XFontStyleEx.Italic : XFontStyleEx.Regular;
        font = new XFont(EmbeddedFonts.Family, style.Size, look, Unicode);
        _fonts.Add((style.Face, style.Size), font);
        return font;
    }

    public XSolidBrush Brush(Rgb color)
    {
        if (_brushes.TryGetValue(color, out var brush))
            return brush;
        brush = new XSolidBrush(Color(color));
        _brushes.Add(color, brush);
        return brush;
    }

    public XPen Pen(Stroke stroke)
    {
        if (_pens.TryGetValue(stroke, out var pen))
            return pen;
        pen = new XPen(Color(stroke.Color), stroke.Width) { LineJoin = XLineJoin.Round };
        if (stroke.Dash is { } dash)
        {
            // PDFsharp counts dashes in widths of the pen.
            var pattern = dash.Lengths.ToArray();
            for (var i = 0; i < pattern.Length; i++)
                pattern[i] /= stroke.Width;
            pen.DashPattern = pattern;
        }

        _pens.Add(stroke, pen);
        return pen;
    }

    private static XColor Color(Rgb color) => XColor.FromArgb((color.Value >> 16) & 0xFF, (color.Value >> 8) & 0xFF, color.Value & 0xFF);
}
