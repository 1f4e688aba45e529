using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Source;
using Commission.Source.Yaml;
using Json.Schema;
using Xunit;

namespace Commission.Checks.Tests.Limits;

/// <summary>Packs written in a test, read by the loader and held against the published schema.</summary>
internal static class PackText
{
    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromText(Repository.Read("schemas", "limits.schema.json")));

    public static SourceText Source(string yaml, string file = "pack.yaml")
    {
        var problems = new ProblemList();
        var text = SourceText.Decode(file, Encoding.UTF8.GetBytes(yaml), problems);
        Assert.Equal(0, problems.Count);
        return text!;
    }

    public static LimitPack? Read(string yaml, out IReadOnlyList<string> problems)
    {
        var list = new ProblemList();
        var pack = LimitPackReader.Read(Source(yaml), list);
        problems = [.. list.Sorted().Select(problem => problem.ToString())];
        return pack;
    }

    public static LimitPack Read(string yaml)
    {
        var pack = Read(yaml, out var problems);
        Assert.Empty(problems);
        return pack!;
    }

    public static bool SchemaAccepts(string yaml)
    {
        var list = new ProblemList();
        var root = YamlReader.Read(Source(yaml), list);
        Assert.Equal(0, list.Count);
        return Schema.Value.Evaluate(JsonSerializer.SerializeToElement(ToJson(root!))).IsValid;
    }

    public static JsonNode? ToJson(SourceNode node) => node switch
    {
        SourceMapping mapping => new JsonObject(mapping.Entries.Select(entry => KeyValuePair.Create(entry.Key.Text, ToJson(entry.Value)))),
        SourceSequence sequence => new JsonArray([.. sequence.Items.Select(ToJson)]),
        SourceScalar { IsEmpty: true } => null,
        SourceScalar scalar => JsonValue.Create(scalar.Text),
        _ => throw new InvalidOperationException("A node of a kind that does not exist."),
    };
}
