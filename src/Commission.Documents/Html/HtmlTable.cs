using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Markup;

namespace Commission.Documents.Html;

/// <summary>
/// A table: head cells get their scope, numbers stand on their decimal point, and on a narrow screen a table whose rows have a name is
/// restacked into one block a row (its roles are written out, because restacking takes them away), any other scrolls in a frame that
/// the keyboard can reach.
/// </summary>
internal sealed class HtmlTable(HtmlText page, HtmlBody body)
{
    private const char FigureSpace = '\u2007';
    private const char PunctuationSpace = '\u2008';

    /// <summary>Writes a table.</summary>
    public void Write(XElement table)
    {
        var head = table.Element("thead");
        var rows = table.Descendants("tr").Where(row => row.Parent != head).ToArray();
        var isFacts = MarkupClass.Has(table, "facts");
        // A row without a name goes on with the one above it: the sentence below a check that failed.
        var stacks = head is not null && !isFacts && Array.Exists(rows, row => row.Elements("th").Any()) && Array.TrueForAll(rows, row => row.Elements("th").Count() <= 1);
        var labels = Labels(head);
        var pads = DecimalPads(rows);

        if (!isFacts && !stacks)
            page.Raw("<div class=\"scroll\" role=\"group\" tabindex=\"0\" aria-label=\"").Attribute(Name(table)).Raw("\">");

        page.Raw("<table").Raw(HtmlBody.Attributes(table, stacks ? "stack" : "")).Raw(stacks ? " role=\"table\">" : ">");
        if (table.Element("caption") is { } caption)
        {
            page.Raw("<caption>");
            body.Inside(caption);
            page.Raw("</caption>");
        }

        if (head is not null)
            Group(head, "thead", stacks, labels, pads);
        foreach (var part in table.Elements("tbody"))
            Group(part, "tbody", stacks, labels, pads);
        if (table.Element("tr") is not null)
        {
            page.Raw("<tbody>");
            foreach (var row in table.Elements("tr"))
                Row(row, false, stacks, labels, pads);
            page.Raw("</tbody>");
        }

        page.Raw("</table>");
        if (!isFacts && !stacks)
            page.Raw("</div>");
    }

    private void Group(XElement group, string name, bool stacks, IReadOnlyList<string> labels, IReadOnlyDictionary<XElement, string> pads)
    {
        page.Raw("<").Raw(name).Raw(stacks ? " role=\"rowgroup\">" : ">");
        foreach (var row in group.Elements("tr"))
            Row(row, string.Equals(name, "thead", StringComparison.Ordinal), stacks, labels, pads);
        page.Raw("</").Raw(name).Raw(">\n");
    }

    private void Row(XElement row, bool isHead, bool stacks, IReadOnlyList<string> labels, IReadOnlyDictionary<XElement, string> pads)
    {
        page.Raw("<tr").Raw(HtmlBody.Attributes(row)).Raw(stacks ? " role=\"row\">" : ">");
        var column = 0;
        foreach (var cell in row.Elements())
        {
            var span = int.TryParse(cell.Attribute("colspan")?.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var columns) ? columns : 1;
            Cell(cell, isHead, stacks, span == 1 && column < labels.Count ? labels[column] : "", pads.GetValueOrDefault(cell, ""));
            column += span;
        }

        page.Raw("</tr>\n");
    }

    private void Cell(XElement cell, bool isHead, bool stacks, string label, string pad)
    {
        // A head cell without words names nothing; to a screen reader it is an empty cell.
        var isHeader = string.Equals(cell.Name.LocalName, "th", StringComparison.Ordinal) && cell.Value.Trim().Length > 0;
        var name = isHeader ? "th" : "td";
        page.Raw("<").Raw(name).Raw(HtmlBody.Attributes(cell));
        if (isHeader)
            page.Raw(" scope=\"").Attribute(cell.Attribute("scope")?.Value ?? (isHead ? "col" : "row")).Raw("\"");
        if (stacks)
            page.Raw(" role=\"").Raw(isHeader ? isHead ? "columnheader" : "rowheader" : "cell").Raw("\"");
        if (stacks && !isHead && !isHeader && label.Length > 0)
            page.Raw(" data-label=\"").Attribute(label).Raw("\"");
        if (cell.Attribute("colspan")?.Value is { } span)
            page.Raw(" colspan=\"").Attribute(span).Raw("\"");
        if (cell.Attribute("width")?.Value is { } text && MarkupWidth.TryRead(text, out var width))
            page.Raw(string.Create(CultureInfo.InvariantCulture, $" style=\"width:{width.Amount:0.##}{(width.IsShare ? "%" : "pt")}\""));
        page.Raw(">");
        if (pad.Length > 0)
            page.Raw("<span class=\"pad\" aria-hidden=\"true\">").Raw(pad).Raw("</span>");
        if (MarkupClass.Verdict(cell) is { } verdict)
            body.Mark(verdict);
        body.Inside(cell);
        page.Raw("</").Raw(name).Raw(">");
    }

    private static List<string> Labels(XElement? head)
    {
        var labels = new List<string>();
        if (head?.Elements("tr").LastOrDefault() is not { } row)
            return labels;
        foreach (var cell in row.Elements())
        {
            var span = int.TryParse(cell.Attribute("colspan")?.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var columns) ? columns : 1;
            for (var i = 0; i < span; i++)
                labels.Add(cell.Value.Trim());
        }

        return labels;
    }

    // Space before each number of a decimal column, digit for digit, so that the points stand under each other.
    private static Dictionary<XElement, string> DecimalPads(XElement[] rows)
    {
        var columns = new SortedDictionary<int, List<(XElement Cell, string Before)>>();
        foreach (var row in rows)
        {
            var column = 0;
            foreach (var cell in row.Elements())
            {
                if (MarkupClass.Has(cell, "decimal") && BeforePoint(cell.Value) is { } before)
                {
                    if (!columns.TryGetValue(column, out var list))
                        columns.Add(column, list = []);
                    list.Add((cell, before));
                }

                column += int.TryParse(cell.Attribute("colspan")?.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var span) ? span : 1;
            }
        }

        var pads = new Dictionary<XElement, string>();
        foreach (var cells in columns.Values)
        {
            var digits = cells.Max(cell => cell.Before.Count(c => c != ','));
            var commas = cells.Max(cell => cell.Before.Count(c => c == ','));
            foreach (var (cell, before) in cells)
            {
                var own = before.Count(c => c == ',');
                var pad = new string(FigureSpace, digits - (before.Length - own)) + new string(PunctuationSpace, commas - own);
                if (pad.Length > 0)
                    pads.Add(cell, pad);
            }
        }

        return pads;
    }

    private static string? BeforePoint(string text)
    {
        var number = text.TrimStart();
        var end = 0;
        while (end < number.Length && (char.IsAsciiDigit(number[end]) || number[end] is ',' or '-' or '−' or '+'))
            end++;
        return end == 0 ? null : number[..end];
    }

    // What a screen reader says on entering the frame.
    private static string Name(XElement table)
    {
        if (table.Element("caption")?.Value is { Length: > 0 } caption)
            return "Table: " + caption.Trim();
        var heading = table.ElementsBeforeSelf().LastOrDefault(element => element.Name.LocalName is "h1" or "h2" or "h3") ?? table.Ancestors().Elements("h2").FirstOrDefault();
        return heading is null ? "Table" : "Table: " + heading.Value.Trim();
    }
}
