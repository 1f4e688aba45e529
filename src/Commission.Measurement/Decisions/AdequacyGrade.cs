namespace Commission.Measurement.Decisions;

/// <summary>Whether a measurement is good enough for its limit. Common practice, no source; the four to one ratio is the old rule of calibration.</summary>
public enum AdequacyGrade
{
    /// <summary>Four or more.</summary>
    Good,

    /// <summary>Two to four.</summary>
    UsableInTheField,

    /// <summary>One to two.</summary>
    Weak,

    /// <summary>Below one: the measurement is coarser than the limit.</summary>
    NoVerdict,
}
