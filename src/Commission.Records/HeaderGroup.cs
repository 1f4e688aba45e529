using System.Collections.Immutable;

namespace Commission.Records;

/// <summary>A titled group of header lines, for example the outdoor unit.</summary>
/// <param name="Title">Title of the group.</param>
/// <param name="Rows">Its lines in order.</param>
public sealed record HeaderGroup(string Title, ImmutableArray<LabelValue> Rows)
{
    /// <summary>Its lines in order.</summary>
    public ImmutableArray<LabelValue> Rows { get => field.IsDefault ? [] : field; init; } = Rows;
}
