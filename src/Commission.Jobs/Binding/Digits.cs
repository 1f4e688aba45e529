using System.Globalization;
using Commission.Jobs.Problems;
using Commission.Messages;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>Which digits are read: 0 to 9, as many as an instrument has.</summary>
internal static class Digits
{
    // No display has more, and a double keeps no more.
    private const int Most = 15;

    // Fifteen zeros before or behind a number are no reading either.
    private const int MostExponent = 15;

    /// <summary>Whether a number can be read from a text; a problem is added when not.</summary>
    public static bool AreRead(BindingContext context, SourceScalar scalar, string key)
    {
        var run = 0;
        var longest = 0;
        for (var i = 0; i < scalar.Text.Length; i++)
        {
            var c = scalar.Text[i];
            if (char.IsAsciiDigit(c))
            {
                longest = Math.Max(longest, ++run);
                continue;
            }

            if (c is 'e' or 'E' && i > 0 && char.IsAsciiDigit(scalar.Text[i - 1]) && Exponent(scalar.Text.AsSpan(i + 1)) > MostExponent)
            {
                context.Complain(scalar, JobMessages.ValueIs(new(key), ValueText.Short(scalar.Text)), JobMessages.Exponent, JobMessages.NumberNext, "digits");
                return false;
            }

            if (c != '.')
                run = 0;
            if (CharUnicodeInfo.GetUnicodeCategory(scalar.Text, i) == UnicodeCategory.DecimalDigitNumber)
            {
                context.Complain(scalar, JobMessages.OtherDigits(ValueText.Short(scalar.Text)), null, JobMessages.OtherDigitsNext, "digits");
                return false;
            }
        }

        if (longest <= Most)
            return true;
        context.Complain(scalar, JobMessages.ManyDigits(new(key), longest), JobMessages.ManyDigitsExpected(Most), JobMessages.NumberNext, "digits");
        return false;
    }

    private static int Exponent(ReadOnlySpan<char> text)
    {
        if (text.Length > 0 && text[0] is '+' or '-')
            text = text[1..];
        var end = text.IndexOfAnyExceptInRange('0', '9');
        var digits = end < 0 ? text : text[..end];
        return digits.Length == 0 ? 0 : int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var exponent) ? exponent : int.MaxValue;
    }
}
