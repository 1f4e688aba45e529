using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits;

/// <summary>Reads the list of every limit.</summary>
internal static class DefinitionsReader
{
    private static readonly string[] Quantities = [.. Enum.GetNames<Dimension>().Select(MemberWords.Of), "months"];
    private static readonly string[] Shapes = [.. Enum.GetNames<LimitShape>().Select(MemberWords.Of)];

    /// <summary>Reads the definitions.</summary>
    /// <param name="root">The document.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The definitions that could be read, by id.</returns>
    public static Dictionary<string, LimitDefinition> Read(SourceNode root, ProblemList problems)
    {
        var found = new Dictionary<string, LimitDefinition>(StringComparer.Ordinal);
        if (root is SourceMapping mapping)
        {
            foreach (var entry in mapping.Entries)
            {
                if (ReadOne(entry, problems) is { } definition)
                    found.Add(definition.Id, definition);
            }
        }

        return found;
    }

    private static LimitDefinition? ReadOne(SourceEntry entry, ProblemList problems)
    {
        if (StrictMapping.Open(entry.Value, PackPart.Definition, problems) is not { } mapping)
            return null;
        var before = problems.Count;
        var quantity = mapping.Word("quantity", Quantities);
        var kinds = mapping.RequireText("kind");
        var rule = mapping.Word("rule", PackDefaults.Rules) is "guarded" ? DecisionRule.Guarded : DecisionRule.Simple;
        var companions = ReadCompanions(mapping.Take("with"), problems);
        mapping.Close();
        if (problems.Count > before || kinds is null)
            return null;
        var shapes = ImmutableArray.CreateBuilder<LimitShape>();
        foreach (var word in kinds.Text.Split(" or "))
        {
            if (Array.IndexOf(Shapes, word) is >= 0 and var at)
                shapes.Add((LimitShape)at);
            else
                problems.Add(kinds.Location, LimitsMessages.FormUnknown(new(word)), null, null, "unknown-word", kinds.Length);
        }

        return new LimitDefinition(
            entry.Key.Text,
            LimitNotes.NameOf(entry.Key.Text),
            QuantityOf(quantity),
            quantity is "months",
            shapes.ToImmutable(),
            rule,
            companions);
    }

    private static ImmutableArray<LimitCompanion> ReadCompanions(SourceNode? node, ProblemList problems)
    {
        if (node is not SourceMapping list)
            return [];
        var companions = ImmutableArray.CreateBuilder<LimitCompanion>();
        foreach (var entry in list.Entries)
        {
            if (StrictMapping.Open(entry.Value, PackPart.Companion, problems) is not { } mapping)
                continue;
            var quantity = QuantityOf(mapping.Word("quantity", Quantities));
            var stricter = mapping.Word("stricter", ["more", "less"]);
            mapping.Close();
            if (quantity is { } known)
                companions.Add(new LimitCompanion(entry.Key.Text, known, stricter is "more"));
        }

        return companions.ToImmutable();
    }

    // The words stand in the order of the members; a calendar span is no dimension.
    private static Dimension? QuantityOf(string? word) => word is null or "months" ? null : (Dimension)Array.IndexOf(Quantities, word);
}
