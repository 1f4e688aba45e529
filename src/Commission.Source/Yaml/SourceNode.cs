namespace Commission.Source.Yaml;

/// <summary>A piece of a YAML document that knows where it was written: a scalar, a mapping or a sequence.</summary>
public abstract class SourceNode
{
    private protected SourceNode(SourceLocation location, int length)
    {
        Location = location;
        Length = length;
    }

    /// <summary>Where the node starts.</summary>
    public SourceLocation Location { get; }

    /// <summary>How many characters of its first line it covers, at least 1.</summary>
    public int Length { get; }
}

/// <summary>A single value or key, as text. What it means is decided by the field it stands in.</summary>
public sealed class SourceScalar : SourceNode
{
    /// <summary>Makes a scalar.</summary>
    /// <param name="location">Where it starts (the opening quote, if quoted).</param>
    /// <param name="length">Characters covered on its first line.</param>
    /// <param name="text">The text without quotes.</param>
    /// <param name="isQuoted">Whether it was written in quotes or as a block.</param>
    public SourceScalar(SourceLocation location, int length, string text, bool isQuoted)
        : base(location, length)
    {
        Text = text;
        IsQuoted = isQuoted;
    }

    /// <summary>The text without quotes.</summary>
    public string Text { get; }

    /// <summary>Whether it was written in quotes or as a block: then it is text and nothing else.</summary>
    public bool IsQuoted { get; }

    /// <summary>Whether nothing was written: a plain empty value, <c>~</c> or <c>null</c> (YAML 1.2 core).</summary>
    public bool IsEmpty => !IsQuoted && Text is "" or "~" or "null" or "Null" or "NULL";
}

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
        foreach (var entry in entries)
            _byKey.TryAdd(entry.Key.Text, entry);
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

/// <summary>One <c>key: value</c> of a mapping.</summary>
/// <param name="Key">The key.</param>
/// <param name="Value">The value; an empty scalar when nothing was written after the colon.</param>
public sealed record SourceEntry(SourceScalar Key, SourceNode Value);
