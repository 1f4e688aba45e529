using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Logs;

/// <summary>Which parts of a time its colons divide.</summary>
internal enum LogClockShape
{
    /// <summary>The heading does not say.</summary>
    Unsaid,

    MinutesSeconds,

    HoursMinutes,

    HoursMinutesSeconds,
}

/// <summary>What the heading of a column says about its times.</summary>
internal sealed partial record LogTimeHeading
{
    private static readonly FrozenDictionary<string, double> LongUnits = UnitsOf(
        (1e-3, "msec msecs millis millisecond milliseconds millisekunden"),
        (1, "sec secs second seconds sek sekunde sekunden seconde secondes segundo segundos secondi sekunder"),
        (60, "min mins minute minutes minuten minuto minutos minuti minutter"),
        (3600, "hr hrs hour hours std stunde stunden heures horas ore timer uur"),
        (86400, "day days tage jours dias giorni dage"));

    private static readonly FrozenDictionary<string, double> ShortUnits = UnitsOf((1e-3, "ms"), (1, "s"), (3600, "h"), (86400, "d"));

    private static readonly FrozenSet<string> Times = Set(
        "time times timestamp clock datetime elapsed duration runtime uptime t ts zeit uhrzeit messzeit laufzeit heure temps tiempo hora tijd tid klokke klokken klokkeslett klockslag tempo ora čas czas aika when recorded epoch unix posix utc gmt");

    private static readonly FrozenSet<string> Dates = Set("date datum fecha data dato datetime day jour");

    private static readonly FrozenSet<string> Runs = Set("elapsed duration runtime run uptime since dauer laufzeit durée duración stopwatch abgelaufen");

    // A number of a row or the distance of two rows is no time of a row.
    private static readonly FrozenSet<string> Counts = Set(
        "sample samples index idx no nr num number record row line scan id count counter seq sequence tick ticks cycle cycles interval dt delta step period rate frequency lfd zeile");

    private static readonly FrozenSet<string> BesideUnit = Set("elapsed since start time total in of the log");

    private static readonly FrozenSet<string> Zones = Set("EST EDT ET CST CDT CT MST MDT MT PST PDT PT AKST AKDT HST AST ADT NST NDT CET CEST MEZ MESZ WET WEST EET EEST BST IST MSK JST KST SGT HKT AEST AEDT ACST ACDT AWST NZST NZDT SAST BRT ART");

    private static readonly FrozenSet<string> BesideClock = Set("am pm local utc gmt h hh m mm ss s min sec d dd yy yyyy mmm iso clock date time of day");

    /// <summary>What one of its numbers is, s; null when that is not said, or not in a way that is understood.</summary>
    public double? Unit { get; private init; }

    /// <summary>Whether a bracket or a factor says something about its numbers that is not understood.</summary>
    public bool IsUnclear { get; private init; }

    /// <summary>Whether it speaks of time or of a date at all.</summary>
    public bool IsTime { get; private init; }

    public bool IsDate { get; private init; }

    /// <summary>Whether it counts rows, or tells the distance of two.</summary>
    public bool IsCount { get; private init; }

    /// <summary>Whether it runs from a start of its own.</summary>
    public bool HasOwnStart { get; private init; }

    public LogClockShape Shape { get; private init; }

    /// <summary>How far the clock is ahead of UTC, when the heading says so.</summary>
    public TimeSpan? Offset { get; private init; }

    /// <summary>A zone that is named by letters, which more than one place of the world uses.</summary>
    public string? Zone { get; private init; }

    /// <summary>Reads a heading.</summary>
    public static LogTimeHeading Of(string heading)
    {
        var words = LogWords.Of(heading);
        var lower = words.Select(w => w.Lower).ToArray();
        var isTime = lower.Any(Times.Contains);
        var (unit, unclear) = UnitOf(words, isTime);
        var isCount = heading.Trim() == "#" || lower.Any(Counts.Contains);

        // A pressure has a least value and a rate, a volume its flow.
        var isOther = !isTime && (lower.Any(w => w.Length > 1 && (LogVocabulary.IsQuantity(w, Dimension.VacuumLevel) || LogVocabulary.IsQuantity(w, Dimension.Temperature))) || lower.Any(w => LogVocabulary.IsOtherThan(w, Dimension.VacuumLevel)));
        var shape = ShapeOf(heading, lower);
        return new LogTimeHeading
        {
            Unit = isCount || isOther ? null : unit,
            IsUnclear = unclear,
            IsTime = !isCount && !isOther && (isTime || unit is not null || shape != LogClockShape.Unsaid),
            IsDate = lower.Any(Dates.Contains),
            IsCount = isCount,
            HasOwnStart = lower.Any(Runs.Contains),
            Shape = shape,
            Offset = OffsetOf(heading),
            Zone = words.Select(w => w.Text).FirstOrDefault(Zones.Contains) ?? words.FirstOrDefault(w => IsStrange(w, words)).Text,
        };
    }

