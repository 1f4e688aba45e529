using Commission.Source;

namespace Commission.Records.Findings;

/// <summary>A reading that a finding used, with the place where the crew wrote it.</summary>
/// <param name="Name">What was read, for example <c>vapor line, 11:35</c>.</param>
/// <param name="Text">The reading in its canonical spelling, for example <c>57.2 °F</c>.</param>
/// <param name="At">File, line and column of the value.</param>
/// <param name="Instrument">Identifier of the instrument; null when none is named.</param>
public sealed record ReadingUse(string Name, string Text, SourceLocation At, string? Instrument)
{
    /// <summary>Number of the earlier finding that names this very reading with its place; null where it stands for the first time.</summary>
    public int? ShownIn { get; init; }
}
