using UglyToad.PdfPig.Content;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

/// <summary>Holds every letter of a page against the margins.</summary>
internal static class Margins
{
    public static void Check(Page page)
    {
        var outside = page.Letters.Where(letter =>
            letter.StartBaseLine.X < 35 || letter.EndBaseLine.X > page.Width - 35 || letter.StartBaseLine.Y < 25 || letter.StartBaseLine.Y > page.Height - 25);
        Assert.Empty(outside.Select(letter => $"page {page.Number}: \"{letter.Value}\" at {letter.StartBaseLine.X:0}, {letter.StartBaseLine.Y:0}"));
    }
}
