using System.Globalization;
using UglyToad.PdfPig.Content;

namespace Commission.Documents.Tests.Typesetting;

/// <summary>Finds words of a page that cover each other: the core of their lines, not the tips of their letters.</summary>
internal static class Overlaps
{
    public static List<string> In(Page page)
    {
        var words = page.GetWords().Where(word => word.Text.Length > 0).Select(Core).OrderByDescending(word => word.Top).ToList();
        var found = new List<string>();
        for (var i = 0; i < words.Count; i++)
        {
            for (var j = i + 1; j < words.Count && words[j].Top > words[i].Bottom; j++)
            {
                var a = words[i];
                var b = words[j];
                var across = Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left);
                var down = Math.Min(a.Top, b.Top) - Math.Max(a.Bottom, b.Bottom);
                if (across > 0.6 && down > 0.6)
                    found.Add(string.Create(CultureInfo.InvariantCulture, $"page {page.Number}: \"{a.Text}\" and \"{b.Text}\" at {a.Left:0}, {a.Top:0}"));
            }
        }

        return found;
    }

    private static (string Text, double Left, double Right, double Top, double Bottom) Core(Word word)
    {
        var first = word.Letters[0];
        var baseline = word.Letters.Min(letter => letter.StartBaseLine.Y);
        var left = word.Letters.Min(letter => Math.Min(letter.StartBaseLine.X, letter.EndBaseLine.X));
        var right = word.Letters.Max(letter => Math.Max(letter.StartBaseLine.X, letter.EndBaseLine.X));
        return (word.Text, left, right, baseline + (first.PointSize * 0.6), baseline);
    }
}
