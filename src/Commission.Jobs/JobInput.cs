using System.Collections.Immutable;
using Commission.Source;

namespace Commission.Jobs;

/// <summary>A piece of the job as it was read, without types: what the record keeps of it. A kit file's instruments and people are in it.</summary>
/// <param name="Key">The key; empty for an item of a list.</param>
/// <param name="Text">The canonical text; null for a mapping or a list.</param>
/// <param name="At">Where it was written.</param>
/// <param name="Children">Entries of a mapping or items of a list, in the order written.</param>
public sealed record JobInput(string Key, string? Text, SourceLocation At, ImmutableArray<JobInput> Children)
{
    /// <summary>Whether the children are items of a list.</summary>
    public bool IsList { get; init; }
}
