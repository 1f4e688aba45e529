namespace Commission.Jobs.Model;

/// <summary>An uncertainty that was written behind a reading.</summary>
/// <param name="HalfWidthSi">What stands behind ±, in SI; for a temperature it is a difference.</param>
/// <param name="CoverageFactor">The coverage factor: 2 unless <c>(k=…)</c> says otherwise.</param>
public sealed record Stated(double HalfWidthSi, double CoverageFactor);
