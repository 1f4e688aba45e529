using System.Globalization;
using System.Text;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Problems;

/// <summary>What was written, as problems quote it.</summary>
internal static class ValueText
{
    // A longer row hides what is looked for.
    private const int MostWords = 14;

    private const int MostCharacters = 60;

    /// <summary>Keys or words in a row: <c>a, b or c</c>; a long row is cut.</summary>
    /// <param name="words">The keys or words.</param>
    public static Message AnyOf(IReadOnlyList<string> words) => words.Count > MostWords
        ? JobMessages.MoreWords(Values(words.Take(MostWords), ListJoin.Comma), words.Count - MostWords)
        : JobMessages.Words(Values(words, ListJoin.Or));

    /// <summary>Values as they stand in a file, in a row.</summary>
    /// <param name="values">The values.</param>
    /// <param name="join">How they are joined.</param>
    public static ListValue Values(IEnumerable<string> values, ListJoin join = ListJoin.Or) => new([.. values.Select(v => new NameValue(v))], join);

    /// <summary>Asks whether one of these keys or words was meant.</summary>
    /// <param name="words">The keys or words.</param>
    public static Message DidYouMean(params IEnumerable<string> words) => JobMessages.DidYouMean(new([.. words.Select(w => JobMessages.Quoted(new(w)))], ListJoin.Or));

    /// <summary>Words in a row: <c>a, b or c</c>; a long row is cut.</summary>
    public static string OneOf(IReadOnlyList<string> words)
    {
        const int most = 14;
        if (words.Count > most)
            return string.Join(", ", words.Take(most)) + $" and {(words.Count - most).ToString(CultureInfo.InvariantCulture)} more";
        return words.Count == 1 ? words[0] : string.Join(", ", words.Take(words.Count - 1)) + " or " + words[^1];
    }

    /// <summary>A written value as it is quoted in a sentence, shortened.</summary>
    public static string Quoted(string text) => $"\"{Short(text).Text}\"";

    /// <summary>A written value as a sentence quotes it: on one line, shortened, without the quotes.</summary>
    /// <param name="text">What is written.</param>
    public static TextValue Short(string text)
    {
        var line = HiddenCharacters.Replaced(text.ReplaceLineEndings(" "));
        var shown = new StringBuilder();
        foreach (var rune in line.EnumerateRunes())
        {
            if (shown.Length >= MostCharacters)
                return new($"{shown}…");
            shown.Append(rune.ToString());
        }

        return new(shown.ToString());
    }

    /// <summary>One thing was written under two of its names.</summary>
    public static Problem TwoNames(SourceScalar second, string firstName, int firstLine) =>
        new(second.Location, JobMessages.TwoNames(new(second.Text), new(firstName), firstLine), null, YamlMessages.TwiceNext)
        { Code = "duplicate-key", Length = second.Length };
}
