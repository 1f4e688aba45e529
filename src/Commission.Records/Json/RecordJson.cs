using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Commission.Measurement.Corrections;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Records.Json;

/// <summary>
/// The record as JSON in the one form that RFC 8785 (JSON Canonicalization Scheme) allows: members sorted by name, no
/// blanks, numbers as ECMAScript prints them, UTF-8. These bytes are the file, what the digest covers and what a template sees.
/// Verdicts stand in the trade's words, every computed number has 10 significant digits.
/// </summary>
public static class RecordJson
{
    // Most records fit: a buffer that doubles its way up leaves large arrays behind, and clearing them away took 27 ms of a render (measured).
    private const int UsualSize = 1 << 20;

    private static readonly Lazy<JsonTypeInfo<CommissioningRecord>> Shape = new(static () =>
        (JsonTypeInfo<CommissioningRecord>)new JsonSerializerOptions(RecordJsonContext.Default.Options)
        {
            TypeInfoResolver = RecordJsonContext.Default.WithAddedModifier(SortMembers),
        }.GetTypeInfo(typeof(CommissioningRecord)));

    /// <summary>Writes a record; the same record gives the same bytes.</summary>
    /// <param name="record">The record.</param>
    /// <returns>Canonical JSON, without a line feed at its end.</returns>
    public static byte[] Write(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var buffer = new ArrayBufferWriter<byte>(UsualSize);
        using (var writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { SkipValidation = true }))
            JsonSerializer.Serialize(writer, record, Shape.Value);
        return buffer.WrittenSpan.ToArray();
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
        if (utf8.StartsWith("\uFEFF"u8))
            utf8 = utf8[3..];
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

    // All names are ASCII: their UTF-16 units, which the standard sorts by, sort as their characters do.
    private static void SortMembers(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object)
            return;
        foreach (var (order, member) in type.Properties.OrderBy(p => p.Name, StringComparer.Ordinal).Index().ToArray())
            member.Order = order;
    }

    private static string Fault(JsonException unreadable) => string.Create(
        CultureInfo.InvariantCulture,
        $"The file is not a record: line {(unreadable.LineNumber ?? 0) + 1}, at {Place(unreadable.Path)}, does not fit schemas/record.schema.json (a wrong kind of value, or a missing member).");

    private static string Place(string? path) => path is null or "" or "$" ? "the outermost object" : path;
}

/// <summary>What the JSON source generator writes for the record.</summary>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    RespectNullableAnnotations = true,
    Converters =
    [
        typeof(TextConverter), typeof(NumberConverter), typeof(NumberOrNullConverter), typeof(LocationConverter),
        typeof(MessageValueConverter),
        typeof(TradeWordConverter<Outcome>), typeof(TradeWordConverter<CorrectionKind>), typeof(TradeWordConverter<Verdict>), typeof(TradeWordConverter<DecisionRule>),
        typeof(TradeWordConverter<LimitKind>), typeof(TradeWordConverter<AxisScale>), typeof(TradeWordConverter<AxisName>), typeof(TradeWordConverter<CurveRole>),
        typeof(TradeWordConverter<LineRole>), typeof(TradeWordConverter<ColumnAlign>),
    ])]
[JsonSerializable(typeof(CommissioningRecord))]
internal sealed partial class RecordJsonContext : JsonSerializerContext;
