namespace Commission.Source.Yaml;

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
