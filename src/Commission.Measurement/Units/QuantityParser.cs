using System.Text.RegularExpressions;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Measurement.Units;

/// <summary>Reads quantities as people write them: <c>118.4 psig</c>, <c>3/8 in</c>, <c>11 lb 4 oz</c>, <c>45.2 °F +/- 1.0 (k=1)</c>, <c>208 to 230 V</c>. Never guesses gauge or absolute; bad text comes back as a fault that says what to write.</summary>
public static partial class QuantityParser
{
    /// <summary>Reads one quantity.</summary>
    /// <param name="text">The text as written.</param>
    /// <param name="dimension">What the field holds. <see cref="Dimension.VacuumLevel"/> takes absolute levels only and refuses a depth; <see cref="Dimension.Pressure"/> takes any pressure that says what it is counted from.</param>
    /// <param name="bareUnit">Unit of a number without one; nothing when the field has no default.</param>
    public static ParseResult<ParsedQuantity> Parse(string text, Dimension dimension, Unit? bareUnit = null)
    {
        if (text.Length > PlainText.Limit)
            return FaultText.TooLong(text);
        var plain = PlainText.Of(text);
        if (UncertaintySign().Match(plain) is not { Success: true, Index: > 0 } sign)
        {
            var whole = ReadValue(new Excerpt(text, plain, 0, plain.Length), dimension, bareUnit);
            if (whole.Ok)
                return whole.Value.ToQuantity();
            return ParseRange(text, dimension, bareUnit).Value is { } range ? FaultText.RangeNotValue(text.Trim(), range) : whole.Fault;
        }

        var value = new Excerpt(text, plain, 0, sign.Index);
        var doubt = new Excerpt(text, plain, sign.Index + sign.Length, plain.Length);
        return UncertaintyReader.Read(doubt, dimension).Then(u => ReadValue(value, dimension, u.UnitForBareValue(dimension) ?? bareUnit).Then(v => u.AttachTo(v)));
    }

    /// <summary>Reads a pressure that counts from the atmosphere unless it says otherwise: what a nameplate calls PS is gauge by definition (Directive 2014/68/EU article 2 point 7).</summary>
    /// <param name="text">The text as written.</param>
    /// <param name="bareUnit">Unit of a number without one; nothing when the field has no default.</param>
    public static ParseResult<ParsedQuantity> ParseGauge(string text, Unit? bareUnit = null)
    {
        var stated = Parse(text, Dimension.Pressure, bareUnit);
        // 28 ± 0.5 bar has no unit of a pressure anywhere.
        if (stated.Ok || stated.Fault.Kind is not (FaultKind.ReferenceMissing or FaultKind.UnitMissing) || Parse(text, Dimension.PressureDifference) is not { Ok: true, Value: var plain })
            return stated;
        var gauge = UnitTable.For(Dimension.Pressure).FirstOrDefault(u => u.Reference == PressureReference.Gauge && u.Factor.Equals(plain.Unit.Factor));
        if (gauge is null)
            return stated;
        var symbol = plain.Canonical.IndexOf(" " + plain.Unit.Symbol, StringComparison.Ordinal) + 1;
        return plain with { Unit = gauge, Canonical = plain.Canonical[..symbol] + gauge.Symbol + plain.Canonical[(symbol + plain.Unit.Symbol.Length)..] };
    }

    /// <summary>Reads a range: both ends, the unit once or twice.</summary>
    /// <param name="text">The text as written, with <c>to</c> or a dash between the ends; a voltage may have a slash.</param>
    /// <param name="dimension">What the field holds.</param>
    /// <param name="bareUnit">Unit of numbers without one; nothing when the field has no default.</param>
    public static ParseResult<QuantityRange> ParseRange(string text, Dimension dimension, Unit? bareUnit = null)
    {
        if (text.Length > PlainText.Limit)
            return FaultText.TooLong(text);
        var plain = PlainText.Of(text);
        var split = (dimension == Dimension.Voltage ? VoltageRangeSign() : RangeSign()).Match(plain);
        if (!split.Success || split.Index == 0)
        {
            var single = ReadValue(new Excerpt(text, plain, 0, plain.Length), dimension, bareUnit);
            return single.Ok || string.IsNullOrWhiteSpace(text) ? FaultText.NotARange(text.Trim(), dimension) : single.Fault;
        }

        var low = new Excerpt(text, plain, 0, split.Index);
        var high = new Excerpt(text, plain, split.Index + split.Length, plain.Length);
        return ReadValue(high, dimension, bareUnit)
            .Then(upper => ReadValue(low, dimension, upper.Unit).Then<QuantityRange>(lower => Join(lower.ToQuantity(), upper.ToQuantity(), text)));
    }

