using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Markup;
using Commission.Documents.Pictures;

namespace Commission.Documents.Typesetting;

/// <summary>Turns markup into slabs for one width. Containers side by side or in boxes have builders of their own.</summary>
internal sealed class FlowBuilder(FlowContext context, double width, TextStyle text, bool toTheRight = false)
{
    // Small text stands closer: there is more of it.
    private double Spacing => text.Size < Look.Body ? 0.12 : 0.22;

    private static readonly string[] Outcomes = ["accepted", "accepted-with-conditions", "not-accepted", "incomplete"];

    private readonly List<Slab> _slabs = [];
    private readonly List<TagStart> _opens = [];
    private readonly List<string> _anchors = [];
    private bool _break;

    /// <summary>Tallest row a page can hold under a repeated head.</summary>
    public double RowLimit => context.PageHeight * 0.75;

    /// <summary>The slabs so far.</summary>
    public IReadOnlyList<Slab> Slabs => _slabs;

    /// <summary>Builds the slabs of an element's content.</summary>
    public static IReadOnlyList<Slab> Build(FlowContext context, XElement parent, double width, TextStyle text, bool toTheRight = false)
    {
        var builder = new FlowBuilder(context, width, text, toTheRight);
        builder.Content(parent);
        builder.Finish();
        return builder.Slabs;
    }

    /// <summary>Adds a slab with whatever begins at it.</summary>
    public void Add(Slab slab)
    {
        slab.Opens.InsertRange(0, _opens);
        slab.Anchors.AddRange(_anchors);
        if (_break)
            slab.BreakBefore = true;
        _opens.Clear();
        _anchors.Clear();
        _break = false;
        _slabs.Add(slab);
    }

    /// <summary>Puts what an action adds into a structure element.</summary>
    public void Tagged(TagStart tag, Action add)
    {
        var before = _slabs.Count;
        _opens.Add(tag);
        add();
        if (_slabs.Count > before)
            _slabs[^1].Closes++;
        else
            _opens.Remove(tag);
    }

    /// <summary>Adds a paragraph.</summary>
    public void Paragraph(TextBlock block, string tag, ParagraphSetting set)
    {
        if (block.IsEmpty && set.Mark is null)
            return;
        var lines = block.Lines(width - set.Indent);

        // The mark of a list item opens the item's own body, which stands for the paragraph.
        if (set.Mark is null)
            Tagged(new TagStart(tag), AddLines);
        else
            AddLines();

        void AddLines()
        {
            for (var i = 0; i < lines.Count; i++)
            {
                var isFirst = i == 0;
                var isLast = i == lines.Count - 1;
                var shift = toTheRight ? width - set.Indent - lines[i].Width : 0;
                var slab = new LineSlab(lines[i], block.Leading, block.Size, set.Indent + shift)
                {
                    Mark = isFirst ? set.Mark : null,
                    SpaceBefore = isFirst ? set.Before : 0,
                    SpaceAfter = isLast ? set.After : 0,
                    Outline = isFirst ? set.Outline : null,

                    // Neither the first nor the last line of a paragraph stands alone on a page.
                    KeepWithNext = isLast ? set.KeepWithNext : isFirst || i == lines.Count - 2,
                };
                if (set.Mark is not null && isLast)
                    slab.Closes++;
                Add(slab);
            }
        }
    }

    private void Finish()
    {
        if (_anchors.Count > 0 || _break)
            Add(new EmptySlab());
    }

    private void Content(XElement parent)
    {
        foreach (var child in parent.Elements())
            Element(child);
    }

    private void Element(XElement element)
    {
        if (element.Attribute("id")?.Value is { } id)
            _anchors.Add(id);
        switch (element.Name.LocalName)
        {
            case "section":
                Section(element);
                break;
            case "div":
                Div(element);
                break;
            case "h1" or "h2" or "h3":
                Heading(element);
                break;
            case "p":
                // What stands in a paragraph of many is on the page on which it begins.
                _anchors.AddRange(element.Descendants().Select(inner => inner.Attribute("id")?.Value).OfType<string>());
                Paragraph(element);
                break;
            case "ul" or "ol":
                List(element, indent: 0);
                break;
            case "table":
                new TableBuilder(this, width, text).Build(element);
                break;
            case "figure":
                Figure(element);
                break;
            case "qr":
                var size = element.Attribute("width")?.Value is { } wanted && MarkupWidth.TryRead(wanted, out var read) ? read.Points(width) : Math.Min(width, 90);
                Add(new QrSlab(element.Attribute("data")!.Value, element.Attribute("alt")!.Value, size, toTheRight ? width - size : 0) { SpaceBefore = 2, SpaceAfter = 4 });
                break;
            case "aside":
                Box(element, MarkupClass.Has(element, "caution") ? BoxKind.Caution : BoxKind.Note);
                break;
            case "hr":
                Add(new RuleSlab(width, Look.Rule, 0.5) { SpaceBefore = 5, SpaceAfter = 5 });
                break;
            case "photo":
                Photo(element);
                break;
            case "sign":
                Add(new SignatureSlab(width, element.Attribute("field")!.Value, element.Attribute("alt")!.Value, context.SignatureRoom) { SpaceAfter = 2, KeepWithNext = true });
                break;
            case "page-break":
                _break = true;
                break;
        }
    }

