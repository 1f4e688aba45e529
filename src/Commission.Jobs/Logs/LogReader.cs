using System.Collections.Immutable;
using System.Globalization;
using Commission.Jobs.Binding;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Jobs.Times;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source;

namespace Commission.Jobs.Logs;

/// <summary>What the job file says about a log.</summary>
/// <param name="Log">The log.</param>
/// <param name="Dimension">What the readings are.</param>
/// <param name="UsualUnit">The job's unit for such readings; null when every number needs its unit.</param>
/// <param name="Within">Outside it a reading cannot be.</param>
/// <param name="IsSi">Whether the job's units are SI, so that no advice speaks of inches and pounds.</param>
internal sealed record LogRequest(LogFile Log, Dimension Dimension, Unit? UsualUnit, PlausibleRange Within, bool IsSi)
{
    // No pump of the trade takes a circuit below the one, no circuit under vacuum holds more than the air around it: a number outside was
    // written in another unit than the one that was only taken for it (common practice, no source).
    private const double DeepestVacuum = 1;
    private const double HighestVacuum = 110_000;

    /// <summary>Whether a reading can be.</summary>
    /// <param name="si">The reading in SI, a pressure as written.</param>
    /// <param name="layout">How it is written.</param>
    public bool IsPlausible(double si, LogLayout layout) => Within.Holds(si, layout.Unit.Reference);

    /// <summary>Whether a reading speaks against a unit that nobody wrote.</summary>
    /// <param name="si">The reading in SI, a pressure as written.</param>
    /// <param name="layout">How it is written.</param>
    public bool SpeaksAgainst(double si, LogLayout layout) =>
        layout.UnitIsGuessed && (!IsPlausible(si, layout) || (Dimension == Dimension.VacuumLevel && si is < DeepestVacuum or > HighestVacuum));
}

/// <summary>The day and the zone of a log's clock.</summary>
/// <param name="Zone">The job's zone.</param>
/// <param name="Anchor">When the phase began: a clock without a date belongs to that day or the next.</param>
/// <param name="JobDate">The job's day.</param>
internal sealed record LogCalendar(JobZone Zone, DateTimeOffset? Anchor, DateOnly JobDate);

/// <summary>Reads a CSV log into a series: times that do not fall, readings in SI, gaps and readings above range marked.</summary>
internal static class LogReader
{
    private const int MostComplaints = 10;
    private const double HalfDay = 43_200;

    public const string SwallowedAdvice = "Delete the stray \", or write the cell in one line.";

    /// <param name="request">What the job file says about the log.</param>
    /// <param name="content">The file.</param>
    /// <param name="calendar">The job's zone and day.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public static ReadSeries? Read(LogRequest request, ReadOnlyMemory<byte> content, LogCalendar calendar, ProblemList problems)
    {
        var log = request.Log;
        var before = problems.Count;
        var source = new LogSource(content);
        if (source.Head(4096).AsSpan().Trim().IsEmpty)
        {
            problems.Add(log.File.At, $"{ValueText.Quoted(log.File.Value)} is empty.", "", "Check that the log was saved.", "log");
            return null;
        }

        try
        {
            if (new LogLayoutFinder(request, calendar, problems).Find(source) is not { } layout)
                return null;
            var rows = ReadRows(request, source, layout, problems);
            return problems.Count > before ? null : rows.ToSeries(log, calendar, problems);
        }
        catch (Exception fault) when (fault is NotSupportedException or InvalidDataException or ArgumentException)
        {
            // The reader's own limits: a row of more than 16 MB, which no log has unless a quote opens it that nothing closes.
            problems.Add(log.File.At, $"{ValueText.Quoted(log.File.Value)} is not a table of readings.", "", "Export the log as CSV, one reading a line, and look for a stray \".", "log");
            return null;
        }
    }

    /// <summary>Tells of a quote that makes one cell of several rows.</summary>
    public static string Swallowed(int line, int lines) =>
        string.Create(CultureInfo.InvariantCulture, $"A quote in row {line} opens a cell that ends in row {line + lines - 1}: the rows between are lost.");

