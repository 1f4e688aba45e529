namespace Commission.Jobs.Model.Words;

/// <summary>How times are written in a log.</summary>
public enum ClockFormat
{
    /// <summary>Elapsed seconds.</summary>
    Seconds,

    /// <summary>Elapsed minutes.</summary>
    Minutes,

    /// <summary>Time of day, hh:mm or hh:mm:ss.</summary>
    Clock,

    /// <summary>Date and time of day.</summary>
    DateAndClock,

    /// <summary>Elapsed time as h:mm:ss.</summary>
    ElapsedClock,
}
