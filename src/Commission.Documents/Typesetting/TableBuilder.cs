using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Markup;
using Commission.Documents.Pictures;

namespace Commission.Documents.Typesetting;

/// <summary>Turns a table into row slabs: columns as wide as they need, heads that repeat, numbers on the decimal point.</summary>
internal sealed class TableBuilder(FlowBuilder flow, double width, TextStyle text)
{
    private const double Gutter = 3.5;

    private readonly List<(List<TableCell> Cells, bool IsHead, string? Id)> _rows = [];
    private double[] _left = [];
    private double[] _widths = [];
    private (double Before, double After)[] _points = [];

    public void Build(XElement table)
    {
        var isFacts = MarkupClass.Has(table, "facts");
        Read(table);
        if (_rows.Count == 0)
            return;
        var count = _rows.Max(row => row.Cells.Sum(cell => cell.Span));
        MeasurePoints(count);
        _widths = TableColumns.Widths(_rows.ConvertAll(row => row.Cells), count, width, Gutter, _points);
        _left = new double[count + 1];
        for (var c = 0; c < count; c++)
            _left[c + 1] = _left[c] + _widths[c];
        flow.Tagged(new TagStart("Table"), () =>
        {
            if (table.Element("caption") is { } caption)
                flow.Paragraph(InlineReader.Read(caption, (text with { Size = Look.Small, Color = Look.Accent }).Strong), "Caption", new ParagraphSetting(6, 1) { KeepWithNext = true });
            AddRows(isFacts);
        });
    }

    private void Read(XElement table)
    {
        foreach (var child in table.Elements())
        {
            switch (child.Name.LocalName)
            {
                case "tr":
                    ReadRow(child, isHead: false);
                    break;
                case "thead" or "tbody":
                    foreach (var row in child.Elements("tr"))
                        ReadRow(row, child.Name.LocalName == "thead");
                    break;
            }
        }
    }

    private void ReadRow(XElement row, bool isHead)
    {
        var plain = Look.SmallText;
        var cells = new List<TableCell>();
        foreach (var cell in row.Elements())
        {
            var style = isHead ? plain.Strong with { Color = Look.Quiet } : plain;
            cells.Add(new TableCell(cell, style, isHead));
        }

        if (cells.Count > 0)
            _rows.Add((cells, isHead, row.Attribute("id")?.Value));
    }

    private void MeasurePoints(int count)
    {
        _points = new (double, double)[count];
        foreach (var (cells, isHead, _) in _rows)
        {
            if (isHead)
                continue;
            var column = 0;
            foreach (var cell in cells)
            {
                if (cell.Align == TextAlign.Decimal && cell.Span == 1)
                {
                    var before = cell.WidthBeforePoint();
                    _points[column] = (Math.Max(_points[column].Before, before), Math.Max(_points[column].After, cell.Block.NaturalWidth() - before));
                }

                column += cell.Span;
            }
        }
    }

    private void AddRows(bool isFacts)
    {
        var head = new TableHead();
        var bodyRows = _rows.Count(row => !row.IsHead);
        for (var r = 0; r < _rows.Count; r++)
        {
            var (cells, isHead, id) = _rows[r];
            var isLastOfHead = isHead && (r + 1 == _rows.Count || !_rows[r + 1].IsHead);
            var rule = isFacts ? (Rgb?)null : isLastOfHead ? Look.Accent : isHead ? null : Look.Hair;
            var set = SetCells(cells);
            foreach (var part in Parts(set, flow.RowLimit))
            {
                var slab = new RowSlab(part, width, rule, isLastOfHead ? 0.8 : 0.4, isFacts ? 0.6 : RowSlab.Padding)
                {
                    Head = isHead || head.Rows.Count == 0 ? null : head,
                    KeepWithNext = isHead && bodyRows > 0,
                    SpaceBefore = r == 0 ? 3 : 0,
                    SpaceAfter = r == _rows.Count - 1 ? 6 : 0,
                };
                if (id is not null)
                    slab.Anchors.Add(id);
                foreach (var cell in cells)
                {
                    if (cell.Id is not null)
                        slab.Anchors.Add(cell.Id);
                }

                if (isHead)
                    head.Rows.Add(slab);
                flow.Add(slab);
                id = null;
            }
        }

        KeepEnds();

        // A head and one row at the foot of a page, or one row alone at the top of the next, read badly.
        void KeepEnds()
        {
            var rows = flow.Slabs.Skip(flow.Slabs.Count - _rows.Count).OfType<RowSlab>().Where(row => !head.Rows.Contains(row)).ToList();
            if (rows.Count < 2)
                return;
            rows[0].KeepWithNext = true;
            rows[^2].KeepWithNext = true;
        }
    }

