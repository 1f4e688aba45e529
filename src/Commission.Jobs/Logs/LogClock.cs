using System.Globalization;

namespace Commission.Jobs.Logs;

/// <summary>How the times of a log are written.</summary>
internal enum LogTimeKind
{
    /// <summary>A number of seconds, minutes and so on since the start.</summary>
    Elapsed,

    /// <summary>h:mm or h:mm:ss since the start.</summary>
    ElapsedClock,

    /// <summary>m:ss since the start.</summary>
    ElapsedMinutes,

    /// <summary>The time of day.</summary>
    Clock,

    /// <summary>Date and time of day.</summary>
    Dated,

    /// <summary>A number counted from the beginning of 1970 in UTC.</summary>
    Epoch,
}

/// <summary>Reads the time cells of a log in one format, in seconds.</summary>
/// <param name="Kind">How the times are written.</param>
/// <param name="DecimalComma">Whether numbers have a decimal comma.</param>
internal sealed record LogClock(LogTimeKind Kind, bool DecimalComma)
{
    // The beginning of 1970, in seconds since the beginning of the year 1.
    private const double Epoch = 719_162 * 86_400.0;

    // Whoever counts from 1970 is beyond the year 2000; nobody else counts so many seconds.
    private const double LeastEpoch = 946_684_800;
    private const double MostEpoch = 4_102_444_800;

    private static readonly string[] DateFormats =
    [
        "yyyy-MM-dd", "yyyy/MM/dd", "yyyy.MM.dd", "yyyyMMdd", "MM/dd/yyyy", "dd/MM/yyyy", "dd.MM.yyyy", "dd-MM-yyyy", "MM-dd-yyyy", "M/d/yyyy", "d/M/yyyy", "d.M.yyyy", "M/d/yy", "d/M/yy", "d.M.yy",
        "d MMM yyyy", "d-MMM-yyyy", "d-MMM-yy", "d MMMM yyyy", "MMM d yyyy", "MMM d, yyyy", "MMMM d, yyyy",
    ];

    /// <summary>Seconds in one of a number.</summary>
    public double Scale { get; init; } = 1;

    public string? DateFormat { get; init; }

    /// <summary>How far the heading says the clock is ahead of UTC; null when it does not.</summary>
    public TimeSpan? Offset { get; init; }

    /// <summary>Whether each time says how far it is ahead of UTC.</summary>
    public bool HasOffsets { get; init; }

    /// <summary>Whether the times are moments of UTC, and not the clock on the wall.</summary>
    public bool IsUniversal => Kind == LogTimeKind.Epoch || HasOffsets || Offset is not null;

    /// <summary>Whether the times are those of a clock, not of a stopwatch.</summary>
    public bool IsOfDay => Kind is LogTimeKind.Clock or LogTimeKind.Dated or LogTimeKind.Epoch;

    /// <summary>The date formats in which every sample is a date.</summary>
    public static IReadOnlyList<string> FittingDates(IReadOnlyList<string> samples) =>
        [.. DateFormats.Where(format => samples.All(sample => DateOf(sample, format) is not null))];

    /// <summary>Whether a text begins with something like a date and goes on with a time of day.</summary>
    public static bool LooksDated(string text) =>
        SplitDate(text, out _, out var rest) && TryTimeOfDay(rest, true, out _, out _) && DateFormats.Any(f => DateOf(text, f) is not null);

