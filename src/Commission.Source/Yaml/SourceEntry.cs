namespace Commission.Source.Yaml;

/// <summary>One <c>key: value</c> of a mapping.</summary>
/// <param name="Key">The key.</param>
/// <param name="Value">The value; an empty scalar when nothing was written after the colon.</param>
public sealed record SourceEntry(SourceScalar Key, SourceNode Value);
