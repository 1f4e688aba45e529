namespace Commission.Documents.Typesetting;

/// <summary>One line of a paragraph, with the mark of a list item when it is the item's first.</summary>
internal sealed class LineSlab : Slab
{
    private readonly TextLine _line;
    private readonly double _size;
    private readonly double _indent;

    public LineSlab(TextLine line, double leading, double size, double indent)
    {
        _line = line;
        _size = size;
        _indent = indent;
        Height = leading;
    }

    /// <summary>The mark of a list item, right-aligned before the text; null for none.</summary>
    public TextBlock? Mark { get; init; }

    public override void Draw(Ink ink, double x, double y)
    {
        var baseline = Baseline(y, Height, _size);
        if (Mark is not null)
        {
            var mark = Mark.Lines(double.MaxValue)[0];
            ink.Open(new TagStart("Lbl"));
            ink.Line(mark, x + _indent - mark.Width - 4, baseline);
            ink.Close();
            ink.Open(new TagStart("LBody"));
        }

        ink.Line(_line, x + _indent, baseline);
    }

    /// <summary>Where the letters stand in a line: what is left of the leading is shared above and below.</summary>
    public static double Baseline(double top, double leading, double size) => top + ((leading - size) / 2) + (size * 0.78);
}
