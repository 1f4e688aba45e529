using System.Diagnostics.CodeAnalysis;
using System.Globalization;
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

/// <summary>Every sentence about a quantity that cannot be read, in one place.</summary>
internal static class FaultText
{
    public static ParseFault Empty(Dimension dimension) =>
        Advised(si => Example(dimension, si), advice => new(FaultKind.Empty, "Nothing is written.", Expected(dimension), advice, 0, 0));

    public static ParseFault TooLong(string text) =>
        new(FaultKind.Leftover, Invariant($"This is too long for a quantity ({text.Length} characters)."), "", "Write one number and its unit; put words in the notes.", 0, text.Length);

    public static ParseFault NotANumber(string text, Dimension dimension, int at) =>
        Advised(si => Example(dimension, si), advice => new(FaultKind.NotANumber, $"\"{text}\" does not begin with a number.", Expected(dimension), advice, at, Math.Max(1, text.Length)));

    public static ParseFault UnitWithoutNumber(string text, Dimension dimension, int at) =>
        Advised(si => Example(dimension, si), advice => new(FaultKind.NotANumber, $"\"{text}\" is a unit without a number.", Expected(dimension), advice, at, text.Length));

    public static ParseFault NotOneReading(string text, int at) =>
        new(FaultKind.NotANumber, $"\"{text}\" is not one reading.", "", "Write the number itself; how sure it is goes behind it, such as +/- 1.0.", at, text.Length);

    public static ParseFault InWords(string text, Dimension dimension, int at) =>
        Advised(si => $"Write the number in digits, such as {ExampleText(dimension, si)}.", advice => new(FaultKind.NumberInWords, $"\"{text}\" has its number in words.", "", advice, at, text.Length));

    public static ParseFault Comma(string number, int at)
    {
        var point = number.LastIndexOf('.');
        var comma = number.LastIndexOf(',');
        var first = number.IndexOf(',', StringComparison.Ordinal);
        string advice;
        if (point > comma)
            advice = $"Write {number.Replace(",", "", StringComparison.Ordinal)}, without the comma.";
        else if (point >= 0)
            advice = $"Write {number.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')}, with a point for the decimals.";
        else if (first != comma)
            advice = $"Write {number.Replace(",", "", StringComparison.Ordinal)}, without commas.";
        else if (number.Length - comma == 4)
            advice = $"Write {number.Replace(",", "", StringComparison.Ordinal)}, or {number.Replace(',', '.')} if the comma stands for a decimal point.";
        else
            advice = $"Write {number.Replace(',', '.')}, with a point for the decimals.";
        return new ParseFault(FaultKind.Comma, $"\"{number}\" has a comma in the number.", "", advice, at, number.Length);
    }

    public static ParseFault TooLarge(string number, int at) =>
        new(FaultKind.Impossible, $"\"{number}\" is larger than any quantity.", "", "Check the exponent.", at, number.Length);

    public static ParseFault OddFraction(string fraction, int at) =>
        new(FaultKind.NotANumber, $"\"{fraction}\" is not a fraction of a tube or flare size.", "", "Write a decimal number, or a fraction such as 3/8 or 1 1/8.", at, fraction.Length);

    public static ParseFault SpacedDigits(string digits, int at) =>
        new(FaultKind.Leftover, $"\"{digits}\" looks like one number with a space in it.", "", $"Write {digits.Replace(" ", "", StringComparison.Ordinal)}, without the space.", at, digits.Length);

    public static ParseFault TwoNumbers(string written, int at) =>
        new(FaultKind.Leftover, $"\"{written}\" has two numbers before a unit.", "", "Write one number and its unit.", at, written.Length);

    public static ParseFault UnitMissing(string written, NumberToken number, Dimension dimension)
    {
        string Write(bool si) => $"Write {string.Join(" or ", UnitTable.OfferedFor(dimension, si).Where(u => u.Symbol != "1").Take(2).Select(u => $"{number.Text} {u.Symbol}"))}.";
        return Advised(Write, advice => new(FaultKind.UnitMissing, $"\"{written}\" has no unit.", Expected(dimension), advice, number.Start, written.Length));
    }

