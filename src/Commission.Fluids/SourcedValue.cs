namespace Commission.Fluids;

/// <summary>A number and how it is known.</summary>
/// <param name="Value">The number in the unit of the member that holds it.</param>
/// <param name="Mark">"published", "computed", "from memory" or "from memory, unconfirmed".</param>
/// <param name="Source">The document.</param>
public sealed record SourcedValue(double Value, string Mark, string Source);
