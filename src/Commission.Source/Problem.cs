using Commission.Messages;

namespace Commission.Source;

/// <summary>One fault in what somebody wrote. The parts stay apart so that no caller has to edit a finished sentence.</summary>
/// <param name="Location">Where the fault is.</param>
/// <param name="Found">What was found, as a sentence.</param>
/// <param name="Expected">What was expected, as a sentence; null when <paramref name="Found"/> already says it.</param>
/// <param name="Advice">What to do, as a sentence; null when there is nothing to add.</param>
public sealed record Problem(SourceLocation Location, Message Found, Message? Expected = null, Message? Advice = null)
{
    /// <summary>A short stable name of the kind of fault, such as <c>unknown-key</c>; empty when none was given.</summary>
    public string Code { get; init; } = "";

    /// <summary>How many characters the fault covers, at least 1.</summary>
    public int Length { get; init; } = 1;

    /// <summary>The sentences joined, without the place.</summary>
    /// <param name="language">The language.</param>
    public string Text(Language language) => string.Join(' ', new[] { Found, Expected, Advice }.Where(part => part is not null).Select(part => MessageWriter.Words.Format(part!, language)).Where(part => part.Length > 0));

    /// <summary>One line: place, colon, sentences.</summary>
    /// <param name="language">The language.</param>
    public string Line(Language language) => $"{Location}: {Text(language)}";

    /// <inheritdoc/>
    public override string ToString() => Line(Language.English);
}

/// <summary>Collects the problems of one run. All of them are kept: the renderer decides how many are shown.</summary>
public sealed class ProblemList
{
    private readonly List<Problem> _problems = [];
    private readonly HashSet<Problem> _seen = [];

    /// <summary>How many different problems were added.</summary>
    public int Count => _problems.Count;

    /// <summary>Adds a problem; the very same problem a second time (through an alias) is dropped.</summary>
    /// <param name="problem">The problem to add.</param>
    public void Add(Problem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        if (_seen.Add(problem))
            _problems.Add(problem);
    }

    /// <summary>Adds a problem from its parts.</summary>
    /// <param name="location">Where the fault is.</param>
    /// <param name="found">What was found.</param>
    /// <param name="expected">What was expected.</param>
    /// <param name="advice">What to do.</param>
    /// <param name="code">A short stable name of the kind of fault.</param>
    /// <param name="length">How many characters the fault covers.</param>
    public void Add(SourceLocation location, Message found, Message? expected, Message? advice, string code = "", int length = 1) =>
        Add(new Problem(location, found, expected, advice) { Code = code, Length = Math.Max(1, length) });

    /// <summary>The problems by file, line and column; at the same place in the order they were found.</summary>
    /// <returns>A new list.</returns>
    public IReadOnlyList<Problem> Sorted() => [.. _problems.OrderBy(problem => problem.Location)];
}
