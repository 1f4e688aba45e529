using System.Xml.Linq;
using Commission.Documents.Plots;
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
        var slabs = FlowBuilder.Build(context, markup.Root!, PageFormat.TextWidth, Look.BodyText);
        var placed = Paginator.Place(slabs, format);
        var pages = placed.Count == 0 ? 1 : placed[^1].Page + 1;
        var manager = UAManager.ForDocument(document);
        manager.SetDocumentLanguage(markup.Root!.Attribute("lang")?.Value ?? "en");
        using var ink = new Ink(document, manager.StructureBuilder, Places(placed, format));
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

    private static Dictionary<string, PagePlace> Places(List<PlacedSlab> placed, PageFormat format)
    {
        var places = new Dictionary<string, PagePlace>(StringComparer.Ordinal);
        foreach (var (slab, page, y, _) in placed)
            Add(slab, page, y);
        return places;

        void Add(Slab slab, int page, double y)
        {
            foreach (var anchor in slab.Anchors)
                places[anchor] = new PagePlace(page, Math.Min(format.Height, format.Height - y + 10));
            foreach (var (inner, top) in slab.Inside)
                Add(inner, page, y + top);
        }
    }
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
/// <param name="Figures">Figures of the record.</param>
/// <param name="PageHeight">Room for text on a page, in points.</param>
internal sealed record FlowContext(FigureShelf Figures, double PageHeight);
