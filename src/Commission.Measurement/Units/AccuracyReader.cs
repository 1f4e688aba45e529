using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>Reads accuracy statements: terms added with +, alternatives with "or".</summary>
internal static partial class AccuracyReader
{
    public static ParseResult<AccuracyStatement> Read(string text, Dimension dimension)
    {
        if (text.Length > PlainText.Limit)
            return FaultText.TooLong(text);
        var whole = new Excerpt(text, PlainText.Of(text), 0, text.Length);
        if (whole.Start == whole.End)
            return FaultText.Accuracy("", "is empty", 0);
        var (k, statement) = TakeCoverage(whole);
        if (k is <= 0.5 or > 10)
            return FaultText.Accuracy(whole.Written, "has a coverage factor that cannot be", whole.Start);
        if (Whichever().Match(statement.PlainPart) is { Success: true } whichever)
            statement = statement.Part(statement.Start, statement.Start + whichever.Index);
        var alternatives = new List<AccuracyTerm[]>();
        var spellings = new List<string>();
        foreach (var alternative in Split(statement, Or()))
        {
            var terms = new List<AccuracyTerm>();
            var parts = new List<string>();
            foreach (var part in Split(Bare(alternative), Plus()))
            {
                var term = ReadTerm(Bare(part), dimension);
                if (!term.Ok)
                    return term.Fault;
                terms.Add(term.Value.Term);
                parts.Add(term.Value.Spelling);
            }

            alternatives.Add([.. terms]);
            spellings.Add(string.Join(" + ", parts));
        }

        var canonical = string.Join(" or ", spellings) + (k is null ? "" : string.Create(CultureInfo.InvariantCulture, $" (k = {k})"));
        return new AccuracyStatement([.. alternatives], k, canonical);
    }

    private static ParseResult<SpelledTerm> ReadTerm(Excerpt part, Dimension dimension)
    {
        var (number, fault) = NumberReader.Read(part.Plain, part.Start);
        if (fault is not null)
            return fault;
        if (number is not { } amount)
            return FaultText.Accuracy(part.Written, "does not begin with a number", part.Start);
        if (amount.Text.StartsWith('-'))
            return FaultText.Accuracy(part.Written, "is an accuracy below zero", part.Start);
        var rest = part.Part(amount.End, part.End).PlainPart;
        if (FullScale().IsMatch(rest))
            return new SpelledTerm(new AccuracyTerm(AccuracyTermKind.FullScale, amount.Value / 100), $"{amount.Text} % of full scale");
        if (Reading().IsMatch(rest))
            return new SpelledTerm(new AccuracyTerm(AccuracyTermKind.Reading, amount.Value / 100), $"{amount.Text} % of reading");
        if (Digits().IsMatch(rest))
            return new SpelledTerm(new AccuracyTerm(AccuracyTermKind.Digits, amount.Value), $"{amount.Text} {(amount.Value.Equals(1) ? "digit" : "digits")}");
        if (rest == "%" && dimension != Dimension.Ratio)
            return FaultText.Accuracy(part.Written, "does not say of what", part.Start);
        if (rest.Length == 0)
            return FaultText.Accuracy(part.Written, "has no unit", part.Start);
        var difference = DifferenceOf(dimension);
        var unit = UnitReader.Find(rest, difference) ?? UnitReader.Find(rest, dimension);
        if (unit is null)
        {
            var at = QuantityParser.SkipSpaces(part.Plain, amount.End, part.End);
            return UnitReader.Read(part, amount, at, difference).Fault ?? FaultText.Accuracy(part.Written, "is not an accuracy", part.Start);
        }

        return new SpelledTerm(new AccuracyTerm(AccuracyTermKind.Amount, amount.Value * unit.Factor), QuantityParser.Spell(amount.Text, unit));
    }

    private static Dimension DifferenceOf(Dimension dimension) => dimension switch
    {
        Dimension.Temperature => Dimension.TemperatureDifference,
        Dimension.Pressure or Dimension.VacuumLevel or Dimension.AtmosphericPressure => Dimension.PressureDifference,
        _ => dimension,
    };

    private static (double? CoverageFactor, Excerpt Statement) TakeCoverage(Excerpt whole)
    {
        var match = Coverage().Match(whole.PlainPart);
        return match.Success
            ? (double.Parse(match.Groups["k"].Value, CultureInfo.InvariantCulture), whole.Part(whole.Start, whole.Start + match.Index))
            : (null, whole);
    }

    // ±, and brackets around the whole.
    private static Excerpt Bare(Excerpt part)
    {
        var start = part.Start + Sign().Match(part.PlainPart).Length;
        var inner = part.Part(start, Math.Max(start, part.End));
        return inner.PlainPart is ['(', .., ')'] ? inner.Part(inner.Start + 1, inner.End - 1) : inner;
    }

    private static IEnumerable<Excerpt> Split(Excerpt whole, Regex separator)
    {
        var start = whole.Start;
        foreach (Match match in separator.Matches(whole.PlainPart))
        {
            yield return whole.Part(start, whole.Start + match.Index);
            start = whole.Start + match.Index + match.Length;
        }

        yield return whole.Part(start, whole.End);
    }

    [GeneratedRegex(@" *\(? *k *= *(?<k>\d{1,2}(?:\.\d{1,3})?) *\)?$", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Coverage();

    [GeneratedRegex(@"^(?:±|\+ ?/ ?-|\+-) *", RegexOptions.None, 1000)]
    private static partial Regex Sign();

    [GeneratedRegex(@",? +or +", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Or();

    [GeneratedRegex(@",? *whichever is (?:the )?(?:greater|larger)$", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Whichever();

    [GeneratedRegex(@" *\+(?! ?/? ?-) *| *(?<=.)(?:±|\+ ?/ ?-) *", RegexOptions.None, 1000)]
    private static partial Regex Plus();

    [GeneratedRegex(@"^% *(?:of +)?(?:full *scale|f\.? ?s\.?|span|range|full *scale reading)$", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex FullScale();

    [GeneratedRegex(@"^% *(?:of +)?(?:the +)?(?:reading|rdg\.?|indication|value|measured value|m\.?v\.?)$", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Reading();

    [GeneratedRegex(@"^(?:digits?|dgts?\.?|counts?|lsd)$", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Digits();

    private sealed record SpelledTerm(AccuracyTerm Term, string Spelling);
}
