using System.Globalization;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Measurement.Units;

/// <summary>Prints quantities: canonical units, a point for decimals, a true minus sign, value and uncertainty with the same decimals, never a negative zero. A value that is not finite prints as NaN or Infinity: it is our fault and must be seen.</summary>
public static class QuantityFormat
{
    private const int MostDecimals = 15;

    /// <summary>Value and unit: <c>13.1 °F</c>.</summary>
    /// <param name="si">SI value.</param>
    /// <param name="unit">Unit to print in.</param>
    /// <param name="decimals">Decimals; −1 rounds to tens, −2 to hundreds.</param>
    public static string Format(double si, Unit unit, int decimals) => QuantityParser.Spell(Number(unit.FromSi(si), decimals), unit);

    /// <summary>Value as a page prints this kind of number, compounds included: <c>11 lb 4.0 oz</c>.</summary>
    /// <param name="si">SI value.</param>
    /// <param name="display">Unit and decimals.</param>
    public static string Format(double si, DisplayUnit display) => display.At(si) switch
    {
        { Smaller: { } smaller } compound => Compound(si, compound.Unit, smaller, compound.Decimals),
        var single => Format(si, single.Unit, single.Decimals),
    };

    /// <summary>Value and expanded uncertainty with the same decimals: <c>13.1 ± 1.5 °F</c>; U has two significant digits at most and the value is rounded to match (GUM 7.2.6).</summary>
    /// <param name="si">SI value.</param>
    /// <param name="expandedSi">Expanded uncertainty U, an SI difference.</param>
    /// <param name="unit">Unit to print in.</param>
    /// <param name="mostDecimals">Most decimals to print; U is then rounded to these.</param>
    public static string Format(double si, double expandedSi, Unit unit, int mostDecimals = MostDecimals)
    {
        var expanded = expandedSi / unit.Factor;
        var decimals = DecimalsFor(expanded, mostDecimals);
        return $"{Number(unit.FromSi(si), decimals)} ± {QuantityParser.Spell(Number(expanded, decimals), unit)}";
    }

    /// <summary>Value and expanded uncertainty as a page prints this kind of number; one decimal more than usual where U is that small. A compound keeps its uncertainty in the smaller unit: <c>11 lb 4.0 oz ± 0.5 oz</c>.</summary>
    /// <param name="si">SI value.</param>
    /// <param name="expandedSi">Expanded uncertainty U, an SI difference.</param>
    /// <param name="display">Unit and decimals.</param>
    public static string Format(double si, double expandedSi, DisplayUnit display)
    {
        display = display.At(si);
        var most = display.Decimals + 1;
        if (display.Smaller is not { } smaller)
            return Format(si, expandedSi, display.Unit, most);
        var expanded = expandedSi / smaller.Factor;
        var decimals = Math.Max(0, DecimalsFor(expanded, most));
        return $"{Compound(si, display.Unit, smaller, decimals)} ± {QuantityParser.Spell(Number(expanded, decimals), smaller)}";
    }

    /// <summary>Decimals that show an uncertainty with two significant digits: 1.5 → 1, 0.043 → 3, 27 → 0, 1234 → −2.</summary>
    /// <param name="expanded">Expanded uncertainty in the unit printed.</param>
    /// <param name="mostDecimals">Most decimals wanted.</param>
    public static int DecimalsFor(double expanded, int mostDecimals = MostDecimals)
    {
        if (!double.IsFinite(expanded) || expanded <= 0)
            return Math.Min(mostDecimals, MostDecimals);
        var exponent = (int)Math.Floor(Math.Log10(expanded));

        // 0.0996 rounds to 0.10: the first digit moved.
        if (Math.Round(expanded / Math.Pow(10, exponent - 1), MidpointRounding.AwayFromZero) >= 100)
            exponent++;
        // A U that these decimals would print as nothing keeps its own digits.
        return -exponent > mostDecimals ? 1 - exponent : Math.Min(1 - exponent, mostDecimals);
    }

    /// <summary>A number as printed: rounded half away from zero, no negative zero, no exponent.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals; −1 rounds to tens, −2 to hundreds.</param>
    public static string Number(double value, int decimals)
    {
        var digits = Math.Clamp(decimals, 0, MostDecimals);
        var text = Round(value, decimals).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.AsSpan().IndexOfAnyInRange('1', '9') < 0 && double.IsFinite(value) ? text[1..] : MessageWriter.WithTrueMinus(text);
    }

    /// <summary>The number that is printed: rounded half away from zero.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals; −1 rounds to tens, −2 to hundreds.</param>
    public static double Round(double value, int decimals)
    {
        if (!double.IsFinite(value))
            return value;
        if (decimals < 0)
        {
            var scale = Math.Pow(10, -decimals);
            return Math.Round(value / scale, MidpointRounding.AwayFromZero) * scale;
        }

        // Through 15 digits first: 0.285 °F that came back from kelvin as 0.28499999999999998 is 0.285.
        var clean = Math.Abs(value) < 1e15 ? double.Parse(value.ToString("G14", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : value;
        return Math.Abs(clean) < 1e12 ? (double)Math.Round((decimal)clean, Math.Min(decimals, MostDecimals), MidpointRounding.AwayFromZero) : clean;
    }

    private static string Compound(double si, Unit larger, Unit smaller, int decimals)
    {
        var steps = Math.Round(larger.Factor / smaller.Factor);
        var total = Round(Math.Abs(smaller.FromSi(si)), decimals);
        var whole = Math.Floor(total / steps);
        var rest = Number(total - (whole * steps), decimals);
        var sign = si < 0 && total > 0 ? "−" : "";
        return whole == 0 ? $"{sign}{rest} {smaller.Symbol}" : $"{sign}{Number(whole, 0)} {larger.Symbol} {rest} {smaller.Symbol}";
    }
}

/// <summary>What a dimension is called in a sentence.</summary>
public static class DimensionName
{
    private static readonly string[] Keys = [.. Enum.GetNames<Dimension>().Select(name =>
        string.Concat(name.Select((c, at) => char.IsUpper(c) && at > 0 ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString())))];

    /// <summary>The key of a dimension in messages and records: the words of its member, such as <c>temperature difference</c>.</summary>
    /// <param name="dimension">The dimension.</param>
    public static string Of(Dimension dimension) => Keys[(int)dimension];

    /// <summary>What is measured, with its article: a pressure, an area.</summary>
    /// <param name="dimension">The dimension.</param>
    public static Message WithArticle(Dimension dimension) => QuantityMessages.AQuantity(Enum.Parse<QuantityMessages.AQuantityDimension>(dimension.ToString()));
}
