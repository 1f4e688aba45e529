using Commission.Source.Problems;

namespace Commission.Source.Yaml;

/// <summary>
/// Reads one YAML 1.2 document strictly: no tags, no duplicate keys, bounded nesting, bounded use of aliases.
/// Values stay text: what <c>10:42</c> or <c>yes</c> means is for the field they stand in.
/// </summary>
public static class YamlReader
{
    /// <summary>The deepest nesting that is read. A job file needs fewer than ten levels.</summary>
    public const int MaximumDepth = 40;

    /// <summary>The most nodes a document may have once every alias is written out.</summary>
    public const int MaximumNodes = 200_000;

    /// <summary>Reads the document. Faults of YAML itself stop at the first; duplicate keys, tags and broken-off values are all reported.</summary>
    /// <param name="text">The text.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <returns>The document's root, or null when it could not be read to its end.</returns>
    public static SourceNode? Read(SourceText text, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(problems);
        return new YamlComposer(text, problems).Compose();
    }
}
