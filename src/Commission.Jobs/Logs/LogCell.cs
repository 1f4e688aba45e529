using System.Globalization;
using System.Text;
using nietras.SeparatedValues;

namespace Commission.Jobs.Logs;

/// <summary>Reads one cell with a reading: a number, a gap, or "above the gauge's range".</summary>
internal static class LogCell
{
    private static readonly string[] OverWords = ["ol", "o.l", "o.l.", "o/l", "+ol", "over", "over range", "overrange", "over-range", "ovr", "hi", "high", "atm"];
    private static readonly string[] GapWords = ["", "nan", "n/a", "na", "null", "none", "-", "--", "err", "error"];

    internal enum Kind
    {
        Number,
        Gap,
        Over,
        Bad,
    }

    public static Kind Read(ReadOnlySpan<char> cell, bool decimalComma, double? overRange, out double number)
    {
        number = double.NaN;
        var text = cell.Trim().Trim('"').Trim();
        if (TryNumber(text, decimalComma, out number))
            return overRange is { } most && number >= most ? Kind.Over : Kind.Number;
        if (text.Length > 0 && text[0] is '>' or '≥')
        {
            var bound = text[1..].TrimStart('=').Trim();
            if (TryNumber(bound, decimalComma, out number))
                return Kind.Over;
        }

        number = double.NaN;

        // Three dashes or more are the bars of a display above its range; one or two are nothing.
        if (text.Length >= 3 && text.IndexOfAnyExcept('-', '_') < 0)
            return Kind.Over;
        foreach (var word in OverWords)
        {
            if (text.Equals(word, StringComparison.OrdinalIgnoreCase))
                return Kind.Over;
        }

        foreach (var word in GapWords)
        {
            if (text.Equals(word, StringComparison.OrdinalIgnoreCase))
                return Kind.Gap;
        }

        return Kind.Bad;
    }

    public static bool TryNumber(ReadOnlySpan<char> text, bool decimalComma, out double number)
    {
        number = double.NaN;
        if (text.Length is 0 or > 40 || !(char.IsAsciiDigit(text[0]) || text[0] is '-' or '+' or '.' or ','))
            return false;
        const NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (text.IndexOf(',') < 0 && !decimalComma)
            return double.TryParse(text, style, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);

        Span<char> plain = stackalloc char[40];
        var length = 0;
        foreach (var c in text)
        {
            var group = decimalComma ? '.' : ',';
            if (c == group)
                continue;
            plain[length++] = c == ',' ? '.' : c;
        }

        return double.TryParse(plain[..length], style, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
    }

    /// <summary>Digits after the decimal mark.</summary>
    public static int Decimals(ReadOnlySpan<char> cell, bool decimalComma)
    {
        var text = cell.Trim().Trim('"');
        var mark = text.IndexOf(decimalComma ? ',' : '.');
        if (mark < 0)
            return 0;
        var digits = text[(mark + 1)..];
        var end = digits.IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? digits.Length : end;
    }
}

/// <summary>The first rows of a log, cut into cells.</summary>
/// <param name="Line">The line a row begins in, counted from 1.</param>
/// <param name="Cells">Its cells, without quotes.</param>
internal sealed record LogSample(int Line, IReadOnlyList<string> Cells)
{
    private const int Enough = 60;

    public static List<LogSample> Of(string text, char delimiter)
    {
        var rows = new List<LogSample>();
        using var reader = Open(text, delimiter);

        // The reader's own number of a first row is one too high: a row begins where the one before it ended.
        var next = 1;
        foreach (var row in reader)
        {
            var line = next;
            next = row.LineNumberToExcl;
            var cells = new string[row.ColCount];
            for (var i = 0; i < cells.Length; i++)
                cells[i] = row[i].Span.Trim().Trim('"').Trim().ToString();
            if (cells.Any(c => c.Length > 0))
                rows.Add(new LogSample(line, cells));
            if (rows.Count == Enough)
                break;
        }

        return rows;
    }

    public static SepReader Open(string text, char delimiter) =>
        Sep.New(delimiter).Reader(o => o with { HasHeader = false, DisableColCountCheck = true, Unescape = true }).FromText(text);
}

/// <summary>Decodes a log: UTF-8, UTF-16 with its mark, or what gauges of another age write (Latin-1).</summary>
internal static class LogText
{
    public static string Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
            bytes = bytes[3..];
        else if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]))
            return Encoding.Unicode.GetString(bytes[2..]);
        else if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
            return Encoding.BigEndianUnicode.GetString(bytes[2..]);
        return System.Text.Unicode.Utf8.IsValid(bytes) ? Encoding.UTF8.GetString(bytes) : Encoding.Latin1.GetString(bytes);
    }
}