    internal static ParseResult<WrittenValue> ReadValue(Excerpt excerpt, Dimension dimension, Unit? bareUnit)
    {
        var (text, at, end) = (excerpt.Plain, excerpt.Start, excerpt.End);
        if (at == end)
            return FaultText.Empty(dimension);
        var (number, fault) = NumberReader.Read(text, at);
        if (fault is not null)
            return fault;
        if (number is not { } first)
            return NoNumber(excerpt, dimension);
        var next = SkipSpaces(text, first.End, end);
        if (next == end)
        {
            return bareUnit is null
                ? FaultText.UnitMissing(excerpt.Written, first, dimension)
                : Possibility.Check(new WrittenValue(first, bareUnit, bareUnit, bareUnit.ToSi(first.Value), Spell(first.Text, bareUnit), excerpt), dimension);
        }

        if (NumberReader.StartsAt(text, next) && next > first.End)
            return TwoNumbers(excerpt);
        return UnitReader.Read(excerpt, first, next, dimension)
            .Then(part => part.End == end
                ? Possibility.Check(new WrittenValue(first, part.Unit, part.Unit, part.Unit.ToSi(first.Value), Spell(first.Text, part.Unit), excerpt), dimension)
                : CompoundReader.Read(excerpt, first, part, dimension).Then(v => Possibility.Check(v, dimension)));
    }

    /// <summary>Number and unit with a space; a pure number alone.</summary>
    internal static string Spell(string number, Unit unit) => unit.Symbol == "1" ? MessageWriter.WithTrueMinus(number) : $"{MessageWriter.WithTrueMinus(number)} {unit.Symbol}";

    internal static int SkipSpaces(string text, int at, int end)
    {
        while (at < end && text[at] == ' ')
            at++;
        return at;
    }

    private static ParseResult<QuantityRange> Join(ParsedQuantity lower, ParsedQuantity upper, string text)
    {
        if (lower.Si > upper.Si)
            return FaultText.BackwardRange(text.Trim(), $"{upper.Canonical} to {lower.Canonical}");
        var sameUnit = ReferenceEquals(lower.Unit, upper.Unit) && lower.Canonical.EndsWith(" " + lower.Unit.Symbol, StringComparison.Ordinal);
        var canonical = sameUnit
            ? $"{lower.Canonical[..^(lower.Unit.Symbol.Length + 1)]} to {upper.Canonical}"
            : $"{lower.Canonical} to {upper.Canonical}";
        return new QuantityRange(lower, upper, canonical);
    }

    private static ParseFault NoNumber(Excerpt excerpt, Dimension dimension)
    {
        var written = excerpt.Written;
        if (AboutWord().IsMatch(excerpt.PlainPart))
            return FaultText.NotOneReading(written, excerpt.Start);
        if (NumberWord().IsMatch(excerpt.PlainPart))
            return FaultText.InWords(written, dimension, excerpt.Start);
        return UnitTable.FindAny(written).Any()
            ? FaultText.UnitWithoutNumber(written, dimension, excerpt.Start)
            : FaultText.NotANumber(written, dimension, excerpt.Start);
    }

    private static ParseFault TwoNumbers(Excerpt excerpt) => SpacedThousands().Match(excerpt.PlainPart) is { Success: true } spaced
        ? FaultText.SpacedDigits(spaced.Value, excerpt.Start)
        : FaultText.TwoNumbers(excerpt.Written, excerpt.Start);

    [GeneratedRegex(@"±|\+ ?/ ?-|\+-", RegexOptions.None, 10_000)]
    private static partial Regex UncertaintySign();

    [GeneratedRegex(@"^[+-]?\d{1,3}(?: \d{3})+(?:\.\d+)?(?![\d.])", RegexOptions.None, 10_000)]
    private static partial Regex SpacedThousands();

