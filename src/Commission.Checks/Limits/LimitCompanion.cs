using Commission.Measurement.Quantities;

namespace Commission.Checks.Limits;

/// <summary>A further quantity that belongs to a limit, such as the time of a decay limit.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Quantity">What it is measured in.</param>
/// <param name="MoreIsStricter">Whether a larger value asks more of the crew.</param>
internal sealed record LimitCompanion(string Name, Dimension Quantity, bool MoreIsStricter);
