using System.Globalization;
using System.Text;

namespace Commission.Source;

/// <summary>Characters that a reader does not see, or that make him see something else than what is written.</summary>
public static class HiddenCharacters
{
    /// <summary>What stands for a character that is not shown.</summary>
    public const char Shown = '?';

    /// <summary>Whether a character turns the direction of what follows: embeddings, overrides and isolates of Unicode's bidirectional algorithm (UAX 9).</summary>
    /// <param name="character">The character.</param>
    /// <returns>True when it does.</returns>
    public static bool TurnsDirection(char character) => character is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>Whether a text has a character that can be seen.</summary>
    /// <param name="text">The text.</param>
    /// <returns>False when it is white space, marks without a letter and characters without a shape.</returns>
    public static bool CanBeSeen(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (var rune in text.EnumerateRunes())
        {
            if (!IsBlank(rune))
                return true;
        }

        return false;
    }

    /// <summary>Whether a text has a character without a shape of its own: joiners, directional marks, zero-width space, soft hyphen.</summary>
    /// <param name="text">The text.</param>
    /// <returns>True when it has one.</returns>
    public static bool HasShapeless(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format || IsFiller(rune))
                return true;
        }

        return false;
    }

    /// <summary>A text as it may be shown on a terminal: control characters, line separators, and characters that are not seen or turn the direction, become question marks.</summary>
    /// <param name="text">The text.</param>
    /// <returns>A text of the same length.</returns>
    public static string Replaced(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return string.Create(text.Length, text, (span, source) =>
        {
            for (var i = 0; i < span.Length; i++)
                span[i] = MustNotBeShown(source[i]) ? Shown : source[i];
        });
    }

    // Joiners are left: names and signs are written with them.
    private static bool MustNotBeShown(char character) =>
        char.IsControl(character) || TurnsDirection(character) || character is '\u200B' or '\u200E' or '\u200F' or '\u061C' or '\u2028' or '\u2029' or '\u2060' or '\uFEFF';

    private static bool IsBlank(Rune rune) => Rune.IsWhiteSpace(rune) || IsFiller(rune) || Rune.GetUnicodeCategory(rune) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.OtherNotAssigned or UnicodeCategory.Surrogate;

    // Letters and signs that Unicode calls so and that have no shape: Hangul fillers, the empty Braille pattern.
    private static bool IsFiller(Rune rune) => rune.Value is 0x115F or 0x1160 or 0x3164 or 0xFFA0 or 0x2800;
}
