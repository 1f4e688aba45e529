using System.Collections.Immutable;

namespace Commission.Jobs.Model;

/// <summary>A row of the maker's fan table.</summary>
public sealed record FanTable : JobPart
{
    /// <summary>The blower setting it is for.</summary>
    public Given<string>? Setting { get; init; }

    /// <summary>Points of the table, static pressure rising. Empty when not written.</summary>
    public ImmutableArray<FanPoint> Points { get; init; } = [];

    /// <summary>Where it is printed.</summary>
    public required Given<string> From { get; init; }
}
