namespace Commission.Documents.Plots.Drawing;

/// <summary>Which point of a line of text its position names.</summary>
internal enum TextAnchor
{
    /// <summary>The left end.</summary>
    Start,

    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The right end.</summary>
    End,
}
