using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Markup;
using Commission.Documents.Pictures;

namespace Commission.Documents.Typesetting;

/// <summary>
/// Turns a table into row slabs: columns as wide as they need, heads that repeat, numbers on the decimal point. No column is narrower than
/// its longest word: where all of them together are too wide, the type is set smaller, and then the table in parts one below the other.
/// </summary>
internal sealed class TableBuilder(FlowBuilder flow, double width, TextStyle text)
{
    private const double Gutter = 3.5;
    private static readonly double[] Sizes = [Look.Small, 8, 7.5, 7];

    private List<TableRow> _rows = [];
    private double[] _left = [];
    private double[] _widths = [];
    private (double Before, double After)[] _points = [];

    public void Build(XElement table)
    {
        var isFacts = MarkupClass.Has(table, "facts");
        var size = Array.FindIndex(Sizes, size => Read(table, size) && LeastWidths().Sum() <= width);
        if (_rows.Count == 0)
            return;
        var caption = table.Element("caption") is { } own ? InlineReader.Read(own, (text with { Size = Look.Small, Color = Look.Accent }).Strong) : null;
        if (size >= 0 || !Read(table, Look.Small) || !CanBeParted)
        {
            if (size < 0)
                Read(table, Sizes[^1]);
            Add(caption, isFacts);
            return;
        }

        var whole = _rows;
        foreach (var columns in TableColumns.Parts(LeastWidths(), width))
        {
            var isFirst = columns[^1] == columns.Count - 1;
            _rows = whole.ConvertAll(row => row.Of(columns, isFirst));
            Add(isFirst ? caption : null, isFacts);
        }
    }

    /// <summary>Whether a table can stand in the width at the usual size without a word being cut.</summary>
    public bool Fits(XElement table) => !Read(table, Look.Small) || LeastWidths().Sum() <= width;

    // A table of plain columns whose widths nobody asked for, and of more than the two that a part has at least.
    private bool CanBeParted => _rows[0].Cells.Count > 2 && _rows.TrueForAll(row => row.Cells.Count == _rows[0].Cells.Count && row.Cells.TrueForAll(cell => cell is { Span: 1, Width: null }));

    private int Count => _rows.Max(row => row.Cells.Sum(cell => cell.Span));

    private void Add(TextBlock? caption, bool isFacts)
    {
        var count = Count;
        MeasurePoints(count);
        _widths = TableColumns.Widths(_rows.ConvertAll(row => row.Cells), count, width, Gutter, _points);
        _left = new double[count + 1];
        for (var c = 0; c < count; c++)
            _left[c + 1] = _left[c] + _widths[c];
        flow.Tagged(new TagStart("Table"), () =>
        {
            if (caption is not null)
                flow.Paragraph(caption, "Caption", new ParagraphSetting(6, 1) { KeepWithNext = true });
            AddRows(isFacts);
        });
    }

    private double[] LeastWidths()
    {
        MeasurePoints(Count);
        return TableColumns.Least(_rows.ConvertAll(row => row.Cells), Count, width, Gutter, _points);
    }

    private bool Read(XElement table, double size)
    {
        _rows = [];
        ReadRows(table, size);
        return _rows.Count > 0;
    }

    private void ReadRows(XElement table, double size)
    {
        foreach (var child in table.Elements())
        {
            switch (child.Name.LocalName)
            {
                case "tr":
                    ReadRow(child, isHead: false, size);
                    break;
                case "thead" or "tbody":
                    foreach (var row in child.Elements("tr"))
                        ReadRow(row, child.Name.LocalName == "thead", size);
                    break;
            }
        }
    }

    private void ReadRow(XElement row, bool isHead, double size)
    {
        var plain = Look.SmallText with { Size = size };
        var cells = new List<TableCell>();
        foreach (var cell in row.Elements())
        {
            var style = isHead ? plain.Strong with { Color = Look.Quiet } : plain;
            cells.Add(new TableCell(cell, style, isHead));
        }

        if (cells.Count > 0)
            _rows.Add(new TableRow(cells, isHead, row.Attribute("id")?.Value));
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
        var lastOf = new RowSlab[_rows.Count];
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
                lastOf[r] = slab;
                id = null;
            }
        }

        KeepEnds();

        // A line that names a group, and a row that goes on with the one above it, stay with what they belong to.
        for (var r = 0; r < _rows.Count - 1; r++)
        {
            if (!_rows[r].IsHead && (_rows[r].NamesGroup || _rows[r + 1].GoesOn))
                lastOf[r].KeepWithNext = true;
        }

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

/// <summary>A row as it was written.</summary>
/// <param name="Cells">Its cells.</param>
/// <param name="IsHead">Whether it belongs to the head.</param>
/// <param name="Id">What links to it use; null for none.</param>
internal sealed record TableRow(List<TableCell> Cells, bool IsHead, string? Id)
{
    /// <summary>Whether it holds nothing but the name of the rows after it.</summary>
    public bool NamesGroup => Told is [{ IsHeader: true, Span: > 1 }];

    /// <summary>Whether it goes on with the row above: it has no name, and one text over several columns.</summary>
    public bool GoesOn => !IsHead && Cells.Count > 1 && Cells[0].IsEmpty && Told is [{ IsHeader: false, Span: > 1 }];

    private List<TableCell> Told => Cells.FindAll(cell => !cell.IsEmpty);

    /// <summary>The row of a table that shows some of the columns; links lead to the first of such tables.</summary>
    public TableRow Of(List<int> columns, bool isFirst) => this with { Cells = columns.ConvertAll(column => Cells[column]), Id = isFirst ? Id : null };
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

    public bool IsEmpty => Block.IsEmpty && Bar is null;

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
