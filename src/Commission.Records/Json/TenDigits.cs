using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Commission.Records.Json;

/// <summary>
/// Writes numbers with 10 significant digits: enough for every instrument, and the last bits of a double, which
/// differ between processors, do not reach the file.
/// </summary>
internal sealed class TenDigits : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        if (!double.IsFinite(value)) throw new InvalidOperationException("A number of the record is not finite; a missing number is null.");
        writer.WriteNumberValue(Round(value));
    }

    internal static double Round(double value)
    {
        if (value == 0) return 0;
        if (value == Math.Truncate(value) && Math.Abs(value) < 1e10) return value;
        Span<char> text = stackalloc char[32];
        value.TryFormat(text, out var length, "E9", CultureInfo.InvariantCulture);
        return double.Parse(text[..length], NumberStyles.Float, CultureInfo.InvariantCulture);
    }
}
