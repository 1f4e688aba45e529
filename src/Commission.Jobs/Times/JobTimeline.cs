using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Times;

/// <summary>What a time is in the order of its phase; the schema says so of each.</summary>
internal enum TimeRole
{
    /// <summary>It stands alone: on the day of what was done last before it in the order of the work, or on the job's day.</summary>
    Alone,

    /// <summary>The phase starts here, and elapsed times count from here.</summary>
    Start,

    /// <summary>It is at or after the one before it. Outside a phase it stands alone.</summary>
    On,
}

/// <summary>A time as written: a clock time, whose date may be missing, or a time since the start.</summary>
internal readonly record struct WrittenTime(DateOnly? Date, TimeOnly Clock, Duration? Elapsed);

/// <summary>
/// Gives every clock time its date and offset, and every time of a phase its distance from the phase's start, while the job is bound in the
/// order of the work. A time of day belongs to the day of the time before it, or to the next when midnight passed in between; where work
/// before was dated earlier than the job, a phase begins on the job's day.
/// </summary>
internal sealed class JobTimeline(ProblemList problems)
{
    // A step back of more than half a day is a step over midnight.
    private static readonly TimeSpan HalfDay = TimeSpan.FromHours(12);

    private DateTimeOffset? _last;
    private Phase? _phase;

    /// <summary>The job's zone.</summary>
    public JobZone Zone { get; private set; } = JobZone.Unnamed;

    /// <summary>The job's day; where it was refused, one that lets the rest be read.</summary>
    public DateOnly JobDate { get; private set; } = new(2000, 1, 1);

    /// <summary>When a log of the phase begins that has no clock of its own.</summary>
    public DateTimeOffset? LogStart => _phase?.LogStart;

    public void SetCalendar(JobZone? zone, DateOnly? date)
    {
        Zone = zone ?? Zone;
        JobDate = date ?? JobDate;
    }

    /// <summary>Begins a phase; it ends when the result is disposed.</summary>
    /// <param name="name">The phase's key.</param>
    /// <param name="startKey">The key that says when it started.</param>
    /// <param name="hasLog">Whether a log may say when it started.</param>
    public PhaseScope Enter(string name, string startKey, bool hasLog)
    {
        _phase = new Phase(name, startKey, hasLog) { Mark = _last };
        return new PhaseScope(this);
    }

    /// <summary>The phase starts with its log, unless it said when it started.</summary>
    public void StartWithLog(DateTimeOffset? start)
    {
        if (_phase is { Start: null } phase)
            phase.Start = start;
    }

    /// <summary>Reads times that run beside those before them, all counted from the start of the phase.</summary>
    public T Beside<T>(Func<T> bind)
    {
        var before = _last;
        _last = _phase is null ? _last : _phase.Mark;
        var result = bind();
        _last = Later(before, _last);
        return result;
    }

    /// <summary>Reads the time with which a log of the phase begins.</summary>
    public T? Opening<T>(Func<T?> bind)
        where T : class
    {
        var before = _last;
        var result = bind();
        if (result is not null && _phase is not null && _last is { } now && now != before)
            _phase.LogStart = now;
        return result;
    }

    /// <summary>The time that was meant.</summary>
    public JobTime Resolve(SourceScalar scalar, string text, WrittenTime written, TimeRole role)
    {
        if (written.Elapsed is { } elapsed)
            return FromStart(scalar, text, elapsed, role);
        var clock = role == TimeRole.Start ? Begin(scalar, text, written) : Moment(scalar, text, written, _last);
        if (clock is not null && role == TimeRole.On && _phase is not null)
            _last = clock;
        var sinceStart = role != TimeRole.Start && _phase?.Start is { } start && clock is { } now ? Duration.FromSi((now - start).TotalSeconds) : (Duration?)null;
        return new JobTime(clock, sinceStart);
    }

    private JobTime FromStart(SourceScalar scalar, string text, Duration elapsed, TimeRole role)
    {
        if (role != TimeRole.Start && _phase?.Start is { } start)
        {
            var clock = start.AddSeconds(elapsed.Si);
            if (role == TimeRole.On)
                _last = clock;
            return new JobTime(clock, elapsed, IsElapsed: true);
        }

        if (role != TimeRole.Start && _phase is { HasLog: false } phase)
        {
            problems.Add(scalar.Location, JobMessages.NoStart(new(text)), null, JobMessages.NoStartNext(new(phase.StartKey), new(phase.Name)), "time", text.Length);
        }

        return new JobTime(null, elapsed, IsElapsed: true);
    }

    // A phase that begins at an earlier hour than the last one ended, on work that was dated before the job's day, begins on the job's day.
    private DateTimeOffset? Begin(SourceScalar scalar, string text, WrittenTime written)
    {
        var onJobDay = written.Date is null && _last is { } last && DayOf(last) < JobDate && Zone.At(DayOf(last), written.Clock) < last;
        var clock = onJobDay ? At(scalar, text, JobDate, written.Clock) : Moment(scalar, text, written, _last);
        _last = clock ?? _last;
        if (_phase is { } phase)
        {
            phase.Mark = _last;
            phase.Start = clock;
            phase.LogStart = clock;
        }

        return clock;
    }

    private DateTimeOffset? Moment(SourceScalar scalar, string text, WrittenTime written, DateTimeOffset? after)
    {
        var date = written.Date ?? (after is { } a ? DayOf(a) : JobDate);
        var moment = At(scalar, text, date, written.Clock);
        return written.Date is null && after is { } last && moment < last - HalfDay ? At(scalar, text, date.AddDays(1), written.Clock) : moment;
    }

    private DateTimeOffset? At(SourceScalar scalar, string text, DateOnly date, TimeOnly time)
    {
        if (Zone.At(date, time) is { } moment)
            return moment;
        problems.Add(scalar.Location, JobMessages.SkippedTime(new(text)), null, JobMessages.SkippedTimeNext, "time", text.Length);
        return null;
    }

    private static DateOnly DayOf(DateTimeOffset moment) => DateOnly.FromDateTime(moment.DateTime);

    private static DateTimeOffset? Later(DateTimeOffset? one, DateTimeOffset? other) => one is null || other > one ? other : one;

    /// <summary>Ends the phase that was begun.</summary>
    internal readonly struct PhaseScope(JobTimeline timeline) : IDisposable
    {
        public void Dispose() => timeline._phase = null;
    }

    private sealed class Phase(string name, string startKey, bool hasLog)
    {
        public string Name => name;

        public string StartKey => startKey;

        public bool HasLog => hasLog;

        /// <summary>The time from which everything beside each other counts.</summary>
        public DateTimeOffset? Mark { get; set; }

        public DateTimeOffset? Start { get; set; }

        public DateTimeOffset? LogStart { get; set; }
    }
}
