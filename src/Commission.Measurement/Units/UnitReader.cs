using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Measurement.Units;

/// <summary>Reads the unit behind a number, and says what is wrong with it when it is not one of the field.</summary>
internal static class UnitReader
{
    /// <summary>Reads the unit that starts at a place: up to the end, or up to a space with a number behind it.</summary>
    public static ParseResult<UnitPart> Read(Excerpt excerpt, NumberToken number, int at, Dimension dimension)
    {
        var end = EndOfUnit(excerpt, at);
        var spelling = excerpt.Plain[at..end].TrimEnd();
        if (Find(spelling, dimension) is { } unit)
            return new UnitPart(unit, end);

        // 1h20min, 5'3": the unit ends where the next number begins.
        var digit = spelling.AsSpan().IndexOfAnyInRange('0', '9');
        if (digit > 0 && CompoundReader.Allows(dimension) && !UnitTable.FindAny(spelling).Any()
            && Find(spelling[..digit].TrimEnd(), dimension) is { } first)
        {
            return new UnitPart(first, at + digit);
        }

        return Explain(excerpt, number, at, spelling, dimension);
    }

    /// <summary>The unit of a spelling that somebody wrote. The unit of pure numbers has a name for tables only, and nothing begins with a sign.</summary>
    public static Unit? Find(string written, Dimension dimension) =>
        written.Length > 0 && written[0] is not ('-' or '+' or '*' or '/' or '.' or '^' or ')') && UnitTable.Find(written, dimension) is { Symbol: not "1" } unit ? unit : null;

    private static int EndOfUnit(Excerpt excerpt, int at)
    {
        for (var i = at + 1; i < excerpt.End; i++)
        {
            if (excerpt.Plain[i - 1] == ' ' && NumberReader.StartsAt(excerpt.Plain, i))
                return i;
        }

        return excerpt.End;
    }

    private static ParseFault Explain(Excerpt excerpt, NumberToken number, int at, string spelling, Dimension dimension)
    {
        var written = excerpt.Source[number.Start..(at + spelling.Length)];
        var stated = Find(spelling, Dimension.Pressure);
        var difference = Find(spelling, Dimension.PressureDifference);
        switch (dimension)
        {
            case Dimension.VacuumLevel when stated is not null:
                return FaultText.DepthNotVacuum(written, stated, number.Start);
            case Dimension.AtmosphericPressure when stated is not null:
                return FaultText.GaugeBarometer(written, number.Start);
            case Dimension.PressureDifference when stated is not null:
                return FaultText.ReferenceInDifference(written, number, stated, number.Start);
            case Dimension.Pressure or Dimension.VacuumLevel when difference is not null && difference.Symbol is not ("inwc" or "mmH2O"):
                return FaultText.ReferenceMissing(written, number, difference, dimension, number.Start);
        }

        return UnitTable.FindAny(spelling).FirstOrDefault(u => Find(spelling, u.Dimension) is not null) is { } other
            ? FaultText.WrongDimension(written, other, dimension, number.Start)
            : FaultText.UnknownUnit(excerpt.Source[at..(at + spelling.Length)], number, dimension, at);
    }
}

/// <summary>A unit that was read and where it ended.</summary>
internal sealed record UnitPart(Unit Unit, int End);

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
                return Fault(excerpt, QuantityMessages.CompoundDecimals(new(excerpt.Written)), QuantityMessages.CompoundDecimalsNext);
            var larger = part.Unit;
            var at = QuantityParser.SkipSpaces(excerpt.Plain, part.End, excerpt.End);
            var (next, fault) = NumberReader.Read(excerpt.Plain, at);
            if (fault is not null)
                return fault;
            if (next is not { } read)
                return FaultText.Leftover(excerpt.Source[at..excerpt.End], dimension, at);
            var unitAt = QuantityParser.SkipSpaces(excerpt.Plain, read.End, excerpt.End);
            if (unitAt == excerpt.End)
                return Fault(excerpt, QuantityMessages.CompoundUnit(new(excerpt.Written), new(read.Text)), QuantityMessages.CompoundUnitNext(new(Example(dimension))));
            var unit = UnitReader.Read(excerpt, read, unitAt, dimension);
            if (!unit.Ok)
                return unit.Fault;
            (number, part) = (read, unit.Value);
            if (part.Unit.Factor >= larger.Factor)
                return Fault(excerpt, QuantityMessages.CompoundOrder(new(excerpt.Written)), QuantityMessages.Like(new(Example(dimension))));
            if (number.Value < 0 || number.Text.StartsWith('-'))
                return Fault(excerpt, QuantityMessages.CompoundMinus(new(excerpt.Written)), QuantityMessages.CompoundMinusNext);
            if (number.Value * part.Unit.Factor >= larger.Factor * (1 - 1e-12))
                return Fault(excerpt, QuantityMessages.CompoundCarry(new(excerpt.Written), new(QuantityParser.Spell(number.Text, part.Unit)), new(larger.Symbol)), QuantityMessages.CompoundCarryNext(new(larger.Symbol)));
            sum += number.Value * part.Unit.Factor;
            canonical += " " + QuantityParser.Spell(number.Text, part.Unit);
        }

        var negative = first.Text.StartsWith('-');
        return new WrittenValue(number, firstPart.Unit, part.Unit, negative ? -sum : sum, canonical, excerpt);
    }

    private static ParseFault Fault(Excerpt excerpt, Message found, Message advice) =>
        FaultText.Compound(excerpt.Written, found, advice, excerpt.Start);

    private static string Example(Dimension dimension) => dimension switch
    {
        Dimension.Mass => "11 lb 4 oz",
        Dimension.Length => "5 ft 3 in",
        _ => "1 h 20 min",
    };
}