    [GeneratedRegex(@" +to +| *(?:\.\.\.?|[…–—]) *|(?<=[\d°A-Za-z%]) *-(?= *\d)(?<!\d-)|(?<=\d) +- +(?=\d)|(?<=\d)-(?=\d+(?!\d*/))", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex RangeSign();

    [GeneratedRegex(@" +to +| *(?:\.\.\.?|[…–—]|-) *(?=\d)|(?<=\d{2}) */ *(?=\d{2})", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex VoltageRangeSign();

    [GeneratedRegex(@"^(?:~|≈|<|>|≤|≥|about\b|approx|ca\b|circa\b|around\b|under\b|over\b|less than\b|more than\b|above\b|below\b|max\b|min\b(?= *\d))", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex AboutWord();

    [GeneratedRegex(@"^(?:zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|a? ?hundred|a? ?thousand|half|quarter|a dozen|dozen|minus|none|nil|no)\b", RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex NumberWord();
}

/// <summary>A quantity as it was written.</summary>
/// <param name="Si">SI value; for a pressure counted from <see cref="Reference"/>.</param>
/// <param name="Unit">Unit used; of a compound the largest, of a bare number the field's default.</param>
/// <param name="Decimals">Decimals written, of a compound those of the last part; zero for a fraction.</param>
/// <param name="ResolutionSi">One step of the last digit written, as an SI difference; nothing for a fraction.</param>
/// <param name="Canonical">The canonical spelling, with the digits as written.</param>
/// <param name="Uncertainty">The uncertainty written after it, if any.</param>
public sealed record ParsedQuantity(double Si, Unit Unit, int Decimals, double? ResolutionSi, string Canonical, StatedUncertainty? Uncertainty)
{
    /// <summary>What a pressure is counted from; nothing for anything else.</summary>
    public PressureReference? Reference => Unit.Reference;

    /// <summary>The pressure with its reference. Only for a pressure, a vacuum level or a barometer reading.</summary>
    /// <exception cref="InvalidOperationException">The quantity is not a stated pressure.</exception>
    public StatedPressure ToStatedPressure() => new(Si, Reference ?? throw new InvalidOperationException($"{Canonical} is not a stated pressure."));

    /// <summary>As a quantity of a given kind.</summary>
    /// <typeparam name="T">The quantity; its dimension is the one that was parsed for.</typeparam>
    public T As<T>()
        where T : struct, IQuantity<T> => T.FromSi(Si);
}

/// <summary>A range as it was written: <c>208 to 230 V</c>.</summary>
/// <param name="Lower">Lower end.</param>
/// <param name="Upper">Upper end, not below the lower.</param>
/// <param name="Canonical">The canonical spelling.</param>
public sealed record QuantityRange(ParsedQuantity Lower, ParsedQuantity Upper, string Canonical);

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

/// <summary>Refuses values that cannot be.</summary>
internal static class Possibility
{
    // The highest sea-level pressure ever recorded is about 108 kPa: no depth reaches further.
    private const double DeepestVacuum = 110e3;

    public static ParseResult<WrittenValue> Check(WrittenValue value, Dimension dimension)
    {
        var written = value.Excerpt.Written;
        var at = value.Excerpt.Start;
        if (!double.IsFinite(value.Si))
            return FaultText.TooLarge(written, at);
        if (dimension == Dimension.Temperature && value.Si < 0)
            return FaultText.Impossible(written, QuantityMessages.BelowAbsoluteZero(new(written)), QuantityMessages.SignAndUnit, at);
        switch (value.Unit.Reference)
        {
            case PressureReference.Absolute when value.Si < 0:
                return FaultText.Impossible(written, QuantityMessages.AbsoluteBelowZero(new(written)), QuantityMessages.AbsoluteBelowZeroNext, at);
            case PressureReference.Gauge when value.Si < -DeepestVacuum:
                return FaultText.Impossible(written, QuantityMessages.BelowPerfectVacuum(new(written)), QuantityMessages.SignAndUnit, at);
            case PressureReference.BelowAtmosphere when value.Si < 0:
                return FaultText.Impossible(written, QuantityMessages.DepthWithMinus(new(written)), QuantityMessages.DepthWithMinusNext, at);
            case PressureReference.BelowAtmosphere when value.Si > DeepestVacuum:
                return FaultText.Impossible(written, QuantityMessages.DeeperThanVacuum(new(written)), QuantityMessages.NumberAndUnit, at);
        }

        return value.Si < 0 && NeverNegative(dimension)
            ? FaultText.Impossible(written, QuantityMessages.BelowZero(new(written), DimensionName.WithArticle(dimension)), QuantityMessages.WithoutMinus, at)
            : value;
    }

    private static bool NeverNegative(Dimension dimension) => dimension is
        Dimension.Area or Dimension.Volume or Dimension.Duration or Dimension.VolumeFlow or Dimension.Velocity or Dimension.Torque
        or Dimension.ElectricCurrent or Dimension.Capacitance or Dimension.Resistance or Dimension.Frequency or Dimension.MassPerLength
        or Dimension.Density or Dimension.PowerPerFlow or Dimension.FlowPerPower;
}
