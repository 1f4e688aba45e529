using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Commission.Source;

namespace Commission.Records.Json;

/// <summary>Writes a place as people read it, <c>job.yaml:52:31</c>, and reads it back.</summary>
internal sealed class LocationText : JsonConverter<SourceLocation>
{
    public override SourceLocation Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.GetString() ?? throw new JsonException("A place must be a text such as job.yaml:52:31.");
        return Parse(text);
    }

    public override void Write(Utf8JsonWriter writer, SourceLocation value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());

    // A file name may hold colons (C:\jobs): numbers are taken from the end.
    private static SourceLocation Parse(string text)
    {
        var (rest, last) = CutNumber(text);
        if (last is null) return SourceLocation.WholeFile(text);
        var (file, first) = CutNumber(rest);
        return first is { } line ? new SourceLocation(file, line, last.Value) : new SourceLocation(rest, last.Value, 0);
    }

    private static (string Before, int? Number) CutNumber(string text)
    {
        var colon = text.LastIndexOf(':');
        return colon > 0 && int.TryParse(text.AsSpan(colon + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? (text[..colon], number)
            : (text, null);
    }
}