    public static ParseFault UnknownUnit(string unit, NumberToken number, Dimension dimension, int at)
    {
        // A slip in psig is no Pa(g), though that is the nearest of the units in SI.
        string Advice(bool si) => NearestUnit.Of(unit, UnitTable.For(dimension)) is { } nearest && !(si && nearest.IsCustomary) ? $"Did you mean {number.Text} {nearest.Symbol}?" : $"Write it in {UnitList(dimension, si)}.";
        return Advised(Advice, advice => new(FaultKind.UnknownUnit, $"\"{unit}\" is not a unit known here.", Expected(dimension), advice, at, unit.Length));
    }

    public static ParseFault WrongDimension(string written, Unit unit, Dimension dimension, int at) =>
        Advised(si => $"Write it in {UnitList(dimension, si)}.", advice => new(FaultKind.WrongDimension, $"\"{written}\" is {DimensionName.WithArticle(unit.Dimension)}.", Expected(dimension), advice, at, written.Length));

    public static ParseFault ReferenceInDifference(string written, NumberToken number, Unit unit, int at)
    {
        var plain = UnitTable.For(Dimension.PressureDifference).FirstOrDefault(u => u.Factor.Equals(unit.Factor));
        var what = unit.Reference == PressureReference.Absolute ? "an absolute pressure" : "a pressure against the atmosphere";
        string Advice(bool si) => plain is null || (si && plain.IsCustomary) ? $"Write it in {UnitList(Dimension.PressureDifference, si)}." : $"Write {number.Text} {plain.Symbol}.";
        return Advised(Advice, advice => new(FaultKind.WrongDimension, $"\"{written}\" is {what}.", Expected(Dimension.PressureDifference), advice, at, written.Length));
    }

    public static ParseFault ReferenceMissing(string written, NumberToken number, Unit unit, Dimension dimension, int at) =>
        Advised(si => SayReference(number, unit, dimension, si), advice => new(FaultKind.ReferenceMissing, $"\"{written}\" does not say gauge or absolute.", "", advice, at, written.Length));

    private static string SayReference(NumberToken number, Unit unit, Dimension dimension, bool si)
    {
        Unit? Counted(PressureReference from) => UnitTable.For(Dimension.Pressure).FirstOrDefault(u => u.Reference == from && u.Factor.Equals(unit.Factor));
        if (si && unit.IsCustomary)
            return $"Write it in {UnitList(dimension, si)}.";
        var (gauge, absolute, depth) = (Counted(PressureReference.Gauge), Counted(PressureReference.Absolute), Counted(PressureReference.BelowAtmosphere));
        if (dimension == Dimension.VacuumLevel)
            return absolute is null ? $"Write it in {UnitList(dimension, si)}." : $"Write {number.Text} {absolute.Symbol} if it is absolute, or the reading of a vacuum gauge in micron, Torr, Pa or mbar.";
        if (gauge is not null && absolute is not null)
            return $"Write {number.Text} {gauge.Symbol} (what a service gauge shows) or {absolute.Symbol}.";
        if (depth is not null && absolute is not null)
            return $"Write {number.Text} {depth.Symbol} (the depth a compound gauge shows) or {absolute.Symbol}.";
        return absolute is not null ? $"Write {number.Text} {absolute.Symbol} if it is absolute." : $"Write it in {UnitList(dimension, si)}.";
    }

    public static ParseFault DepthNotVacuum(string written, Unit unit, int at) => new(
        FaultKind.DepthNotVacuum,
        unit.Reference == PressureReference.Gauge
            ? $"\"{written}\" is counted from the atmosphere, which a gauge cannot resolve near vacuum."
            : $"\"{written}\" is a depth below the atmosphere, and a compound gauge cannot show dryness.",
        Expected(Dimension.VacuumLevel),
        "Write what a vacuum gauge reads, in micron, Torr, Pa or mbar.",
        at,
        written.Length);

    public static ParseFault GaugeBarometer(string written, int at) => Advised(
        si => $"Write what a barometer at the site reads, such as {(si ? "" : "24.64 inHg or ")}834 hPa.",
        advice => new(FaultKind.WrongDimension, $"\"{written}\" is counted from the atmosphere itself.", Expected(Dimension.AtmosphericPressure), advice, at, written.Length));

