using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Commission.Records.Json;

/// <summary>
/// Writes a double as ECMAScript's Number::toString does (ECMA-262, referred to by RFC 8785 section 3.2.2.3):
/// plain for 1e-7 ≤ |x| &lt; 1e21, else with an exponent, no digit more than is given.
/// </summary>
internal static class CanonicalNumber
{
    /// <summary>Bytes of the longest number: a sign, "0.", five zeros and 17 digits.</summary>
    public const int Longest = 32;

    /// <summary>Shortest digits that read back to the same double.</summary>
    public const string Shortest = "R";

    /// <summary>
    /// Ten significant digits: enough for every instrument, and the last bits of a double, which differ between
    /// processors, do not reach the file.
    /// </summary>
    public const string TenDigits = "E9";

    /// <summary>Writes the number.</summary>
    /// <param name="value">A finite number; the sign of zero is dropped.</param>
    /// <param name="digits">Which digits: <see cref="Shortest"/> or <see cref="TenDigits"/>.</param>
    /// <param name="output">At least <see cref="Longest"/> bytes.</param>
    /// <returns>How many bytes were written.</returns>
    /// <exception cref="FormatException">The number is not finite: JSON has no word for it.</exception>
    public static int Write(double value, string digits, Span<byte> output)
    {
        if (!double.IsFinite(value))
            throw new FormatException("A number of the record is not finite; a missing number is null.");
        if (value == 0)
        {
            output[0] = (byte)'0';
            return 1;
        }

        // The runtime gives the digits, but in a layout of its own: digits and decimal exponent are taken out of it.
        Span<byte> text = stackalloc byte[Longest];
        Math.Abs(value).TryFormat(text, out var length, digits, CultureInfo.InvariantCulture);
        Span<byte> significant = stackalloc byte[Longest];
        var (count, pointAfter) = Significant(text[..length], significant);
        var sign = value < 0 ? 1 : 0;
        output[0] = (byte)'-';
        return sign + Layout(significant[..count], pointAfter, output[sign..]);
    }

    private static (int Count, int PointAfter) Significant(ReadOnlySpan<byte> text, Span<byte> digits)
    {
        var count = 0;
        var pointAt = -1;
        var exponent = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c == '.')
            {
                pointAt = count;
            }
            else if (c == 'E')
            {
                exponent = int.Parse(text[(i + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
                break;
            }
            else
            {
                digits[count++] = c;
            }
        }

        if (pointAt < 0)
            pointAt = count;
        var leading = 0;
        while (digits[leading] == '0')
            leading++;
        digits[leading..count].CopyTo(digits);
        count -= leading;
        while (digits[count - 1] == '0')
            count--;
        return (count, pointAt - leading + exponent);
    }

    // n of ECMA-262 is pointAfter: the value is 0.d1d2d3… × 10^n.
    private static int Layout(ReadOnlySpan<byte> digits, int n, Span<byte> output)
    {
        var k = digits.Length;
        if (k <= n && n <= 21)
        {
            digits.CopyTo(output);
            output[k..n].Fill((byte)'0');
            return n;
        }

        if (n is > 0 and <= 21)
        {
            digits[..n].CopyTo(output);
            output[n] = (byte)'.';
            digits[n..].CopyTo(output[(n + 1)..]);
            return k + 1;
        }

        if (n is > -6 and <= 0)
        {
            output[..(2 - n)].Fill((byte)'0');
            output[1] = (byte)'.';
            digits.CopyTo(output[(2 - n)..]);
            return 2 - n + k;
        }

        var at = 0;
        output[at++] = digits[0];
        if (k > 1)
        {
            output[at++] = (byte)'.';
            digits[1..].CopyTo(output[at..]);
            at += k - 1;
        }

        output[at++] = (byte)'e';
        output[at++] = (byte)(n > 0 ? '+' : '-');
        Math.Abs(n - 1).TryFormat(output[at..], out var exponent, provider: CultureInfo.InvariantCulture);
        return at + exponent;
    }
}

/// <summary>Numbers of a record. A number that must be there and is not finite is a fault of the program.</summary>
internal sealed class NumberConverter : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => Write(writer, value);

    internal static void Write(Utf8JsonWriter writer, double value)
    {
        Span<byte> text = stackalloc byte[CanonicalNumber.Longest];
        writer.WriteRawValue(text[..CanonicalNumber.Write(value, CanonicalNumber.TenDigits, text)], skipInputValidation: true);
    }
}

/// <summary>Numbers that may be missing; what is not finite (an unlimited number of degrees of freedom, a gap in a series) is null.</summary>
internal sealed class NumberOrNullConverter : JsonConverter<double?>
{
    public override double? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Null ? null : reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double? value, JsonSerializerOptions options)
    {
        if (value is { } number && double.IsFinite(number))
            NumberConverter.Write(writer, number);
        else
            writer.WriteNullValue();
    }
}
