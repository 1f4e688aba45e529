using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Markup;

namespace Commission.Documents.Typesetting;

/// <summary>A cell as it was written: text measured, not yet set.</summary>
internal sealed class TableCell
{
    public TableCell(XElement element, TextStyle style, bool isInHead)
    {
        IsHeader = element.Name.LocalName == "th";
        Align = MarkupClass.Has(element, "right") ? TextAlign.Right
            : MarkupClass.Has(element, "center") ? TextAlign.Center
            : MarkupClass.Has(element, "decimal") ? TextAlign.Decimal
            : TextAlign.Left;
        Span = element.Attribute("colspan")?.Value is { } span ? int.Parse(span, CultureInfo.InvariantCulture) : 1;
        Width = element.Attribute("width")?.Value is { } width && MarkupWidth.TryRead(width, out var read) ? read : null;
        Verdict = MarkupClass.Verdict(element);
        Id = element.Attribute("id")?.Value;
        Block = InlineReader.Read(element, style);
        Scope = !IsHeader ? null : element.Attribute("scope")?.Value is "row" ? "Row" : isInHead ? "Column" : "Row";
    }

    public bool IsHeader { get; }

    public TextAlign Align { get; }

    public int Span { get; }

    public MarkupWidth? Width { get; }

    public string? Verdict { get; }

    public string? Id { get; }

    public string? Scope { get; }

    public TextBlock Block { get; }

    /// <summary>Width of what stands before the decimal point of the first number; the whole width when there is no number.</summary>
    public double WidthBeforePoint()
    {
        var text = Block.Text;
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsAsciiDigit(text[i])) continue;
            while (i < text.Length && (char.IsAsciiDigit(text[i]) || text[i] == ',')) i++;
            return Block.WidthBefore(i);
        }

        return Block.NaturalWidth();
    }
}
