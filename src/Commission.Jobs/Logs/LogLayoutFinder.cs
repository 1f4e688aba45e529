using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Jobs.Problems;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source;

namespace Commission.Jobs.Logs;

/// <summary>Finds out how a log is laid out. What the job file states is taken; where the log leaves two answers open, the job file is asked.</summary>
internal sealed partial class LogLayoutFinder(LogRequest request, DateOnly jobDate, ProblemList problems)
{
    private static readonly string[] ReadingWords = ["vacuum", "pressure", "micron", "mtorr", "torr", "mbar", "reading", "value", "temp", "temperature", "psig", "level"];

    public LogLayout? Find(string text)
    {
        var delimiter = request.Log.Delimiter?.Value switch
        {
            Delimiter.Comma => ',',
            Delimiter.Semicolon => ';',
            Delimiter.Tab => '\t',
            _ => GuessDelimiter(text),
        };
        var rows = LogSample.Of(text, delimiter);
        var first = FirstReadingRow(rows);
        if (first is null)
        {
            Complain(request.Log.File.At, $"{ValueText.Quoted(request.Log.File.Value)} holds no rows with a time and a reading.",
                "Name the columns with time column and value column, or the delimiter, if the log has another layout.");
            return null;
        }

        var data = rows.Skip(first.Value).ToArray();
        var headings = Headings(rows, first.Value);
        var decimalComma = request.Log.Decimal?.Value switch
        {
            DecimalMark.Comma => true,
            DecimalMark.Point => false,
            _ => GuessDecimalComma(text, delimiter, data[0].Line),
        };
        if (decimalComma is not { } comma)
            return null;
        var (date, time) = TimeColumns(headings, data, comma);
        if (time is not { } timeColumn)
            return null;
        if (ValueColumn(headings, data, comma, timeColumn, date) is not { } valueColumn)
            return null;
        if (FindUnit(headings[valueColumn]) is not { } unit)
            return null;
        var cells = data.Where(r => r.Cells.Count > timeColumn).Select(r => Joined(r, date, timeColumn)).ToArray();
        if (FindClock(headings[timeColumn], cells, comma) is not { } clock)
            return null;
        return new LogLayout
        {
            Delimiter = delimiter,
            DecimalComma = comma,
            FirstLine = data[0].Line,
            DateColumn = date,
            TimeColumn = timeColumn,
            ValueColumn = valueColumn,
            TimeHeading = headings[timeColumn],
            ValueHeading = headings[valueColumn],
            Unit = unit,
            UnitIsGuessed = request.Log.Unit is null && UnitIn(headings[valueColumn]) is null,
            Clock = clock,
        };
    }

    private static char GuessDelimiter(string text)
    {
        var lines = text.AsSpan(0, Math.Min(text.Length, 20_000)).ToString().Split('\n').Where(l => l.Trim().Length > 0).Take(20).ToArray();
        foreach (var candidate in new[] { '\t', ';', ',' })
        {
            // A preamble may have none; most lines decide.
            if (lines.Count(l => l.Contains(candidate, StringComparison.Ordinal)) * 2 > lines.Length)
                return candidate;
        }

        return ',';
    }

