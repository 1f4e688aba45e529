namespace Commission.Source.Yaml;

/// <summary>A list of <c>key: value</c>, in the order written; no key twice.</summary>
public sealed class SourceMapping : SourceNode
{
    private readonly Dictionary<string, SourceEntry> _byKey;

    /// <summary>Makes a mapping.</summary>
    /// <param name="location">Where it starts.</param>
    /// <param name="length">Characters covered on its first line.</param>
    /// <param name="entries">The entries; of a key written twice the first counts.</param>
    /// <param name="isFlow">Whether it was written in braces.</param>
    public SourceMapping(SourceLocation location, int length, IReadOnlyList<SourceEntry> entries, bool isFlow)
        : base(location, length)
    {
        ArgumentNullException.ThrowIfNull(entries);
        Entries = entries;
        IsFlow = isFlow;
        _byKey = new Dictionary<string, SourceEntry>(entries.Count, StringComparer.Ordinal);
        foreach (var entry in entries) _byKey.TryAdd(entry.Key.Text, entry);
    }

    /// <summary>The entries in the order written.</summary>
    public IReadOnlyList<SourceEntry> Entries { get; }

    /// <summary>Whether it was written in braces, where commas separate entries.</summary>
    public bool IsFlow { get; }

    /// <summary>The entry of a key.</summary>
    /// <param name="key">The key's text, compared exactly.</param>
    /// <returns>The entry, or null when the key is not there.</returns>
    public SourceEntry? Find(string key) => _byKey.GetValueOrDefault(key);
}
