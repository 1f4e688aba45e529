using PdfSharp.Pdf;

namespace Commission.Documents.Typesetting;

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
            if (entry.Level <= 2) _section = outline;
        }

        foreach (var (inner, top) in slab.Inside) Add(inner, page, y + top);
    }
}
