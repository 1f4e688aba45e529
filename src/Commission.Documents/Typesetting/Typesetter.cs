using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Markup;
using Commission.Documents.Media;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Commission.Documents.Typesetting;

/// <summary>Sets checked markup into a PDF document: flow, pages, drawing, structure, links and outline.</summary>
internal static class Typesetter
{
    /// <summary>Sets a document.</summary>
    /// <returns>The number of pages.</returns>
    public static int Set(PdfDocument document, XDocument markup, FlowContext context, PageFormat format, PageFurniture furniture)
    {
        var placed = FirstPage.Place(markup.Root!, context, format) ?? LastPage.Place(scale => FlowBuilder.Build(context with { FigureScale = scale }, markup.Root!, PageFormat.TextWidth, Look.BodyText), format, firstPage: 0);
        var pages = placed.Count == 0 ? 1 : placed[^1].Page + 1;
        var manager = UAManager.ForDocument(document);
        manager.SetDocumentLanguage(markup.Root!.Attribute("lang")?.Value ?? "en");
        using var ink = new Ink(document, manager.StructureBuilder, PagePlace.Of(placed, format));
        var outline = new OutlineWriter(document, format);
        var page = -1;
        foreach (var (slab, onPage, y, repeatsHead) in placed)
        {
            if (onPage != page)
            {
                if (page >= 0)
                    furniture.Draw(ink, format, page, pages);
                page = onPage;
                ink.BeginPage(format.Width, format.Height);
            }

            if (repeatsHead)
                slab.Head!.DrawAgain(ink, format.Left, y - slab.Head.Height);
            outline.Add(slab, ink.Page!, y);
            slab.DrawTagged(ink, format.Left, y);
        }

        if (page < 0)
            ink.BeginPage(format.Width, format.Height);
        furniture.Draw(ink, format, Math.Max(page, 0), pages);
        return pages;
    }
}

/// <summary>
/// A first section of class <c>one-page</c>. Its figures grow smaller, then it gives up what it marks with <c>give</c>, the lowest number first, until it fits;
/// what carries <c>instead</c> with the same number, there or further back, stands only then. Before a second thing is given up, figures and lines to sign on
/// draw together as far as they can. Its page numbers are written when everything behind it is placed.
/// </summary>
internal sealed class FirstPage
{
    private const double SmallFigure = 92;
    private const double LeastFigure = 80;
    private const double LeastSignature = 20;
    private const double Step = 12;

    private readonly XElement _section;
    private readonly XElement _rest;
    private readonly FlowContext _context;
    private readonly PageFormat _format;
    private readonly HashSet<string> _given = new(StringComparer.Ordinal);
    private double _smaller;
    private bool _isTight;

    private FirstPage(XElement section, XElement root, FlowContext context, PageFormat format)
    {
        _section = section;
        _rest = new XElement(root.Name, root.Attributes(), root.Elements().Where(element => element != section).Select(element => new XElement(element)));
        _context = context;
        _format = format;
    }

    /// <summary>Places a document that begins with such a section; null where it does not.</summary>
    public static List<PlacedSlab>? Place(XElement root, FlowContext context, PageFormat format) =>
        root.Elements().FirstOrDefault() is { Name.LocalName: "section" } section && MarkupClass.Has(section, "one-page") ? new FirstPage(section, root, context, format).Place() : null;

    private List<PlacedSlab> Place()
    {
        Fit();
        var behind = LastPage.Place(scale => Slabs(_rest, scale), _format, firstPage: 1);
        var page = Paginator.Place(Slabs(Numbered(PagePlace.Of(behind, _format))), _format, firstPage: 0);
        if (page is [.., { Page: > 0 and var more }])
        {
            // Texts beyond all measure: the page runs over, and everything else stands so much further back.
            behind = behind.ConvertAll(slab => slab with { Page = slab.Page + more });
            page = Paginator.Place(Slabs(Numbered(PagePlace.Of(behind, _format))), _format, firstPage: 0);
        }

        return [.. page, .. behind];
    }

