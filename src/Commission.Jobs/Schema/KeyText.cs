using System.Text.Json;
using Commission.Jobs.Problems;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Schema;

/// <summary>Sentences about keys: unknown, missing, written under two names.</summary>
internal static class KeyText
{
    public static Problem Unknown(JobSchema schema, JsonElement mapping, SourceMapping siblings, SourceScalar key, string? parent, bool guess)
    {
        if (key.Text == "<<")
            return Make(key.Location, JobMessages.MergeKey, null, JobMessages.MergeKeyNext, "unknown-key", key.Length);

        Message? advice;
        if (!guess)
            advice = null;
        else if (NearestKey(mapping, siblings, key.Text) is { } nearest)
            advice = ValueText.DidYouMean(nearest);
        else if (NearWords.WithAllOf(key.Text, OwnKeys(mapping).Where(k => siblings.Find(k) is null)) is { Count: > 0 } longer)
            advice = ValueText.DidYouMean(longer);
        else if (HomeOf(schema, key.Text) is { } home)
            advice = JobMessages.BelongsUnder(new(key.Text), new(home));
        else
            advice = JobMessages.KeysHere(ValueText.AnyOf([.. OwnKeys(mapping)]));
        return Make(key.Location, parent is null ? JobMessages.NotAKey(new(key.Text)) : JobMessages.NotAKeyOf(new(key.Text), new(parent)), null, advice, "unknown-key", key.Length);
    }

    public static Problem Missing(JobSchema whole, JsonElement schema, SourceMapping mapping, JsonInstance.Place place, string missing)
    {
        var found = place.NameOfKey is { } name ? JobMessages.LacksKey(new(missing), new(name)) : JobMessages.FileLacksKey(new(missing));
        var property = schema.GetProperty("properties").GetProperty(missing);
        var meaning = JobSchema.Text(property, "description") is { } described ? CommonMessages.AsWritten(new(described)) : null;
        var advice = UnfitText.Example(whole, property) is { } shown ? QuantityMessages.Like(new($"{missing}: {shown}")) : JobMessages.LacksKeyNext(new(missing));
        var at = place.Key is { } key ? (key.Location, key.Length) : (mapping.Location, 1);
        return Make(at.Item1, found, meaning, advice, "missing-key", at.Item2);
    }

    public static string? NearestKey(JsonElement mapping, SourceMapping siblings, string word) =>
        mapping.TryGetProperty("properties", out var properties)
            ? NearestName.Of(word, properties.EnumerateObject().Select(p => p.Name).Where(n => siblings.Find(n) is null))
            : null;

    private static IEnumerable<string> OwnKeys(JsonElement mapping) =>
        mapping.TryGetProperty("properties", out var properties)
            ? properties.EnumerateObject().Where(p => !p.Value.TryGetProperty("x-alias-of", out _)).Select(p => p.Name)
            : [];

    // Where a key that is right elsewhere belongs; only when there is one such place.
    private static string? HomeOf(JobSchema schema, string key)
    {
        string? home = null;
        foreach (var part in schema.Root.GetProperty("properties").EnumerateObject())
        {
            if (part.Name == key)
                return null;

            // Units and limits name what belongs elsewhere.
            if (part.Name is "units" or "limits")
                continue;
            if (schema.ForMapping(part.Value) is not { } mapping)
                continue;
            foreach (var path in PathsTo(schema, mapping, key, part.Name, 2))
            {
                if (home is not null)
                    return null;
                home = path;
            }
        }

        return home;
    }

    private static IEnumerable<string> PathsTo(JobSchema schema, JsonElement mapping, string key, string path, int levels)
    {
        if (JobSchema.TryProperty(mapping, key, out _))
            yield return path;
        if (levels == 0)
            yield break;
        foreach (var property in mapping.GetProperty("properties").EnumerateObject())
        {
            if (property.Value.TryGetProperty("x-alias-of", out _) || schema.ForMapping(property.Value) is not { } inner || !inner.TryGetProperty("properties", out _))
                continue;
            foreach (var found in PathsTo(schema, inner, key, path + ": " + property.Name, levels - 1))
                yield return found;
        }
    }

    private static Problem Make(SourceLocation at, Message found, Message? expected, Message? advice, string code, int length) =>
        new(at, found, expected, advice) { Code = code, Length = length };
}

/// <summary>Finds what a short word of the trade may have meant: "suction" is the suction pressure or the suction line.</summary>
internal static class NearWords
{
    private const int Most = 4;
    private const int ShortestWord = 3;

    /// <summary>The names that hold every word of what was written, shortest first; none when there are too many to choose from.</summary>
    /// <param name="written">What was written.</param>
    /// <param name="names">The names that would be right.</param>
    public static IReadOnlyList<string> WithAllOf(string written, IEnumerable<string> names)
    {
        var words = Words(written);
        if (words.Length == 0 || words.Any(w => w.Length < ShortestWord))
            return [];
        var found = names.Where(n => words.All(Words(n).Contains)).OrderBy(n => n.Length).ThenBy(n => n, StringComparer.Ordinal).ToArray();
        return found.Length <= Most ? found : [];
    }

    private static string[] Words(string text) => text.ToLowerInvariant().Split([' ', '-', '_'], StringSplitOptions.RemoveEmptyEntries);
}
