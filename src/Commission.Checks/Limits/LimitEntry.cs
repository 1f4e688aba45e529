using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Source;

namespace Commission.Checks.Limits;

/// <summary>One case of a limit as a pack states it.</summary>
/// <param name="Shape">Its form.</param>
/// <param name="When">When it applies.</param>
/// <param name="Rule">The decision rule that belongs to it.</param>
/// <param name="Basis">What kind of document it rests on.</param>
/// <param name="Source">Clause, page, or in words where it comes from.</param>
/// <param name="Mark">How sure it is: <c>published</c>, <c>from memory</c>, <c>common practice</c>.</param>
/// <param name="At">Where it is written.</param>
internal sealed record LimitEntry(
    LimitShape Shape,
    LimitConditions When,
    DecisionRule Rule,
    string Basis,
    string Source,
    string Mark,
    SourceLocation At)
{
    /// <summary>Lower bound; of a tolerance minus its half width.</summary>
    public LimitFigure? Lower { get; init; }

    /// <summary>Upper bound; of a tolerance its half width.</summary>
    public LimitFigure? Upper { get; init; }

    /// <summary>Value to aim for.</summary>
    public LimitFigure? Target { get; init; }

    /// <summary>Requirement in words.</summary>
    public string? Statement { get; init; }

    /// <summary>Further quantities by name.</summary>
    public ImmutableSortedDictionary<string, LimitFigure> With { get; init; } = ImmutableSortedDictionary<string, LimitFigure>.Empty;

    /// <summary>Anything worth telling beside it.</summary>
    public string? Note { get; init; }
}
