using Commission.Source;

namespace Commission.Checks.Limits;

/// <summary>A pack named by another pack.</summary>
/// <param name="Name">Its name.</param>
/// <param name="At">Where it is named.</param>
internal sealed record PackReference(string Name, SourceLocation At);
