namespace Commission.Measurement.Units;

/// <summary>The uncertainty written after a reading: <c>+/- 1.0</c>, k = 2 unless <c>(k=1)</c> is written.</summary>
/// <param name="HalfWidthSi">What stands after the sign, as an SI difference, above or equal to zero.</param>
/// <param name="CoverageFactor">Coverage factor k.</param>
public sealed record StatedUncertainty(double HalfWidthSi, double CoverageFactor)
{
    /// <summary>Standard uncertainty, SI.</summary>
    public double StandardUncertaintySi => HalfWidthSi / CoverageFactor;
}
