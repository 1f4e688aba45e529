using System.Collections.Immutable;
using Commission.Jobs.Binding;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Jobs.Times;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
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
            problems.Add(log.File.At, LogMessages.Empty(ValueText.Short(log.File.Value)), null, LogMessages.EmptyNext, "log");
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
            problems.Add(log.File.At, LogMessages.NoTable(ValueText.Short(log.File.Value)), null, LogMessages.NoTableNext, "log");
            return null;
        }
    }

    /// <summary>Tells of a quote that makes one cell of several rows.</summary>
    public static Message Swallowed(int line, int lines) => LogMessages.Swallowed(line, line + lines - 1);

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
                Tell(line, Swallowed(line, breaks + 1), LogMessages.SwallowedNext);
                continue;
            }

            if (row.ColCount <= needed)
            {
                Tell(line, LogMessages.TooFewCells(line, row.ColCount, needed + 1), LogMessages.TooFewCellsNext);
                continue;
            }

            // A remark beside a reading leaves it as it is; a number without a heading may be the half of one.
            if (row.ColCount > layout.Width && CellsOf(row) is var cells && cells > layout.Width && row[layout.Width].Span.ContainsAnyInRange('0', '9'))
            {
                Tell(line, LogMessages.TooManyCells(line, cells, layout.Width), layout.Delimiter == ',' ? LogMessages.DecimalCommasNext : LogMessages.TooManyCellsNext);
                continue;
            }

            var timeCell = layout.DateColumn is { } date ? $"{row[date].Span.Trim()} {row[layout.TimeColumn].Span.Trim()}" : row[layout.TimeColumn].Span;
            if (!layout.Clock.TryRead(timeCell, out var time))
            {
                Tell(line, LogMessages.NotATime(line, new(layout.TimeHeading), ValueText.Short(timeCell.Trim().ToString())), LogMessages.NotATimeNext);
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
                Tell(line, LogMessages.GoesBack(line, new(layout.TimeHeading), new(lastText.ToString()), new(timeCell.Trim().ToString())), LogMessages.GoesBackNext);
                continue;
            }

            var cell = row[layout.ValueColumn].Span;
            var kind = LogCell.Read(cell, layout.DecimalComma, log.OverRange?.Value, out var number);
            if (kind == LogCell.Kind.Bad)
            {
                Tell(line, LogMessages.NotANumber(line, new(layout.ValueHeading), ValueText.Short(cell.Trim().ToString())), LogMessages.NotANumberNext);
                continue;
            }

            var si = kind == LogCell.Kind.Number ? layout.Unit.ToSi(number) : double.NaN;
            if (kind == LogCell.Kind.Number && request.SpeaksAgainst(si, layout))
            {
                problems.Add(log.File.At, LogMessages.GuessedUnit(ValueText.Short(log.File.Value), new(layout.ValueHeading), new($"{cell.Trim()} {layout.Unit.Symbol}"), line), null,
                    LogMessages.GuessedUnitNext, "log");
                return rows;
            }

            if (kind == LogCell.Kind.Number && !request.IsPlausible(si, layout))
            {
                Tell(line, LogMessages.NotPlausible(line, new(layout.ValueHeading), ValueText.Short(cell.Trim().ToString())), LogMessages.NotPlausibleNext);
                continue;
            }

            last = time;
            lastText.Set(timeCell.Trim());
            rows.Add(new LogRow(time, si, kind == LogCell.Kind.Over, line), kind == LogCell.Kind.Number ? LogCell.Decimals(cell, layout.DecimalComma) : 0);
        }

        if (faults > MostComplaints)
        {
            problems.Add(log.File.At, LogMessages.MoreRows(ValueText.Short(log.File.Value), faults - MostComplaints), null,
                LogMessages.MoreRowsNext, "log");
        }

        return rows;

        void Tell(int line, Message what, Message advice)
        {
            if (++faults <= MostComplaints)
                problems.Add(new SourceLocation(log.File.Value, line, 0), what, null, advice, "log-row");
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
