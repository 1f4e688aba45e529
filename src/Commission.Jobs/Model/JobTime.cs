using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>
/// A time of a job. A clock time belongs to the job's date and zone; an elapsed time counts from the start of its phase.
/// When both the start and the zone's clock are known, both members are filled in.
/// </summary>
/// <param name="Clock">Date, time of day and offset of the job's zone (offset zero when the job names none); null when only an elapsed time is known.</param>
/// <param name="Elapsed">Time since the start of the phase: <c>started</c> of the evacuation and pressure test, <c>compressor started</c> of the charging; null when no start is known.</param>
/// <param name="IsElapsed">Whether it was written as an elapsed time.</param>
public sealed record JobTime(DateTimeOffset? Clock, Duration? Elapsed, bool IsElapsed = false);

/// <summary>A span of the calendar, such as a calibration interval: months have no fixed length.</summary>
/// <param name="Months">Whole months.</param>
/// <param name="Days">Further days.</param>
public readonly record struct CalendarPeriod(int Months, int Days)
{
    /// <summary>The day this period after a date; the last day of a month when the month is too short.</summary>
    /// <param name="date">The date to count from.</param>
    /// <returns>The later date.</returns>
    public DateOnly After(DateOnly date) => date.AddMonths(Months).AddDays(Days);
}
