using Commission.Jobs.Model.Words;
using Commission.Jobs.Problems;
using Commission.Messages;
using Commission.Source;

namespace Commission.Jobs.Logs;

/// <summary>Where the times of a log stand.</summary>
/// <param name="Date">Column with the date when date and time of day are in two columns.</param>
/// <param name="Time">Column with the time.</param>
internal readonly record struct LogTimeColumns(int? Date, int Time);

/// <summary>Finds the times of a log and how they are written, from the job file, the headings and the cells.</summary>
/// <param name="request">What the job file says about the log.</param>
/// <param name="calendar">The job's zone and day.</param>
/// <param name="header">The headings.</param>
/// <param name="comma">Whether numbers have a decimal comma.</param>
/// <param name="complain">Receives place, what was found, and what to do.</param>
internal sealed class LogTimeFinder(LogRequest request, LogCalendar calendar, LogHeader header, bool comma, Action<SourceLocation, Message, Message> complain)
{
    private readonly TextValue _file = ValueText.Short(request.Log.File.Value);

    public static bool IsTimeLike(string cell) => LogCell.TryNumber(cell, false, out _) || LogCell.TryNumber(cell, true, out _) || IsClockLike(cell);

    private static bool IsClockLike(string cell) => LogClock.TryTimeOfDay(cell, false, out _, out _) || LogClock.TryMinutes(cell, out _) || LogClock.LooksDated(cell);

    public LogTimeColumns? Columns(LogSample[] data)
    {
        if (Enumerable.Range(0, header.Names.Length).Where(i => Mostly(Cells(data, i), IsHalf)).ToArray() is [var half, ..])
        {
            complain(request.Log.File.At, LogMessages.HalfApart(_file, new(header.Names[half])), LogMessages.HalfApartNext);
            return null;
        }

        if (request.Log.TimeColumn is { } stated)
        {
            if (header.Find(stated.Value) is { } column)
                return new(DateOf(data, column), column);
            var nearest = NearestName.Of(stated.Value, header.Names);
            complain(stated.At, LogMessages.NoColumn(_file, ValueText.Short(stated.Value)), nearest is null ? LogMessages.ItsColumns(ValueText.AnyOf(header.Names)) : ValueText.DidYouMean(nearest));
            return null;
        }

        var ranked = Enumerable.Range(0, header.Names.Length).Select(i => (Column: i, Rank: Rank(data, i))).Where(c => c.Rank is not null).OrderBy(c => c.Rank).ToArray();
        if (ranked.Length > 0)
            return new(DateOf(data, ranked[0].Column), ranked[0].Column);

        // Without headings, or where the job says how the times are written: a first column that only rises counts the time.
        if ((!header.IsWritten || request.Log.TimeFormat is not null) && Rises(data))
            return new(null, 0);
        complain(request.Log.File.At, LogMessages.NoTimeColumn(_file, ValueText.AnyOf(header.Names)), LogMessages.TimeColumnNext);
        return null;
    }

    // A clock to the second tells most; numbers with their unit more than a clock to the minute.
    private int? Rank(LogSample[] data, int column)
    {
        var (heading, cells) = (header.Time(column), Cells(data, column));
        if (heading.IsCount)
            return null;
        if (Mostly(cells, c => LogCell.TryNumber(c, comma, out _)))
            return !heading.IsTime && !heading.IsDate ? null : heading.Unit is not null || IsEpoch(cells) ? 2 : 6;
        if (!Mostly(cells, c => IsClockLike(c) && c.AsSpan().IndexOfAny(':', '.') >= 0))
            return heading.IsTime ? 8 : heading.IsDate ? 9 : null;
        var isFull = cells.Any(c => c.Count(x => x is ':' or '.') > 1 || LogClock.LooksDated(c));

        // 18.06.26 beside a clock is its date.
        var isDate = LogClock.FittingDates(cells) is not [] && !cells.Any(c => c.Contains(':', StringComparison.Ordinal));
        return (isFull && !isDate ? 0 : isDate ? 7 : 4) + (heading.IsTime || heading.IsDate ? 0 : 1);
    }

