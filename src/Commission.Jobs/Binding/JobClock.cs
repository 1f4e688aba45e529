using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Source.Problems;

namespace Commission.Jobs.Binding;

/// <summary>
/// Gives every clock time its date and offset, and every time of a phase its distance from the phase's start.
/// A time of day belongs to the day of the time before it, or to the next when midnight passed in between; where work before was dated
/// earlier than the job, a phase begins on the job's day.
/// </summary>
internal sealed class JobClock(JobZone zone, DateOnly jobDate, ProblemList problems)
{
    // A step back of more than half a day is a step over midnight.
    private static readonly TimeSpan HalfDay = TimeSpan.FromHours(12);

    private DateTimeOffset? _last;

    /// <summary>Resolves all clock times, phase after phase in the order of the work.</summary>
    public void ResolveClocks(Job job)
    {
        Single(job.AsFound?.Readings.Select(r => r.At));
        Single([job.Recovery?.At, job.Recovery?.Scale?.At, job.Recovery?.Witnessed?.At]);
        Single(job.Instruments.SelectMany(Checks));
        if (job.PressureTest is { } test)
        {
            Begin(test.Started);
            Sequence(test.Stages.Select(s => s.At));
            Sequence([test.Strength?.At]);
            if (test.Tightness is { } hold)
            {
                Sequence([hold.From?.At, .. hold.Readings.Select(r => r.At), hold.To?.At]);
                Single([hold.Series?.Started, hold.TemperatureSeries?.Started]);
            }

            Single([.. test.Joints.Select(j => j.At), test.Witnessed?.At]);
        }

        if (job.Evacuation is { } evacuation)
        {
            Begin(evacuation.Started);
            var start = _last;
            Single([evacuation.Series?.Started]);
            Sequence(evacuation.Levels.Select(l => l.At));
            var end = _last;
            _last = start;
            Sequence(evacuation.Events.Select(e => e.At));
            if (end > _last) _last = end;
            Single([evacuation.Witnessed?.At]);
        }

        if (job.Charging is { } charging)
        {
            Single([charging.CrankcaseHeaterOnSince]);
            Begin(charging.CompressorStarted);
            var start = _last;
            Sequence(charging.Events.Select(e => e.At));
            _last = start;
            Sequence(charging.Readings.Select(r => r.At));
            Single([charging.LastChange, charging.StandingTest?.At, .. charging.Scale.Select(s => s.At), charging.Witnessed?.At]);
        }

        Single([job.Air?.At, job.Air?.Airflow?.At, job.Electrical?.At, job.Electrical?.Insulation?.At, job.Electrical?.ProvedDead?.At]);
        Single([job.Safety?.LeakSensor?.At, .. job.Safety?.Devices.Select(d => d.At) ?? [], job.Functional?.Witnessed?.At]);
        Single(job.Photos.Select(p => p.At));
    }

    /// <summary>Fills in the distance from each phase's start, and the clock of times written as elapsed.</summary>
    public void ResolveElapsed(Job job)
    {
        if (job.PressureTest is { } test)
        {
            var times = new List<Given<JobTime>?>(test.Stages.Select(s => s.At)) { test.Strength?.At, test.Tightness?.From?.At, test.Tightness?.To?.At };
            times.AddRange(test.Tightness?.Readings.Select(r => r.At) ?? []);
            times.AddRange(test.Joints.Select(j => j.At));
            FromStart(test.Started?.Value.Clock, times, "pressure test", "started", needsClock: true);
        }

        if (job.Evacuation is { } evacuation)
        {
            FromStart(evacuation.Started?.Value.Clock ?? evacuation.Series?.Data?.Start,
                [.. evacuation.Levels.Select(l => l.At), .. evacuation.Events.Select(e => e.At)], "evacuation", "started", needsClock: evacuation.Series is null);
        }

        if (job.Charging is { } charging)
        {
            FromStart(charging.CompressorStarted?.Value.Clock,
                [.. charging.Readings.Select(r => r.At), .. charging.Events.Select(e => e.At), charging.LastChange, charging.StandingTest?.At, .. charging.Scale.Select(s => s.At)],
                "charging", "compressor started", needsClock: true);
        }
    }

    private static IEnumerable<Given<JobTime>?> Checks(Instrument instrument)
    {
        if (instrument.Checks is not { } checks) yield break;
        yield return checks.IcePoint?.At;
        yield return checks.WarmPoint?.At;
        yield return checks.BoilingPoint?.At;
        yield return checks.Zero?.At;
        yield return checks.KnownPressure?.At;
        yield return checks.Cylinder?.At;
        yield return checks.Pair?.At;
        yield return checks.CheckWeight?.At;
        yield return checks.RigBlankedOff?.At;
        yield return checks.AgainstSecondGauge?.At;
        yield return checks.ReferenceLeak?.At;
    }

    // A phase that begins at an earlier hour than the last one ended, on work that was dated before the job's day, begins on the job's day.
    private void Begin(Given<JobTime>? started)
    {
        if (started?.Value.Written is { Date: null } written && _last is { } last && DateOnly.FromDateTime(last.DateTime) < jobDate && At(started, DateOnly.FromDateTime(last.DateTime), written.Time) < last)
            _last = started.Value.Clock = At(started, jobDate, written.Time) ?? last;
        else
            Sequence([started]);
    }

    // Times that follow one another: each is at or after the one before.
    private void Sequence(IEnumerable<Given<JobTime>?> times)
    {
        foreach (var time in times)
        {
            if (time?.Value.Written is null) continue;
            time.Value.Clock = Moment(time, _last);
            if (time.Value.Clock is { } now) _last = now;
        }
    }

    // Times that stand alone: on the day of what was done last before them in the file, or on the job's day.
    private void Single(IEnumerable<Given<JobTime>?>? times)
    {
        foreach (var time in times ?? [])
        {
            if (time?.Value.Written is null) continue;
            time.Value.Clock = Moment(time, _last);
        }
    }

    private DateTimeOffset? Moment(Given<JobTime> given, DateTimeOffset? after)
    {
        var written = given.Value.Written!.Value;
        var date = written.Date ?? (after is { } a ? DateOnly.FromDateTime(a.DateTime) : jobDate);
        var moment = At(given, date, written.Time);
        if (written.Date is null && after is { } last && moment < last - HalfDay) moment = At(given, date.AddDays(1), written.Time);
        return moment;
    }

    private DateTimeOffset? At(Given<JobTime> given, DateOnly date, TimeOnly time)
    {
        if (zone.At(date, time) is { } moment) return moment;
        problems.Add(given.At, $"{given.Text} does not exist on that day: the clock was put forward over it.", "", "Check the time and the zone.", "time", given.Text.Length);
        return null;
    }

    private void FromStart(DateTimeOffset? start, IEnumerable<Given<JobTime>?> times, string phase, string key, bool needsClock)
    {
        foreach (var time in times)
        {
            if (time is null) continue;
            if (time.Value.IsElapsed)
            {
                if (start is { } s) time.Value.Clock = s.AddSeconds(time.Value.Elapsed!.Value.Si);
                else if (needsClock)
                {
                    problems.Add(time.At, $"{time.Text} counts from a start that is not written.", "", $"Write {key}: under {phase}, or a clock time here.", "time", time.Text.Length);
                }
            }
            else if (start is { } began && time.Value.Clock is { } clock)
            {
                time.Value.Elapsed = Duration.FromSi((clock - began).TotalSeconds);
            }
        }
    }
}
