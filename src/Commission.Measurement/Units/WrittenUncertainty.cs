using System.Globalization;
using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>What stands behind the ± sign, before it is known which value it belongs to.</summary>
/// <param name="Number">The number.</param>
/// <param name="UnitText">The unit as written; empty when left out.</param>
/// <param name="CoverageFactor">Coverage factor k.</param>
/// <param name="Excerpt">Where it was written.</param>
internal sealed record WrittenUncertainty(NumberToken Number, string UnitText, double CoverageFactor, Excerpt Excerpt)
{
    /// <summary>The unit of <c>45.2 ± 1.0 °F</c>, where the value itself has none.</summary>
    public Unit? UnitForBareValue(Dimension dimension) => UnitText.Length == 0 ? null : UnitReader.Find(UnitText, dimension);

    public ParseResult<ParsedQuantity> AttachTo(WrittenValue value)
    {
        var unit = UnitOf(value);
        if (unit is null)
        {
            return FaultText.Uncertainty(
                Excerpt.Written,
                UnitText is "%" ? "gives the uncertainty as a percentage" : $"has a unit that does not fit {value.Canonical}",
                $"Write it in the unit of the reading, such as +/- 1 {value.LastUnit.Symbol}.",
                Excerpt.Start);
        }

        var stated = new StatedUncertainty(Number.Value * unit.Factor, CoverageFactor);
        var k = CoverageFactor.Equals(2) ? "" : string.Create(CultureInfo.InvariantCulture, $" (k = {CoverageFactor})");
        var simple = ReferenceEquals(value.Unit, value.LastUnit) && unit.Symbol == value.Unit.Symbol;
        var canonical = simple
            ? $"{value.Last.Text} ± {QuantityParser.Spell(Number.Text, unit)}{k}"
            : $"{value.Canonical} ± {QuantityParser.Spell(Number.Text, unit)}{k}";
        return value.ToQuantity(stated, canonical);
    }

    private Unit? UnitOf(WrittenValue value)
    {
        if (UnitText.Length == 0)
            return value.LastUnit;
        var dimension = value.Unit.Dimension;
        var difference = dimension switch
        {
            Dimension.Temperature => Dimension.TemperatureDifference,
            Dimension.Pressure or Dimension.VacuumLevel or Dimension.AtmosphericPressure => Dimension.PressureDifference,
            _ => dimension,
        };
        return UnitReader.Find(UnitText, dimension) is { } same && (ReferenceEquals(same, value.Unit) || difference == dimension)
            ? same
            : UnitReader.Find(UnitText, difference);
    }
}
