namespace Commission.Measurement.Units;

/// <summary>How a kind of number is printed.</summary>
/// <param name="Unit">The unit; of a compound the larger.</param>
/// <param name="Decimals">Decimals when no uncertainty decides; of a compound those of the smaller unit.</param>
/// <param name="Smaller">The smaller unit of a compound such as lb and oz; nothing for a single unit.</param>
public sealed record DisplayUnit(Unit Unit, int Decimals, Unit? Smaller = null);
