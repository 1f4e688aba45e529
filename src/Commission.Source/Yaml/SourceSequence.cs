namespace Commission.Source.Yaml;

/// <summary>A list of values, in the order written.</summary>
public sealed class SourceSequence : SourceNode
{
    /// <summary>Makes a sequence.</summary>
    /// <param name="location">Where it starts.</param>
    /// <param name="length">Characters covered on its first line.</param>
    /// <param name="items">The items.</param>
    public SourceSequence(SourceLocation location, int length, IReadOnlyList<SourceNode> items)
        : base(location, length)
    {
        ArgumentNullException.ThrowIfNull(items);
        Items = items;
    }

    /// <summary>The items in the order written.</summary>
    public IReadOnlyList<SourceNode> Items { get; }
}
