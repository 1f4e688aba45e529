using System.Globalization;
using System.Text;

namespace Commission.Records.Integrity;

/// <summary>
/// Writes a double as ECMAScript's Number::toString does (ECMA-262, referred to by RFC 8785 section 3.2.2.3):
/// shortest digits that read back to the same double; plain for 1e-7 ≤ |x| &lt; 1e21, else with an exponent.
/// </summary>
internal static class CanonicalNumber
{
    /// <summary>Appends the number.</summary>
    /// <exception cref="FormatException">The number is not finite: JSON has no word for it.</exception>
    public static void Append(StringBuilder output, double value)
    {
        if (!double.IsFinite(value)) throw new FormatException("A number of the record is not finite and cannot be written as JSON.");
        if (value == 0)
        {
            output.Append('0');
            return;
        }

        Span<char> digits = stackalloc char[24];
        var (count, exponent) = Shortest(value, digits);
        if (value < 0) output.Append('-');
        Layout(output, digits[..count], exponent);
    }

    // "R" gives the shortest round-trip digits but in a layout of its own: take digits and decimal exponent out of it.
    private static (int Count, int PointAfter) Shortest(double value, Span<char> digits)
    {
        Span<char> text = stackalloc char[32];
        Math.Abs(value).TryFormat(text, out var length, "R", CultureInfo.InvariantCulture);
        var count = 0;
        var pointAt = -1;
        var exponent = 0;
        for (var i = 0; i < length; i++)
        {
            var c = text[i];
            if (c == '.')
            {
                pointAt = count;
            }
            else if (c == 'E')
            {
                exponent = int.Parse(text[(i + 1)..length], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
                break;
            }
            else
            {
                digits[count++] = c;
            }
        }

        if (pointAt < 0) pointAt = count;
        var leading = 0;
        while (digits[leading] == '0') leading++;
        digits[leading..count].CopyTo(digits);
        count -= leading;
        while (digits[count - 1] == '0') count--;
        return (count, pointAt - leading + exponent);
    }

    // n of ECMA-262 is pointAfter: the value is 0.d1d2d3… × 10^n.
    private static void Layout(StringBuilder output, ReadOnlySpan<char> digits, int n)
    {
        var k = digits.Length;
        if (k <= n && n <= 21)
        {
            output.Append(digits).Append('0', n - k);
        }
        else if (n is > 0 and <= 21)
        {
            output.Append(digits[..n]).Append('.').Append(digits[n..]);
        }
        else if (n is > -6 and <= 0)
        {
            output.Append("0.").Append('0', -n).Append(digits);
        }
        else
        {
            output.Append(digits[0]);
            if (k > 1) output.Append('.').Append(digits[1..]);
            output.Append('e').Append(n > 0 ? '+' : '-').Append(Math.Abs(n - 1).ToString(CultureInfo.InvariantCulture));
        }
    }
}
