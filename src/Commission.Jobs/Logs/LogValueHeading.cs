using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Jobs.Logs;

/// <summary>What the heading of a column says about its readings.</summary>
internal enum LogHeadingKind
{
    /// <summary>The unit, and with it that the column is what is asked.</summary>
    Unit,

    /// <summary>A unit of pressure, but not whether it counts from the atmosphere or from nothing.</summary>
    NoReference,

    /// <summary>The quantity asked, without a unit.</summary>
    Quantity,

    /// <summary>That it is a reading, no more.</summary>
    Reading,

    /// <summary>Something that is not understood: it may be a unit.</summary>
    Unknown,

    /// <summary>Something else than is asked: another quantity, a rate, a set point.</summary>
    Other,
}

/// <summary>What the heading of a column says about its readings: the unit is taken only where every word beside it is understood.</summary>
/// <param name="Kind">What it says.</param>
/// <param name="Unit">The unit; of a pressure without reference the unit of its differences.</param>
internal sealed record LogValueHeading(LogHeadingKind Kind, Unit? Unit = null)
{
    private const int LongestUnit = 5;

    private static readonly LogValueHeading Unknown = new(LogHeadingKind.Unknown);
    private static readonly LogValueHeading Other = new(LogHeadingKind.Other);

    /// <summary>Reads a heading.</summary>
    /// <param name="heading">The heading.</param>
    /// <param name="asked">What the column is to hold.</param>
    public static LogValueHeading Of(string heading, Dimension asked)
    {
        var words = LogWords.Of(heading);
        if (words.Exists(w => LogVocabulary.Scales.Contains(w.Lower)) || LogWords.HaveFactor(words) || (words.Count > 0 && words[0].Lower == "log"))
            return Unknown;
        if (words.Exists(LogVocabulary.IsDerived) || IsAnotherPressure(words, asked))
            return Other;
        var found = Units(words, asked);
        return found.Count > 0 ? OfUnits(words, found, asked) : words.Exists(w => LogVocabulary.IsOtherThan(w.Lower, asked)) ? Other : OfWords(words, asked);
    }

    private static LogValueHeading OfUnits(List<LogWord> words, List<Found> found, Dimension asked)
    {
        if (found.Exists(f => IsRate(words, f)))
            return Other;
        if (found.Exists(f => f.Start > 0 && words[f.Start - 1] is { IsNumber: true } number && (number.Group == words[f.Start].Group && (number.Group > 0 || number.Text.Length > 1)))
            || found.Exists(f => words[f.Start].Group > 0 && !IsAlone(words, f)))
        {
            return Unknown;
        }

        if (Brackets(words).Any(group => !found.Exists(f => words[f.End - 1].Group == group) && IsUnitOfAnother([.. words.Where(w => w.Group == group)], asked)))
            return Other;
        var units = found.Select(f => Resolved(f, words, asked)).ToArray();
        if (Array.Find(units, u => u.Kind == LogHeadingKind.Other) is { } other)
            return other;

        // The instrument may be called after a unit, too: micron gauge (microns).
        if (units.DistinctBy(u => (u.Kind, u.Unit!.Symbol)).Count() == 1)
            return units[0];
        return units.Where(u => u.Kind == LogHeadingKind.Unit).DistinctBy(u => u.Unit!.Symbol).ToArray() is [var one] && units.All(u => u.Unit!.Factor.Equals(one.Unit!.Factor)) ? one : Unknown;
    }

    private static LogValueHeading OfWords(List<LogWord> words, Dimension asked)
    {
        if (Brackets(words).Any(group => IsUnitOfAnother([.. words.Where(w => w.Group == group)], asked)) || (words.Count > 1 && words[^1] is { Group: 0, Before: "_" or "/", Text.Length: > 1 } last && IsUnitOfAnother([last], asked)))
            return Other;
        var plain = words.Select(w => w.Lower.TrimEnd(LogVocabulary.Digits)).Where(w => w.Length > 0).ToArray();
        if (plain.Any(w => LogVocabulary.IsQuantity(w, asked)))
            return plain.All(w => LogVocabulary.IsQuantity(w, asked) || LogVocabulary.Beside.Contains(w) || LogVocabulary.Readings.Contains(w) || LogVocabulary.ReferenceOf(w) is not null) ? new(LogHeadingKind.Quantity) : Unknown;
        return plain.Length > 0 && plain.All(LogVocabulary.Readings.Contains) ? new(LogHeadingKind.Reading) : Unknown;
    }

