using System.Globalization;
using Commission.Jobs.Model;
using Commission.Messages;

namespace Commission.Checks.Kernel;

/// <summary>
/// Times of an evacuation in seconds from one zero: when the pump was started, else when the log began, else the first time written.
/// They are printed as the crew writes them: as times of day, or as minutes since the start.
/// </summary>
internal sealed class EvacuationClock
{
    private readonly DateTimeOffset? _zero;
    private readonly DateOnly _day;

    private EvacuationClock(DateTimeOffset? zero, DateOnly day, bool ofDay)
    {
        _zero = zero;
        _day = day;
        IsOfDay = ofDay && zero is not null;
    }

    /// <summary>Whether times are printed as times of day.</summary>
    public bool IsOfDay { get; }

    /// <summary>The clock of an evacuation.</summary>
    public static EvacuationClock Of(Job job)
    {
        var evacuation = job.Evacuation;
        var written = (evacuation?.Events.Select(e => e.At.Value) ?? []).Concat(evacuation?.Levels.Select(l => l.At.Value) ?? []).ToList();
        var start = evacuation?.Started?.Value.Clock
            ?? evacuation?.Series?.Data?.Start
            ?? written.Select(t => t.Clock).FirstOrDefault(c => c is not null);
        return new EvacuationClock(start, job.Identity.Date.Value, written.TrueForAll(t => !t.IsElapsed));
    }

    /// <summary>Seconds from zero; null when the time cannot be placed.</summary>
    /// <param name="time">A time of the job.</param>
    public double? Seconds(JobTime time) => _zero is { } z && time.Clock is { } clock ? (clock - z).TotalSeconds : time.Elapsed?.Si;

    /// <summary>Seconds from zero to where a log counts from.</summary>
    /// <param name="start">The clock at the log's own zero; null when nobody knows, and then it is the evacuation's.</param>
    public double Offset(DateTimeOffset? start) => start is { } s && _zero is { } z ? (s - z).TotalSeconds : 0;

    /// <summary>Position on a figure's axis: minutes since midnight of the job's day, or since the start.</summary>
    /// <param name="seconds">Seconds from zero.</param>
    public double Minutes(double seconds) => IsOfDay && _zero is { } z
        ? (z.DateTime - _day.ToDateTime(TimeOnly.MinValue)).TotalMinutes + (seconds / 60)
        : seconds / 60;

    /// <summary>A moment as the record prints it: <c>14:50</c>, or <c>71 min</c>.</summary>
    /// <param name="seconds">Seconds from zero.</param>
    public string Moment(double seconds)
    {
        if (!IsOfDay || _zero is not { } z)
            return string.Create(CultureInfo.InvariantCulture, $"{Trimmed(seconds / 60)} min");
        var moment = z.AddSeconds(Math.Round(seconds));
        return moment.ToString(moment.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);
    }

    /// <summary>A moment as a message carries it, to the second.</summary>
    /// <param name="seconds">Seconds from zero.</param>
    public TimeValue Time(double seconds) =>
        IsOfDay && _zero is { } z ? TimeValue.At(TimeOnly.FromDateTime(z.AddSeconds(Math.Round(seconds)).DateTime)) : TimeValue.After(seconds);

    /// <summary>A span of time in words: <c>45 s</c>, <c>9.5 min</c>, <c>3.2 h</c>.</summary>
    /// <param name="seconds">The span, s, not negative.</param>
    public static string Span(double seconds) => MessageWriter.Span(seconds);

    private static string Trimmed(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