    private int? DateOf(LogSample[] data, int time)
    {
        if (!Mostly(Cells(data, time), c => LogClock.TryTimeOfDay(c, true, out _, out _)))
            return null;
        foreach (var i in Enumerable.Range(0, header.Names.Length).Where(i => i != time && header.Time(i).IsDate))
        {
            var cells = Cells(data, i);
            if (cells.Length > 0 && !cells[0].Contains(':', StringComparison.Ordinal) && LogClock.FittingDates([cells[0]]).Count > 0)
                return i;
        }

        return null;
    }

    private bool Rises(LogSample[] data)
    {
        var last = double.NegativeInfinity;
        foreach (var row in data)
        {
            if (!LogCell.TryNumber(row.Cells[0], comma, out var now) || now < last)
                return false;
            last = now;
        }

        return data.Length > 1;
    }

    public LogClock? Clock(LogSample[] data, LogTimeColumns columns)
    {
        var name = header.Names[columns.Time];
        var heading = header.Time(columns.Time);
        string[] cells = [.. data.Where(r => r.Cells.Count > Math.Max(columns.Time, columns.Date ?? 0)).Select(r => columns.Date is { } d ? $"{r.Cells[d]} {r.Cells[columns.Time]}" : r.Cells[columns.Time])];
        var clock = request.Log.TimeFormat?.Value switch
        {
            ClockFormat.Seconds => Stated(heading, name, 1),
            ClockFormat.Minutes => Stated(heading, name, 60),
            ClockFormat.Clock => new LogClock(LogTimeKind.Clock, comma),
            ClockFormat.DateAndClock => Dated(name, cells),
            ClockFormat.ElapsedClock => OfClock(heading, name, cells, true),
            _ when Mostly(cells, c => LogCell.TryNumber(c, comma, out _)) => OfNumbers(heading, name, cells),
            _ when Mostly(cells, c => LogClock.TryTimeOfDay(c, false, out _, out _) || LogClock.TryMinutes(c, out _)) => OfClock(heading, name, cells, heading.HasOwnStart),
            _ => Dated(name, cells),
        };
        return clock is { Kind: LogTimeKind.Clock or LogTimeKind.Dated } ? InZone(clock, heading, name, cells) : clock is { Kind: LogTimeKind.Epoch } ? Universal(clock, name) : clock;
    }

    private LogClock? Stated(LogTimeHeading heading, string name, double unit)
    {
        if (heading.Unit is null || heading.Unit.Equals(unit))
            return new LogClock(LogTimeKind.Elapsed, comma) { Scale = unit };
        complain(request.Log.TimeFormat!.At, LogMessages.OtherTimeUnit(_file, new(name)), LogMessages.OtherTimeUnitNext);
        return null;
    }

    private LogClock? OfNumbers(LogTimeHeading heading, string name, string[] cells)
    {
        if (IsEpoch(cells) && heading is { IsUnclear: false, IsCount: false } && FirstNumber(cells) is { } number && LogClock.EpochScale(number) is { } scale && (heading.Unit is null || heading.Unit.Equals(scale)))
            return new LogClock(LogTimeKind.Epoch, comma) { Scale = scale };
        if (heading.Unit is { } unit)
            return new LogClock(LogTimeKind.Elapsed, comma) { Scale = unit };
        complain(request.Log.File.At, heading.IsUnclear ? LogMessages.UnclearTimeUnit(_file, new(name)) : LogMessages.SecondsOrMinutes(_file, new(name)), LogMessages.TimeFormatNext);
        return null;
    }

    private bool IsEpoch(string[] cells) => FirstNumber(cells) is { } number && LogClock.EpochScale(number) is not null;

    private double? FirstNumber(string[] cells)
    {
        foreach (var cell in cells)
        {
            if (LogCell.TryNumber(cell, comma, out var number))
                return number;
        }

        return null;
    }

