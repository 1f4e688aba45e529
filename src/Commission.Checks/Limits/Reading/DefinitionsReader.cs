using System.Collections.Frozen;
using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits.Reading;

/// <summary>Reads the list of every limit.</summary>
internal static class DefinitionsReader
{
    private static readonly FrozenDictionary<string, Dimension> Quantities =
        Enum.GetValues<Dimension>().ToFrozenDictionary(dimension => MemberWords.Of(dimension.ToString()), StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, LimitShape> Shapes =
        Enum.GetValues<LimitShape>().ToFrozenDictionary(shape => MemberWords.Of(shape.ToString()), StringComparer.Ordinal);

    /// <summary>Reads the definitions.</summary>
    /// <param name="root">The document.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The definitions that could be read, by id.</returns>
    public static FrozenDictionary<string, LimitDefinition> Read(SourceNode root, ProblemList problems)
    {
        var found = new List<LimitDefinition>();
        if (root is SourceMapping mapping)
        {
            foreach (var entry in mapping.Entries)
            {
                if (ReadOne(entry, problems) is { } definition) found.Add(definition);
            }
        }

        return found.ToFrozenDictionary(definition => definition.Id, StringComparer.Ordinal);
    }

    private static LimitDefinition? ReadOne(SourceEntry entry, ProblemList problems)
    {
        if (StrictMapping.Open(entry.Value, "a definition", problems) is not { } mapping) return null;
        var before = problems.Count;
        var means = mapping.RequireText("means");
        var quantity = mapping.Word("quantity", [.. Quantities.Keys.Order(StringComparer.Ordinal), "months"]);
        var kinds = mapping.RequireText("kind");
        var rule = mapping.Word("rule", PackDefaults.Rules) is "guarded" ? DecisionRule.Guarded : DecisionRule.Simple;
        var companions = ReadCompanions(mapping.Take("with"), problems);
        mapping.Close();
        if (problems.Count > before || means is null || kinds is null) return null;
        var shapes = ImmutableArray.CreateBuilder<LimitShape>();
        foreach (var word in kinds.Text.Split(" or "))
        {
            if (Shapes.TryGetValue(word, out var shape)) shapes.Add(shape);
            else problems.Add(kinds.Location, $"\"{word}\" is not a form of a limit.", "", "", "unknown-word", kinds.Length);
        }

        return new LimitDefinition(
            entry.Key.Text,
            means.Text,
            quantity is null or "months" ? null : Quantities[quantity],
            quantity is "months",
            shapes.ToImmutable(),
            rule,
            companions);
    }

    private static ImmutableArray<LimitCompanion> ReadCompanions(SourceNode? node, ProblemList problems)
    {
        if (node is not SourceMapping list) return [];
        var companions = ImmutableArray.CreateBuilder<LimitCompanion>();
        foreach (var entry in list.Entries)
        {
            if (StrictMapping.Open(entry.Value, "a companion", problems) is not { } mapping) continue;
            var quantity = mapping.Word("quantity", [.. Quantities.Keys.Order(StringComparer.Ordinal)]);
            var stricter = mapping.Word("stricter", ["more", "less"]);
            mapping.Close();
            if (quantity is not null) companions.Add(new LimitCompanion(entry.Key.Text, Quantities[quantity], stricter is "more"));
        }

        return companions.ToImmutable();
    }
}
