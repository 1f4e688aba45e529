using System.Collections.Immutable;
using Commission.Checks.Limits;
using Commission.Measurement.Units;

namespace Commission.Checks.Sheets;

/// <summary>What the limit packs say: their list, and one with every figure, its source and its mark.</summary>
public static class LimitSheets
{
    /// <summary>Names of the packs.</summary>
    public static IReadOnlyCollection<string> Names => LimitLibrary.EmbeddedNames;

    /// <summary>Every pack with its title.</summary>
    public static Sheet All() => new(
        "Limit packs",
        [
            new SheetPart(
                "",
                ["pack", "title", "limits"],
                [.. LimitLibrary.EmbeddedNames.Select(name => LimitLibrary.Embedded.Find(name)!).Select(p => ImmutableArray.Create(p.Name, p.Title, p.Limits.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)))]),
        ]);

    /// <summary>One pack.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="units">Units of its figures.</param>
    /// <returns>The sheet; null when there is no such pack.</returns>
    public static Sheet? One(string name, UnitSystem units)
    {
        if (LimitLibrary.Embedded.Find(name) is not { } pack)
            return null;
        var rows = Rows(pack, units).ToImmutableArray();
        var clauses = pack.Clauses.Select(c => ImmutableArray.Create(c.Clause, c.Says, c.Mark)).ToImmutableArray();
        var required = pack.Required.Select(r => $"{r.Because}: {string.Join(", ", r.Checks.Select(c => string.Join(" or ", c.OneOf)))}{(r.Photos.Count == 0 ? "" : "; photos: " + string.Join(", ", r.Photos))}").ToList();
        return new Sheet(
            $"{pack.Name}: {pack.Title}",
            [
                SheetPart.Lines("Follows", [$"{pack.PublishedBy}, edition {pack.Edition}", .. pack.About is { } about ? [about] : Array.Empty<string>()]),
                .. clauses.IsEmpty ? Array.Empty<SheetPart>() : [new SheetPart("What was read", ["clause", "says", "mark"], clauses)],
                new SheetPart("Limits", ["limit", "figure", "when", "rule", "source"], rows),
                SheetPart.Lines("Required of a record", required),
            ]);
    }

    internal static IEnumerable<ImmutableArray<string>> Rows(LimitPack pack, UnitSystem units) => pack.Limits
        .OrderBy(pair => pair.Key, StringComparer.Ordinal)
        .SelectMany(pair => pair.Value.Select(entry => Row(pack, pair.Key, entry, units)));

    private static ImmutableArray<string> Row(LimitPack pack, string id, LimitEntry entry, UnitSystem units)
    {
        var limit = new Limit
        {
            Definition = LimitDefinitions.Get(id),
            Shape = entry.Shape,
            Tier = LimitTier.Pack,
            Pack = pack.Name,
            Basis = entry.Basis,
            Source = entry.Source,
            Mark = entry.Mark,
            Rule = entry.Rule,
            At = entry.At,
            Lower = entry.Lower,
            Upper = entry.Upper,
            Target = entry.Target,
            Statement = entry.Statement,
            With = entry.With,
        };
        var when = string.Join("; ", entry.When.All.Select(c => c.Words.IsEmpty ? c.Subject.Key : $"{c.Subject.Key}: {string.Join(", ", c.Words)}"));
        return [id, LimitText.Of(limit, units), when, entry.Rule.ToString().ToLowerInvariant(), $"{entry.Source} ({entry.Mark})"];
    }
}
