using System.Globalization;

namespace Commission.Documents.Typesetting;

/// <summary>Reads the number lists of SVG: separated by blanks or commas.</summary>
internal static class SvgNumbers
{
    public static List<double> Read(ReadOnlySpan<char> text)
    {
        var numbers = new List<double>();
        var i = 0;
        while (i < text.Length)
        {
            if (text[i] is ' ' or ',' or '\n' or '\t' or '\r')
            {
                i++;
                continue;
            }

            var start = i;
            i = End(text, i);
            numbers.Add(double.Parse(text[start..i], NumberStyles.Float, CultureInfo.InvariantCulture));
        }

        return numbers;
    }

    /// <summary>The position after the number that begins at a position.</summary>
    public static int End(ReadOnlySpan<char> text, int start)
    {
        var i = start;
        if (i < text.Length && text[i] is '-' or '+') i++;
        var point = false;
        while (i < text.Length)
        {
            var c = text[i];
            if (char.IsAsciiDigit(c)) i++;
            else if (c == '.' && !point)
            {
                point = true;
                i++;
            }
            else if (c is 'e' or 'E' && i > start)
            {
                i++;
                if (i < text.Length && text[i] is '-' or '+') i++;
            }
            else break;
        }

        return Math.Max(i, start + 1);
    }
}