    private static LogRows ReadRows(LogRequest request, LogSource source, LogLayout layout, ProblemList problems)
    {
        var log = request.Log;
        var rows = new LogRows(layout);
        var faults = 0;
        var needed = Math.Max(Math.Max(layout.TimeColumn, layout.ValueColumn), layout.DateColumn ?? 0);
        var (last, days, next) = (double.NegativeInfinity, 0.0, 1);
        var lastText = new LogLastTime();
        using var reader = source.Rows(layout.Delimiter);
        foreach (var row in reader)
        {
            var line = next;
            next = row.LineNumberToExcl;
            if (line < layout.FirstLine || row.Span.Trim().IsEmpty)
                continue;
            if (next - line > 1 && row.Span.TrimEnd().Count('\n') is > 0 and var breaks)
            {
                Tell(line, Swallowed(line, breaks + 1), SwallowedAdvice);
                continue;
            }

            if (row.ColCount <= needed)
            {
                Fault(line, null, string.Create(CultureInfo.InvariantCulture, $"has {row.ColCount} cells, and the reading stands in cell {needed + 1}"), "Delete the row, or complete it.");
                continue;
            }

            // A remark beside a reading leaves it as it is; a number without a heading may be the half of one.
            if (row.ColCount > layout.Width && CellsOf(row) is var cells && cells > layout.Width && row[layout.Width].Span.ContainsAnyInRange('0', '9'))
            {
                Fault(line, null, string.Create(CultureInfo.InvariantCulture, $"has {cells} cells, and {layout.Width} have a heading"),
                    layout.Delimiter == ',' ? "Where commas divide the cells, a decimal comma makes two of one: write points, or delete what is too much." : "Delete what is too much, or give it a heading.");
                continue;
            }

            var timeCell = layout.DateColumn is { } date ? $"{row[date].Span.Trim()} {row[layout.TimeColumn].Span.Trim()}" : row[layout.TimeColumn].Span;
            if (!layout.Clock.TryRead(timeCell, out var time))
            {
                Fault(line, layout.TimeHeading, $"holds {ValueText.Quoted(timeCell.Trim().ToString())}, which is not a time like those above", "Correct it, or delete the row.");
                continue;
            }

            time += days;
            if (layout.Clock.Kind == LogTimeKind.Clock && last - time > HalfDay)
            {
                days += 2 * HalfDay;
                time += 2 * HalfDay;
            }

            if (time < last)
            {
                Fault(line, layout.TimeHeading, $"goes back from {lastText} to {timeCell.Trim()}", "Sort the rows by time, or cut the log in two.");
                continue;
            }

            var cell = row[layout.ValueColumn].Span;
            var kind = LogCell.Read(cell, layout.DecimalComma, log.OverRange?.Value, out var number);
            if (kind == LogCell.Kind.Bad)
            {
                Fault(line, layout.ValueHeading, $"holds {ValueText.Quoted(cell.Trim().ToString())}, which is not a number", "Correct it; OL or ---- marks a reading above the gauge's range, an empty cell a gap.");
                continue;
            }

            var si = kind == LogCell.Kind.Number ? layout.Unit.ToSi(number) : double.NaN;
            if (kind == LogCell.Kind.Number && request.SpeaksAgainst(si, layout))
            {
                problems.Add(log.File.At, string.Create(CultureInfo.InvariantCulture, $"The heading \"{layout.ValueHeading}\" of {ValueText.Quoted(log.File.Value)} does not say the unit, and {cell.Trim()} {layout.Unit.Symbol} in row {line} cannot be."), "",
                    "State unit beside the file, the one that the gauge was set to.", "log");
                return rows;
            }

            if (kind == LogCell.Kind.Number && !request.IsPlausible(si, layout))
            {
                Fault(line, layout.ValueHeading, $"holds {ValueText.Quoted(cell.Trim().ToString())}, which no such instrument shows", "Correct it, or state the unit of the column.");
                continue;
            }

            last = time;
            lastText.Set(timeCell.Trim());
            rows.Add(new LogRow(time, si, kind == LogCell.Kind.Over, line), kind == LogCell.Kind.Number ? LogCell.Decimals(cell, layout.DecimalComma) : 0);
        }

        if (faults > MostComplaints)
        {
            problems.Add(log.File.At, string.Create(CultureInfo.InvariantCulture, $"{faults - MostComplaints} more rows of {ValueText.Quoted(log.File.Value)} cannot be read."), "",
                "If most rows are like that, state the layout: value column, time column, delimiter, decimal.", "log");
        }

        return rows;

        void Fault(int line, string? column, string what, string advice)
        {
            var where = column is null ? "" : $", column \"{column}\",";
            Tell(line, string.Create(CultureInfo.InvariantCulture, $"Row {line}{where} {what}."), advice);
        }

        void Tell(int line, string what, string advice)
        {
            if (++faults <= MostComplaints)
                problems.Add(new SourceLocation(log.File.Value, line, 0), what, "", advice, "log-row");
        }
    }

    // Empty cells at the end are only commas.
    private static int CellsOf(nietras.SeparatedValues.SepReader.Row row)
    {
        var count = row.ColCount;
        while (count > 0 && row[count - 1].Span.Trim().IsEmpty)
            count--;
        return count;
    }
}

/// <summary>The time of the row before as written: kept without making a text of every row.</summary>
internal sealed class LogLastTime
{
    private readonly char[] _text = new char[64];
    private int _length;

    public void Set(ReadOnlySpan<char> text)
    {
        _length = Math.Min(text.Length, _text.Length);
        text[.._length].CopyTo(_text);
    }

    public override string ToString() => new(_text, 0, _length);
}
