namespace Commission.Fluids;

/// <summary>A word (a safety group) and how it is known.</summary>
/// <param name="Value">The word.</param>
/// <param name="Mark">"published", "computed", "from memory" or "from memory, unconfirmed".</param>
/// <param name="Source">The document.</param>
public sealed record SourcedText(string Value, string Mark, string Source);
