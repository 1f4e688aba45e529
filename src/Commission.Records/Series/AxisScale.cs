namespace Commission.Records.Series;

/// <summary>How an axis is divided and labelled.</summary>
public enum AxisScale
{
    /// <summary>Equal steps.</summary>
    Linear,

    /// <summary>Decades; every value is positive.</summary>
    Log10,

    /// <summary>Elapsed time in minutes.</summary>
    Minutes,

    /// <summary>Minutes since midnight of the job's date, labelled as a clock; beyond 1440 the next day.</summary>
    Clock,
}
