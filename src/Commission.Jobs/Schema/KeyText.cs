using System.Text.Json;
using Commission.Jobs.Problems;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Schema;

/// <summary>Sentences about keys: unknown, missing, written under two names.</summary>
internal static class KeyText
{
    public static Problem Unknown(JobSchema schema, JsonElement mapping, SourceMapping siblings, SourceScalar key, string? parent, bool guess)
    {
        var where = parent is null ? "of a job file" : $"of \"{parent}\"";
        if (key.Text == "<<")
        {
            return Make(key.Location, "\"<<\" is not a key.", "", "Merging is not part of YAML 1.2: write the keys out.", "unknown-key", key.Length);
        }

        string advice;
        if (!guess)
            advice = "";
        else if (NearestKey(mapping, siblings, key.Text) is { } nearest)
            advice = $"Did you mean \"{nearest}\"?";
        else if (NearWords.WithAllOf(key.Text, OwnKeys(mapping).Where(k => siblings.Find(k) is null)) is { Count: > 0 } longer)
            advice = $"Did you mean {ValueText.OneOf([.. longer.Select(k => $"\"{k}\"")])}?";
        else if (HomeOf(schema, key.Text) is { } home)
            advice = $"\"{key.Text}\" belongs under \"{home}\".";
        else
            advice = "Keys here are " + ValueText.OneOf([.. OwnKeys(mapping)]) + ".";
        return Make(key.Location, $"\"{key.Text}\" is not a key {where}.", "", advice, "unknown-key", key.Length);
    }

    public static Problem Missing(JobSchema whole, JsonElement schema, SourceMapping mapping, JsonInstance.Place place, string missing)
    {
        var owner = place.NameOfKey is { } name ? $"\"{name}\"" : "The file";
        var property = schema.GetProperty("properties").GetProperty(missing);
        var meaning = JobSchema.Text(property, "description") ?? "";
        var example = UnfitText.Example(whole, property) is { } shown ? $"Write it like {missing}: {shown}." : $"Write {missing}: and what belongs to it.";
        var at = place.Key is { } key ? (key.Location, key.Length) : (mapping.Location, 1);
        return Make(at.Item1, $"{owner} does not say \"{missing}\".", meaning, example, "missing-key", at.Item2);
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

    private static Problem Make(SourceLocation at, string found, string expected, string advice, string code, int length) =>
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
