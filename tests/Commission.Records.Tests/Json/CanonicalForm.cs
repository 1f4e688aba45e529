using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Commission.Records.Tests.Json;

/// <summary>
/// RFC 8785 once more, over any JSON text and written for the tests only: what the program writes in that form by construction is
/// compared with what comes out of here.
/// </summary>
public static class CanonicalForm
{
    public static string Of(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Of(document.RootElement);
    }

    private static string Of(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "{" + string.Join(',', value.EnumerateObject().OrderBy(m => m.Name, StringComparer.Ordinal).Select(m => Text(m.Name) + ":" + Of(m.Value))) + "}",
        JsonValueKind.Array => "[" + string.Join(',', value.EnumerateArray().Select(Of)) + "]",
        JsonValueKind.String => Text(value.GetString()!),
        JsonValueKind.Number => Number(value.GetDouble()),
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null",
    };

    private static string Text(string text)
    {
        const string Named = "\b\t\n\f\r\"\\";
        const string Letters = "btnfr\"\\";
        var output = new StringBuilder("\"");
        foreach (var c in text)
        {
            var named = Named.IndexOf(c, StringComparison.Ordinal);
            if (named >= 0)
                output.Append('\\').Append(Letters[named]);
            else if (c < ' ')
                output.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}");
            else
                output.Append(c);
        }

        return output.Append('"').ToString();
    }

    // ECMA-262, Number::toString: by way of the decimal type's plain notation where the standard wants that, else by way of "E16".
    private static string Number(double value)
    {
        if (value == 0)
            return "0";
        var size = Math.Abs(value);
        var shortest = value.ToString("R", CultureInfo.InvariantCulture);
        var digits = size.ToString("E16", CultureInfo.InvariantCulture);
        for (var precision = 0; precision <= 16; precision++)
        {
            digits = size.ToString("E" + precision.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            if (double.Parse(digits, CultureInfo.InvariantCulture) == size)
                break;
        }

        if (size is >= 1e-6 and < 1e21)
        {
            return shortest.Contains('E', StringComparison.Ordinal)
                ? (value < 0 ? "-" : "") + decimal.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture).ToString("0.######################", CultureInfo.InvariantCulture)
                : shortest;
        }

        var parts = digits.Split('E');
        var exponent = int.Parse(parts[1], CultureInfo.InvariantCulture);
        return string.Create(CultureInfo.InvariantCulture, $"{(value < 0 ? "-" : "")}{parts[0]}e{(exponent < 0 ? '-' : '+')}{Math.Abs(exponent)}");
    }
}