    private void Section(XElement section)
    {
        if (MarkupClass.Has(section, "page"))
            _break = true;
        Tagged(new TagStart("Sect"), () =>
        {
            var before = _slabs.Count;
            if (MarkupClass.Has(section, "trace") && text.Size > Look.Small)
                Inner(section, Look.SmallText);
            else
                Content(section);
            if (MarkupClass.Has(section, "keep"))
                Keep(before);
        });
    }

    private void Inner(XElement parent, TextStyle style)
    {
        foreach (var slab in Build(context, parent, width, style, toTheRight))
            Add(slab);
    }

    private void Div(XElement div)
    {
        if (MarkupClass.Has(div, "columns"))
        {
            Columns(div);
        }
        else if (MarkupClass.Has(div, "outcome"))
        {
            Box(div, BoxKind.Outcome);
        }
        else
        {
            var before = _slabs.Count;
            Content(div);
            if (MarkupClass.Has(div, "keep"))
                Keep(before);
        }
    }

    private void Keep(int from)
    {
        for (var i = from; i < _slabs.Count - 1; i++)
            _slabs[i].KeepWithNext = true;
    }

    private void Heading(XElement heading)
    {
        var level = heading.Name.LocalName[1] - '0';
        var style = level switch { 1 => Look.Heading1, 2 => Look.Heading2, _ => text.Size < Look.Body ? Look.Heading3 with { Size = Look.Small } : Look.Heading3 };
        var block = InlineReader.Read(heading, style);
        if (block.IsEmpty)
            return;
        if (level == 2)
            Add(new RuleSlab(width, Look.Accent, 0.6) { SpaceBefore = 9, SpaceAfter = 2, KeepWithNext = true });
        Paragraph(block, "H" + heading.Attribute(HeadingLevels.Attribute)!.Value, new ParagraphSetting(level == 3 ? text.Size * 0.7 : 0, level == 3 ? 1.5 : 4) { KeepWithNext = true, Outline = new OutlineEntry(level, block.Text) });
    }

    private void Paragraph(XElement paragraph)
    {
        var style = MarkupClass.Has(paragraph, "lead") ? Look.LeadText
            : MarkupClass.Has(paragraph, "note") ? Look.NoteText
            : text;
        Paragraph(InlineReader.Read(paragraph, style), "P", new ParagraphSetting(style.Size * Spacing, style.Size * Spacing));
    }

    private void List(XElement list, double indent)
    {
        var isNumbered = list.Name.LocalName == "ol";
        var number = 0;
        Tagged(new TagStart("L"), () =>
        {
            foreach (var item in list.Elements("li"))
            {
                number++;
                if (item.Attribute("id")?.Value is { } id)
                    _anchors.Add(id);
                var mark = InlineReader.Plain(isNumbered ? number.ToString(CultureInfo.InvariantCulture) + "." : "–", text with { Color = Look.Quiet });
                Tagged(new TagStart("LI"), () =>
                {
                    Paragraph(InlineReader.Read(item, text), "P", new ParagraphSetting(text.Size * 0.12, text.Size * 0.12) { Indent = indent + 14, Mark = mark });
                    foreach (var child in item.Elements())
                    {
                        if (child.Name.LocalName is "ul" or "ol")
                            List(child, indent + 14);
                    }
                });
            }
        });
    }

    private void Columns(XElement columns)
    {
        var children = columns.Elements("div").ToList();
        const double Gap = 14;
        var standard = new MarkupWidth(100.0 / Math.Clamp(children.Count, 1, 3), IsShare: true);
        var row = new List<(XElement Div, double Share)>();
        var used = 0.0;
        foreach (var child in children)
        {
            var share = (child.Attribute("width")?.Value is { } text && MarkupWidth.TryRead(text, out var read) ? read : standard).Points(width) / width;
            if (row.Count > 0 && used + share > 1.005)
            {
                Row(row, Gap);
                row.Clear();
                used = 0;
            }

            row.Add((child, share));
            used += share;
        }

        if (row.Count > 0)
            Row(row, Gap);
    }

