using System.Collections.Immutable;
using System.Globalization;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Jobs.Problems;
using Commission.Jobs.Times;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source;
using nietras.SeparatedValues;

namespace Commission.Jobs.Logs;

/// <summary>What the job file says about a log.</summary>
/// <param name="Log">The log.</param>
/// <param name="Dimension">What the readings are.</param>
/// <param name="UsualUnit">The job's unit for such readings; null when every number needs its unit.</param>
/// <param name="IsPlausible">Whether a reading in SI can be; a gauge pressure as written.</param>
/// <param name="IsSi">Whether the job's units are SI, so that no advice speaks of inches and pounds.</param>
internal sealed record LogRequest(LogFile Log, Dimension Dimension, Unit? UsualUnit, Func<double, bool> IsPlausible, bool IsSi);

/// <summary>The day and the zone of a log's clock.</summary>
/// <param name="Zone">The job's zone.</param>
/// <param name="Anchor">When the phase began: a clock without a date belongs to that day or the next.</param>
/// <param name="JobDate">The job's day.</param>
internal sealed record LogCalendar(JobZone Zone, DateTimeOffset? Anchor, DateOnly JobDate);

/// <summary>Reads a CSV log into a series: times that do not fall, readings in SI, gaps and readings above range marked.</summary>
internal static class LogReader
{
    private const int MostComplaints = 10;
    private const double Day = 86_400;

    /// <param name="request">What the job file says about the log.</param>
    /// <param name="content">The file.</param>
    /// <param name="calendar">The job's zone and day.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public static ReadSeries? Read(LogRequest request, ReadOnlySpan<byte> content, LogCalendar calendar, ProblemList problems)
    {
        var log = request.Log;
        var before = problems.Count;
        var text = LogText.Decode(content);
        if (text.AsSpan().Trim().IsEmpty)
        {
            problems.Add(log.File.At, $"{ValueText.Quoted(log.File.Value)} is empty.", "", "Check that the log was saved.", "log");
            return null;
        }

        try
        {
            if (new LogLayoutFinder(request, calendar.JobDate, problems).Find(text) is not { } layout)
                return null;
            var rows = ReadRows(request, text, layout, problems);
            return problems.Count > before ? null : rows.ToSeries(log, layout, calendar, problems);
        }
        catch (Exception fault) when (fault is NotSupportedException or InvalidDataException or ArgumentException)
        {
            // The reader's own limits: a row of more than 16 MB, which no log has.
            problems.Add(log.File.At, $"{ValueText.Quoted(log.File.Value)} is not a table of readings.", "", "Export the log as CSV, one reading a line.", "log");
            return null;
        }
    }

