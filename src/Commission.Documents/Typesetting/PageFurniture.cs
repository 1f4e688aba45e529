namespace Commission.Documents.Typesetting;

/// <summary>What stands at the edges of every page: the running head and the foot.</summary>
/// <param name="JobId">Job id, at the foot.</param>
/// <param name="Head">Running head from the second page on.</param>
/// <param name="Date">Date at the right of the running head.</param>
/// <param name="Digest">First 12 digits of the digest.</param>
/// <param name="Program">Program and version.</param>
internal sealed record PageFurniture(string JobId, string Head, string Date, string Digest, string Program)
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
        var number = InlineReader.Plain(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"page {page + 1} of {pages}"), Look.NoteText).Lines(200)[0];
        ink.Line(number, right - number.Width, foot);
        var seal = InlineReader.Plain(Digest.Length == 0 ? Program : $"digest {Digest} · {Program}", Look.NoteText).Lines(PageFormat.TextWidth)[0];
        ink.Line(seal, left + ((PageFormat.TextWidth - seal.Width) / 2), foot);
        ink.Line(Fitted(JobId, ((PageFormat.TextWidth - seal.Width) / 2) - 10), left, foot);
        ink.EndArtifact();
    }

    // One line only: what does not fit ends in an ellipsis.
    private static TextLine Fitted(string text, double room)
    {
        var block = InlineReader.Plain(text, Look.NoteText);
        if (block.NaturalWidth() <= room) return block.Lines(double.MaxValue)[0];
        var length = block.FittingLength(room - Look.NoteText.Face.Width("…", Look.NoteText.Size));
        return InlineReader.Plain(block.Text[..length] + "…", Look.NoteText).Lines(double.MaxValue)[0];
    }
}
