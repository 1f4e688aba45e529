namespace Commission.Fluids;

/// <summary>Bubble and dew temperature at 101.325 kPa as another document lists them.</summary>
/// <param name="Bubble">K.</param>
/// <param name="Dew">K.</param>
/// <param name="Mark">How the values are known.</param>
/// <param name="Source">The document.</param>
public sealed record BoilingRange(double Bubble, double Dew, string Mark, string Source);
