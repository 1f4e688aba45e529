using System.Text.Json;
using System.Text.Json.Serialization;
using Commission.Measurement.Corrections;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Records.Json;

/// <summary>What the JSON source generator writes for the record.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    WriteIndented = true,
    NewLine = "\n",
    RespectNullableAnnotations = true,
    Converters =
    [
        typeof(TenDigits), typeof(TenDigitsOrNull), typeof(LocationText),
        typeof(TradeWordConverter<Outcome>), typeof(TradeWordConverter<CorrectionKind>), typeof(TradeWordConverter<Verdict>), typeof(TradeWordConverter<DecisionRule>), typeof(TradeWordConverter<LimitKind>),
        typeof(TradeWordConverter<AxisScale>), typeof(TradeWordConverter<AxisName>), typeof(TradeWordConverter<CurveRole>),
        typeof(TradeWordConverter<LineRole>), typeof(TradeWordConverter<ColumnAlign>),
    ])]
[JsonSerializable(typeof(CommissioningRecord))]
internal sealed partial class RecordJsonContext : JsonSerializerContext;
