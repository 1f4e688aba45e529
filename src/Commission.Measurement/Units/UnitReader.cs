using Commission.Measurement.Quantities;

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
