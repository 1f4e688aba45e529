using System.Text.Json.Nodes;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Xunit;

namespace Commission.Checks.Tests.Limits;

/// <summary>The published schema, the list of limits, the loader and the job file's schema say the same.</summary>
public sealed class LimitsSchemaTests
{
    private static readonly JsonObject Schema = JsonNode.Parse(Repository.Read("schemas", "limits.schema.json"))!.AsObject();
    private static readonly JsonObject JobSchema = JsonNode.Parse(Repository.Read("schemas", "job.schema.json"))!.AsObject();

    private static JsonObject Limits => Schema["properties"]!["limits"]!["properties"]!.AsObject();

    [Fact]
    public void It_lists_every_limit_with_its_meaning_quantity_and_form()
    {
        Assert.Equal(LimitDefinitions.All.Select(definition => definition.Id), Limits.Select(limit => limit.Key).Order(StringComparer.Ordinal));
        foreach (var definition in LimitDefinitions.All)
        {
            var limit = Limits[definition.Id]!;
            Assert.Equal(LimitWords.In(definition.Means) + ".", limit["description"]!.GetValue<string>());
            Assert.Equal(definition.IsMonths ? "Months" : definition.Quantity?.ToString(), limit["x-quantity"]?.GetValue<string>());
            Assert.Equal($"#/$defs/{string.Join("Or", definition.Shapes)}", limit["$ref"]!.GetValue<string>());
            Assert.Equal(
                definition.Companions.Select(companion => (companion.Name, companion.Quantity.ToString())),
                (limit["x-with"]?.AsObject() ?? []).Select(with => (with.Key, with.Value!.GetValue<string>())));
        }
    }

    [Fact]
    public void Every_example_of_a_limit_is_read_by_the_loader_and_accepted_by_the_schema()
    {
        var count = 0;
        foreach (var (id, limit) in Limits)
        {
            foreach (var example in limit!["examples"]!.AsArray())
            {
                var yaml = $$"""
                    pack: example
                    title: An example
                    published by: Aldermoor
                    edition: 2026
                    defaults: {basis: maker, mark: published}
                    limits:
                      {{id}}: {{example!.ToJsonString()}}
                    """;
                var pack = PackText.Read(yaml, out var problems);
                Assert.Empty(problems);
                Assert.Single(pack!.Limits[id]);
                Assert.True(PackText.SchemaAccepts(yaml), id);
                count++;
            }
        }

        Assert.Equal(LimitDefinitions.All.Count(), count);
    }

    [Fact]
    public void Its_conditions_are_those_of_the_loader()
    {
        var when = Schema["$defs"]!["When"]!["properties"]!.AsObject();
        Assert.Equal(LimitSubject.All.Select(subject => subject.Key), when.Select(condition => condition.Key));
        foreach (var subject in LimitSubject.All.Where(subject => subject.Words.Length > 0))
        {
            var words = (when[subject.Key]!["else"]?["enum"] ?? when[subject.Key]!["enum"])!.AsArray().Select(word => word!.ToString()).Distinct(StringComparer.Ordinal);
            Assert.Equal(subject.Words, words.Except(["true", "false"], StringComparer.Ordinal));
        }
    }

    [Theory]
    [InlineData("work", "WorkKind")]
    [InlineData("system", "SystemKind")]
    [InlineData("metering", "MeteringKind")]
    [InlineData("application", "Application")]
    [InlineData("compressor", "CompressorKind")]
    [InlineData("mode", "OperatingMode")]
    [InlineData("place", "UnitPlace")]
    public void Conditions_use_the_words_of_the_job_file(string key, string definition) => Assert.Equal(
        JobSchema["$defs"]![definition]!["x-words"]!.AsObject().Select(word => word.Key),
        LimitSubject.All.Single(subject => subject.Key == key).Words);

    [Fact]
    public void Photos_use_the_words_of_the_job_file() => Assert.Equal(
        JobSchema["$defs"]!["PhotoSubject"]!["x-words"]!.AsObject().Select(word => word.Key),
        Schema["$defs"]!["Profile"]!["properties"]!["photos"]!["items"]!["enum"]!.AsArray().Select(word => word!.GetValue<string>()));

    [Fact]
    public void Everything_in_it_has_a_description()
    {
        var count = 0;
        foreach (var property in Properties(Schema))
        {
            Assert.True(property.Value!["description"] is not null || property.Value["$ref"] is not null, property.Key);
            count++;
        }

        Assert.True(count > 200);
    }

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Properties(JsonNode? node) => node switch
    {
        JsonObject item => (item["properties"] as JsonObject ?? []).Concat(item.SelectMany(pair => Properties(pair.Value))),
        JsonArray list => list.SelectMany(Properties),
        _ => [],
    };
}
