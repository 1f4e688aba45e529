using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>Reads what stands behind the first part of 11 lb 4 oz, 5 ft 3 in, 1 h 20 min.</summary>
internal static class CompoundReader
{
    /// <summary>Whether this is ever written in parts.</summary>
    public static bool Allows(Dimension dimension) => dimension is Dimension.Mass or Dimension.Length or Dimension.Duration;

    public static ParseResult<WrittenValue> Read(Excerpt excerpt, NumberToken first, UnitPart firstPart, Dimension dimension)
    {
        if (!Allows(dimension))
            return FaultText.Leftover(excerpt.Source[firstPart.End..excerpt.End], dimension, firstPart.End);
        var (number, part) = (first, firstPart);
        var sum = Math.Abs(first.Value) * part.Unit.Factor;
        var canonical = QuantityParser.Spell(first.Text, part.Unit);
        while (part.End < excerpt.End)
        {
            if (!number.IsWhole)
                return Fault(excerpt, "has decimals before its last part", "Only the last part may have decimals.");
            var larger = part.Unit;
            var at = QuantityParser.SkipSpaces(excerpt.Plain, part.End, excerpt.End);
            var (next, fault) = NumberReader.Read(excerpt.Plain, at);
            if (fault is not null)
                return fault;
            if (next is not { } read)
                return FaultText.Leftover(excerpt.Source[at..excerpt.End], dimension, at);
            var unitAt = QuantityParser.SkipSpaces(excerpt.Plain, read.End, excerpt.End);
            if (unitAt == excerpt.End)
                return Fault(excerpt, $"has no unit behind {read.Text}", $"Write every part with its unit, such as {Example(dimension)}.");
            var unit = UnitReader.Read(excerpt, read, unitAt, dimension);
            if (!unit.Ok)
                return unit.Fault;
            (number, part) = (read, unit.Value);
            if (part.Unit.Factor >= larger.Factor)
                return Fault(excerpt, "does not go from the larger to the smaller unit", $"Write it like {Example(dimension)}.");
            if (number.Value < 0 || number.Text.StartsWith('-'))
                return Fault(excerpt, "has a minus sign inside", "A minus sign stands in front of the whole.");
            if (number.Value * part.Unit.Factor >= larger.Factor * (1 - 1e-12))
                return Fault(excerpt, $"has {QuantityParser.Spell(number.Text, part.Unit)}, which is a whole {larger.Symbol} or more", $"Carry it over to the {larger.Symbol}.");
            sum += number.Value * part.Unit.Factor;
            canonical += " " + QuantityParser.Spell(number.Text, part.Unit);
        }

        var negative = first.Text.StartsWith('-');
        return new WrittenValue(number, firstPart.Unit, part.Unit, negative ? -sum : sum, canonical, excerpt);
    }

    private static ParseFault Fault(Excerpt excerpt, string why, string advice) =>
        FaultText.Compound(excerpt.Written, why, advice, excerpt.Start);

    private static string Example(Dimension dimension) => dimension switch
    {
        Dimension.Mass => "11 lb 4 oz",
        Dimension.Length => "5 ft 3 in",
        _ => "1 h 20 min",
    };
}
