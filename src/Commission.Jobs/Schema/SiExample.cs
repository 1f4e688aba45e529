using System.Globalization;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Jobs.Schema;

/// <summary>Turns an example of the schema that is in inch and pound into one of a file in SI.</summary>
internal static class SiExample
{
    /// <summary>The same quantity in the unit that SI files use; null when the text is none, or is in SI already.</summary>
    public static string? Of(string text)
    {
        if (UnitTable.FindAny(text).FirstOrDefault() is { IsCustomary: true } alone)
            return UnitTable.OfferedFor(alone.Dimension, si: true).First(u => u.Reference == alone.Reference).Symbol;
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            if (QuantityParser.Parse(text, dimension) is { Ok: true, Value: var value } && value.Unit.IsCustomary)
                return Written(value, dimension);
            if (QuantityParser.ParseRange(text, dimension) is { Ok: true, Value: var range } && range.Lower.Unit.IsCustomary)
                return $"{Written(range.Lower, dimension)} to {Written(range.Upper, dimension)}";
        }

        return null;
    }

    private static string Written(ParsedQuantity value, Dimension dimension)
    {
        // A depth stays a depth: no other unit of pressure counts from the atmosphere downwards.
        var unit = UnitTable.OfferedFor(dimension, si: true).First(u => u.Reference == value.Unit.Reference);
        var number = unit.FromSi(value.Si);
        var decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Max(Math.Abs(number), 1e-6))), 0, 6);
        var doubt = value.Uncertainty is { } stated ? string.Create(CultureInfo.InvariantCulture, $" +/- {Math.Round(stated.HalfWidthSi / unit.Factor, decimals)}") : "";
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(number, decimals)} {unit.Symbol}{doubt}");
    }
}
