namespace Commission.Measurement.Corrections;

/// <summary>What a correction takes off.</summary>
public enum CorrectionKind
{
    /// <summary>What the instrument showed open to the air.</summary>
    Zero,

    /// <summary>The line through points where the instrument was checked.</summary>
    KnownPoints,

    /// <summary>What a thermometer showed too much in ice.</summary>
    IcePoint,

    /// <summary>The pull of the air on a pipe clamp.</summary>
    Clamp,
}

/// <summary>One correction of a reading, or why there is none.</summary>
/// <param name="Kind">What is corrected.</param>
/// <param name="Text">A plain sentence with its numbers.</param>
/// <param name="Before">Value before, SI.</param>
/// <param name="Correction">What was added, SI; zero when nothing was applied.</param>
/// <param name="Applied">Whether the value was changed by it.</param>
public sealed record CorrectionStep(CorrectionKind Kind, string Text, double Before, double Correction, bool Applied)
{
    /// <summary>Value after, SI.</summary>
    public double After => Before + Correction;
}