    public static ParseFault Impossible(string written, string why, string advice, int at) =>
        new(FaultKind.Impossible, $"\"{written}\" {why}.", "", advice, at, written.Length);

    public static ParseFault Compound(string written, string why, string advice, int at) =>
        new(FaultKind.BadCompound, $"\"{written}\" {why}.", "", advice, at, written.Length);

    public static ParseFault Leftover(string rest, Dimension dimension, int at) =>
        Advised(si => Example(dimension, si), advice => new(FaultKind.Leftover, $"\"{rest}\" is left over after the quantity.", Expected(dimension), advice, at, rest.Length));

    public static ParseFault UncertaintyWithoutNumber(string written, Dimension dimension, int at) => Advised(
        si => $"Write it like {ExampleText(dimension, si)} +/- {(dimension == Dimension.Temperature ? "1.0" : "1")}.",
        advice => new(
            FaultKind.BadUncertainty,
            written.Length == 0 ? "Nothing stands behind the ± sign." : $"\"{written}\" does not begin with a number.",
            "",
            advice,
            at,
            Math.Max(1, written.Length)));

    public static ParseFault Uncertainty(string written, string why, string advice, int at) =>
        new(FaultKind.BadUncertainty, $"\"{written}\" {why}.", "", advice, at, Math.Max(1, written.Length));

    public static ParseFault NotARange(string written, Dimension dimension) =>
        Advised(si => $"Write both ends, such as {RangeExample(dimension, si)}.", advice => new(FaultKind.BadRange, $"\"{written}\" is not a range.", $"A range of {DimensionName.Of(dimension)} is expected here.", advice, 0, Math.Max(1, written.Length)));

    public static ParseFault RangeNotValue(string written, QuantityRange range) =>
        new(FaultKind.BadRange, $"\"{written}\" is a range.", "One value is expected here.", $"Write one value, such as {range.Lower.Canonical} or {range.Upper.Canonical}.", 0, Math.Max(1, written.Length));

    public static ParseFault BackwardRange(string written, string turned) =>
        new(FaultKind.BadRange, $"\"{written}\" runs from the higher to the lower end.", "", $"Write {turned}.", 0, written.Length);

    public static ParseFault Accuracy(string written, string why, int at) => Advised(
        si => $"Write it like 0.5 % of full scale, 1.5 % of reading + 3 digits, {(si ? "0.02 bar" : "0.9 °F")}, or ±0.5 K (k=2).",
        advice => new(FaultKind.BadAccuracy, written.Length == 0 ? "Nothing is written." : $"\"{written}\" {why}.", "An accuracy is expected here.", advice, at, Math.Max(1, written.Length)));

    public static ParseFault UnknownDisplayKey(string key, IReadOnlyList<string> keys) =>
        new(FaultKind.UnknownUnit, $"\"{key}\" is nothing that has a unit of its own.", "", $"Write one of: {string.Join(", ", keys)}.", 0, Math.Max(1, key.Length));

    public static ParseFault NotADisplayUnit(string unit, string key, IReadOnlyList<Unit> units) => Advised(
        si => $"Write one of: {string.Join(", ", units.Where(u => !si || !u.IsCustomary).Select(u => u.Symbol))}.",
        advice => new(FaultKind.UnknownUnit, $"\"{unit}\" cannot be the unit of {key}.", "", advice, 0, Math.Max(1, unit.Length)));

    private static string UnitList(Dimension dimension, bool si)
    {
        var symbols = UnitTable.OfferedFor(dimension, si).Select(u => u.Symbol).Where(s => s != "1").Take(6).ToArray();
        return symbols.Length == 1 ? symbols[0] : string.Join(", ", symbols[..^1]) + " or " + symbols[^1];
    }

    private static ParseFault Advised(Func<bool, string> advice, Func<string, ParseFault> fault) => fault(advice(false)) with { SiAdvice = advice(true) };

    private static string Expected(Dimension dimension)
    {
        var name = DimensionName.WithArticle(dimension);
        return $"{char.ToUpperInvariant(name[0])}{name[1..]} is expected here.";
    }

    private static string Example(Dimension dimension, bool si) => $"Write it like {ExampleText(dimension, si)}.";

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

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
