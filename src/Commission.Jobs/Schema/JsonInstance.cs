using System.Buffers;
using System.Globalization;
using System.Text.Json;
using Commission.Source.Yaml;

namespace Commission.Jobs.Schema;

/// <summary>A source tree as JSON, and for every JSON pointer the node it came from.</summary>
internal sealed class JsonInstance
{
    private readonly Dictionary<string, Place> _places = new(StringComparer.Ordinal);

    private JsonInstance(JsonElement root) => Root = root;

    public JsonElement Root { get; private set; }

    public static JsonInstance Of(SourceNode root)
    {
        var instance = new JsonInstance(default);
        var buffer = new ArrayBufferWriter<byte>(16 * 1024);
        using (var writer = new Utf8JsonWriter(buffer))
            instance.Write(writer, root, null, null, "");
        instance.Root = JsonDocument.Parse(buffer.WrittenMemory).RootElement;
        return instance;
    }

    public Place? At(string pointer) => _places.GetValueOrDefault(pointer);

    public static JsonValueKind KindOf(SourceScalar scalar)
    {
        if (scalar.IsQuoted)
            return JsonValueKind.String;
        if (scalar.IsEmpty)
            return JsonValueKind.Null;
        return scalar.Text switch
        {
            "true" or "True" or "TRUE" => JsonValueKind.True,
            "false" or "False" or "FALSE" => JsonValueKind.False,
            _ => IsNumber(scalar.Text) ? JsonValueKind.Number : JsonValueKind.String,
        };
    }

    // YAML 1.2 core, without octal, hexadecimal, infinity and NaN: those stay text and meet the field's own sentence.
    private static bool IsNumber(string text)
    {
        var at = text.Length > 0 && text[0] is '+' or '-' ? 1 : 0;
        var digits = 0;
        var point = false;
        for (; at < text.Length; at++)
        {
            if (char.IsAsciiDigit(text[at]))
                digits++;
            else if (text[at] == '.' && !point)
                point = true;
            else
                break;
        }

        if (digits == 0)
            return false;
        if (at == text.Length)
            return true;
        if (text[at] is not ('e' or 'E'))
            return false;
        at++;
        if (at < text.Length && text[at] is '+' or '-')
            at++;
        return at < text.Length && text.AsSpan(at).IndexOfAnyExceptInRange('0', '9') < 0;
    }

    private void Write(Utf8JsonWriter writer, SourceNode node, SourceScalar? key, Place? parent, string pointer)
    {
        var place = new Place(key, node, parent);
        _places[pointer] = place;
        switch (node)
        {
            case SourceMapping mapping:
                writer.WriteStartObject();
                foreach (var entry in mapping.Entries)
                {
                    writer.WritePropertyName(entry.Key.Text);
                    Write(writer, entry.Value, entry.Key, place,
                        pointer + "/" + entry.Key.Text.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
                }

                writer.WriteEndObject();
                break;
            case SourceSequence sequence:
                writer.WriteStartArray();
                for (var i = 0; i < sequence.Items.Count; i++)
                    Write(writer, sequence.Items[i], null, place, pointer + "/" + i.ToString(CultureInfo.InvariantCulture));
                writer.WriteEndArray();
                break;
            case SourceScalar scalar:
                WriteScalar(writer, scalar);
                break;
        }
    }

    private static void WriteScalar(Utf8JsonWriter writer, SourceScalar scalar)
    {
        switch (KindOf(scalar))
        {
            case JsonValueKind.Null:
                writer.WriteNullValue();
                break;
            case JsonValueKind.True:
                writer.WriteBooleanValue(true);
                break;
            case JsonValueKind.False:
                writer.WriteBooleanValue(false);
                break;
            case JsonValueKind.Number when double.TryParse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && FitsDecimal(number):
                // 1.0 counts as an integer in JSON Schema as in YAML's eyes of a person.
                writer.WriteNumberValue(number);
                break;
            default:
                writer.WriteStringValue(scalar.Text);
                break;
        }
    }

    // The evaluator counts in decimals; what does not fit is told as a text where a number is expected.
    private static bool FitsDecimal(double number) => number == 0 || Math.Abs(number) is > 1e-20 and < 1e20;

    /// <summary>A node of the tree: its key if it has one, and what it stands in.</summary>
    internal sealed record Place(SourceScalar? Key, SourceNode Value, Place? Parent)
    {
        /// <summary>The nearest key: the node's own, or that of the list it is in.</summary>
        public string? NameOfKey
        {
            get
            {
                for (var place = this; place is not null; place = place.Parent)
                {
                    if (place.Key is { } key)
                        return key.Text;
                }

                return null;
            }
        }
    }
}
