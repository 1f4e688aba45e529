using System.Globalization;
using System.Text;

namespace Commission.Documents.Archive;

/// <summary>Writes texts and dates as PDF objects.</summary>
internal static class PdfText
{
    /// <summary>A text string: plain when ASCII, else UTF-16 with a mark, in hexadecimal (ISO 32000-1, 7.9.2.2).</summary>
    public static string String(string text)
    {
        var isPlain = true;
        foreach (var c in text) isPlain &= c is >= ' ' and <= '~' and not ('(' or ')' or '\\');
        return isPlain ? $"({text})" : $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";
    }

    /// <summary>A name with everything escaped that is not a letter, a digit or a dash.</summary>
    public static string Name(string name)
    {
        var output = new StringBuilder("/");
        foreach (var b in Encoding.UTF8.GetBytes(name))
        {
            if (char.IsAsciiLetterOrDigit((char)b) || b is (byte)'-' or (byte)'.' or (byte)'_') output.Append((char)b);
            else output.Append('#').Append(b.ToString("X2", CultureInfo.InvariantCulture));
        }

        return output.ToString();
    }

    /// <summary>A date in UTC (ISO 32000-1, 7.9.4).</summary>
    public static string Date(DateTimeOffset moment) =>
        string.Create(CultureInfo.InvariantCulture, $"(D:{moment.ToUniversalTime():yyyyMMddHHmmss}Z)");
}
