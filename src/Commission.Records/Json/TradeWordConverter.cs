using System.Text.Json.Serialization;

namespace Commission.Records.Json;

/// <summary>Reads and writes an enumeration in the trade's words; a number is refused.</summary>
/// <typeparam name="TEnum">The enumeration.</typeparam>
internal sealed class TradeWordConverter<TEnum>() : JsonStringEnumConverter<TEnum>(TradeWords.Policy, allowIntegerValues: false)
    where TEnum : struct, Enum;