    private int? FirstReadingRow(List<LogSample> rows)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            var cells = rows[i].Cells;
            if (cells.Count >= 2 && cells.Any(IsTimeLike) && cells.Count(c => IsTimeLike(c) || IsReadingLike(c)) >= 2)
                return i;
        }

        return null;
    }

    private bool IsReadingLike(string cell) =>
        cell.Length > 0 && (LogCell.Read(cell, true, request.Log.OverRange?.Value, out _) is LogCell.Kind.Number or LogCell.Kind.Over || LogCell.TryNumber(cell, false, out _));

    private static bool IsTimeLike(string cell) =>
        LogCell.TryNumber(cell, false, out _) || LogCell.TryNumber(cell, true, out _) || LogClock.TryTimeOfDay(cell, false, out _) || LogClock.LooksDated(cell);

    private static string[] Headings(List<LogSample> rows, int first)
    {
        var width = rows[first].Cells.Count;
        var header = first > 0 && rows[first - 1].Cells.Count >= 2 ? rows[first - 1].Cells : [];
        return [.. Enumerable.Range(0, width).Select(i => i < header.Count && header[i].Length > 0 ? header[i] : string.Create(CultureInfo.InvariantCulture, $"column {i + 1}"))];
    }

    private bool? GuessDecimalComma(string text, char delimiter, int firstLine)
    {
        var mark = LogDecimalMark.Of(text, delimiter, firstLine);
        if (mark is { Comma: { } comma, Point: { } point })
        {
            Complain(request.Log.File.At, $"{ValueText.Quoted(request.Log.File.Value)} has a decimal comma, {comma}, and a decimal point, {point}.", "State decimal: comma or decimal: point beside the file.");
            return null;
        }

        if (mark.Comma is not null || mark.Point is not null || mark.Either is not { } either)
            return mark.Comma is not null;

        // Where commas part the cells, one inside quotes stands between thousands unless it says otherwise.
        if (delimiter == ',')
            return false;
        Complain(request.Log.File.At, $"{either} of {ValueText.Quoted(request.Log.File.Value)} may be a decimal comma or a thousands mark.", "State decimal: comma or decimal: point beside the file.");
        return null;
    }

    private (int? Date, int? Time) TimeColumns(string[] headings, LogSample[] data, bool comma)
    {
        if (request.Log.TimeColumn is { } stated)
        {
            if (ColumnOf(headings, stated.Value) is { } column)
                return (null, column);
            NoColumn(stated, headings);
            return (null, null);
        }

        bool Times(int i) => Mostly(data.Where(r => r.Cells.Count > i).Select(r => r.Cells[i]), IsTimeLike);
        var named = Enumerable.Range(0, headings.Length).Where(i => TimeHeading().IsMatch(headings[i]) && Times(i)).ToArray();
        var dated = Enumerable.Range(0, headings.Length).Where(i => DateHeading().IsMatch(headings[i])).ToArray();
        if (named.Length > 0 && dated.Length > 0 && dated[0] != named[0] && data[0].Cells.Count > Math.Max(dated[0], named[0])
            && LogClock.LooksDated(data[0].Cells[dated[0]] + " 00:00") && LogClock.TryTimeOfDay(data[0].Cells[named[0]], true, out _))
        {
            return (dated[0], named[0]);
        }

        if (named.Length > 0)
            return (null, named[0]);
        if (dated.Length > 0 && Times(dated[0]))
            return (null, dated[0]);
        var clocks = Enumerable.Range(0, headings.Length).Where(i => Times(i) && data[0].Cells[i].Contains(':', StringComparison.Ordinal)).ToArray();
        if (clocks.Length > 0)
            return (null, clocks[0]);

        // Without headings: a first column that only rises counts the time.
        if (Times(0) && Rises(data, comma))
            return (null, 0);
        Complain(request.Log.File.At, $"{ValueText.Quoted(request.Log.File.Value)} has the columns {ValueText.OneOf(headings)}; none is plainly the time.", "State time column beside the file.");
        return (null, null);
    }

    private static bool Rises(LogSample[] data, bool comma)
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

    private int? ValueColumn(string[] headings, LogSample[] data, bool comma, int time, int? date)
    {
        if (request.Log.ValueColumn is { } stated)
        {
            if (ColumnOf(headings, stated.Value) is { } column)
                return column;
            NoColumn(stated, headings);
            return null;
        }

        var candidates = Enumerable.Range(0, headings.Length).Where(i => i != time && i != date
            && data.Any(r => r.Cells.Count > i && LogCell.Read(r.Cells[i], comma, null, out _) is LogCell.Kind.Number or LogCell.Kind.Over)).ToArray();
        if (candidates.Length > 1)
        {
            // A unit in the heading tells the reading from a battery voltage or a room temperature.
            var ofKind = candidates.Where(i => UnitIn(headings[i]) is not null).ToArray();
            if (ofKind.Length == 1)
                return ofKind[0];
            var named = candidates.Where(i => ReadingWords.Any(w => headings[i].Contains(w, StringComparison.OrdinalIgnoreCase))).ToArray();
            if (named.Length == 1)
                return named[0];
        }

        if (candidates.Length == 1)
            return candidates[0];
        Complain(request.Log.File.At, $"{ValueText.Quoted(request.Log.File.Value)} has the columns {ValueText.OneOf(headings)}; {(candidates.Length == 0 ? "none holds readings" : "more than one may be the reading")}.",
            "State value column beside the file.");
        return null;
    }

    private Unit? FindUnit(string heading)
    {
        if (request.Log.Unit is { } stated)
        {
            if (UnitTable.Find(stated.Value, request.Dimension) is { } unit)
                return unit;
            Complain(stated.At, $"{ValueText.Quoted(stated.Value)} is not a unit of {DimensionName.WithArticle(request.Dimension)}.", $"Write {ValueText.OneOf(Units())}.");
            return null;
        }

        if (UnitIn(heading) is { } found)
            return found;
        if (request.UsualUnit is not null)
            return request.UsualUnit;
        Complain(request.Log.File.At, $"The heading \"{heading}\" of {ValueText.Quoted(request.Log.File.Value)} does not say the unit.",
            $"State unit beside the file: {ValueText.OneOf(Units())}.");
        return null;
    }

    private string[] Units() => [.. UnitTable.OfferedFor(request.Dimension, request.IsSi).Select(u => u.Symbol).Take(6)];

    private Unit? UnitIn(string heading)
    {
        foreach (Match match in UnitWord().Matches(heading))
        {
            if (UnitTable.Find(match.Value, request.Dimension) is { } unit)
                return unit;
        }

        return null;
    }

    private LogClock? FindClock(string heading, string[] cells, bool comma)
    {
        var format = request.Log.TimeFormat?.Value ?? GuessFormat(heading, cells, comma);
        if (format is null)
        {
            Complain(request.Log.File.At, $"The times of {ValueText.Quoted(request.Log.File.Value)} under \"{heading}\" may be seconds or minutes.", "State time format: seconds or time format: minutes beside the file.");
            return null;
        }

        if (format != ClockFormat.DateAndClock)
            return LogClock.Of(format.Value, comma);
        cells = [.. cells.Where(LogClock.LooksDated)];
        if (cells.Length == 0)
        {
            Complain(request.Log.File.At, $"The times of {ValueText.Quoted(request.Log.File.Value)} under \"{heading}\" are not times this program reads.", "Write times as 09:25:00 or dates as 2026-06-18, or state time format.");
            return null;
        }

        var fitting = LogClock.FittingDates(cells);
        var dates = fitting.Select(f => LogClock.DateOf(cells[0], f)!.Value).Distinct().ToArray();
        if (dates.Length > 1)
            fitting = [.. fitting.Where(f => Math.Abs(LogClock.DateOf(cells[0], f)!.Value.DayNumber - jobDate.DayNumber) <= 3)];
        if (fitting.Count > 0 && fitting.Select(f => LogClock.DateOf(cells[0], f)).Distinct().Count() == 1)
            return LogClock.Of(ClockFormat.DateAndClock, comma, fitting[0]);
        Complain(request.Log.File.At, dates.Length > 1
                ? $"\"{cells[0]}\" in {ValueText.Quoted(request.Log.File.Value)} may be the day before the month or after it, and neither is the job's date."
                : $"\"{cells[0]}\" in {ValueText.Quoted(request.Log.File.Value)} is not a date and time this program reads.",
            "Write dates as 2026-06-18, or state time format.");
        return null;
    }

    private static ClockFormat? GuessFormat(string heading, string[] cells, bool comma)
    {
        if (Mostly(cells, c => LogCell.TryNumber(c, comma, out _)))
        {
            if (Minutes().IsMatch(heading))
                return ClockFormat.Minutes;
            return Seconds().IsMatch(heading) ? ClockFormat.Seconds : null;
        }

        if (Mostly(cells, c => LogClock.TryTimeOfDay(c, false, out _)))
        {
            // Half past midnight is written 12:30 AM: half a minute elapsed is not.
            if (cells.Any(c => LogClock.HalfOfDay(c, out _) is not null))
                return ClockFormat.Clock;
            _ = LogClock.TryTimeOfDay(cells[0], false, out var first);
            return first < 60 || heading.Contains("elapsed", StringComparison.OrdinalIgnoreCase) ? ClockFormat.ElapsedClock : ClockFormat.Clock;
        }

        return ClockFormat.DateAndClock;
    }

    // One bad cell is a fault of its row, not of the layout.
    private static bool Mostly(IEnumerable<string> cells, Func<string, bool> fits)
    {
        var (all, good) = (0, 0);
        foreach (var cell in cells)
        {
            if (cell.Length == 0)
                continue;
            all++;
            if (fits(cell))
                good++;
        }

        return good > 0 && good * 2 >= all;
    }

    public static string Joined(LogSample row, int? date, int time) =>
        date is { } d && row.Cells.Count > d ? row.Cells[d] + " " + row.Cells[time] : row.Cells[time];

    private static int? ColumnOf(string[] headings, string stated)
    {
        var index = Array.FindIndex(headings, h => h.Equals(stated.Trim(), StringComparison.OrdinalIgnoreCase));
        return index < 0 ? null : index;
    }

    private void NoColumn(Given<string> stated, string[] headings)
    {
        var nearest = NearestName.Of(stated.Value, headings);
        Complain(stated.At, $"{ValueText.Quoted(request.Log.File.Value)} has no column {ValueText.Quoted(stated.Value)}.",
            nearest is null ? $"Its columns are {ValueText.OneOf(headings)}." : $"Did you mean \"{nearest}\"?");
    }

    private void Complain(SourceLocation at, string found, string advice) => problems.Add(at, found, "", advice, "log");

    [GeneratedRegex(@"\b(time|elapsed|sec|secs|seconds|min|mins|minutes|clock|hour|zeit|uhrzeit|heure)\b|^[ts]\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex TimeHeading();

    [GeneratedRegex(@"\b(date|datum|day)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex DateHeading();

    [GeneratedRegex(@"\b(min|mins|minutes?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Minutes();

    [GeneratedRegex(@"\b(s|sec|secs|seconds?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Seconds();

    [GeneratedRegex(@"[^\s,;:\[\]{}]+", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex UnitWord();
}

/// <summary>How a log is laid out: stated in the job file, or found from the log itself.</summary>
internal sealed record LogLayout
{
    public required char Delimiter { get; init; }

    public required bool DecimalComma { get; init; }

    /// <summary>Line of the first row with readings.</summary>
    public required int FirstLine { get; init; }

    /// <summary>Column with the date when date and time of day are in two columns.</summary>
    public int? DateColumn { get; init; }

    public required int TimeColumn { get; init; }

    public required int ValueColumn { get; init; }

    public required string TimeHeading { get; init; }

    public required string ValueHeading { get; init; }

    public required Unit Unit { get; init; }

    public required bool UnitIsGuessed { get; init; }

    public required LogClock Clock { get; init; }
}
