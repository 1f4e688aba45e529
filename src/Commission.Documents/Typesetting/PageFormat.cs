using Commission.Documents.Pictures;

namespace Commission.Documents.Typesetting;

/// <summary>Size of the paper and of the room for text, in points. The text is 7.1 in wide on both papers.</summary>
/// <param name="Width">Width of the paper.</param>
/// <param name="Height">Height of the paper.</param>
internal sealed record PageFormat(double Width, double Height)
{
    /// <summary>Width of the text.</summary>
    public const double TextWidth = PictureSize.FullWidth;

    private const double FirstTop = 40;
    private const double LaterTop = 49;
    private const double Bottom = 44;

    public static PageFormat Letter { get; } = new(612, 792);

    public static PageFormat A4 { get; } = new(595.28, 841.89);

    /// <summary>Left edge of the text.</summary>
    public double Left => (Width - TextWidth) / 2;

    /// <summary>Lower edge of the text.</summary>
    public double Floor => Height - Bottom;

    /// <summary>Height of the text on a page that is not the first.</summary>
    public double TextHeight => Floor - LaterTop;

    public static PageFormat Of(string paper) => paper == "a4" ? A4 : Letter;

    /// <summary>Upper edge of the text; the first page has no running head.</summary>
    public static double Top(int page) => page == 0 ? FirstTop : LaterTop;
}

/// <summary>Where something stands in the finished document.</summary>
/// <param name="Page">Page, from 0.</param>
/// <param name="TopFromBelow">Height of its upper edge above the lower edge of the page, as PDF counts.</param>
internal readonly record struct PagePlace(int Page, double TopFromBelow)
{
    /// <summary>The place of every id.</summary>
    /// <param name="placed">What stands where.</param>
    /// <param name="format">The paper.</param>
    public static Dictionary<string, PagePlace> Of(List<PlacedSlab> placed, PageFormat format)
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

/// <summary>What stands at the edges of every page: the running head and the foot.</summary>
/// <param name="Identity">Job id, revision and day of issue, at the foot.</param>
/// <param name="Head">Running head from the second page on.</param>
/// <param name="Date">Date at the right of the running head.</param>
/// <param name="Seal">Digest and program, in the middle of the foot.</param>
/// <param name="PageOf">Which page of how many, from its number and theirs.</param>
internal sealed record PageFurniture(string Identity, string Head, string Date, string Seal, Func<int, int, string> PageOf)
{
    public void Draw(Ink ink, PageFormat format, int page, int pages)
    {
        ink.BeginArtifact();
        var left = format.Left;
        var right = format.Left + PageFormat.TextWidth;
        if (page > 0)
        {
            var date = InlineReader.Plain(Date, Look.NoteText).Lines(200)[0];
            ink.Line(Fitted(Head, PageFormat.TextWidth - date.Width - 20), left, 36);
            ink.Line(date, right - date.Width, 36);
            ink.Rule(left, 42, right, Look.Rule, 0.5);
        }

        var foot = format.Height - 30;
        ink.Rule(left, foot - 11, right, Look.Rule, 0.5);
        var number = InlineReader.Plain(PageOf(page + 1, pages), Look.NoteText).Lines(200)[0];
        ink.Line(number, right - number.Width, foot);
        var seal = InlineReader.Plain(Seal, Look.NoteText).Lines(PageFormat.TextWidth)[0];
        ink.Line(seal, left + ((PageFormat.TextWidth - seal.Width) / 2), foot);
        ink.Line(Fitted(Identity, ((PageFormat.TextWidth - seal.Width) / 2) - 10), left, foot);
        ink.EndArtifact();
    }

    // One line only: what does not fit ends in an ellipsis.
    private static TextLine Fitted(string text, double room)
    {
        var block = InlineReader.Plain(text, Look.NoteText);
        if (block.NaturalWidth() <= room)
            return block.Lines(double.MaxValue)[0];
        var length = block.FittingLength(room - Look.NoteText.Face.Width("…", Look.NoteText.Size));
        return InlineReader.Plain(block.Text[..length] + "…", Look.NoteText).Lines(double.MaxValue)[0];
    }
}
