using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Measurement.Units;

/// <summary>Reads what stands behind the ± sign of a reading: a number, perhaps a unit, perhaps <c>(k=1)</c>.</summary>
internal static partial class UncertaintyReader
{
    private const double UsualCoverageFactor = 2;

    public static ParseResult<WrittenUncertainty> Read(Excerpt excerpt, Dimension dimension)
    {
        var (number, fault) = NumberReader.Read(excerpt.Plain, excerpt.Start);
        if (fault is not null)
            return fault;
        if (number is not { } half)
            return FaultText.UncertaintyWithoutNumber(excerpt.Written, dimension, excerpt.Start);
        if (half.Text.StartsWith('-'))
            return FaultText.Uncertainty(excerpt.Written, QuantityMessages.UncertaintyBelowZero(new(excerpt.Written)), QuantityMessages.WithoutMinus, excerpt.Start);

        var (k, end) = (UsualCoverageFactor, excerpt.End);
        if (Coverage().Match(excerpt.PlainPart) is { Success: true } coverage)
        {
            end = excerpt.Start + coverage.Index;
            k = double.Parse(coverage.Groups["k"].Value, CultureInfo.InvariantCulture);
            if (k is < 0.5 or > 10)
                return FaultText.Uncertainty(coverage.Value.Trim(), QuantityMessages.NotACoverageFactor(new(coverage.Value.Trim())), QuantityMessages.NotACoverageFactorNext, end);
        }

        var unit = excerpt.Part(half.End, Math.Max(half.End, end));
        if (unit.PlainPart is not ("" or "%") && !UnitTable.FindAny(unit.PlainPart).Any())
            return FaultText.Uncertainty(unit.Written, QuantityMessages.NotAUnitOrFactor(new(unit.Written)), QuantityMessages.NotAUnitOrFactorNext, unit.Start);
        return new WrittenUncertainty(half, unit.PlainPart, k, excerpt);
    }

    [GeneratedRegex(@" *\(? *k *= *(?<k>\d{1,2}(?:\.\d{1,3})?) *\)?$", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Coverage();
}

/// <summary>The uncertainty written after a reading: <c>+/- 1.0</c>, k = 2 unless <c>(k=1)</c> is written.</summary>
/// <param name="HalfWidthSi">What stands after the sign, as an SI difference, above or equal to zero.</param>
/// <param name="CoverageFactor">Coverage factor k.</param>
public sealed record StatedUncertainty(double HalfWidthSi, double CoverageFactor)
{
}

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
                UnitText is "%" ? QuantityMessages.UncertaintyAsPercentage(new(Excerpt.Written)) : QuantityMessages.UncertaintyUnit(new(Excerpt.Written), new(value.Canonical)),
                QuantityMessages.UncertaintyNext(new(value.LastUnit.Symbol)),
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
