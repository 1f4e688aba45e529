using System.Globalization;

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