    private void Row(List<(XElement Div, double Share)> row, double gap)
    {
        var room = width - (gap * (row.Count - 1));
        var total = Math.Max(1, row.Sum(column => column.Share));
        if (row.Exists(column => column.Div.Descendants("table").Any(table => !new TableBuilder(this, room * column.Share / total, text).Fits(table))))
        {
            OneBelowTheOther(row);
            return;
        }

        var columns = new List<(double X, IReadOnlyList<Slab> Slabs)>();
        var x = 0.0;
        foreach (var (div, share) in row)
        {
            var columnWidth = room * share / total;
            if (div.Attribute("id")?.Value is { } id)
                _anchors.Add(id);
            columns.Add((x, ColumnContent(div, columnWidth)));
            x += columnWidth + gap;
        }

        if (columns.TrueForAll(column => column.Slabs.Count == 0))
            return;
        var slab = new ColumnsSlab(columns);
        if (slab.Height <= context.PageHeight)
        {
            Add(slab);
            return;
        }

        // Too tall to stand side by side on any page.
        OneBelowTheOther(row);
    }

    private void OneBelowTheOther(List<(XElement Div, double Share)> row)
    {
        foreach (var (div, _) in row)
        {
            if (div.Attribute("id")?.Value is { } id && !_anchors.Contains(id))
                _anchors.Add(id);
            Content(div);
        }
    }

    private IReadOnlyList<Slab> ColumnContent(XElement div, double columnWidth)
    {
        var builder = new FlowBuilder(context, columnWidth, text, MarkupClass.Has(div, "right"));
        if (MarkupClass.Has(div, "outcome"))
            builder.Box(div, BoxKind.Outcome);
        else
            builder.Content(div);
        builder.Finish();
        return builder.Slabs;
    }

    private void Box(XElement element, BoxKind kind)
    {
        var room = width - BoxSlab.Indent(kind) - BoxSlab.Padding;
        var style = kind == BoxKind.Outcome ? text : Look.SmallText;
        var inner = new FlowBuilder(context, room, style);
        if (HasText(element))
            inner.Paragraph(InlineReader.Read(element, style), "P", new ParagraphSetting(0, 2));
        inner.Content(element);
        inner.Finish();
        Tagged(new TagStart(kind == BoxKind.Outcome ? "Sect" : "Div"), () =>
        {
            for (var i = 0; i < inner.Slabs.Count; i++)
            {
                var above = i == 0 ? BoxSlab.Padding : Stack.Gap(inner.Slabs[i - 1], inner.Slabs[i]);
                var isLast = i == inner.Slabs.Count - 1;
                Add(new BoxSlab(inner.Slabs[i], kind, width, above, isLast ? BoxSlab.Padding : 0, i == 0)
                {
                    Outcome = Array.Find(Outcomes, name => MarkupClass.Has(element, name)) ?? "",
                    SpaceBefore = i == 0 ? 5 : 0,
                    SpaceAfter = isLast ? 6 : 0,
                });
            }
        });
    }

    private void Figure(XElement element)
    {
        var id = element.Attribute("data-plot")!.Value;
        var data = context.Media.Figures.Data(id);
        var figures = context.Media.Figures;
        var height = element.Attribute("height") is { } stated ? double.Parse(stated.Value, CultureInfo.InvariantCulture) : figures.Height(id, width);
        var figure = figures.Figure(id, width, height * context.FigureScale);
        var caption = MarkupClass.Has(element, "bare") ? InlineReader.Titled(data.Title.TrimEnd('.'), "", Look.NoteText) : element.Element("figcaption") is { } own ? InlineReader.Read(own, Look.NoteText) : InlineReader.Titled(data.Title.TrimEnd('.'), data.Caption, Look.NoteText);
        Add(new FigureSlab(figure, data.AltText) { SpaceBefore = 6, SpaceAfter = 2, KeepWithNext = !caption.IsEmpty });
        Paragraph(caption, "P", new ParagraphSetting(0, 6));
    }

    // As wide as there is room, and no higher than a photo taken across would be.
    private void Photo(XElement element)
    {
        if (context.Media.Photos.Photo(element.Attribute("file")!.Value) is not { } photo)
            return;
        var highest = element.Attribute("height") is { } height ? double.Parse(height.Value, CultureInfo.InvariantCulture) : width * 3 / 4;
        highest *= context.FigureScale;
        var shown = Math.Min(width, highest * photo.Proportion);
        Add(new PhotoSlab(photo, element.Attribute("alt")!.Value, shown, toTheRight ? width - shown : 0) { SpaceBefore = 4, SpaceAfter = 2, KeepWithNext = true });
    }

    private static bool HasText(XElement element) =>
        element.Nodes().Any(node => node is XText text ? !string.IsNullOrWhiteSpace(text.Value) : node is XElement child && MarkupElement.IsInline(child.Name.LocalName));
}

/// <summary>How a paragraph stands, in points.</summary>
/// <param name="Before">Space above.</param>
/// <param name="After">Space below.</param>
internal readonly record struct ParagraphSetting(double Before, double After)
{
    /// <summary>Room left of it.</summary>
    public double Indent { get; init; }

    /// <summary>The mark of a list item before it; null for none.</summary>
    public TextBlock? Mark { get; init; }

    /// <summary>True when no page may end after it.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Its entry in the outline; null for none.</summary>
    public OutlineEntry? Outline { get; init; }
}
