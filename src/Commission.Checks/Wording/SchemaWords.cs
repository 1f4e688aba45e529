using System.Text;
using Commission.Messages;

namespace Commission.Checks.Wording;

/// <summary>The words of the job's lists (<c>new installation</c>, <c>TXV</c>) as messages: the file has the English word, the record that of its language.</summary>
internal static class SchemaWords
{
    private const string File = "words";

    /// <summary>The word of a member.</summary>
    /// <typeparam name="T">The list.</typeparam>
    /// <param name="word">The member.</param>
    public static Message Of<T>(T word)
        where T : struct, Enum => Message.Of(File, $"{Kebab(typeof(T).Name)}-{Kebab(word.ToString())}", []);

    // "RTDClassA" is rtd-class-a: a new word begins behind a small letter or a digit, and with the last capital of several.
    private static string Kebab(string member)
    {
        var id = new StringBuilder(member.Length + 8);
        for (var i = 0; i < member.Length; i++)
        {
            if (i > 0 && char.IsUpper(member[i])
                && (!char.IsUpper(member[i - 1]) || (i + 1 < member.Length && char.IsLower(member[i + 1]))))
            {
                id.Append('-');
            }

            id.Append(char.IsAsciiLetterOrDigit(member[i]) ? char.ToLowerInvariant(member[i]) : '-');
        }

        return id.ToString();
    }
}
