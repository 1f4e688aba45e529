using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Commission.Records.Json;

/// <summary>
/// The record as JSON for people and programs: members in a fixed order, camelCase, indented, units and signs readable,
/// verdicts in the trade's words, every computed number with 10 significant digits.
/// </summary>
public static class RecordJson
{
    // The escaping meant for HTML would turn every ± and ° into \u00b1 and \u00b0.
    private static readonly Lazy<JsonTypeInfo<CommissioningRecord>> Shape = new(static () =>
        (JsonTypeInfo<CommissioningRecord>)new RecordJsonContext(new JsonSerializerOptions(RecordJsonContext.Default.Options)
        {
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        }).GetTypeInfo(typeof(CommissioningRecord))!);

    /// <summary>Writes a record; the same record gives the same bytes.</summary>
    /// <param name="record">The record.</param>
    /// <returns>UTF-8 text ending in a line feed.</returns>
    public static byte[] Write(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        using var buffer = new MemoryStream();
        JsonSerializer.Serialize(buffer, record, Shape.Value);
        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    /// <summary>Reads a record that this program wrote.</summary>
    /// <param name="utf8">UTF-8 JSON.</param>
    /// <returns>The record.</returns>
    /// <exception cref="FormatException">It is not a record; use <see cref="TryRead"/> for a file of unknown origin.</exception>
    public static CommissioningRecord Read(ReadOnlySpan<byte> utf8) =>
        TryRead(utf8, out var record, out var fault) ? record : throw new FormatException(fault);

    /// <summary>Reads a record of unknown origin.</summary>
    /// <param name="utf8">UTF-8 JSON, with or without a byte order mark.</param>
    /// <param name="record">The record, when it is one.</param>
    /// <param name="fault">What is wrong with it, for a person, when it is not one.</param>
    /// <returns>True when it is a record.</returns>
    public static bool TryRead(
        ReadOnlySpan<byte> utf8,
        [NotNullWhen(true)] out CommissioningRecord? record,
        [NotNullWhen(false)] out string? fault)
    {
        if (utf8.StartsWith("\uFEFF"u8)) utf8 = utf8[3..];
        try
        {
            record = JsonSerializer.Deserialize(utf8, Shape.Value);
        }
        catch (JsonException unreadable)
        {
            record = null;
            fault = Fault(unreadable);
            return false;
        }

        if (record is null)
        {
            fault = "The file holds only null, not a record.";
            return false;
        }

        if (record.Version is < 1 or > CommissioningRecord.CurrentVersion)
        {
            fault = string.Create(
                CultureInfo.InvariantCulture,
                $"The record is of version {record.Version}; this program reads versions 1 to {CommissioningRecord.CurrentVersion}.");
            record = null;
            return false;
        }

        fault = null;
        return true;
    }

    private static string Fault(JsonException unreadable) => string.Create(
        CultureInfo.InvariantCulture,
        $"The file is not a record: line {(unreadable.LineNumber ?? 0) + 1}, at {Place(unreadable.Path)}, does not fit schemas/record.schema.json (a wrong kind of value, or a missing member).");

    private static string Place(string? path) => path is null or "" or "$" ? "the outermost object" : path;
}
