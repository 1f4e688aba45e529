using System.Collections.Immutable;
using Commission.Source;

namespace Commission.Records;

/// <summary>A node of the job file as read: key, canonical text, place. The record carries it so that it stands alone.</summary>
/// <param name="Key">Key of a mapping, or the position in a list from 1.</param>
/// <param name="Text">Canonical text of a value; null for a mapping or a list.</param>
/// <param name="At">Where it was written.</param>
/// <param name="Children">Entries of a mapping or items of a list.</param>
public sealed record InputNode(string Key, string? Text, SourceLocation? At, ImmutableArray<InputNode> Children)
{
    /// <summary>Entries of a mapping or items of a list.</summary>
    public ImmutableArray<InputNode> Children { get => field.IsDefault ? [] : field; init; } = Children;
}