    // Capitals alone in a bracket behind a clock may be a zone that is not known here.
    private static bool IsStrange(LogWord word, List<LogWord> words) =>
        word.Group > 0 && word.Text.Length is >= 2 and <= 5 && word.Text.All(char.IsUpper) && !BesideClock.Contains(word.Lower) && !LongUnits.ContainsKey(word.Lower)
        && words.Count(w => w.Group == word.Group) == 1;

    private static (double? Unit, bool IsUnclear) UnitOf(List<LogWord> words, bool isTime)
    {
        if (LogWords.HaveFactor(words))
            return (null, true);
        double? In(LogWord word) => LongUnits.TryGetValue(word.Lower, out var unit) || ShortUnits.TryGetValue(word.Lower, out unit) ? unit : null;

        var brackets = words.Where(w => w.Group > 0).GroupBy(w => w.Group).ToArray();
        foreach (var bracket in brackets)
        {
            var units = bracket.Select(In).OfType<double>().ToArray();
            if (units.Length == 1 && bracket.All(w => In(w) is not null || BesideUnit.Contains(w.Lower)))
                return (units[0], false);
        }

        if (brackets.Any(b => !b.All(w => BesideClock.Contains(w.Lower) || Times.Contains(w.Lower) || Runs.Contains(w.Lower) || w.IsNumber) || b.Any(w => w.Lower is "m" or "x") || (b.Any(w => w.IsNumber) && b.Any(w => In(w) is not null))))
            return (null, true);
        var found = new List<double>();
        for (var i = 0; i < words.Count; i++)
        {
            var word = words[i];
            if (word.Group > 0)
                continue;
            var isLast = words.Skip(i + 1).All(w => w.Group > 0);
            double unit;
            if (!LongUnits.TryGetValue(word.Lower, out unit) && !(ShortUnits.TryGetValue(word.Lower, out unit) && isLast))
                continue;

            // micron/min, and every 10 s.
            if (i > 0 && ((word.FollowsSlash && !IsQuantityOfTime(words[i - 1].Lower)) || words[i - 1].IsNumber))
                return (null, true);
            found.Add(unit);
        }

        if (isTime && words.Count > 1 && words[^1] is { Group: 0, Lower: "m" })
            return (null, true);
        return found.Distinct().ToArray() is [var one] ? (one, false) : (null, found.Count > 0);
    }

    private static bool IsQuantityOfTime(string word) => word.Length == 1 || Times.Contains(word) || Dates.Contains(word) || Runs.Contains(word);

    private static LogClockShape ShapeOf(string heading, string[] words)
    {
        if (words.Contains("hms") || words.Contains("hhmmss"))
            return LogClockShape.HoursMinutesSeconds;
        if (words.Contains("hhmm"))
            return LogClockShape.HoursMinutes;
        if (words.Contains("mmss"))
            return LogClockShape.MinutesSeconds;
        var match = ColonShape().Match(heading);
        if (!match.Success)
            return LogClockShape.Unsaid;
        var (first, second) = (char.ToLowerInvariant(match.Groups["a"].Value[0]), char.ToLowerInvariant(match.Groups["b"].Value[0]));
        if (match.Groups["c"].Success)
            return first == 'h' && second == 'm' ? LogClockShape.HoursMinutesSeconds : LogClockShape.Unsaid;
        return (first, second) switch
        {
            ('h', 'm') => LogClockShape.HoursMinutes,
            ('m', 's') => LogClockShape.MinutesSeconds,
            _ => LogClockShape.Unsaid,
        };
    }

    private static TimeSpan? OffsetOf(string heading)
    {
        var match = ZoneShape().Match(heading);
        if (!match.Success)
            return null;
        if (!match.Groups["h"].Success)
            return TimeSpan.Zero;
        var offset = new TimeSpan(int.Parse(match.Groups["h"].ValueSpan, CultureInfo.InvariantCulture), match.Groups["m"].Success ? int.Parse(match.Groups["m"].ValueSpan, CultureInfo.InvariantCulture) : 0, 0);
        return match.Groups["sign"].Value == "+" ? offset : -offset;
    }

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);

    private static FrozenDictionary<string, double> UnitsOf(params (double Seconds, string Words)[] units) =>
        units.SelectMany(u => u.Words.Split(' ').Select(w => (w, u.Seconds))).ToFrozenDictionary(u => u.w, u => u.Seconds, StringComparer.Ordinal);

    [GeneratedRegex(@"(?<![a-z])(?<a>h{1,2}|hours?|hrs?|m{1,2}|mins?|minutes?) ?: ?(?<b>m{1,2}|mins?|minutes?|s{1,2}|secs?|seconds?)( ?: ?(?<c>s{1,2}|secs?|seconds?))?(?![a-z])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex ColonShape();

    [GeneratedRegex(@"(?<![a-z])(UTC|GMT|Zulu)(?![a-z]) ?((?<sign>[+\-−]) ?(?<h>[0-9]{1,2})(:?(?<m>[0-9]{2}))?)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex ZoneShape();
}
