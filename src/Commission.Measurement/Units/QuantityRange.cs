namespace Commission.Measurement.Units;

/// <summary>A range as it was written: <c>208 to 230 V</c>.</summary>
/// <param name="Lower">Lower end.</param>
/// <param name="Upper">Upper end, not below the lower.</param>
/// <param name="Canonical">The canonical spelling.</param>
public sealed record QuantityRange(ParsedQuantity Lower, ParsedQuantity Upper, string Canonical);