    private void Fit()
    {
        var largest = _section.Descendants("figure").Select(HeightOf).DefaultIfEmpty(0).Max();
        var gives = _section.Descendants().Select(element => element.Attribute("give")?.Value).OfType<string>().Distinct(StringComparer.Ordinal).OrderBy(number => int.Parse(number, CultureInfo.InvariantCulture)).ToList();
        while (Stack.Height(Slabs(Numbered([]))) > _format.Floor - PageFormat.Top(0))
        {
            if (largest - _smaller > (_isTight ? LeastFigure : SmallFigure))
                _smaller += Step;
            else if (!_isTight && _given.Count > 0)
                _isTight = true;
            else if (gives.Find(number => !_given.Contains(number)) is { } next)
                _given.Add(next);
            else
                return;
        }
    }

    private IReadOnlyList<Slab> Slabs(XElement part, double figureScale = 1)
    {
        var edition = new XElement(part);
        foreach (var element in edition.Descendants().Where(element => (element.Attribute("give") is { } give && _given.Contains(give.Value)) || (element.Attribute("instead") is { } instead && !_given.Contains(instead.Value))).ToList())
            element.Remove();
        return FlowBuilder.Build(_context with { FigureScale = figureScale, SignatureRoom = _isTight ? LeastSignature : SignatureSlab.Room }, edition, PageFormat.TextWidth, Look.BodyText);
    }

    private XElement Numbered(Dictionary<string, PagePlace> places)
    {
        var section = new XElement(_section);
        foreach (var number in section.Descendants("pageref"))
            number.Value = places.TryGetValue(number.Attribute("href")!.Value[1..], out var place) ? (place.Page + 1).ToString(CultureInfo.InvariantCulture) : "1";
        foreach (var figure in section.Descendants("figure").Where(figure => figure.Attribute("height") is not null))
            figure.SetAttributeValue("height", Math.Max(HeightOf(figure) - _smaller, LeastFigure).ToString(CultureInfo.InvariantCulture));
        return new XElement("body", section);
    }

    private static double HeightOf(XElement figure) => figure.Attribute("height") is { } height ? double.Parse(height.Value, CultureInfo.InvariantCulture) : 0;
}

/// <summary>Sees to it that no page is begun for a few lines: figures and photos grow a little smaller where that saves the last one.</summary>
internal static class LastPage
{
    private const double FewLines = 0.34;
    private static readonly double[] Scales = [0.94, 0.88, 0.8, 0.72];

    /// <summary>Places a flow.</summary>
    /// <param name="flow">Its slabs, with figures and photos at a share of their height.</param>
    /// <param name="format">The paper.</param>
    /// <param name="firstPage">Number of the page they begin on, from 0.</param>
    public static List<PlacedSlab> Place(Func<double, IReadOnlyList<Slab>> flow, PageFormat format, int firstPage)
    {
        var placed = Paginator.Place(flow(1), format, firstPage);
        if (placed is not [.., var last] || last.Page == firstPage || Share(last, format) > FewLines)
            return placed;
        foreach (var scale in Scales)
        {
            var closer = Paginator.Place(flow(scale), format, firstPage);
            if (closer[^1].Page < last.Page)
                return closer;
        }

        return placed;
    }

    // How far down its page the last slab reaches.
    private static double Share(PlacedSlab last, PageFormat format) => (last.Y + last.Slab.Height - PageFormat.Top(last.Page)) / format.TextHeight;
}

/// <summary>Builds the outline from headings: sections open, what is below them folded.</summary>
internal sealed class OutlineWriter(PdfDocument document, PageFormat format)
{
    private PdfOutline? _section;

    public void Add(Slab slab, PdfPage page, double y)
    {
        if (slab.Outline is { } entry)
        {
            var parent = entry.Level > 2 && _section is not null ? _section.Outlines : document.Outlines;
            var outline = parent.Add(entry.Title, page, opened: false);
            outline.PageDestinationType = PdfPageDestinationType.Xyz;
            outline.Top = format.Height - y + 6;
            outline.Left = 0;
            if (entry.Level <= 2)
                _section = outline;
        }

        foreach (var (inner, top) in slab.Inside)
            Add(inner, page, y + top);
    }
}

/// <summary>What the flow needs to know beside the markup.</summary>
/// <param name="Media">Figures and photos of the record.</param>
/// <param name="PageHeight">Room for text on a page, in points.</param>
internal sealed record FlowContext(PageMedia Media, double PageHeight)
{
    /// <summary>Share of their height at which figures and photos are set.</summary>
    public double FigureScale { get; init; } = 1;

    /// <summary>Room above a line to sign on, in points.</summary>
    public double SignatureRoom { get; init; } = SignatureSlab.Room;
}