    // 0:10 is ten seconds or ten minutes; 09:26 is no time since a start where nothing says so.
    private LogClock? OfClock(LogTimeHeading heading, string name, string[] cells, bool elapsed)
    {
        var written = cells.Where(IsClockLike).ToArray();
        if (heading.Shape == LogClockShape.MinutesSeconds)
            return new LogClock(LogTimeKind.ElapsedMinutes, comma);

        // Half past midnight is written 12:30 AM: half a minute elapsed is not.
        if (written.Any(c => LogClock.HalfOfDay(c, out _) is not null))
            return new LogClock(LogTimeKind.Clock, comma);
        _ = LogClock.TryTimeOfDay(written[0], false, out var first, out _);
        var isLong = written.Any(c => LogClock.TryTimeOfDay(c, false, out var at, out _) && at >= 86400);
        if (written.Any(c => c.Count(x => x == ':') > 1) || heading.Shape == LogClockShape.HoursMinutes || !(elapsed || isLong || first < 60 || written.Any(c => !LogClock.TryTimeOfDay(c, false, out _, out _))))
            return new LogClock(elapsed || isLong || (first < 60 && heading.Shape != LogClockShape.HoursMinutes) ? LogTimeKind.ElapsedClock : LogTimeKind.Clock, comma);

        // A spreadsheet that drops the hour writes 26:00.5 for half past nine: a stopwatch begins at nothing.
        if (written.Any(c => c.AsSpan().IndexOfAny('.', ',') > 0) && (elapsed || (LogClock.TryMinutes(written[0], out var begins) && begins < 60)))
            return new LogClock(LogTimeKind.ElapsedMinutes, comma);
        complain(request.Log.File.At, LogMessages.HoursOrMinutes(_file, new(name), new(written[0])), LogMessages.HoursOrMinutesNext);
        return null;
    }

    private LogClock? Dated(string name, string[] cells)
    {
        cells = [.. cells.Where(LogClock.LooksDated)];
        if (cells.Length == 0)
        {
            complain(request.Log.File.At, LogMessages.TimesNotRead(_file, new(name)), LogMessages.TimesNotReadNext);
            return null;
        }

        var fitting = LogClock.FittingDates(cells);
        var dates = fitting.Select(f => LogClock.DateOf(cells[0], f)!.Value).Distinct().ToArray();
        if (dates.Length > 1)
            fitting = [.. fitting.Where(f => Math.Abs(LogClock.DateOf(cells[0], f)!.Value.DayNumber - calendar.JobDate.DayNumber) <= 3)];
        if (fitting.Count > 0 && fitting.Select(f => LogClock.DateOf(cells[0], f)).Distinct().Count() == 1)
            return new LogClock(LogTimeKind.Dated, comma) { DateFormat = fitting[0] };
        complain(request.Log.File.At, dates.Length > 1 ? LogMessages.DayOrMonth(_file, new(cells[0])) : LogMessages.DateNotRead(_file, new(cells[0])), LogMessages.DateNotReadNext);
        return null;
    }

    private LogClock? InZone(LogClock clock, LogTimeHeading heading, string name, string[] cells)
    {
        var written = cells.Where(IsClockLike).ToArray();
        if (written.Length > 0 && LogClock.SaysOffset(written[0]))
            return Universal(clock with { HasOffsets = true }, name);
        if (heading.Offset is { } offset)
            return Universal(clock with { Offset = offset }, name);
        if (heading.Zone is not { } zone)
            return clock;
        complain(request.Log.File.At, LogMessages.ZoneOfLetters(_file, new(name), new(zone)), LogMessages.ZoneOfLettersNext);
        return null;
    }

    private LogClock? Universal(LogClock clock, string name)
    {
        if (calendar.Zone.Name.Length > 0)
            return clock;
        complain(request.Log.File.At, LogMessages.NoZone(_file, new(name)), LogMessages.NoZoneNext);
        return null;
    }

    private static bool IsHalf(string cell) => cell.Length is > 1 and < 6 && LogClock.HalfOfDay(cell, out var rest) is not null && rest.IsEmpty;

    private static string[] Cells(LogSample[] data, int column) => [.. data.Where(r => r.Cells.Count > column && r.Cells[column].Length > 0).Select(r => r.Cells[column])];

    // One bad cell is a fault of its row, not of the layout.
    private static bool Mostly(string[] cells, Func<string, bool> fits) => cells.Count(fits) is > 0 and var good && good * 2 >= cells.Length;
}
