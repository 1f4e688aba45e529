using System.Diagnostics.CodeAnalysis;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Measurement.Units;

/// <summary>Why a text is not the quantity asked for. The parts are sentences that stay apart; the caller adds the place.</summary>
/// <param name="Kind">What kind of thing is wrong.</param>
/// <param name="Found">What was found, as a sentence.</param>
/// <param name="Expected">What was expected, as a sentence; null when <paramref name="Found"/> says it.</param>
/// <param name="Advice">What to write instead, as a sentence.</param>
/// <param name="Offset">Where the fault starts, in characters from the start of the text.</param>
/// <param name="Length">How many characters it covers, at least one unless the text is empty.</param>
public sealed record ParseFault(FaultKind Kind, Message Found, Message? Expected, Message Advice, int Offset, int Length)
{
    /// <summary>The advice for a file in SI: no unit of inch and pound is offered in it.</summary>
    public Message SiAdvice { get; init; } = Advice;

    /// <summary>The sentences joined.</summary>
    /// <param name="language">The language.</param>
    public string Text(Language language) => string.Join(' ', new[] { Found, Expected, Advice }.Where(part => part is not null).Select(part => MessageWriter.Words.Format(part!, language)).Where(part => part.Length > 0));
}

/// <summary>What kind of thing is wrong with a written quantity.</summary>
public enum FaultKind
{
    /// <summary>Nothing was written.</summary>
    Empty,

    /// <summary>There is no number where one belongs.</summary>
    NotANumber,

    /// <summary>A number in words.</summary>
    NumberInWords,

    /// <summary>A comma in a number.</summary>
    Comma,

    /// <summary>A number without its unit, and the field has no default.</summary>
    UnitMissing,

    /// <summary>A unit nobody knows.</summary>
    UnknownUnit,

    /// <summary>A unit of something else.</summary>
    WrongDimension,

    /// <summary>A pressure that does not say gauge or absolute.</summary>
    ReferenceMissing,

    /// <summary>A depth below atmosphere where an absolute vacuum is asked for.</summary>
    DepthNotVacuum,

    /// <summary>A value that cannot be.</summary>
    Impossible,

    /// <summary>Parts that do not belong together.</summary>
    BadCompound,

    /// <summary>An uncertainty that cannot be read.</summary>
    BadUncertainty,

    /// <summary>A range that cannot be read.</summary>
    BadRange,

    /// <summary>An accuracy statement that cannot be read.</summary>
    BadAccuracy,

    /// <summary>More text than a quantity has.</summary>
    Leftover,
}

/// <summary>Something that was read, or why it could not be.</summary>
/// <typeparam name="T">What is read.</typeparam>
public sealed class ParseResult<T>
    where T : class
{
    private ParseResult(T? value, ParseFault? fault)
    {
        Value = value;
        Fault = fault;
    }

    /// <summary>Whether it could be read.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool Ok => Value is not null;

    /// <summary>What was read; nothing when it could not be.</summary>
    public T? Value { get; }

    /// <summary>Why it could not be read; nothing when it was.</summary>
    public ParseFault? Fault { get; }

    /// <summary>It was read.</summary>
    public static implicit operator ParseResult<T>(T value) => new(value, null);

    /// <summary>It could not be read.</summary>
    public static implicit operator ParseResult<T>(ParseFault fault) => new(null, fault);

    internal ParseResult<TOther> Then<TOther>(Func<T, ParseResult<TOther>> next)
        where TOther : class => Ok ? next(Value) : Fault;
}

/// <summary>Why a quantity cannot be read, in one place.</summary>
internal static class FaultText
{
    public static ParseFault Empty(Dimension dimension) =>
        Advised(si => Example(dimension, si), advice => new(FaultKind.Empty, QuantityMessages.Nothing, Expected(dimension), advice, 0, 0));

    public static ParseFault TooLong(string text) =>
        new(FaultKind.Leftover, QuantityMessages.TooLong(text.Length), null, QuantityMessages.TooLongNext, 0, text.Length);

    public static ParseFault NotANumber(string text, Dimension dimension, int at) =>
        Advised(si => Example(dimension, si), advice => new(FaultKind.NotANumber, QuantityMessages.NotANumber(new(text)), Expected(dimension), advice, at, Math.Max(1, text.Length)));

    public static ParseFault UnitWithoutNumber(string text, Dimension dimension, int at) =>
        Advised(si => Example(dimension, si), advice => new(FaultKind.NotANumber, QuantityMessages.UnitAlone(new(text)), Expected(dimension), advice, at, text.Length));

