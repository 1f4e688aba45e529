using Commission.Measurement.Decisions;

namespace Commission.Checks.Limits.Reading;

/// <summary>What the limits of a pack share unless one says otherwise.</summary>
/// <param name="Rule">Decision rule; null when the pack gives none.</param>
/// <param name="Basis">Kind of document; null when the pack gives none.</param>
/// <param name="Mark">How sure; null when the pack gives none.</param>
internal sealed record PackDefaults(DecisionRule? Rule, string? Basis, string? Mark)
{
    /// <summary>Kinds of document a limit may rest on.</summary>
    public static readonly IReadOnlyList<string> Bases =
        ["regulation", "code", "standard", "guide specification", "handbook", "installation manual", "maker", "common practice"];

    /// <summary>How sure a figure may be.</summary>
    public static readonly IReadOnlyList<string> Marks = ["published", "from memory", "common practice"];

    /// <summary>Decision rules.</summary>
    public static readonly IReadOnlyList<string> Rules = ["simple", "guarded"];

    /// <summary>Reads the three keys of a mapping.</summary>
    /// <param name="mapping">The mapping; it stays open.</param>
    /// <returns>What it gives.</returns>
    public static PackDefaults Read(StrictMapping mapping) => new(
        mapping.Word("rule", Rules) switch { "guarded" => DecisionRule.Guarded, "simple" => DecisionRule.Simple, _ => null },
        mapping.Word("basis", Bases),
        mapping.Word("mark", Marks));
}
