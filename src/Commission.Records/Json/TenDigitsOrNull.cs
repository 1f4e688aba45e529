using System.Text.Json;
using System.Text.Json.Serialization;

namespace Commission.Records.Json;

/// <summary>As <see cref="TenDigits"/>; what is not finite (an unlimited number of degrees of freedom, a gap in a series) is null.</summary>
internal sealed class TenDigitsOrNull : JsonConverter<double?>
{
    public override double? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Null ? null : reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double? value, JsonSerializerOptions options)
    {
        if (value is { } number && double.IsFinite(number))
            writer.WriteNumberValue(TenDigits.Round(number));
        else
            writer.WriteNullValue();
    }
}
