using System.Collections.Immutable;

namespace Commission.Jobs.Model;

/// <summary>Fault codes.</summary>
public sealed record FaultCodes : JobPart
{
    /// <summary>Whether they were read.</summary>
    public required Given<bool> Read { get; init; }

    /// <summary>The codes found. Empty when not written.</summary>
    public ImmutableArray<Given<string>> Codes { get; init; } = [];

    /// <summary>Whether they were cleared.</summary>
    public Given<bool>? Cleared { get; init; }
}
