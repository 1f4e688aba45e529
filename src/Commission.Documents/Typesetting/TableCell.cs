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

    /// <summary>
    /// Width of what stands before the decimal point of the value: of the last part of a compound such as 1 lb 0.3 oz; the end of the
    /// first whole number when there is no point; everything when there is no number.
    /// </summary>
    public double WidthBeforePoint()
    {
        var text = Block.Text;
        var value = text.IndexOf('±', StringComparison.Ordinal) is > 0 and var sign ? sign : text.Length;
        var whole = -1;
        for (var i = 0; i < value; i++)
        {
            if (!char.IsAsciiDigit(text[i])) continue;
            while (i < value && (char.IsAsciiDigit(text[i]) || text[i] == ',')) i++;
            if (i < value && text[i] == '.') return Block.WidthBefore(i);
            if (whole < 0) whole = i;
        }

        return whole < 0 ? Block.NaturalWidth() : Block.WidthBefore(whole);
    }
}