    // Every unit of what is asked, and of pressures that do not say from where they count, the longest spelling first.
    private static List<Found> Units(List<LogWord> words, Dimension asked)
    {
        var found = new List<Found>();
        for (var i = 0; i < words.Count; i++)
        {
            // kWh is no Wh, mPa no Pa: nothing begins behind a single letter of the same word.
            if (words[i].IsJoined && words[i - 1].Text.Length == 1)
                continue;
            for (var length = Math.Min(LongestUnit, words.Count - i); length > 0; length--)
            {
                if (Spelled(words, i, length) is { } spelling && FindUnit(spelling, asked) is { } unit && MayStandAt(words, i, length, spelling, asked))
                {
                    found.Add(new Found(i, i + length, unit));
                    i += length - 1;
                    break;
                }
            }
        }

        return found;
    }

    private static string? Spelled(List<LogWord> words, int start, int length)
    {
        var end = start + length;

        // PaS is no Pa: what is left of a word has to be understood by itself.
        if (end < words.Count && words[end].IsJoined && LogVocabulary.ReferenceOf(words[end].Lower) is null && !LogVocabulary.Beside.Contains(words[end].Lower))
            return null;

        // bar(g) goes on into a bracket that holds nothing else.
        for (var i = start + 1; i < end; i++)
        {
            if (words[i].Group != words[start].Group && words.FindLastIndex(w => w.Group == words[i].Group) >= end)
                return null;
        }

        var spelling = words[start].Text;
        for (var i = start + 1; i < end; i++)
            spelling += (words[i].FollowsSlash ? "/" : "") + words[i].Text;
        return spelling;
    }

    private static Unit? FindUnit(string spelling, Dimension asked)
    {
        // Nobody gauges megatorr, and a heading in capitals writes MBAR.
        if (spelling.Length > 3 && spelling[0] == 'M' && (spelling.StartsWith("mtorr", StringComparison.OrdinalIgnoreCase) || spelling.StartsWith("mbar", StringComparison.OrdinalIgnoreCase)))
            spelling = "m" + spelling[1..];
        if (UnitTable.Find(spelling, asked) is { } unit)
            return unit;
        if (asked is not (Dimension.Pressure or Dimension.VacuumLevel))
            return null;
        return UnitTable.Find(spelling, Dimension.Pressure) ?? UnitTable.Find(spelling, Dimension.PressureDifference) ?? UnitTable.Find(spelling, Dimension.AtmosphericPressure);
    }

    // In a bracket, behind a slash, at the end or, where it is no single letter, at the beginning; a longer word anywhere. µm is also a length, and
    // C, F and K the names of parts and thermocouples: they need the quantity beside them.
    private static bool MayStandAt(List<LogWord> words, int start, int length, string spelling, Dimension asked)
    {
        var isLone = length == words.Count || words[start].Group > 0 || words[start].FollowsSlash;
        if ((spelling is "um" or "UM" or "µm" or "μm" || (spelling.Length == 1 && !isLone)) && !words.Exists(w => LogVocabulary.IsQuantity(w.Lower.TrimEnd(LogVocabulary.Digits), asked)))
            return false;
        if (spelling.Length == 1 && start > 0 && words[start - 1].Lower is "type" or "thermocouple" or "tc")
            return false;
        if (words[start].Group > 0 || words[start].FollowsSlash || spelling.Length > 2)
            return true;
        var rest = words.Skip(start + length).Where(w => w.Group == 0);
        return rest.All(w => w.IsNumber || LogVocabulary.ReferenceOf(w.Lower) is not null || LogVocabulary.Statistics.Contains(w.Lower)) || (start == 0 && spelling.Length > 1);
    }

    // micron/min, Pa s: a unit with another behind it is a unit of something else.
    private static bool IsRate(List<LogWord> words, Found found) =>
        found.End < words.Count && (words[found.End].FollowsSlash || words[found.End].Lower is "per"
            || (words[found.End].Group == words[found.Start].Group && words[found.End].Lower is "s" or "sec" or "min" or "h" or "hr"));

