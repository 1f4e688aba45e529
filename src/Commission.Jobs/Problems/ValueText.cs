using System.Globalization;
using System.Text;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Problems;

/// <summary>What was written, as problems quote it.</summary>
internal static class ValueText
{
    /// <summary>Words in a row: <c>a, b or c</c>; a long row is cut.</summary>
    public static string OneOf(IReadOnlyList<string> words)
    {
        const int most = 14;
        if (words.Count > most)
            return string.Join(", ", words.Take(most)) + $" and {(words.Count - most).ToString(CultureInfo.InvariantCulture)} more";
        return words.Count == 1 ? words[0] : string.Join(", ", words.Take(words.Count - 1)) + " or " + words[^1];
    }

    /// <summary>A written value as it is quoted in a sentence, shortened.</summary>
    public static string Quoted(string text)
    {
        const int most = 60;
        var line = HiddenCharacters.Replaced(text.ReplaceLineEndings(" "));
        var shown = new StringBuilder();
        foreach (var rune in line.EnumerateRunes())
        {
            if (shown.Length >= most)
                return $"\"{shown}…\"";
            shown.Append(rune.ToString());
        }

        return $"\"{shown}\"";
    }

    /// <summary>One thing was written under two of its names.</summary>
    public static Problem TwoNames(SourceScalar second, string firstName, int firstLine) =>
        new(second.Location, $"\"{second.Text}\" and \"{firstName}\" in line {firstLine.ToString(CultureInfo.InvariantCulture)} are two names for one thing.", "",
            "Keep one of them.")
        { Code = "duplicate-key", Length = second.Length };
}
