using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Measurement.Units;

/// <summary>What a maker says of an instrument: <c>0.5 % of full scale</c>, <c>1.5 % of reading + 3 digits</c>, <c>0.9 °F</c>, <c>±0.5 K (k=2)</c>, <c>1.1 °C or 0.4 % of reading</c> (the greater). A bound that is never exceeded unless it gives k (GUM 4.3.7).</summary>
public sealed class AccuracyStatement
{
    private readonly AccuracyTerm[][] _alternatives;

    internal AccuracyStatement(AccuracyTerm[][] alternatives, double? coverageFactor, string canonical, Message words)
    {
        _alternatives = alternatives;
        CoverageFactor = coverageFactor;
        Canonical = canonical;
        Words = words;
    }

    /// <summary>The canonical spelling.</summary>
    public string Canonical { get; }

    /// <summary>The statement in the words of a language.</summary>
    public Message Words { get; }

    /// <summary>Coverage factor when the statement gives one; otherwise the statement is a rectangular bound.</summary>
    public double? CoverageFactor { get; }

    /// <summary>Whether a part of it is of the full scale, which must then be known.</summary>
    public bool NeedsFullScale => Has(AccuracyTermKind.FullScale);

    /// <summary>Whether a part of it is in digits: the resolution must be known, and is already inside the bound.</summary>
    public bool IncludesDigits => Has(AccuracyTermKind.Digits);

    /// <summary>Reads a statement.</summary>
    /// <param name="text">The text as written.</param>
    /// <param name="dimension">What the instrument reads.</param>
    public static ParseResult<AccuracyStatement> Parse(string text, Dimension dimension) => AccuracyReader.Read(text, dimension);

    /// <summary>Half the width of the bound at a reading, SI; nothing when the full scale or the resolution it needs is not given.</summary>
    /// <param name="reading">The reading in the instrument's own unit: a percentage of 50 °F is not that of 10 °C.</param>
    /// <param name="unit">The instrument's unit.</param>
    /// <param name="fullScaleSi">Full scale as an SI difference from the instrument's zero.</param>
    /// <param name="resolutionSi">One step of the indication as an SI difference.</param>
    public double? HalfWidthAt(double reading, Unit unit, double? fullScaleSi = null, double? resolutionSi = null)
    {
        if ((NeedsFullScale && fullScaleSi is null) || (IncludesDigits && resolutionSi is null))
            return null;
        return _alternatives.Max(terms => terms.Sum(term => term.Kind switch
        {
            AccuracyTermKind.FullScale => term.Amount * Math.Abs(fullScaleSi.GetValueOrDefault()),
            AccuracyTermKind.Reading => term.Amount * Math.Abs(reading) * unit.Factor,
            AccuracyTermKind.Digits => term.Amount * resolutionSi.GetValueOrDefault(),
            _ => term.Amount,
        }));
    }

    /// <summary>The root cause of an instrument with this statement. Made once for an instrument and shared by all its readings, each with its own <see cref="HalfWidthAt"/> as sensitivity, so that a difference of two readings knows they came from one instrument.</summary>
    /// <param name="name">What it is, in words for the budget.</param>
    /// <param name="source">Where the statement comes from.</param>
    public RootCause ToRootCause(Message name, Message source) => CoverageFactor is { } k
        ? new RootCause(name, source, 1 / k, kind: CauseKind.Accuracy)
        : RootCause.FromHalfWidth(name, source, 1, kind: CauseKind.Accuracy);

    /// <inheritdoc/>
    public override string ToString() => Canonical;

    private bool Has(AccuracyTermKind kind) => _alternatives.Any(terms => terms.Any(term => term.Kind == kind));
}

/// <summary>One term of an accuracy statement.</summary>
/// <param name="Kind">What the number is of.</param>
/// <param name="Amount">A fraction for the two percentages, steps for digits, an SI difference for an amount.</param>
internal sealed record AccuracyTerm(AccuracyTermKind Kind, double Amount);

/// <summary>What a term of an accuracy statement is a part of.</summary>
internal enum AccuracyTermKind
{
    FullScale,
    Reading,
    Digits,
    Amount,
}