    // Whether a unit in brackets has nothing beside it that is not understood.
    private static bool IsAlone(List<LogWord> words, Found found)
    {
        var group = words[found.Start].Group;
        for (var i = 0; i < words.Count; i++)
        {
            if ((i < found.Start || i >= found.End) && words[i].Group == group && LogVocabulary.ReferenceOf(words[i].Lower) is null && !LogVocabulary.Statistics.Contains(words[i].Lower))
                return false;
        }

        return true;
    }

    private static IEnumerable<int> Brackets(List<LogWord> words) => words.Select(w => w.Group).Where(g => g > 0).Distinct();

    private static bool IsUnitOfAnother(LogWord[] words, Dimension asked)
    {
        if (words.All(w => LogVocabulary.ReferenceOf(w.Lower) is not null))
            return false;
        var spelling = string.Concat(words.Select(w => (w.FollowsSlash ? "/" : "") + w.Text));
        return spelling.Length > 0 && FindUnit(spelling, asked) is null && UnitTable.FindAny(spelling).Any(u => u.Symbol != "1");
    }

    private static LogValueHeading Resolved(Found found, List<LogWord> words, Dimension asked)
    {
        var unit = found.Unit;
        var reference = Reference(words, found);
        if (asked is not (Dimension.Pressure or Dimension.VacuumLevel))
            return new(LogHeadingKind.Unit, unit);

        // A vacuum counts from nothing; a depth below the atmosphere is no pressure without the atmosphere beside it.
        if (unit.Reference == PressureReference.BelowAtmosphere || (asked == Dimension.VacuumLevel && (unit.Reference == PressureReference.Gauge || reference == PressureReference.Gauge)))
            return new(LogHeadingKind.Other, unit);
        if (unit.Dimension == asked || unit.Dimension == Dimension.Pressure)
            return new(LogHeadingKind.Unit, unit);
        var word = reference == PressureReference.Absolute ? " abs" : " gauge";
        return reference is not null && UnitTable.Find(unit.Symbol + word, Dimension.Pressure) is { } whole ? new(LogHeadingKind.Unit, whole) : new(LogHeadingKind.NoReference, unit);
    }

    // abs is said anywhere; gauge is also the name of an instrument and counts in gauge pressure, beside the unit and in a bracket of its own.
    private static PressureReference? Reference(List<LogWord> words, Found found)
    {
        var (gauge, absolute) = (false, false);
        for (var i = 0; i < words.Count; i++)
        {
            if ((i >= found.Start && i < found.End) || LogVocabulary.ReferenceOf(words[i].Lower) is not { } said)
                continue;
            if (said == PressureReference.Absolute)
                absolute |= words[i].Text.Length > 1;
            else if (words[i].Lower is not ("gauge" or "gage") || (i == found.End && words[i].Group == words[found.Start].Group && !found.Unit.IsVacuum) || IsOfReferences(words, i, found) || (i + 1 < words.Count && LogVocabulary.IsQuantity(words[i + 1].Lower, Dimension.Pressure)))
                gauge |= words[i].Text.Length > 1;
        }

        return gauge == absolute ? null : gauge ? PressureReference.Gauge : PressureReference.Absolute;
    }

    private static bool IsOfReferences(List<LogWord> words, int at, Found found)
    {
        var group = words[at].Group;
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i].Group == group && (i < found.Start || i >= found.End) && LogVocabulary.ReferenceOf(words[i].Lower) is null)
                return false;
        }

        return group > 0;
    }

    // The pressure of the air is no pressure of a circuit, and that of water in it no vacuum level.
    private static bool IsAnotherPressure(List<LogWord> words, Dimension asked) =>
        asked is Dimension.Pressure or Dimension.VacuumLevel
        && words.Exists(w => w.Lower is "ambient" or "atmospheric" or "barometric" or "barometer" or "baro" or "luftdruck" or "weather" || (asked == Dimension.VacuumLevel && w.Lower is "water"));

    private readonly record struct Found(int Start, int End, Unit Unit);
}