    private static Rows ReadRows(LogRequest request, string text, LogLayout layout, ProblemList problems)
    {
        var log = request.Log;
        var rows = new Rows();
        var faults = 0;
        var needed = Math.Max(Math.Max(layout.TimeColumn, layout.ValueColumn), layout.DateColumn ?? 0);
        var last = double.NegativeInfinity;
        var lastText = "";
        var days = 0.0;
        var next = 1;
        using var reader = LogSample.Open(text, layout.Delimiter);
        foreach (var row in reader)
        {
            var line = next;
            next = row.LineNumberToExcl;
            if (line < layout.FirstLine || row.Span.Trim().IsEmpty)
                continue;
            if (row.ColCount <= needed)
            {
                Fault(line, null, string.Create(CultureInfo.InvariantCulture, $"has {row.ColCount} cells, and the reading stands in cell {needed + 1}"), "Delete the row, or complete it.");
                continue;
            }

            var timeCell = layout.DateColumn is { } date ? $"{row[date].Span.Trim()} {row[layout.TimeColumn].Span.Trim()}" : row[layout.TimeColumn].Span;
            if (!layout.Clock.TryRead(timeCell, out var time))
            {
                Fault(line, layout.TimeHeading, $"holds {ValueText.Quoted(timeCell.ToString())}, which is not a time like those above", "Correct it, or delete the row.");
                continue;
            }

            time += days;
            if (layout.Clock.Format == ClockFormat.Clock && last - time > Day / 2)
            {
                days += Day;
                time += Day;
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
            if (kind == LogCell.Kind.Number && !request.IsPlausible(si))
            {
                Fault(line, layout.ValueHeading, $"holds {ValueText.Quoted(cell.Trim().ToString())}, which no such instrument shows", "Correct it, or state the unit of the column.");
                continue;
            }

            last = time;
            lastText = timeCell.Trim().ToString();
            rows.Add(time, si, kind == LogCell.Kind.Over, line);
            if (kind == LogCell.Kind.Number)
                rows.Decimals = Math.Max(rows.Decimals, LogCell.Decimals(cell, layout.DecimalComma));
        }

        if (faults > MostComplaints)
        {
            problems.Add(log.File.At, string.Create(CultureInfo.InvariantCulture, $"{faults - MostComplaints} more rows of {ValueText.Quoted(log.File.Value)} cannot be read."), "",
                "If most rows are like that, state the layout: value column, time column, delimiter, decimal.", "log");
        }

        return rows;

        void Fault(int line, string? column, string what, string advice)
        {
            if (++faults > MostComplaints)
                return;
            var where = column is null ? "" : $", column \"{column}\",";
            problems.Add(new SourceLocation(log.File.Value, line, 0),
                string.Create(CultureInfo.InvariantCulture, $"Row {line}{where} {what}."), "", advice, "log-row");
        }
    }

    private sealed class Rows
    {
        private readonly ImmutableArray<double>.Builder _times = ImmutableArray.CreateBuilder<double>(1024);
        private readonly ImmutableArray<double>.Builder _values = ImmutableArray.CreateBuilder<double>(1024);
        private readonly ImmutableArray<bool>.Builder _over = ImmutableArray.CreateBuilder<bool>(1024);
        private readonly ImmutableArray<int>.Builder _lines = ImmutableArray.CreateBuilder<int>(1024);

        public int Decimals { get; set; }

        public void Add(double time, double value, bool over, int line)
        {
            _times.Add(time);
            _values.Add(value);
            _over.Add(over);
            _lines.Add(line);
        }

        public ReadSeries? ToSeries(LogFile log, LogLayout layout, LogCalendar calendar, ProblemList problems)
        {
            if (_times.Count < 2)
            {
                problems.Add(log.File.At, $"{ValueText.Quoted(log.File.Value)} holds fewer than two readings.", "", "Check that the whole log was saved.", "log");
                return null;
            }

            var clocked = layout.Clock.Format is ClockFormat.Clock or ClockFormat.DateAndClock;
            var zero = clocked ? _times[0] : 0;
            var start = log.Started?.Value.Clock;
            if (clocked)
            {
                start = StartOf(layout.Clock.Format, zero, calendar);
                if (start is null)
                {
                    problems.Add(new SourceLocation(log.File.Value, _lines[0], 0), "The log begins in the hour that the clock skipped that day.", "", "Check the clock of the gauge and the zone.", "log");
                    return null;
                }

                for (var i = 0; i < _times.Count; i++)
                    _times[i] -= zero;
            }

            return new ReadSeries
            {
                File = log.File.Value,
                Times = _times.ToImmutable(),
                Values = _values.ToImmutable(),
                OverRange = _over.ToImmutable(),
                Rows = _lines.ToImmutable(),
                Start = start,
                Unit = layout.Unit.Symbol,
                UnitIsGuessed = layout.UnitIsGuessed,
                Column = layout.ValueHeading,
                Step = SmallestStep(layout),
            };
        }

        private static DateTimeOffset? StartOf(ClockFormat format, double seconds, LogCalendar calendar)
        {
            var (zone, anchor, jobDate) = calendar;
            if (format == ClockFormat.DateAndClock)
            {
                var day = Math.Floor(seconds / Day);
                return Moment(zone, DateOnly.FromDayNumber((int)day), seconds - (day * Day));
            }

            var date = anchor is { } began ? DateOnly.FromDateTime(began.DateTime) : jobDate;
            var start = Moment(zone, date, seconds);

            // A pump started before midnight, a log begun after it.
            return anchor is { } a && start < a - TimeSpan.FromHours(12) ? Moment(zone, date.AddDays(1), seconds) : start;
        }

        private static DateTimeOffset? Moment(JobZone zone, DateOnly date, double seconds) =>
            zone.At(date, TimeOnly.MinValue.Add(TimeSpan.FromSeconds(Math.Floor(seconds)))) is { } whole ? whole.AddSeconds(seconds - Math.Floor(seconds)) : null;

        private double SmallestStep(LogLayout layout)
        {
            var digit = Math.Pow(10, -Decimals) * layout.Unit.Factor;
            var smallest = double.PositiveInfinity;
            for (var i = 1; i < _values.Count; i++)
            {
                var step = Math.Abs(_values[i] - _values[i - 1]);
                if (step > digit / 2 && step < smallest)
                    smallest = step;
            }

            return double.IsFinite(smallest) ? Math.Max(digit, smallest) : digit;
        }
    }
}
