using System.Text;

namespace Commission.Jobs.Logs;

/// <summary>One word of a heading.</summary>
/// <param name="Text">The word as written.</param>
/// <param name="Before">What stands between it and the word before; empty inside a word that was cut at a capital.</param>
/// <param name="Group">Number of the bracket it stands in, counted from 1; 0 outside brackets.</param>
internal readonly record struct LogWord(string Text, string Before, int Group)
{
    public string Lower { get; } = Text.ToLowerInvariant();

    /// <summary>Whether it goes on a word that was cut at a capital.</summary>
    public bool IsJoined => Before.Length == 0;

    public bool FollowsSlash => Before.Contains('/', StringComparison.Ordinal);

    /// <summary>Whether it is nothing but digits, also with what makes a factor of them: 10, x10, 10^.</summary>
    public bool IsNumber => Lower.TrimStart('x', '×', '*').TrimEnd('^').AsSpan() is { Length: > 0 } digits && digits.IndexOfAnyExceptInRange('0', '9') < 0;
}

/// <summary>Cuts a heading into words: at spaces, underscores, slashes, brackets and other marks, and at capitals (vacuumPa, ElapsedSec).</summary>
internal static class LogWords
{
    public static List<LogWord> Of(string heading)
    {
        var words = new List<LogWord>();
        var (word, between) = (new StringBuilder(), new StringBuilder(" "));
        var (depth, groups) = (0, 0);

        void End()
        {
            if (word.Length == 0)
                return;
            words.Add(new LogWord(word.ToString(), between.ToString(), depth > 0 ? groups : 0));
            word.Clear();
            between.Clear();
        }

        for (var i = 0; i < heading.Length; i++)
        {
            var c = heading[i];
            if (IsPartOfWord(c))
            {
                if (IsCut(heading, i))
                    End();
                word.Append(c);
                continue;
            }

            End();
            between.Append(c);
            if (c is '(' or '[' or '{')
                groups += depth++ == 0 ? 1 : 0;
            else if (c is ')' or ']' or '}' && depth > 0)
                depth--;
        }

        End();
        return words;
    }

    /// <summary>Whether the numbers below are to be multiplied: x10, 10^-3, ×1000, *10.</summary>
    public static bool HaveFactor(List<LogWord> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            var word = words[i];
            if (word.Text.EndsWith('^') || (word.IsNumber && (!char.IsAsciiDigit(word.Text[0]) || word.Before.Contains('*', StringComparison.Ordinal) || (i > 0 && words[i - 1].Lower is "x" or "×" or "times"))))
                return true;
        }

        return false;
    }

    private static bool IsPartOfWord(char c) => char.IsLetterOrDigit(c) || c is '°' or 'º' or '%' or '#' or '"' or '\'' or '^' or '²' or '³' or '×' or '∆' or '\u2103' or '\u2109';

    // vacuum|Pa, PSI|Gauge.
    private static bool IsCut(string text, int i) =>
        i > 0 && char.IsUpper(text[i]) && (char.IsLower(text[i - 1]) || (char.IsUpper(text[i - 1]) && i + 1 < text.Length && char.IsLower(text[i + 1])));
}
