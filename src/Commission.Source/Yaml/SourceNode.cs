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
