using Commission.Measurement.Uncertainty;

namespace Commission.Checks.PressureTest.Analysis;

/// <summary>Loss of a nitrogen hold, as a share of the charge (0.01 = 1 %), from the density of the gas at both ends.</summary>
/// <param name="Loss">L = 1 − ρ(p₂, T₂)/ρ(p₁, T₁), with its causes.</param>
/// <param name="IdealLoss">The same by the ideal-gas law, 1 − p₂·T₁/(p₁·T₂): shown beside. It understates the effect of temperature by
/// 3 to 10 %; that is a known bias and not part of the uncertainty.</param>
/// <param name="ReferredPressure">Absolute pressure that the gas left would have at the first temperature, Pa.</param>
/// <param name="PerPascal">Change of L by the second pressure, 1/Pa (negative).</param>
/// <param name="PerKelvin">Change of L by the second temperature, 1/K (positive).</param>
/// <param name="Start">First reading.</param>
/// <param name="End">Second reading.</param>
public sealed record NitrogenLoss(
    Uncertain Loss,
    double IdealLoss,
    double ReferredPressure,
    double PerPascal,
    double PerKelvin,
    NitrogenReading Start,
    NitrogenReading End)
{
    // One-sided 95 % of the normal distribution: a tight system is called lossy once in twenty at this threshold, and a loss of
    // twice as much is missed once in twenty.
    private const double OneSided = 1.645;

    /// <summary>A loss above this is shown: 1.645·u.</summary>
    public double DecisionThreshold => OneSided * Loss.StandardUncertainty;

    /// <summary>Smallest loss that this hold detects nineteen times in twenty: 3.29·u.</summary>
    public double SmallestDetectable => 2 * OneSided * Loss.StandardUncertainty;

    /// <summary>True when a loss is shown at all, within the allowed one or not.</summary>
    public bool LossShown => Loss.Value > DecisionThreshold;

    /// <summary>The pressure change that remains after temperature, Pa: positive when gas is gone.</summary>
    public double CorrectedDrop => Start.Absolute - ReferredPressure;

    /// <summary>Judges the loss.</summary>
    /// <param name="allowed">R, share of the charge.</param>
    public NitrogenVerdict Judge(double allowed)
    {
        var (l, u) = (Loss.Value, Loss.Expanded);
        if (l < -u)
            return NitrogenVerdict.TemperatureOrGauge;
        if (l + u <= allowed)
            return NitrogenVerdict.Held;
        return l - u > allowed ? NitrogenVerdict.Lost : NitrogenVerdict.NotShown;
    }
}
