namespace Commission.Measurement.Units;

/// <summary>A part of what was written, without the spaces around it, that knows where it stands.</summary>
internal readonly record struct Excerpt
{
    public Excerpt(string source, string plain, int start, int end)
    {
        while (start < end && plain[start] == ' ')
            start++;
        while (end > start && plain[end - 1] == ' ')
            end--;
        Source = source;
        Plain = plain[..end];
        Start = start;
        End = end;
    }

    /// <summary>The whole text as written.</summary>
    public string Source { get; }

    /// <summary>The text in plain characters up to the end of the part, so that no reader looks further.</summary>
    public string Plain { get; }

    /// <summary>First character of the part.</summary>
    public int Start { get; }

    /// <summary>First character after the part.</summary>
    public int End { get; }

    /// <summary>The part as written, for quoting.</summary>
    public string Written => Source[Start..End];

    /// <summary>The part in plain characters.</summary>
    public string PlainPart => Plain[Start..End];

    /// <summary>A part of the part.</summary>
    public Excerpt Part(int start, int end) => new(Source, Plain, start, end);
}
