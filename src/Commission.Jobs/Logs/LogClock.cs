using System.Globalization;
using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Logs;

/// <summary>Reads the time cells of a log in one format, in seconds; of a clock also the date if the log has one.</summary>
internal sealed class LogClock
{
    private static readonly string[] DateFormats =
    [
        "yyyy-MM-dd", "yyyy/MM/dd", "yyyy.MM.dd", "MM/dd/yyyy", "dd/MM/yyyy", "dd.MM.yyyy", "dd-MM-yyyy", "MM-dd-yyyy", "M/d/yyyy", "d/M/yyyy", "d.M.yyyy", "M/d/yy", "d/M/yy", "d.M.yy",
    ];

    private readonly bool _decimalComma;
    private readonly string? _dateFormat;

    private LogClock(ClockFormat format, bool decimalComma, string? dateFormat)
    {
        Format = format;
        _decimalComma = decimalComma;
        _dateFormat = dateFormat;
    }

    public ClockFormat Format { get; }

    public static LogClock Of(ClockFormat format, bool decimalComma, string? dateFormat = null) => new(format, decimalComma, dateFormat);

    /// <summary>The date formats in which every sample is a date.</summary>
    public static IReadOnlyList<string> FittingDates(IReadOnlyList<string> samples) =>
        [.. DateFormats.Where(format => samples.All(sample => DateOf(sample, format) is not null))];

    /// <summary>Whether a text begins with something like a date and goes on with a time of day.</summary>
    public static bool LooksDated(string text) =>
        SplitDate(text, out _, out var rest) && TryTimeOfDay(rest, true, out _) && DateFormats.Any(f => DateOf(text, f) is not null);

    public static DateOnly? DateOf(string text, string format) =>
        SplitDate(text, out var date, out _) && DateOnly.TryParseExact(date, format, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>Seconds: elapsed, since midnight, or since the year 1 for a dated clock.</summary>
    public bool TryRead(ReadOnlySpan<char> cell, out double seconds)
    {
        seconds = double.NaN;
        var text = cell.Trim().Trim('"').Trim();
        switch (Format)
        {
            case ClockFormat.Seconds:
                return LogCell.TryNumber(text, _decimalComma, out seconds);
            case ClockFormat.Minutes:
                if (!LogCell.TryNumber(text, _decimalComma, out seconds))
                    return false;
                seconds *= 60;
                return true;
            case ClockFormat.Clock:
                return TryTimeOfDay(text, true, out seconds);
            case ClockFormat.ElapsedClock:
                return TryTimeOfDay(text, false, out seconds);
            default:
                if (!SplitDate(text, out var date, out var rest)
                    || !DateOnly.TryParseExact(date, _dateFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
                    || !TryTimeOfDay(rest, true, out seconds))
                {
                    return false;
                }

                seconds += day.DayNumber * 86400.0;
                return true;
        }
    }

    /// <summary>h:mm, h:mm:ss, with fractions of a second and am or pm; hours run on when it is not a time of day.</summary>
    public static bool TryTimeOfDay(ReadOnlySpan<char> text, bool ofDay, out double seconds)
    {
        seconds = double.NaN;
        text = text.Trim();
        var half = HalfOfDay(text, out var clock);
        text = clock;

        if (text.Length > 0 && text[^1] is 'Z')
            text = text[..^1];
        var first = text.IndexOf(':');
        if (first is < 1 or > 4)
            return false;
        var rest = text[(first + 1)..];
        var second = rest.IndexOf(':');
        var minutes = second < 0 ? rest : rest[..second];
        var secondsText = second < 0 ? "0" : rest[(second + 1)..];
        if (minutes.Length != 2
            || !int.TryParse(text[..first], NumberStyles.None, CultureInfo.InvariantCulture, out var h)
            || !int.TryParse(minutes, NumberStyles.None, CultureInfo.InvariantCulture, out var m)
            || !LogCell.TryNumber(secondsText, secondsText.IndexOf(',') >= 0, out var s)
            || m > 59 || s is < 0 or >= 60 || (ofDay && h > 23) || (half is not null && h is 0 or > 12))
        {
            return false;
        }

        if (half is not null)
            h = (h % 12) + (half == 'p' ? 12 : 0);
        seconds = (h * 3600.0) + (m * 60.0) + s;
        return true;
    }

    /// <summary>Which half of the day a time names, a or p; null when it names none.</summary>
    /// <param name="text">The time: <c>2:15 PM</c>, <c>2:15:00p.m.</c></param>
    /// <param name="clock">The time without it.</param>
    public static char? HalfOfDay(ReadOnlySpan<char> text, out ReadOnlySpan<char> clock)
    {
        clock = text;
        var rest = text.TrimEnd('.');
        if (rest.Length < 3 || rest[^1] is not ('m' or 'M'))
            return null;
        rest = rest[..^1].TrimEnd('.');
        if (rest.Length < 2 || rest[^1] is not ('a' or 'A' or 'p' or 'P'))
            return null;
        clock = rest[..^1].TrimEnd();
        return char.ToLowerInvariant(rest[^1]);
    }

    private static bool SplitDate(ReadOnlySpan<char> text, out ReadOnlySpan<char> date, out ReadOnlySpan<char> rest)
    {
        var gap = text.IndexOfAny(' ', 'T');
        date = gap < 0 ? text : text[..gap];
        rest = gap < 0 ? "0:00" : text[(gap + 1)..];
        return date.Length is >= 6 and <= 10;
    }
}
