using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>
/// A time of a job. A clock time belongs to the job's date and zone; an elapsed time counts from the start of its phase.
/// When both the start and the zone's clock are known, both members are filled in.
/// </summary>
public sealed class JobTime
{
    /// <summary>Makes a time.</summary>
    /// <param name="clock">Date, time of day and offset; null when only an elapsed time is known.</param>
    /// <param name="elapsed">Time since the start of the phase; null when no start is known.</param>
    /// <param name="isElapsed">Whether it was written as an elapsed time.</param>
    public JobTime(DateTimeOffset? clock, Duration? elapsed, bool isElapsed = false)
    {
        Clock = clock;
        Elapsed = elapsed;
        IsElapsed = isElapsed;
    }

    /// <summary>Date, time of day and offset of the job's zone (offset zero when the job names none).</summary>
    public DateTimeOffset? Clock { get; internal set; }

    /// <summary>Time since the start of the phase: <c>started</c> of the evacuation and pressure test, <c>compressor started</c> of the charging.</summary>
    public Duration? Elapsed { get; internal set; }

    /// <summary>Whether it was written as an elapsed time.</summary>
    public bool IsElapsed { get; }

    /// <summary>The clock time before the date and the zone were found out.</summary>
    internal WrittenTime? Written { get; init; }
}
