namespace Commission.Source.Problems;

/// <summary>One fault in what somebody wrote. The parts stay apart so that no caller has to edit a finished sentence.</summary>
/// <param name="Location">Where the fault is.</param>
/// <param name="Found">What was found, as a sentence.</param>
/// <param name="Expected">What was expected, as a sentence; empty when <paramref name="Found"/> already says it.</param>
/// <param name="Advice">What to do, as a sentence; empty when there is nothing to add.</param>
public sealed record Problem(SourceLocation Location, string Found, string Expected, string Advice)
{
    /// <summary>A short stable name of the kind of fault, such as <c>unknown-key</c>; empty when none was given.</summary>
    public string Code { get; init; } = "";

    /// <summary>How many characters the fault covers, at least 1.</summary>
    public int Length { get; init; } = 1;

    /// <summary>The sentences joined, without the place.</summary>
    public string Message => string.Join(' ', new[] { Found, Expected, Advice }.Where(part => part.Length > 0));

    /// <summary>One line: place, colon, sentences.</summary>
    /// <returns>The problem as one line.</returns>
    public override string ToString() => $"{Location}: {Message}";
}
