namespace Commission.Jobs.Model;

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
