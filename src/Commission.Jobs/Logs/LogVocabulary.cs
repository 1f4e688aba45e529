using System.Collections.Frozen;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Jobs.Logs;

/// <summary>The words of headings, in lower case: common practice of loggers and spreadsheets, in the languages a gauge may speak.</summary>
internal static class LogVocabulary
{
    /// <summary>A channel's number behind its name.</summary>
    public static readonly char[] Digits = [.. "0123456789"];

    private static readonly FrozenSet<string> Vacuums = Set("vacuum vac vakuum vide vuoto vacío vacio vácuo vacuo próżnia alipaine");

    private static readonly FrozenSet<string> Pressures = Set(
        "pressure press pres p druck pression pressione presión presion pressão pressao druk tryk trykk tryck paine ciśnienie tlak pabs absolutdruck überdruck ueberdruck relativdruck suction discharge");

    private static readonly FrozenSet<string> Temperatures = Set("temperature temperatures temp temps tmp t temperatur température temperatura temperatuur lämpötila thermocouple thermistor deg degrees grad line pipe outlet bulb");

    private static readonly FrozenSet<string> Powers = Set("power watt watts leistung puissance potencia potenza effekt vermogen");

    private static readonly FrozenSet<string> Elsewhere = Set(
        "battery batt bat akku batterie voltage volt volts current amps ampere humidity rh feuchte humidité humedad flow speed velocity rpm frequency energy kwh wh factor va kva var kvar "
        + "signal rssi dbm raw adc counts count digits co2 oil distance volume weight mass charge resistance ohm ohms status state flag error enthalpy water filter particle capacitor");

    private static readonly FrozenSet<string> Derived = Set(
        "rate delta dp dt diff differential difference change slope gradient setpoint target limit threshold drift deviation offset correction rise spread range resolution accuracy uncertainty noise stdev std sigma variance partial saturation saturated sat size alarm alert warning trip dew dewpoint superheat subcooling");

    /// <summary>Words that put the numbers on a scale of their own.</summary>
    public static readonly FrozenSet<string> Scales = Set("log10 ln lg sqrt exp");

    /// <summary>What is said of a reading, no more.</summary>
    public static readonly FrozenSet<string> Readings = Set("reading readings value values level data column messwert wert valeur valor verdi måling");

    /// <summary>How rows were joined.</summary>
    public static readonly FrozenSet<string> Statistics = Set("avg average mean median min max minimum maximum mittel mittelwert");

    /// <summary>What may stand beside a quantity and says nothing about its unit.</summary>
    public static readonly FrozenSet<string> Beside = Set(
        "gauge gage sensor probe system circuit line side suction liquid vapor vapour gas low high lp hp nitrogen n test hold actual measured indoor outdoor evaporator condenser inlet outlet manifold "
        + "hose port pump in of the at channel ch no nr avg average mean median micron air room return supply wet dry bulb pipe compressor unit coil ambient log");

    public static bool IsQuantity(string word, Dimension asked) => asked switch
    {
        Dimension.VacuumLevel => Vacuums.Contains(word) || Pressures.Contains(word),
        Dimension.Pressure => Pressures.Contains(word),
        Dimension.Temperature => Temperatures.Contains(word),
        Dimension.Power => Powers.Contains(word) || word == "p",
        _ => false,
    };

    /// <summary>Whether a word names something else than is asked.</summary>
    public static bool IsOtherThan(string word, Dimension asked) => Elsewhere.Contains(word) || (asked switch
    {
        Dimension.VacuumLevel or Dimension.Pressure => word.Length > 1 && Temperatures.Contains(word) && !Beside.Contains(word),
        Dimension.Temperature => word.Length > 1 && (Pressures.Contains(word) || Vacuums.Contains(word)) && !Beside.Contains(word),
        _ => false,
    });

    /// <summary>Whether a word makes a difference, a rate or a wish of a quantity.</summary>
    public static bool IsDerived(LogWord word) => Derived.Contains(word.Lower) || (word.Text.Length > 0 && word.Text[0] is 'Δ' or '∆');

    /// <summary>From where a pressure counts, as far as the word says so.</summary>
    public static PressureReference? ReferenceOf(string word) => word switch
    {
        "a" or "abs" or "absolute" or "absolut" or "absolu" or "absoluto" or "assoluta" or "pabs" or "absolutdruck" => PressureReference.Absolute,
        "g" or "gauge" or "gage" or "rel" or "relativ" or "relative" or "überdruck" or "ueberdruck" or "relativdruck" => PressureReference.Gauge,
        _ => null,
    };

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