    public static DateOnly? DateOf(string text, string format) =>
        SplitDate(text, out var date, out _) && DateOnly.TryParseExact(date, format, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>Seconds in one of a number that counts from 1970; null when no number of our time does.</summary>
    public static double? EpochScale(double number) =>
        number is >= LeastEpoch and < MostEpoch ? 1 : number is >= LeastEpoch * 1000 and < MostEpoch * 1000 ? 1e-3 : null;

    /// <summary>Whether a time, as far as it is one, says how far it is ahead of UTC.</summary>
    public static bool SaysOffset(string text) =>
        (SplitDate(text, out _, out var rest) && TryTimeOfDay(rest, true, out _, out var offset) && offset is not null) || (TryTimeOfDay(text, true, out _, out offset) && offset is not null);

    /// <summary>Seconds: elapsed, since midnight, or since the beginning of the year 1, of UTC where the log says how far its clock is ahead.</summary>
    public bool TryRead(ReadOnlySpan<char> cell, out double seconds)
    {
        var text = cell.Trim().Trim('"').Trim();
        switch (Kind)
        {
            case LogTimeKind.Elapsed or LogTimeKind.Epoch:
                if (!LogCell.TryNumber(text, DecimalComma, out seconds))
                    return false;
                seconds = (seconds * Scale) + (Kind == LogTimeKind.Epoch ? Epoch : 0);
                return true;
            case LogTimeKind.ElapsedMinutes:
                return TryMinutes(text, out seconds);
            case LogTimeKind.ElapsedClock:
                return TryTimeOfDay(text, false, out seconds, out var none) && none is null;
            case LogTimeKind.Clock:
                return TryTimeOfDay(text, true, out seconds, out var offset) && TryUniversal(ref seconds, offset);
            default:
                seconds = double.NaN;
                if (!SplitDate(text, out var date, out var rest)
                    || !DateOnly.TryParseExact(date, DateFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
                    || !TryTimeOfDay(rest, true, out seconds, out offset))
                {
                    return false;
                }

                seconds += day.DayNumber * 86400.0;
                return TryUniversal(ref seconds, offset);
        }
    }

    private bool TryUniversal(ref double seconds, TimeSpan? offset)
    {
        if (offset is null == HasOffsets)
            return false;
        seconds -= (offset ?? Offset ?? TimeSpan.Zero).TotalSeconds;
        return true;
    }

    /// <summary>m:ss with a fraction of a second; minutes run on.</summary>
    public static bool TryMinutes(ReadOnlySpan<char> text, out double seconds)
    {
        seconds = double.NaN;
        var colon = text.IndexOf(':');
        if (colon is < 1 or > 5 || text.Length < colon + 3 || !char.IsAsciiDigit(text[colon + 2])
            || !int.TryParse(text[..colon], NumberStyles.None, CultureInfo.InvariantCulture, out var m)
            || !TrySeconds(text[(colon + 1)..], out var s))
        {
            return false;
        }

        seconds = (m * 60.0) + s;
        return true;
    }

    /// <summary>h:mm, h:mm:ss, with fractions of a second, am or pm and the distance from UTC; also hh.mm.ss. Hours run on when it is not a time of day.</summary>
    public static bool TryTimeOfDay(ReadOnlySpan<char> text, bool ofDay, out double seconds, out TimeSpan? offset)
    {
        seconds = double.NaN;
        offset = OffsetOf(text.Trim(), out text);
        var half = HalfOfDay(text, out text);
        var mark = text.Length > 4 && text.IndexOf(':') < 0 && text.Count('.') == 2 && text[^3] == '.' ? '.' : ':';
        var first = text.IndexOf(mark);
        if (first is < 1 or > 4)
            return false;
        var rest = text[(first + 1)..];
        var second = rest.IndexOf(mark);
        var minutes = second < 0 ? rest : rest[..second];
        if (minutes.Length != 2
            || !int.TryParse(text[..first], NumberStyles.None, CultureInfo.InvariantCulture, out var h)
            || !int.TryParse(minutes, NumberStyles.None, CultureInfo.InvariantCulture, out var m)
            || !TrySeconds(second < 0 ? "0" : rest[(second + 1)..], out var s)
            || m > 59 || (ofDay && h > 23) || (half is not null && h is 0 or > 12))
        {
            return false;
        }

        if (half is not null)
            h = (h % 12) + (half == 'p' ? 12 : 0);
        seconds = (h * 3600.0) + (m * 60.0) + s;
        return true;
    }

    private static bool TrySeconds(ReadOnlySpan<char> text, out double seconds) =>
        LogCell.TryNumber(text, text.Contains(','), out seconds) && char.IsAsciiDigit(text[0]) && seconds is >= 0 and < 60;

    /// <summary>Which half of the day a time names, a or p; null when it names none.</summary>
    /// <param name="text">The time: <c>2:15 PM</c>, <c>2:15:00p.m.</c></param>
    /// <param name="clock">The time without it.</param>
    public static char? HalfOfDay(ReadOnlySpan<char> text, out ReadOnlySpan<char> clock)
    {
        clock = text;
        var rest = text.TrimEnd(". \u00A0\u202F");
        if (rest.Length < 2 || rest[^1] is not ('m' or 'M'))
            return null;
        rest = rest[..^1].TrimEnd(". \u00A0\u202F");
        if (rest.Length < 1 || rest[^1] is not ('a' or 'A' or 'p' or 'P'))
            return null;
        clock = rest[..^1].TrimEnd(" \u00A0\u202F");
        return char.ToLowerInvariant(rest[^1]);
    }

    // Z, UTC, +02:00, -0600, -06 behind a time.
    private static TimeSpan? OffsetOf(ReadOnlySpan<char> text, out ReadOnlySpan<char> clock)
    {
        clock = text;
        if (text.Length == 0)
            return null;
        if (text[^1] is 'Z' or 'z' || text.EndsWith("UTC", StringComparison.OrdinalIgnoreCase) || text.EndsWith("GMT", StringComparison.OrdinalIgnoreCase))
        {
            clock = text[..^(text[^1] is 'Z' or 'z' ? 1 : 3)].TrimEnd();
            return TimeSpan.Zero;
        }

        var sign = text.LastIndexOfAny('+', '-', '−');
        if (sign < 4 || text[..sign].IndexOfAny(':', '.') < 0)
            return null;
        Span<char> digits = stackalloc char[4];
        var count = 0;
        foreach (var c in text[(sign + 1)..])
        {
            if (c == ':' && count == 2)
                continue;
            if (!char.IsAsciiDigit(c) || count == 4)
                return null;
            digits[count++] = c;
        }

        if (count is not (2 or 4))
            return null;
        var hours = int.Parse(digits[..2], CultureInfo.InvariantCulture);
        var minutes = count == 4 ? int.Parse(digits[2..], CultureInfo.InvariantCulture) : 0;
        if (hours > 14 || minutes > 59)
            return null;
        clock = text[..sign].TrimEnd();
        return new TimeSpan(hours, minutes, 0) * (text[sign] == '+' ? 1 : -1);
    }

    // The date ends where the hour begins; a date alone begins its day.
    private static bool SplitDate(ReadOnlySpan<char> text, out ReadOnlySpan<char> date, out ReadOnlySpan<char> rest)
    {
        var colon = text.IndexOf(':');
        var hour = colon;
        while (hour > 0 && char.IsAsciiDigit(text[hour - 1]))
            hour--;
        if (colon < 0)
        {
            // 2026-06-18 09.26.00
            hour = text.LastIndexOf(' ') + 1;
            if (hour == 0 || !TryTimeOfDay(text[hour..], true, out _, out _))
                hour = text.Length;
        }

        date = text[..hour].TrimEnd(" ,T\u00A0");
        rest = hour == text.Length ? "0:00" : text[hour..];
        return date.Length is >= 6 and <= 20 && (hour == text.Length || date.Length < hour);
    }
}