    private List<RowCell> SetCells(List<TableCell> cells)
    {
        var set = new List<RowCell>(cells.Count);
        var column = 0;
        foreach (var cell in cells)
        {
            var last = Math.Min(column + cell.Span, _widths.Length);
            if (column >= last)
                break;
            var left = _left[column];
            var full = _left[last] - left;
            var room = full - (2 * Gutter);
            var lines = cell.Block.IsEmpty ? [] : cell.Block.Lines(Math.Max(room, 4));
            var shifts = new double[lines.Count];
            for (var i = 0; i < lines.Count; i++)
                shifts[i] = Shift(cell, lines[i], lines.Count, room, column);
            set.Add(new RowCell(left + Gutter, left, full, lines, shifts, cell.Block, new TagStart(cell.IsHeader ? "TH" : "TD", cell.Scope, cell.Span), cell.Verdict is null ? null : Look.VerdictTint(cell.Verdict)) { Bar = cell.Bar });
            column = last;
        }

        return set;
    }

    private double Shift(TableCell cell, TextLine line, int lines, double room, int column) => cell.Align switch
    {
        TextAlign.Right => room - line.Width,
        TextAlign.Center => (room - line.Width) / 2,
        TextAlign.Decimal when cell.Scope == "Column" || lines > 1 || _points[column] == default => room - line.Width,
        TextAlign.Decimal => Math.Max(0, room - _points[column].After - cell.WidthBeforePoint()),
        _ => 0,
    };

    // A row that no page could hold is cut into rows of whole lines; every other row stays whole.
    private static IEnumerable<List<RowCell>> Parts(List<RowCell> cells, double limit)
    {
        var tallest = cells.Count == 0 ? 0 : cells.Max(cell => cell.Lines.Count * cell.Block.Leading);
        if (tallest + (2 * RowSlab.Padding) <= limit)
        {
            yield return cells;
            yield break;
        }

        var lines = Math.Max(1, (int)((limit - (2 * RowSlab.Padding)) / cells.Max(cell => cell.Block.Leading)));
        var longest = cells.Max(cell => cell.Lines.Count);
        for (var from = 0; from < longest; from += lines)
        {
            var start = from;
            yield return cells.ConvertAll(cell => cell with
            {
                Lines = [.. cell.Lines.Skip(start).Take(lines)],
                Shifts = [.. cell.Shifts.Skip(start).Take(lines)],
            });
        }
    }
}

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
        Bar = LimitBar.In(element);
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

    /// <summary>Drawn instead of text; null for none.</summary>
    public LimitBar? Bar { get; }

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
            if (!char.IsAsciiDigit(text[i]))
                continue;
            while (i < value && (char.IsAsciiDigit(text[i]) || text[i] == ','))
                i++;
            if (i < value && text[i] == '.')
                return Block.WidthBefore(i);
            if (whole < 0)
                whole = i;
        }

        return whole < 0 ? Block.NaturalWidth() : Block.WidthBefore(whole);
    }
}

/// <summary>How the text of a cell stands.</summary>
internal enum TextAlign
{
    /// <summary>From the left.</summary>
    Left,

    /// <summary>Against the right edge.</summary>
    Right,

    /// <summary>In the middle.</summary>
    Center,

    /// <summary>On the decimal point of its column.</summary>
    Decimal,
}
