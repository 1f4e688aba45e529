using System.Collections.Immutable;
using Commission.Source;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits.Reading;

/// <summary>Reads a pack: one of this program, of a maker, or of a job.</summary>
internal static class LimitPackReader
{
    /// <summary>Reads a pack from its text.</summary>
    /// <param name="text">The text of the file.</param>
    /// <param name="problems">Where faults go, each at its line and column.</param>
    /// <returns>The pack; null when anything in it was wrong.</returns>
    public static LimitPack? Read(SourceText text, ProblemList problems)
    {
        var before = problems.Count;
        if (YamlReader.Read(text, problems) is not { } root || problems.Count > before) return null;
        if (StrictMapping.Open(root, "a pack", problems) is not { } mapping) return null;
        var name = mapping.RequireText("pack");
        var title = mapping.RequireText("title");
        var publishedBy = mapping.RequireText("published by");
        var edition = mapping.RequireText("edition");
        var about = mapping.Text("about");
        var buildsOn = mapping.Items("builds on").Select(item => ReadReference(item, problems)).OfType<PackReference>().ToImmutableArray();
        var defaults = ReadDefaults(mapping.Take("defaults"), problems);
        var limits = ReadLimits(mapping.Take("limits"), defaults, problems);
        var required = mapping.Items("required").Select(item => ProfileReader.Read(item, problems)).OfType<RequiredProfile>().ToImmutableArray();
        mapping.Close();
        if (name is not null && !IsName(name.Text))
            problems.Add(name.Location, $"\"{name.Text}\" is not a name for a pack.", "Lower-case letters, digits and hyphens were expected.", "Write for example aldermoor-oc-36.", "bad-name", name.Length);
        if (problems.Count > before || name is null || title is null || publishedBy is null || edition is null) return null;
        return new LimitPack(name.Text, title.Text, publishedBy.Text, edition.Text, buildsOn, limits, required) { About = about?.Text };
    }

    private static PackReference? ReadReference(SourceNode node, ProblemList problems)
    {
        if (node is SourceScalar { IsEmpty: false } scalar) return new PackReference(scalar.Text, scalar.Location);
        problems.Add(node.Location, $"\"builds on\" holds {StrictMapping.Kind(node)}.", "The name of a pack was expected.", "", "wrong-type", node.Length);
        return null;
    }

    private static PackDefaults ReadDefaults(SourceNode? node, ProblemList problems)
    {
        if (node is null || StrictMapping.Open(node, "the list of defaults", problems) is not { } mapping) return new PackDefaults(null, null, null);
        var defaults = PackDefaults.Read(mapping);
        mapping.Close();
        return defaults;
    }

    private static Dictionary<string, IReadOnlyList<LimitEntry>> ReadLimits(SourceNode? node, PackDefaults defaults, ProblemList problems)
    {
        var limits = new Dictionary<string, IReadOnlyList<LimitEntry>>(StringComparer.Ordinal);
        if (node is SourceMapping mapping)
        {
            foreach (var entry in mapping.Entries)
            {
                if (LimitDefinitions.Find(entry.Key.Text) is { } definition)
                {
                    limits[definition.Id] = new EntryReader(definition, defaults, problems).Read(entry.Value);
                    continue;
                }

                var near = NearestName.Of(entry.Key.Text, LimitDefinitions.All.Select(known => known.Id));
                problems.Add(
                    entry.Key.Location,
                    $"\"{entry.Key.Text}\" is not a limit this program knows.",
                    "",
                    near is null ? "The list of limits is in the schema of packs." : $"Did you mean \"{near}\"?",
                    "unknown-limit",
                    entry.Key.Length);
            }
        }
        else if (node is not null and not SourceScalar { IsEmpty: true })
        {
            problems.Add(node.Location, $"\"limits\" holds {StrictMapping.Kind(node)}.", "A list of limits by id was expected.", "", "wrong-type", node.Length);
        }

        return limits;
    }

    private static bool IsName(string text) =>
        char.IsAsciiLetterLower(text[0]) && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');
}
