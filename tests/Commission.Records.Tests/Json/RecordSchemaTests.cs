using System.Text.Json;
using System.Text.Json.Nodes;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Json.Schema;
using Xunit;

namespace Commission.Records.Tests.Json;

public sealed class RecordSchemaTests
{
    private static readonly JsonSchema Schema = Load();

    [Fact]
    public void A_rich_record_fits_the_published_schema() => Assert.Empty(Faults(SampleRecord.Full, _ => { }));

    [Fact]
    public void A_bare_record_fits_the_published_schema() => Assert.Empty(Faults(SampleRecord.Bare, _ => { }));

    [Fact]
    public void A_misspelt_member_is_refused() => Assert.Contains("/findings/0/verdikt", Faults(SampleRecord.Full, record => record["findings"]![0]!["verdikt"] = "pass"));

    [Fact]
    public void A_missing_member_is_refused() => Assert.Contains("/header", Faults(SampleRecord.Full, record => ((JsonObject)record["header"]!).Remove("id")));

    [Fact]
    public void A_verdict_of_another_kind_is_refused() => Assert.Contains("/findings/3/verdict", Faults(SampleRecord.Full, record => record["findings"]![3]!["verdict"] = "good"));

    [Fact]
    public void A_probability_above_one_is_refused() =>
        Assert.Contains("/findings/3/probabilityOfConformity", Faults(SampleRecord.Full, record => record["findings"]![3]!["probabilityOfConformity"] = 1.01));

    [Fact]
    public void A_text_where_a_number_belongs_is_refused() =>
        Assert.Contains("/findings/3/measured/value/si", Faults(SampleRecord.Full, record => record["findings"]![3]!["measured"]!["value"]!["si"] = "0.1"));

    [Fact]
    public void A_digest_of_another_length_is_refused() => Assert.Contains("/digest", Faults(SampleRecord.Full, record => record["digest"] = "abc"));

    // A member that the schema names and the sample leaves at null everywhere would escape these tests.
    [Fact]
    public void The_sample_fills_every_member_of_a_finding_somewhere()
    {
        var findings = (JsonArray)JsonNode.Parse(RecordJson.Write(SampleRecord.Full))!["findings"]!;
        var filled = findings.SelectMany(finding => finding!.AsObject()).Where(member => member.Value is not null).Select(member => member.Key).ToHashSet();
        var named = JsonNode.Parse(SchemaText())!["$defs"]!["finding"]!["properties"]!.AsObject().Select(member => member.Key);
        Assert.Empty(named.Except(filled));
    }

    private static List<string> Faults(CommissioningRecord record, Action<JsonNode> change)
    {
        var json = JsonNode.Parse(RecordJson.Write(record))!;
        change(json);
        var result = Schema.Evaluate(JsonSerializer.SerializeToElement(json), new EvaluationOptions { OutputFormat = OutputFormat.List });
        return result.IsValid
            ? []
            : [.. result.Details!.Where(detail => detail.Errors is { Count: > 0 }).Select(detail => detail.InstanceLocation.ToString()).Distinct()];
    }

    private static JsonSchema Load() => JsonSchema.FromText(SchemaText());

    private static string SchemaText()
    {
        using var reader = new StreamReader(typeof(RecordSchemaTests).Assembly.GetManifestResourceStream("record.schema.json")!);
        return reader.ReadToEnd();
    }
}
