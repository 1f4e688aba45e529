using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Commission.Source;

namespace Commission.Records.Json;

/// <summary>Writes a text with the shortest escapes (RFC 8785 section 3.2.2.2): quote, backslash and control characters, nothing else.</summary>
internal static class CanonicalText
{
    // "\u001f": a control character without a letter of its own.
    private const int LongestEscape = 6;

    private static readonly SearchValues<char> Escaped = SearchValues.Create(['"', '\\', .. Enumerable.Range(0, ' ').Select(c => (char)c)]);

    /// <summary>Writes the text with its quotes. Half a surrogate pair, which UTF-8 cannot hold, becomes U+FFFD.</summary>
    public static void Write(Utf8JsonWriter writer, string text)
    {
        var bytes = ArrayPool<byte>.Shared.Rent(2 + (LongestEscape * text.Length));
        bytes[0] = (byte)'"';
        var at = 1;
        var rest = text.AsSpan();
        while (!rest.IsEmpty)
        {
            var plain = rest.IndexOfAny(Escaped);
            var run = plain < 0 ? rest : rest[..plain];
            at += Encoding.UTF8.GetBytes(run, bytes.AsSpan(at));
            if (plain < 0)
                break;
            at += Escape(rest[plain], bytes.AsSpan(at));
            rest = rest[(plain + 1)..];
        }

        bytes[at++] = (byte)'"';
        writer.WriteRawValue(bytes.AsSpan(0, at), skipInputValidation: true);
        ArrayPool<byte>.Shared.Return(bytes);
    }

    private static int Escape(char c, Span<byte> output)
    {
        output[0] = (byte)'\\';
        var letter = c switch
        {
            '"' or '\\' => c,
            '\b' => 'b',
            '\t' => 't',
            '\n' => 'n',
            '\f' => 'f',
            '\r' => 'r',
            _ => 'u',
        };
        output[1] = (byte)letter;
        if (letter != 'u')
            return 2;
        ((int)c).TryFormat(output[2..], out var written, "x4", CultureInfo.InvariantCulture);
        return 2 + written;
    }
}

/// <summary>Texts of a record.</summary>
internal sealed class TextConverter : JsonConverter<string>
{
    public override string? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetString();

    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => CanonicalText.Write(writer, value);
}

/// <summary>Writes a place as people read it, <c>job.yaml:52:31</c>, and reads it back.</summary>
internal sealed class LocationConverter : JsonConverter<SourceLocation>
{
    public override SourceLocation Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.GetString() ?? throw new JsonException("A place must be a text such as job.yaml:52:31.");
        return Parse(text);
    }

    public override void Write(Utf8JsonWriter writer, SourceLocation value, JsonSerializerOptions options) => CanonicalText.Write(writer, value.ToString());

    // A file name may hold colons (C:\jobs): numbers are taken from the end.
    private static SourceLocation Parse(string text)
    {
        var (rest, last) = CutNumber(text);
        if (last is null)
            return SourceLocation.WholeFile(text);
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

/// <summary>Names of enumeration members as the trade writes them: <c>CannotDecide</c> is <c>cannot decide</c>.</summary>
internal sealed class TradeWords : JsonNamingPolicy
{
    public static TradeWords Policy { get; } = new();

    public override string ConvertName(string name)
    {
        var words = new StringBuilder(name.Length + 4);
        foreach (var c in name)
        {
            if (char.IsUpper(c) && words.Length > 0)
                words.Append(' ');
            words.Append(char.ToLowerInvariant(c));
        }

        return words.ToString();
    }
}

/// <summary>Reads and writes an enumeration in the trade's words; a number is refused.</summary>
/// <typeparam name="TEnum">The enumeration.</typeparam>
internal sealed class TradeWordConverter<TEnum>() : JsonStringEnumConverter<TEnum>(TradeWords.Policy, allowIntegerValues: false)
    where TEnum : struct, Enum;
