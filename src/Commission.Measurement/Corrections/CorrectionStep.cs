namespace Commission.Measurement.Corrections;

/// <summary>One correction of a reading, or why there is none.</summary>
/// <param name="Name">What is corrected: <c>zero</c>, <c>known points</c>, <c>ice point</c>, <c>clamp</c>.</param>
/// <param name="Text">A plain sentence with its numbers.</param>
/// <param name="Before">Value before, SI.</param>
/// <param name="Correction">What was added, SI; zero when nothing was applied.</param>
/// <param name="Applied">Whether the value was changed by it.</param>
public sealed record CorrectionStep(string Name, string Text, double Before, double Correction, bool Applied)
{
    /// <summary>Value after, SI.</summary>
    public double After => Before + Correction;
}
