using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Records.Json;

/// <summary>Writes and reads the messages of a finding; a part that there is none of is left out.</summary>
internal sealed class FindingMessagesConverter : JsonConverter<FindingMessages>
{
    public override FindingMessages Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var json = JsonDocument.ParseValue(ref reader);
        var root = json.RootElement;
        return new FindingMessages(List(root, "statement"))
        {
            Reason = root.TryGetProperty("reason", out var reason) ? MessageJson.Read(reason) : null,
            Reservation = List(root, "reservation"),
            NextStep = root.TryGetProperty("nextStep", out var next) ? MessageJson.Read(next) : null,
        };
    }

    public override void Write(Utf8JsonWriter writer, FindingMessages value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        List(writer, "statement", value.Statement);
        if (value.Reason is { } reason)
        {
            writer.WritePropertyName("reason");
            MessageJson.Write(writer, reason);
        }

        if (value.Reservation.Length > 0)
            List(writer, "reservation", value.Reservation);
        if (value.NextStep is { } next)
        {
            writer.WritePropertyName("nextStep");
            MessageJson.Write(writer, next);
        }

        writer.WriteEndObject();
    }

    private static void List(Utf8JsonWriter writer, string name, ImmutableArray<Message> messages)
    {
        writer.WriteStartArray(name);
        foreach (var message in messages)
            MessageJson.Write(writer, message);
        writer.WriteEndArray();
    }

    private static ImmutableArray<Message> List(JsonElement parent, string name) =>
        parent.TryGetProperty(name, out var list) ? [.. list.EnumerateArray().Select(MessageJson.Read)] : [];
}
