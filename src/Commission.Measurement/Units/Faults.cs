using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>Why a text is not the quantity asked for. The parts are sentences that stay apart; the caller adds the place.</summary>
/// <param name="Kind">What kind of thing is wrong.</param>
/// <param name="Found">What was found, as a sentence.</param>
/// <param name="Expected">What was expected, as a sentence; empty when <paramref name="Found"/> says it.</param>
/// <param name="Advice">What to write instead, as a sentence.</param>
/// <param name="Offset">Where the fault starts, in characters from the start of the text.</param>
/// <param name="Length">How many characters it covers, at least one unless the text is empty.</param>
public sealed record ParseFault(FaultKind Kind, string Found, string Expected, string Advice, int Offset, int Length)
{
    /// <summary>The sentences joined.</summary>
    public string Message => string.Join(' ', new[] { Found, Expected, Advice }.Where(part => part.Length > 0));
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
        new(FaultKind.Empty, "Nothing is written.", Expected(dimension), Example(dimension), 0, 0);

    public static ParseFault TooLong(string text) =>
        new(FaultKind.Leftover, Invariant($"This is too long for a quantity ({text.Length} characters)."), "", "Write one number and its unit; put words in the notes.", 0, text.Length);

    public static ParseFault NotANumber(string text, Dimension dimension, int at) =>
        new(FaultKind.NotANumber, $"\"{text}\" does not begin with a number.", Expected(dimension), Example(dimension), at, Math.Max(1, text.Length));

    public static ParseFault UnitWithoutNumber(string text, Dimension dimension, int at) =>
        new(FaultKind.NotANumber, $"\"{text}\" is a unit without a number.", Expected(dimension), Example(dimension), at, text.Length);

    public static ParseFault NotOneReading(string text, int at) =>
        new(FaultKind.NotANumber, $"\"{text}\" is not one reading.", "", "Write the number itself; how sure it is goes behind it, such as +/- 1.0.", at, text.Length);

