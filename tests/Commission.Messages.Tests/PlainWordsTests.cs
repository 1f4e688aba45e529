using System.Text;
using Commission.Messages.Fluent;
using Xunit;

namespace Commission.Messages.Tests;

/// <summary>Sentences that are understood at first reading. At most 25 words: the rule of plain-language guides for public bodies (from memory).</summary>
public sealed class PlainWordsTests
{
    private const int MostWords = 25;

    private const char EndOfPoint = ';';

    private static readonly char[] Ends = ['.', '!', '?'];

    public static TheoryData<string> Files => [.. MessageCatalogue.BuiltInFiles];

    [Theory]
    [MemberData(nameof(Files))]
    public void No_sentence_has_more_than_25_words(string file)
    {
        var entries = FluentParser.Parse(file, MessageCatalogue.Embedded(file)!).Entries;
        var tooLong = entries.SelectMany(e => Texts(e.Pattern).SelectMany(t => Sentences(t, IsListOfPoints(file, e.Id))).Where(s => Words(s) > MostWords).Select(s => $"{file}:{e.Line}: {e.Id}: {Words(s)} words: {s}"));
        Assert.Empty(tooLong);
    }

    [Fact]
    public void Sentences_are_cut_at_their_ends_and_not_in_numbers_or_abbreviations()
    {
        const string Steps = "Pull down to 0.5 Torr; hold. Then go on.";
        Assert.Equal(["Pull down to 0.5 Torr; hold", "Then go on"], Sentences(Steps, isListOfPoints: false));
        Assert.Equal(["Pull down to 0.5 Torr", "hold", "Then go on"], Sentences(Steps, isListOfPoints: true));
        Assert.Equal(3, Words("Hold 24 h"));
        var pattern = FluentParser.Parse("m.ftl", "m = Break it { $n ->\n [one] once\n *[other] { $n } times\n } and hold.").Entries[0].Pattern;
        Assert.Equal(["Break it X and hold.", "once", "X times"], Texts(pattern).Select(t => t.Trim()));
    }

    // The text itself, a word for each gap, and the texts of every variant.
    private static IEnumerable<string> Texts(FluentPattern pattern)
    {
        var whole = new StringBuilder();
        var within = new List<string>();
        foreach (var element in pattern.Elements)
        {
            if (element is FluentText text)
            {
                whole.Append(text.Value);
                continue;
            }

            whole.Append('X');
            if (element is FluentSelect select)
                within.AddRange(select.Variants.SelectMany(v => Texts(v.Pattern)));
        }

        return within.Prepend(whole.ToString());
    }

    // Formulas, citations and digests of laws are rows of points with semicolons between them, not sentences.
    private static bool IsListOfPoints(string file, string id) =>
        Path.GetFileName(file) == "limit-notes.ftl" || id.EndsWith("-formula", StringComparison.Ordinal) || id.EndsWith("-source", StringComparison.Ordinal);

    private static IEnumerable<string> Sentences(string text, bool isListOfPoints)
    {
        var from = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if ((!Ends.Contains(text[i]) && !(isListOfPoints && text[i] == EndOfPoint)) || (i + 1 < text.Length && !char.IsWhiteSpace(text[i + 1])))
                continue;
            yield return text[from..i].Trim();
            from = i + 1;
        }

        if (text[from..].Trim() is { Length: > 0 } rest)
            yield return rest;
    }

    private static int Words(string sentence) => sentence.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Count(w => w.Any(char.IsLetterOrDigit));
}
