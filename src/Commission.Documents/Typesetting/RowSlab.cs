using Commission.Documents.Markup;
using Commission.Documents.Pictures;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>A row of a table, never split.</summary>
internal sealed class RowSlab : Slab
{
    /// <summary>Room above and below the text of a cell.</summary>
    public const double Padding = 1.5;

    private readonly IReadOnlyList<RowCell> _cells;
    private readonly double _width;
    private readonly Rgb? _rule;
    private readonly double _thickness;

    public RowSlab(IReadOnlyList<RowCell> cells, double width, Rgb? rule, double thickness, double padding = Padding)
    {
        _cells = cells;
        _width = width;
        _rule = rule;
        _thickness = thickness;
        CellPadding = padding;
        Height = (2 * padding) + (cells.Count == 0 ? 0 : cells.Max(cell => cell.Lines.Count * cell.Block.Leading));
    }

    private double CellPadding { get; }

    public override void Draw(Ink ink, double x, double y)
    {
        ink.BeginArtifact();
        DrawGround(ink, x, y);
        ink.EndArtifact();
        ink.Open(new TagStart("TR"));
        foreach (var cell in _cells)
        {
            ink.Open(cell.Tag);
            DrawText(ink, cell, x, y);
            ink.Close();
        }

        ink.Close();
    }

    /// <summary>Draws the row inside something that is already marked as an artifact.</summary>
    public void DrawUntagged(Ink ink, double x, double y)
    {
        DrawGround(ink, x, y);
        foreach (var cell in _cells)
            DrawText(ink, cell, x, y);
    }

    private void DrawGround(Ink ink, double x, double y)
    {
        foreach (var cell in _cells)
        {
            if (cell.Tint is { } tint)
                ink.Fill(new XRect(x + cell.Left, y + 0.4, cell.Width, Height - 0.8), tint);
        }

        if (_rule is { } rule)
            ink.Rule(x, y + Height, x + _width, rule, _thickness);
    }

    // What the limit allows is shaded, and bounded where it is limited; value and U lie on it.
    private static void DrawBar(Ink ink, LimitBar bar, XRect room)
    {
        double At(double place) => room.X + (LimitBar.Share(place) * room.Width);
        var middle = room.Y + (room.Height / 2);
        var (left, right) = (bar.LowerIsLimit ? At(0) : room.X, bar.UpperIsLimit ? At(1) : room.X + room.Width);
        ink.Fill(new XRect(left, middle - 3.2, right - left, 6.4), Look.Zone);
        if (bar.LowerIsLimit)
            ink.Fill(new XRect(left - 0.4, middle - 3.8, 0.8, 7.6), Look.Quiet);
        if (bar.UpperIsLimit)
            ink.Fill(new XRect(right - 0.4, middle - 3.8, 0.8, 7.6), Look.Quiet);
        if (bar is { Low: { } low, High: { } high })
            ink.Fill(new XRect(At(low), middle - 0.5, Math.Max(At(high) - At(low), 0.6), 1), Look.Ink);
        var at = At(bar.Value);
        if (bar.Value < LimitBar.From)
            ink.Solid([new XPoint(at, middle), new XPoint(at + 4, middle - 2.6), new XPoint(at + 4, middle + 2.6)], Look.Ink);
        else if (bar.Value > LimitBar.To)
            ink.Solid([new XPoint(at, middle), new XPoint(at - 4, middle - 2.6), new XPoint(at - 4, middle + 2.6)], Look.Ink);
        else
            ink.Solid([new XPoint(at - 2.2, middle), new XPoint(at, middle - 2.8), new XPoint(at + 2.2, middle), new XPoint(at, middle + 2.8)], Look.Ink);
    }

    private void DrawText(Ink ink, RowCell cell, double x, double y)
    {
        if (cell.Bar is { } bar)
            DrawBar(ink, bar, new XRect(x + cell.X, y, cell.Width - (2 * (cell.X - cell.Left)), Height));
        var top = y + CellPadding;
        for (var i = 0; i < cell.Lines.Count; i++)
        {
            ink.Line(cell.Lines[i], x + cell.X + cell.Shifts[i], LineSlab.Baseline(top, cell.Block.Leading, cell.Block.Size));
            top += cell.Block.Leading;
        }
    }
}

/// <summary>A cell as it is drawn.</summary>
/// <param name="X">Left edge of its text, from the left edge of the table.</param>
/// <param name="Left">Left edge of the cell.</param>
/// <param name="Width">Width of the cell.</param>
/// <param name="Lines">Its lines.</param>
/// <param name="Shifts">How far each line is moved to the right for its alignment.</param>
/// <param name="Block">The text, for size and leading.</param>
/// <param name="Tag">Structure element.</param>
/// <param name="Tint">Tint of the cell; null for none.</param>
internal sealed record RowCell(double X, double Left, double Width, IReadOnlyList<TextLine> Lines, double[] Shifts, TextBlock Block, TagStart Tag, Rgb? Tint)
{
    /// <summary>Drawn instead of text; null for none.</summary>
    public LimitBar? Bar { get; init; }
}

/// <summary>The head of a table, to be drawn again on the pages it runs over to.</summary>
internal sealed class TableHead
{
    /// <summary>Its rows.</summary>
    public List<RowSlab> Rows { get; } = [];

    /// <summary>Their height together.</summary>
    public double Height => Rows.Sum(row => row.Height);

    /// <summary>Draws the head as something that was already told.</summary>
    public void DrawAgain(Ink ink, double x, double y)
    {
        ink.BeginArtifact();
        foreach (var row in Rows)
        {
            row.DrawUntagged(ink, x, y);
            y += row.Height;
        }

        ink.EndArtifact();
    }
}
