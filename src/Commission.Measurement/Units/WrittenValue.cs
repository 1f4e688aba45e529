namespace Commission.Measurement.Units;

/// <summary>A value that was read, before any uncertainty behind it.</summary>
/// <param name="Last">The number of its last part.</param>
/// <param name="Unit">Unit of its first part.</param>
/// <param name="LastUnit">Unit of its last part.</param>
/// <param name="Si">SI value.</param>
/// <param name="Canonical">Canonical spelling.</param>
/// <param name="Excerpt">Where it was written.</param>
internal sealed record WrittenValue(NumberToken Last, Unit Unit, Unit LastUnit, double Si, string Canonical, Excerpt Excerpt)
{
    public ParsedQuantity ToQuantity(StatedUncertainty? uncertainty = null, string? canonical = null) =>
        new(Si, Unit, Last.Decimals, Last.Step * LastUnit.Factor, canonical ?? Canonical, uncertainty);
}