/// <summary>Reads accuracy statements: terms added with +, alternatives with "or".</summary>
internal static partial class AccuracyReader
{
    public static ParseResult<AccuracyStatement> Read(string text, Dimension dimension)
    {
        if (text.Length > PlainText.Limit)
            return FaultText.TooLong(text);
        var whole = new Excerpt(text, PlainText.Of(text), 0, text.Length);
        if (whole.Start == whole.End)
            return FaultText.Accuracy("", QuantityMessages.NotAnAccuracy, 0);
        var (k, statement) = TakeCoverage(whole);
        if (k is <= 0.5 or > 10)
            return FaultText.Accuracy(whole.Written, QuantityMessages.AccuracyFactor, whole.Start);
        if (Whichever().Match(statement.PlainPart) is { Success: true } whichever)
            statement = statement.Part(statement.Start, statement.Start + whichever.Index);
        var alternatives = new List<AccuracyTerm[]>();
        var spellings = new List<string>();
        var words = new List<Message>();
        foreach (var alternative in Split(statement, Or()))
        {
            var terms = new List<AccuracyTerm>();
            var parts = new List<string>();
            Message? said = null;
            foreach (var part in Split(Bare(alternative), Plus()))
            {
                var term = ReadTerm(Bare(part), dimension);
                if (!term.Ok)
                    return term.Fault;
                terms.Add(term.Value.Term);
                parts.Add(term.Value.Spelling);
                said = said is null ? term.Value.Words : QuantityMessages.SumOfTerms(said, term.Value.Words);
            }

            alternatives.Add([.. terms]);
            spellings.Add(string.Join(" + ", parts));
            words.Add(said!);
        }

        var canonical = string.Join(" or ", spellings) + (k is null ? "" : string.Create(CultureInfo.InvariantCulture, $" (k = {k})"));
        var statementWords = words.Count == 1 ? words[0] : QuantityMessages.GreaterOf(new([.. words], ListJoin.Or));
        return new AccuracyStatement([.. alternatives], k, canonical, k is { } factor ? QuantityMessages.WithCoverageFactor(statementWords, new(factor.ToString(CultureInfo.InvariantCulture))) : statementWords);
    }

    private static ParseResult<SpelledTerm> ReadTerm(Excerpt part, Dimension dimension)
    {
        var (number, fault) = NumberReader.Read(part.Plain, part.Start);
        if (fault is not null)
            return fault;
        if (number is not { } amount)
            return FaultText.Accuracy(part.Written, QuantityMessages.NotANumber, part.Start);
        if (amount.Text.StartsWith('-'))
            return FaultText.Accuracy(part.Written, QuantityMessages.AccuracyBelowZero, part.Start);
        var rest = part.Part(amount.End, part.End).PlainPart;
        if (FullScale().IsMatch(rest))
            return new SpelledTerm(new AccuracyTerm(AccuracyTermKind.FullScale, amount.Value / 100), $"{amount.Text} % of full scale", QuantityMessages.OfFullScale(new(amount.Text)));
        if (Reading().IsMatch(rest))
            return new SpelledTerm(new AccuracyTerm(AccuracyTermKind.Reading, amount.Value / 100), $"{amount.Text} % of reading", QuantityMessages.OfReading(new(amount.Text)));
        if (Digits().IsMatch(rest))
            return new SpelledTerm(new AccuracyTerm(AccuracyTermKind.Digits, amount.Value), $"{amount.Text} {(amount.Value.Equals(1) ? "digit" : "digits")}", QuantityMessages.Digits(new(amount.Text), amount.Value.Equals(1) ? QuantityMessages.DigitsNumber.One : QuantityMessages.DigitsNumber.Several));
        if (rest == "%" && dimension != Dimension.Ratio)
            return FaultText.Accuracy(part.Written, QuantityMessages.AccuracyOfWhat, part.Start);
        if (rest.Length == 0)
            return FaultText.Accuracy(part.Written, QuantityMessages.UnitMissing, part.Start);
        var difference = DifferenceOf(dimension);
        var unit = UnitReader.Find(rest, difference) ?? UnitReader.Find(rest, dimension);
        if (unit is null)
        {
            var at = QuantityParser.SkipSpaces(part.Plain, amount.End, part.End);
            return UnitReader.Read(part, amount, at, difference).Fault ?? FaultText.Accuracy(part.Written, QuantityMessages.NotAnAccuracy, part.Start);
        }

        return new SpelledTerm(new AccuracyTerm(AccuracyTermKind.Amount, amount.Value * unit.Factor), QuantityParser.Spell(amount.Text, unit), QuantityMessages.Amount(new(QuantityParser.Spell(amount.Text, unit))));
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

    [GeneratedRegex(@" *\(? *k *= *(?<k>\d{1,2}(?:\.\d{1,3})?) *\)?$", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Coverage();

    [GeneratedRegex(@"^(?:±|\+ ?/ ?-|\+-) *", RegexOptions.None, 10_000)]
    private static partial Regex Sign();

    [GeneratedRegex(@",? +or +", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Or();

    [GeneratedRegex(@",? *whichever is (?:the )?(?:greater|larger)$", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Whichever();

    [GeneratedRegex(@" *\+(?! ?/? ?-) *| *(?<=.)(?:±|\+ ?/ ?-) *", RegexOptions.None, 10_000)]
    private static partial Regex Plus();

    [GeneratedRegex(@"^% *(?:of +)?(?:full *scale|f\.? ?s\.?|span|range|full *scale reading)$", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex FullScale();

    [GeneratedRegex(@"^% *(?:of +)?(?:the +)?(?:reading|rdg\.?|indication|value|measured value|m\.?v\.?)$", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Reading();

    [GeneratedRegex(@"^(?:digits?|dgts?\.?|counts?|lsd)$", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Digits();

    private sealed record SpelledTerm(AccuracyTerm Term, string Spelling, Message Words);
}
