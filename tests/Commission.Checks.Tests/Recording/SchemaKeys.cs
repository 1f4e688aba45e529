using System.Text;
using System.Text.Json.Nodes;
using Commission.Checks.Tests.Limits;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Tests.Recording;

/// <summary>The keys of <c>schemas/job.schema.json</c>, for lines that show how something is written in the file.</summary>
internal static class SchemaKeys
{
    private static readonly JsonObject Schema = JsonNode.Parse(Repository.Read("schemas", "job.schema.json"))!.AsObject();

    /// <summary>The first key on the way that a job file does not have, or null; dots between the keys of the way.</summary>
    /// <param name="lines">YAML from the root of a job file.</param>
    public static string? Unknown(string lines)
    {
        var problems = new ProblemList();
        var root = YamlReader.Read(SourceText.Decode("hint.yaml", Encoding.UTF8.GetBytes(lines), problems)!, problems);
        return root is null ? $"no YAML: {lines}" : Unknown(root, [Schema], "");
    }

    private static string? Unknown(SourceNode node, IReadOnlyList<JsonObject> schemas, string way) => node switch
    {
        SourceSequence list => list.Items.Select(item => Unknown(item, [.. schemas.SelectMany(Parts).Select(s => s["items"]).OfType<JsonObject>()], $"{way}[]")).FirstOrDefault(w => w is not null),
        SourceMapping map => map.Entries.Select(entry =>
        {
            JsonObject[] found = [.. schemas.SelectMany(Parts).Select(s => s["properties"]?[entry.Key.Text]).OfType<JsonObject>()];
            return found.Length == 0 ? $"{way}.{entry.Key.Text}" : Unknown(entry.Value, found, $"{way}.{entry.Key.Text}");
        }).FirstOrDefault(w => w is not null),
        _ => null,
    };

    // A schema with everything that it refers to or chooses from.
    private static IEnumerable<JsonObject> Parts(JsonObject schema)
    {
        yield return schema;
        if (schema["$ref"] is { } reference && Schema["$defs"]![reference.GetValue<string>()["#/$defs/".Length..]] is JsonObject named)
        {
            foreach (var part in Parts(named))
                yield return part;
        }

        foreach (var branch in new[] { schema["then"], schema["else"] }.Concat(new[] { "oneOf", "anyOf", "allOf" }.SelectMany(w => schema[w]?.AsArray() ?? [])).OfType<JsonObject>())
        {
            foreach (var part in Parts(branch))
                yield return part;
        }
    }
}
