using System.Runtime.InteropServices;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Jobs.Times;
using Commission.Messages;
using Commission.Source;

namespace Commission.Jobs.Logs;

/// <summary>One reading of a log.</summary>
/// <param name="Time">Its time as the log counts, s.</param>
/// <param name="Value">The reading in SI; NaN for a gap and above range.</param>
/// <param name="IsOver">Whether it was above the gauge's range.</param>
/// <param name="Line">Its row in the file.</param>
internal readonly record struct LogRow(double Time, double Value, bool IsOver, int Line);

/// <summary>The readings of a log as they are read. Of more than a quarter of a million every second one is kept, of more than half a million every fourth, and so on; the last one always.</summary>
internal sealed class LogRows(LogLayout layout)
{
    // So many readings are one a second for three days.
    public const int Most = 1 << 18;
    private const double Day = 86_400;

    // What a conversion leaves of two equal numbers.
    private const double Noise = 1e-11;

    private readonly List<LogRow> _rows = [];
    private LogRow _last;
    private long _count;
    private int _every = 1;
    private int _decimals;
    private double _step = double.PositiveInfinity;

    /// <param name="row">The reading.</param>
    /// <param name="decimals">Digits behind its decimal mark.</param>
    public void Add(LogRow row, int decimals)
    {
        if (_count > 0 && Math.Abs(row.Value - _last.Value) is var step && step > Noise * Math.Abs(row.Value) && step < _step)
            _step = step;
        _decimals = Math.Max(_decimals, decimals);
        if (_count % _every == 0 && _rows.Count == Most)
            Halve();
        if (_count % _every == 0)
            _rows.Add(row);
        _last = row;
        _count++;
    }

    public ReadSeries? ToSeries(LogFile log, LogCalendar calendar, ProblemList problems)
    {
        if (_count < 2)
        {
            problems.Add(log.File.At, LogMessages.TooShort(ValueText.Short(log.File.Value)), null, LogMessages.TooShortNext, "log");
            return null;
        }

        if (_rows[^1].Line != _last.Line)
            _rows.Add(_last);
        var zero = layout.Clock.IsOfDay ? _rows[0].Time : 0;
        var start = log.Started?.Value.Clock;
        if (layout.Clock.IsOfDay)
        {
            start = StartOf(layout.Clock, zero, calendar);
            if (start is null)
            {
                problems.Add(new SourceLocation(log.File.Value, _rows[0].Line, 0), LogMessages.SkippedHour, null, LogMessages.SkippedHourNext, "log");
                return null;
            }
        }

        var (times, values, over, lines) = (new double[_rows.Count], new double[_rows.Count], new bool[_rows.Count], new int[_rows.Count]);
        for (var i = 0; i < times.Length; i++)
            (times[i], values[i], over[i], lines[i]) = (_rows[i].Time - zero, _rows[i].Value, _rows[i].IsOver, _rows[i].Line);
        var digit = Math.Pow(10, -_decimals) * layout.Unit.Factor;
        return new ReadSeries
        {
            File = log.File.Value,
            Times = ImmutableCollectionsMarshal.AsImmutableArray(times),
            Values = ImmutableCollectionsMarshal.AsImmutableArray(values),
            OverRange = ImmutableCollectionsMarshal.AsImmutableArray(over),
            Rows = ImmutableCollectionsMarshal.AsImmutableArray(lines),
            Start = start,
            Unit = layout.Unit.Symbol,
            UnitIsGuessed = layout.UnitIsGuessed,
            Column = layout.ValueHeading,
            Every = _every,
            Step = double.IsFinite(_step) ? Math.Max(digit, _step) : digit,
        };
    }

    private void Halve()
    {
        for (var i = 0; 2 * i < _rows.Count; i++)
            _rows[i] = _rows[2 * i];
        _rows.RemoveRange((_rows.Count + 1) / 2, _rows.Count / 2);
        _every *= 2;
    }

    private static DateTimeOffset? StartOf(LogClock clock, double seconds, LogCalendar calendar)
    {
        var (zone, anchor, jobDate) = calendar;
        if (clock.Kind != LogTimeKind.Clock)
        {
            var day = Math.Floor(seconds / Day);
            return clock.IsUniversal ? zone.Of(Universal(seconds)) : Moment(zone, DateOnly.FromDayNumber((int)day), seconds - (day * Day));
        }

        var date = anchor is { } began ? DateOnly.FromDateTime(began.DateTime) : jobDate;
        if (clock.IsUniversal)
        {
            // The day in Greenwich may be the one before or after the job's.
            return Enumerable.Range(-1, 3).Select(i => zone.Of(Universal(seconds + ((date.DayNumber + i) * Day))))
                .First(t => anchor is { } a ? t >= a - TimeSpan.FromHours(12) : DateOnly.FromDateTime(t.DateTime) >= date);
        }

        var start = Moment(zone, date, seconds);

        // A pump started before midnight, a log begun after it.
        return anchor is { } from && start < from - TimeSpan.FromHours(12) ? Moment(zone, date.AddDays(1), seconds) : start;
    }

    private static DateTimeOffset Universal(double seconds) => new DateTimeOffset(1, 1, 1, 0, 0, 0, TimeSpan.Zero).AddTicks((long)Math.Round(seconds * 1000) * TimeSpan.TicksPerMillisecond);

    private static DateTimeOffset? Moment(JobZone zone, DateOnly date, double seconds) =>
        zone.At(date, TimeOnly.MinValue.Add(TimeSpan.FromSeconds(Math.Floor(seconds)))) is { } whole ? whole.AddSeconds(seconds - Math.Floor(seconds)) : null;
}
