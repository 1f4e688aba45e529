namespace Commission.Checks.EvacuationAnalysis;

/// <summary>A pull-down between two pressures, as logged and as expected.</summary>
/// <param name="From">Upper pressure, Pa.</param>
/// <param name="To">Lower pressure, Pa; at the end of a pull that stalled, the lowest that was reached.</param>
/// <param name="MeasuredTime">s.</param>
/// <param name="ExpectedTime">s, through pump, hoses and volume without any gas load.</param>
/// <param name="MeasuredSpeed">V·ln(p₁/p₂)/t, m³/s.</param>
/// <param name="ExpectedSpeed">The same from the expected time, m³/s.</param>
public sealed record PullDownBand(
    double From, double To, double MeasuredTime, double ExpectedTime, double MeasuredSpeed, double ExpectedSpeed)
{
    /// <summary>Measured over expected time.</summary>
    public double Ratio => MeasuredTime / ExpectedTime;
}