    public static ParseFault InWords(string text, Dimension dimension, int at) =>
        new(FaultKind.NumberInWords, $"\"{text}\" has its number in words.", "", $"Write the number in digits, such as {ExampleText(dimension)}.", at, text.Length);

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
        var units = UnitTable.For(dimension).Where(u => u.Symbol != "1").Take(2).Select(u => $"{number.Text} {u.Symbol}");
        return new ParseFault(FaultKind.UnitMissing, $"\"{written}\" has no unit.", Expected(dimension), $"Write {string.Join(" or ", units)}.", number.Start, written.Length);
    }

    public static ParseFault UnknownUnit(string unit, NumberToken number, Dimension dimension, int at)
    {
        var nearest = NearestUnit.Of(unit, UnitTable.For(dimension));
        var advice = nearest is null ? $"Write it in {UnitList(dimension)}." : $"Did you mean {number.Text} {nearest.Symbol}?";
        return new ParseFault(FaultKind.UnknownUnit, $"\"{unit}\" is not a unit known here.", Expected(dimension), advice, at, unit.Length);
    }

    public static ParseFault WrongDimension(string written, Unit unit, Dimension dimension, int at) =>
        new(FaultKind.WrongDimension, $"\"{written}\" is {DimensionName.WithArticle(unit.Dimension)}.", Expected(dimension), $"Write it in {UnitList(dimension)}.", at, written.Length);

    public static ParseFault ReferenceInDifference(string written, NumberToken number, Unit unit, int at)
    {
        var plain = UnitTable.For(Dimension.PressureDifference).FirstOrDefault(u => u.Factor.Equals(unit.Factor));
        var what = unit.Reference == PressureReference.Absolute ? "an absolute pressure" : "a pressure against the atmosphere";
        return new ParseFault(FaultKind.WrongDimension, $"\"{written}\" is {what}.", Expected(Dimension.PressureDifference), plain is null ? $"Write it in {UnitList(Dimension.PressureDifference)}." : $"Write {number.Text} {plain.Symbol}.", at, written.Length);
    }

    public static ParseFault ReferenceMissing(string written, NumberToken number, Unit unit, Dimension dimension, int at)
    {
        var gauge = UnitTable.For(Dimension.Pressure).FirstOrDefault(u => u.Reference == PressureReference.Gauge && u.Factor.Equals(unit.Factor));
        var absolute = UnitTable.For(Dimension.Pressure).FirstOrDefault(u => u.Reference == PressureReference.Absolute && u.Factor.Equals(unit.Factor));
        var depth = UnitTable.For(Dimension.Pressure).FirstOrDefault(u => u.Reference == PressureReference.BelowAtmosphere && u.Factor.Equals(unit.Factor));
        string advice;
        if (dimension == Dimension.VacuumLevel)
            advice = absolute is null ? $"Write it in {UnitList(dimension)}." : $"Write {number.Text} {absolute.Symbol} if it is absolute, or the reading of a vacuum gauge in micron, Torr, Pa or mbar.";
        else if (gauge is not null && absolute is not null)
            advice = $"Write {number.Text} {gauge.Symbol} (what a service gauge shows) or {absolute.Symbol}.";
        else if (depth is not null && absolute is not null)
            advice = $"Write {number.Text} {depth.Symbol} (the depth a compound gauge shows) or {absolute.Symbol}.";
        else
            advice = absolute is not null ? $"Write {number.Text} {absolute.Symbol} if it is absolute." : $"Write it in {UnitList(dimension)}.";
        return new ParseFault(FaultKind.ReferenceMissing, $"\"{written}\" does not say gauge or absolute.", "", advice, at, written.Length);
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

    public static ParseFault GaugeBarometer(string written, int at) => new(
        FaultKind.WrongDimension, $"\"{written}\" is counted from the atmosphere itself.", Expected(Dimension.AtmosphericPressure), "Write what a barometer at the site reads, such as 24.64 inHg or 834 hPa.", at, written.Length);

    public static ParseFault Impossible(string written, string why, string advice, int at) =>
        new(FaultKind.Impossible, $"\"{written}\" {why}.", "", advice, at, written.Length);

    public static ParseFault Compound(string written, string why, string advice, int at) =>
        new(FaultKind.BadCompound, $"\"{written}\" {why}.", "", advice, at, written.Length);

    public static ParseFault Leftover(string rest, Dimension dimension, int at) =>
        new(FaultKind.Leftover, $"\"{rest}\" is left over after the quantity.", Expected(dimension), Example(dimension), at, rest.Length);

    public static ParseFault UncertaintyWithoutNumber(string written, Dimension dimension, int at) => new(
        FaultKind.BadUncertainty,
        written.Length == 0 ? "Nothing stands behind the ± sign." : $"\"{written}\" does not begin with a number.",
        "",
        $"Write it like {(dimension == Dimension.Temperature ? "45.2 °F +/- 1.0" : ExampleText(dimension) + " +/- 1")}.",
        at,
        Math.Max(1, written.Length));

    public static ParseFault Uncertainty(string written, string why, string advice, int at) =>
        new(FaultKind.BadUncertainty, $"\"{written}\" {why}.", "", advice, at, Math.Max(1, written.Length));

    public static ParseFault NotARange(string written, Dimension dimension) =>
        new(FaultKind.BadRange, $"\"{written}\" is not a range.", $"A range of {DimensionName.Of(dimension)} is expected here.", $"Write both ends, such as {RangeExample(dimension)}.", 0, Math.Max(1, written.Length));

    public static ParseFault RangeNotValue(string written, QuantityRange range) =>
        new(FaultKind.BadRange, $"\"{written}\" is a range.", "One value is expected here.", $"Write one value, such as {range.Lower.Canonical} or {range.Upper.Canonical}.", 0, Math.Max(1, written.Length));

    public static ParseFault BackwardRange(string written, string turned) =>
        new(FaultKind.BadRange, $"\"{written}\" runs from the higher to the lower end.", "", $"Write {turned}.", 0, written.Length);

    public static ParseFault Accuracy(string written, string why, int at) => new(
        FaultKind.BadAccuracy, written.Length == 0 ? "Nothing is written." : $"\"{written}\" {why}.", "An accuracy is expected here.", "Write it like 0.5 % of full scale, 1.5 % of reading + 3 digits, 0.9 °F, or ±0.5 K (k=2).", at, Math.Max(1, written.Length));

    public static ParseFault UnknownDisplayKey(string key, IReadOnlyList<string> keys) =>
        new(FaultKind.UnknownUnit, $"\"{key}\" is nothing that has a unit of its own.", "", $"Write one of: {string.Join(", ", keys)}.", 0, Math.Max(1, key.Length));

    public static ParseFault NotADisplayUnit(string unit, string key, IReadOnlyList<string> symbols) =>
        new(FaultKind.UnknownUnit, $"\"{unit}\" cannot be the unit of {key}.", "", $"Write one of: {string.Join(", ", symbols)}.", 0, Math.Max(1, unit.Length));

    public static string UnitList(Dimension dimension)
    {
        var symbols = UnitTable.For(dimension).Select(u => u.Symbol).Where(s => s != "1").Take(6).ToArray();
        return symbols.Length == 1 ? symbols[0] : string.Join(", ", symbols[..^1]) + " or " + symbols[^1];
    }

    private static string Expected(Dimension dimension)
    {
        var name = DimensionName.WithArticle(dimension);
        return $"{char.ToUpperInvariant(name[0])}{name[1..]} is expected here.";
    }

    private static string Example(Dimension dimension) => $"Write it like {ExampleText(dimension)}.";

    private static string RangeExample(Dimension dimension) => dimension switch
    {
        Dimension.Voltage => "208 to 230 V",
        Dimension.Temperature => "65 to 105 °F",
        _ => $"10 to 20 {UnitTable.For(dimension).First().Symbol}",
    };

    private static string ExampleText(Dimension dimension) => dimension switch
    {
        Dimension.Pressure => "118.4 psig",
        Dimension.VacuumLevel => "480 micron",
        Dimension.AtmosphericPressure => "24.64 inHg",
        Dimension.PressureDifference => "2.5 psi",
        Dimension.Temperature => "45.2 °F",
        Dimension.TemperatureDifference => "10 °F",
        Dimension.Mass => "11 lb 4 oz",
        Dimension.Length => "42 ft",
        Dimension.Duration => "12 min",
        Dimension.VolumeFlow => "1200 cfm",
        Dimension.MassFlow => "5 g/yr",
        Dimension.Power => "3 ton",
        Dimension.Torque => "20 lbf·ft",
        Dimension.Voltage => "236 V",
        Dimension.ElectricCurrent => "14.9 A",
        Dimension.Capacitance => "45 µF",
        Dimension.Ratio => "50 %",
        Dimension.MassPerLength => "0.60 oz/ft",
        Dimension.PowerPerFlow => "0.45 W/cfm",
        Dimension.FlowPerPower => "400 cfm/ton",
        _ => $"10 {UnitTable.For(dimension).First().Symbol}",
    };

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