    public static ParseFault NotOneReading(string text, int at) =>
        new(FaultKind.NotANumber, QuantityMessages.NotOneReading(new(text)), null, QuantityMessages.NotOneReadingNext, at, text.Length);

    public static ParseFault InWords(string text, Dimension dimension, int at) =>
        Advised(si => QuantityMessages.InWordsNext(new(ExampleText(dimension, si))), advice => new(FaultKind.NumberInWords, QuantityMessages.InWords(new(text)), null, advice, at, text.Length));

    public static ParseFault Comma(string number, int at)
    {
        var point = number.LastIndexOf('.');
        var comma = number.LastIndexOf(',');
        var first = number.IndexOf(',', StringComparison.Ordinal);
        NameValue whole = new(number.Replace(",", "", StringComparison.Ordinal)), pointed = new(number.Replace(',', '.'));
        Message advice;
        if (point > comma)
            advice = QuantityMessages.CommaOut(whole);
        else if (point >= 0)
            advice = QuantityMessages.CommaToPoint(new(number.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')));
        else if (first != comma)
            advice = QuantityMessages.CommasOut(whole);
        else if (number.Length - comma == 4)
            advice = QuantityMessages.CommaEither(whole, pointed);
        else
            advice = QuantityMessages.CommaToPoint(pointed);
        return new ParseFault(FaultKind.Comma, QuantityMessages.Comma(new(number)), null, advice, at, number.Length);
    }

    public static ParseFault TooLarge(string number, int at) =>
        new(FaultKind.Impossible, QuantityMessages.TooLarge(new(number)), null, QuantityMessages.TooLargeNext, at, number.Length);

    public static ParseFault OddFraction(string fraction, int at) =>
        new(FaultKind.NotANumber, QuantityMessages.OddFraction(new(fraction)), null, QuantityMessages.OddFractionNext, at, fraction.Length);

    public static ParseFault SpacedDigits(string digits, int at) =>
        new(FaultKind.Leftover, QuantityMessages.SpacedDigits(new(digits)), null, QuantityMessages.SpaceOut(new(digits.Replace(" ", "", StringComparison.Ordinal))), at, digits.Length);

    public static ParseFault TwoNumbers(string written, int at) =>
        new(FaultKind.Leftover, QuantityMessages.TwoNumbers(new(written)), null, QuantityMessages.TwoNumbersNext, at, written.Length);

    public static ParseFault UnitMissing(string written, NumberToken number, Dimension dimension)
    {
        Message Write(bool si) => QuantityMessages.WriteOneOf(AnyOf(UnitTable.OfferedFor(dimension, si).Where(u => u.Symbol != "1").Take(2).Select(u => $"{number.Text} {u.Symbol}")));
        return Advised(Write, advice => new(FaultKind.UnitMissing, QuantityMessages.UnitMissing(new(written)), Expected(dimension), advice, number.Start, written.Length));
    }

    public static ParseFault UnknownUnit(string unit, NumberToken number, Dimension dimension, int at)
    {
        // A slip in psig is no Pa(g), though that is the nearest of the units in SI.
        Message Advice(bool si) => NearestUnit.Of(unit, UnitTable.For(dimension)) is { } nearest && !(si && nearest.IsCustomary) ? QuantityMessages.DidYouMean(new($"{number.Text} {nearest.Symbol}")) : WriteIn(dimension, si);
        return Advised(Advice, advice => new(FaultKind.UnknownUnit, QuantityMessages.UnknownUnit(new(unit)), Expected(dimension), advice, at, unit.Length));
    }

    public static ParseFault WrongDimension(string written, Unit unit, Dimension dimension, int at) =>
        Advised(si => WriteIn(dimension, si), advice => new(FaultKind.WrongDimension, QuantityMessages.WrongDimension(new(written), DimensionName.WithArticle(unit.Dimension)), Expected(dimension), advice, at, written.Length));

    public static ParseFault ReferenceInDifference(string written, NumberToken number, Unit unit, int at)
    {
        var plain = UnitTable.For(Dimension.PressureDifference).FirstOrDefault(u => u.Factor.Equals(unit.Factor));
        var found = unit.Reference == PressureReference.Absolute ? QuantityMessages.AbsoluteDifference(new(written)) : QuantityMessages.GaugeDifference(new(written));
        Message Advice(bool si) => plain is null || (si && plain.IsCustomary) ? WriteIn(Dimension.PressureDifference, si) : QuantityMessages.WriteThis(new($"{number.Text} {plain.Symbol}"));
        return Advised(Advice, advice => new(FaultKind.WrongDimension, found, Expected(Dimension.PressureDifference), advice, at, written.Length));
    }

    public static ParseFault ReferenceMissing(string written, NumberToken number, Unit unit, Dimension dimension, int at) =>
        Advised(si => SayReference(number, unit, dimension, si), advice => new(FaultKind.ReferenceMissing, QuantityMessages.ReferenceMissing(new(written)), null, advice, at, written.Length));

    private static Message SayReference(NumberToken number, Unit unit, Dimension dimension, bool si)
    {
        Unit? Counted(PressureReference from) => UnitTable.For(Dimension.Pressure).FirstOrDefault(u => u.Reference == from && u.Factor.Equals(unit.Factor));
        NameValue Written(Unit counted) => new($"{number.Text} {counted.Symbol}");
        if (si && unit.IsCustomary)
            return WriteIn(dimension, si);
        var (gauge, absolute, depth) = (Counted(PressureReference.Gauge), Counted(PressureReference.Absolute), Counted(PressureReference.BelowAtmosphere));
        if (dimension == Dimension.VacuumLevel)
            return absolute is null ? WriteIn(dimension, si) : QuantityMessages.VacuumReferenceNext(Written(absolute));
        if (gauge is not null && absolute is not null)
            return QuantityMessages.GaugeReferenceNext(Written(gauge), new(absolute.Symbol));
        if (depth is not null && absolute is not null)
            return QuantityMessages.DepthReferenceNext(Written(depth), new(absolute.Symbol));
        return absolute is not null ? QuantityMessages.AbsoluteReferenceNext(Written(absolute)) : WriteIn(dimension, si);
    }

    public static ParseFault DepthNotVacuum(string written, Unit unit, int at) => new(
        FaultKind.DepthNotVacuum,
        unit.Reference == PressureReference.Gauge ? QuantityMessages.GaugeNotVacuum(new(written)) : QuantityMessages.DepthNotVacuum(new(written)),
        Expected(Dimension.VacuumLevel),
        QuantityMessages.VacuumNext,
        at,
        written.Length);

    public static ParseFault GaugeBarometer(string written, int at) => Advised(
        si => QuantityMessages.GaugeBarometerNext(AnyOf(si ? ["834 hPa"] : ["24.64 inHg", "834 hPa"])),
        advice => new(FaultKind.WrongDimension, QuantityMessages.GaugeBarometer(new(written)), Expected(Dimension.AtmosphericPressure), advice, at, written.Length));

    public static ParseFault Impossible(string written, Message found, Message advice, int at) =>
        new(FaultKind.Impossible, found, null, advice, at, written.Length);

    public static ParseFault Compound(string written, Message found, Message advice, int at) =>
        new(FaultKind.BadCompound, found, null, advice, at, written.Length);

    public static ParseFault Leftover(string rest, Dimension dimension, int at) =>
        Advised(si => Example(dimension, si), advice => new(FaultKind.Leftover, QuantityMessages.Leftover(new(rest)), Expected(dimension), advice, at, rest.Length));

    public static ParseFault UncertaintyWithoutNumber(string written, Dimension dimension, int at) => Advised(
        si => QuantityMessages.Like(new($"{ExampleText(dimension, si)} +/- {(dimension == Dimension.Temperature ? "1.0" : "1")}")),
        advice => new(
            FaultKind.BadUncertainty,
            written.Length == 0 ? QuantityMessages.NothingBehind : QuantityMessages.NotANumber(new(written)),
            null,
            advice,
            at,
            Math.Max(1, written.Length)));

    public static ParseFault Uncertainty(string written, Message found, Message advice, int at) =>
        new(FaultKind.BadUncertainty, found, null, advice, at, Math.Max(1, written.Length));

    public static ParseFault NotARange(string written, Dimension dimension) =>
        Advised(si => QuantityMessages.NotARangeNext(new(RangeExample(dimension, si))), advice => new(FaultKind.BadRange, QuantityMessages.NotARange(new(written)), QuantityMessages.RangeExpected, advice, 0, Math.Max(1, written.Length)));

    public static ParseFault RangeNotValue(string written, QuantityRange range) =>
        new(FaultKind.BadRange, QuantityMessages.RangeNotValue(new(written)), QuantityMessages.OneValueExpected, QuantityMessages.OneValueNext(AnyOf([range.Lower.Canonical, range.Upper.Canonical])), 0, Math.Max(1, written.Length));

    public static ParseFault BackwardRange(string written, string turned) =>
        new(FaultKind.BadRange, QuantityMessages.BackwardRange(new(written)), null, QuantityMessages.WriteThis(new(turned)), 0, written.Length);

    public static ParseFault Accuracy(string written, Func<TextValue, Message> found, int at) => Advised(
        si => QuantityMessages.AccuracyNext(new(si ? "0.02 bar" : "0.9 °F")),
        advice => new(FaultKind.BadAccuracy, written.Length == 0 ? QuantityMessages.Nothing : found(new(written)), QuantityMessages.AccuracyExpected, advice, at, Math.Max(1, written.Length)));

    public static ParseFault UnknownDisplayKey(string key, IReadOnlyList<string> keys) =>
        new(FaultKind.UnknownUnit, QuantityMessages.UnknownDisplayKey(new(key)), null, QuantityMessages.OneOf(Listed(keys)), 0, Math.Max(1, key.Length));

    public static ParseFault NotADisplayUnit(string unit, string key, IReadOnlyList<Unit> units) => Advised(
        si => QuantityMessages.OneOf(Listed(units.Where(u => !si || !u.IsCustomary).Select(u => u.Symbol))),
        advice => new(FaultKind.UnknownUnit, QuantityMessages.NotADisplayUnit(new(unit), new(key)), null, advice, 0, Math.Max(1, unit.Length)));

    private static Message WriteIn(Dimension dimension, bool si) =>
        QuantityMessages.WriteIn(AnyOf(UnitTable.OfferedFor(dimension, si).Select(u => u.Symbol).Where(s => s != "1").Take(6)));

    private static ListValue AnyOf(IEnumerable<string> names) => new([.. names.Select(n => new NameValue(n))], ListJoin.Or);

    private static ListValue Listed(IEnumerable<string> names) => new([.. names.Select(n => new NameValue(n))], ListJoin.Comma);

    private static ParseFault Advised(Func<bool, Message> advice, Func<Message, ParseFault> fault) => fault(advice(false)) with { SiAdvice = advice(true) };

    private static Message Expected(Dimension dimension) => QuantityMessages.Expected(DimensionName.WithArticle(dimension));

    private static Message Example(Dimension dimension, bool si) => QuantityMessages.Like(new(ExampleText(dimension, si)));

    private static string RangeExample(Dimension dimension, bool si) => dimension switch
    {
        Dimension.Voltage => "208 to 230 V",
        Dimension.Temperature => si ? "18 to 40 °C" : "65 to 105 °F",
        _ => $"10 to 20 {UnitTable.OfferedFor(dimension, si).First().Symbol}",
    };

    private static string ExampleText(Dimension dimension, bool si) => dimension switch
    {
        Dimension.Pressure => si ? "8.15 bar(g)" : "118.4 psig",
        Dimension.VacuumLevel => si ? "64 Pa" : "480 micron",
        Dimension.AtmosphericPressure => si ? "834 hPa" : "24.64 inHg",
        Dimension.PressureDifference => si ? "17 kPa" : "2.5 psi",
        Dimension.Temperature => si ? "7.3 °C" : "45.2 °F",
        Dimension.TemperatureDifference => si ? "5.5 K" : "10 °F",
        Dimension.Mass => si ? "5.10 kg" : "11 lb 4 oz",
        Dimension.Length => si ? "12.8 m" : "42 ft",
        Dimension.Duration => "12 min",
        Dimension.VolumeFlow => si ? "2040 m³/h" : "1200 cfm",
        Dimension.MassFlow => "5 g/yr",
        Dimension.Power => si ? "10.5 kW" : "3 ton",
        Dimension.Torque => si ? "27 N·m" : "20 lbf·ft",
        Dimension.Voltage => "236 V",
        Dimension.ElectricCurrent => "14.9 A",
        Dimension.Capacitance => "45 µF",
        Dimension.Ratio => "50 %",
        Dimension.MassPerLength => si ? "56 g/m" : "0.60 oz/ft",
        Dimension.PowerPerFlow => si ? "0.26 W/(m³/h)" : "0.45 W/cfm",
        Dimension.FlowPerPower => si ? "190 m³/h/kW" : "400 cfm/ton",
        _ => $"10 {UnitTable.OfferedFor(dimension, si).First().Symbol}",
    };
}
