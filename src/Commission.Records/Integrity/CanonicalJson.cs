using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Commission.Records.Integrity;

/// <summary>
/// The one way to write a JSON value that RFC 8785 (JSON Canonicalization Scheme) allows: no blanks, members sorted by
/// the UTF-16 units of their names, numbers as ECMAScript prints them, the shortest escapes, UTF-8 without a mark.
/// </summary>
public static class CanonicalJson
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Writes a value.</summary>
    /// <param name="value">The value; null is the JSON null.</param>
    /// <returns>The canonical UTF-8 bytes.</returns>
    /// <exception cref="FormatException">A number does not fit a double.</exception>
    /// <exception cref="EncoderFallbackException">A text holds half a surrogate pair.</exception>
    public static byte[] Write(JsonNode? value)
    {
        var output = new StringBuilder();
        Append(output, value);
        return Strict.GetBytes(output.ToString());
    }

    /// <summary>Writes an object without one of its own members; members of that name further down stay.</summary>
    /// <param name="value">The object; it is not changed.</param>
    /// <param name="member">The member to leave out.</param>
    /// <returns>The canonical UTF-8 bytes.</returns>
    public static byte[] WriteWithout(JsonObject value, string member)
    {
        ArgumentNullException.ThrowIfNull(value);
        var output = new StringBuilder();
        AppendObject(output, value, member);
        return Strict.GetBytes(output.ToString());
    }

    private static void Append(StringBuilder output, JsonNode? value)
    {
        switch (value)
        {
            case null:
                output.Append("null");
                break;
            case JsonObject members:
                AppendObject(output, members, without: null);
                break;
            case JsonArray items:
                output.Append('[');
                for (var i = 0; i < items.Count; i++)
                {
                    if (i > 0) output.Append(',');
                    Append(output, items[i]);
                }

                output.Append(']');
                break;
            default:
                AppendScalar(output, value.AsValue());
                break;
        }
    }

    private static void AppendObject(StringBuilder output, JsonObject value, string? without)
    {
        var members = new List<KeyValuePair<string, JsonNode?>>(value.Count);
        foreach (var member in value)
        {
            if (!string.Equals(member.Key, without, StringComparison.Ordinal)) members.Add(member);
        }

        members.Sort(static (a, b) => string.CompareOrdinal(a.Key, b.Key));
        output.Append('{');
        for (var i = 0; i < members.Count; i++)
        {
            if (i > 0) output.Append(',');
            AppendText(output, members[i].Key);
            output.Append(':');
            Append(output, members[i].Value);
        }

        output.Append('}');
    }

    private static void AppendScalar(StringBuilder output, JsonValue value)
    {
        switch (value.GetValueKind())
        {
            case JsonValueKind.True:
                output.Append("true");
                break;
            case JsonValueKind.False:
                output.Append("false");
                break;
            case JsonValueKind.String:
                AppendText(output, value.GetValue<string>());
                break;
            default:
                CanonicalNumber.Append(output, Number(value));
                break;
        }
    }

    // A number built in memory may be an int or a long; one that was parsed keeps its text.
    private static double Number(JsonValue value) =>
        value.TryGetValue<double>(out var real) ? real : double.Parse(value.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture);

    private static void AppendText(StringBuilder output, string text)
    {
        output.Append('"');
        foreach (var c in text)
        {
            switch (c)
            {
                case '"': output.Append("\\\""); break;
                case '\\': output.Append("\\\\"); break;
                case '\b': output.Append("\\b"); break;
                case '\t': output.Append("\\t"); break;
                case '\n': output.Append("\\n"); break;
                case '\f': output.Append("\\f"); break;
                case '\r': output.Append("\\r"); break;
                case < ' ': output.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture)); break;
                default: output.Append(c); break;
            }
        }

        output.Append('"');
    }
}
