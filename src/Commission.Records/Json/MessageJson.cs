using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Commission.Messages;

namespace Commission.Records.Json;

/// <summary>
/// Messages as JSON: <c>{"id": "evacuation.hold-passed", "values": {"after": {"duration": 600}}}</c>, each value under the name of its kind;
/// a sentence that is in no catalogue is a text. Members are written in the order of their names, as all of the record's are.
/// </summary>
internal static class MessageJson
{
    private const string Time = "HH:mm:ss";
    private const string Date = "yyyy-MM-dd";

    private static void Write(Utf8JsonWriter writer, Message message)
    {
        writer.WriteStartObject();
        Text(writer, "id", message.Id);
        if (message.Values.Length > 0)
        {
            writer.WriteStartObject("values");
            foreach (var (name, value) in message.Values.OrderBy(v => v.Name, StringComparer.Ordinal))
            {
                writer.WritePropertyName(name);
                Write(writer, value);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    public static Message Read(JsonElement json)
    {
        var id = json.GetProperty("id").GetString()!;
        var dot = id.IndexOf('.', StringComparison.Ordinal);
        if (dot <= 0)
            throw new JsonException($"“{id}” is no identifier of a message: expected phase.name.");
        var values = json.TryGetProperty("values", out var all) ? all.EnumerateObject().Select(v => new NamedValue(v.Name, Value(v.Value))).ToImmutableArray() : [];
        return Message.Of(id[..dot], id[(dot + 1)..], values);
    }

    public static void Write(Utf8JsonWriter writer, MessageValue value)
    {
        writer.WriteStartObject();
        switch (value)
        {
            case QuantityValue quantity:
                Write(writer, quantity);
                break;
            case DurationValue duration:
                Number(writer, "duration", duration.Seconds);
                break;
            case TimeValue { OfDay: { } time }:
                writer.WriteString("time", time.ToString(Time, CultureInfo.InvariantCulture));
                break;
            case TimeValue time:
                Number(writer, "elapsed", time.Elapsed);
                break;
            case DateValue date:
                writer.WriteString("date", date.Day.ToString(Date, CultureInfo.InvariantCulture));
                break;
            case CountValue count:
                writer.WriteNumber("count", count.Count);
                break;
            case NumberValue number:
                writer.WriteNumber("decimals", number.Decimals);
                Number(writer, "number", number.Number);
                break;
            case ListValue list:
                writer.WriteString("join", list.Join switch { ListJoin.And => "and", ListJoin.Or => "or", ListJoin.Sentences => "sentences", ListJoin.Semicolons => "semicolons", _ => "comma" });
                writer.WriteStartArray("list");
                foreach (var item in list.Items)
                    Write(writer, item);
                writer.WriteEndArray();
                break;
            case NameValue name:
                Text(writer, "name", name.Name);
                break;
            case TextValue text:
                Text(writer, "text", text.Text);
                break;
            case SymbolsValue symbols:
                Text(writer, "symbols", symbols.Invariant);
                break;
            case ChoiceValue choice:
                Text(writer, "choice", choice.Option);
                break;
            case Message message:
                writer.WritePropertyName("message");
                Write(writer, message);
                break;
            default:
                throw new InvalidOperationException($"A value of the kind {value.Kind} has no JSON.");
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, QuantityValue quantity)
    {
        writer.WriteStartObject("quantity");
        writer.WriteNumber("decimals", quantity.Decimals);
        Text(writer, "dimension", quantity.Dimension);
        if (quantity.Expanded is { } expanded)
            Number(writer, "expanded", expanded);
        if (quantity.Larger is { } larger)
            Text(writer, "larger", larger);
        Number(writer, "si", quantity.Si);
        Text(writer, "unit", quantity.Unit);
        Number(writer, "value", quantity.Value);
        writer.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter writer, string name, double number)
    {
        writer.WritePropertyName(name);
        NumberConverter.Write(writer, number);
    }

    private static void Text(Utf8JsonWriter writer, string name, string text)
    {
        writer.WritePropertyName(name);
        CanonicalText.Write(writer, text);
    }

    public static MessageValue Value(JsonElement json)
    {
        foreach (var member in json.EnumerateObject())
        {
            var content = member.Value;
            switch (member.Name)
            {
                case "quantity":
                    return Quantity(content);
                case "duration":
                    return new DurationValue(content.GetDouble());
                case "time":
                    return TimeValue.At(TimeOnly.ParseExact(content.GetString()!, Time, CultureInfo.InvariantCulture));
                case "elapsed":
                    return TimeValue.After(content.GetDouble());
                case "date":
                    return new DateValue(DateOnly.ParseExact(content.GetString()!, Date, CultureInfo.InvariantCulture));
                case "count":
                    return new CountValue(content.GetInt32());
                case "number":
                    return new NumberValue(content.GetDouble(), json.GetProperty("decimals").GetInt32());
                case "list":
                    return new ListValue([.. content.EnumerateArray().Select(Value)], json.GetProperty("join").GetString() switch { "and" => ListJoin.And, "or" => ListJoin.Or, "sentences" => ListJoin.Sentences, "semicolons" => ListJoin.Semicolons, _ => ListJoin.Comma });
                case "name":
                    return new NameValue(content.GetString()!);
                case "text":
                    return new TextValue(content.GetString()!);
                case "symbols":
                    return new SymbolsValue(content.GetString()!);
                case "choice":
                    return new ChoiceValue(content.GetString()!);
                case "message":
                    return Read(content);
                default:
                    continue;
            }
        }

        throw new JsonException("The value of a message is of no known kind.");
    }

    private static QuantityValue Quantity(JsonElement json) => new(
        json.GetProperty("si").GetDouble(),
        json.GetProperty("dimension").GetString()!,
        json.GetProperty("unit").GetString()!,
        json.GetProperty("value").GetDouble(),
        json.GetProperty("decimals").GetInt32())
    {
        Larger = json.TryGetProperty("larger", out var larger) ? larger.GetString() : null,
        Expanded = json.TryGetProperty("expanded", out var expanded) ? expanded.GetDouble() : null,
    };
}

/// <summary>Writes and reads what a text of the record is made of.</summary>
internal sealed class MessageValueConverter : JsonConverter<MessageValue>
{
    public override MessageValue Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var json = JsonDocument.ParseValue(ref reader);
        return MessageJson.Value(json.RootElement);
    }

    public override void Write(Utf8JsonWriter writer, MessageValue value, JsonSerializerOptions options) => MessageJson.Write(writer, value);
}
