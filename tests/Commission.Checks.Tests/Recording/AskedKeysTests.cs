using System.Text.Json.Nodes;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Commission.Checks.Tests.Corpus;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>What a job is asked for, in the order of the work (common practice, no source); every key is one of the schema, and a finished job is asked for nothing.</summary>
public sealed class AskedKeysTests
{
    public static TheoryData<string> Finished() => new(CorpusJob.All.Where(j => j.Ordinary).Select(j => j.Name));

    [Fact]
    public void Every_check_that_a_pack_requires_has_keys_and_each_stands_in_the_schema()
    {
        var schema = JsonNode.Parse(File.ReadAllText(Path.Combine(RepositoryRoot(), "schemas", "job.schema.json")))!;
        var required = LimitLibrary.EmbeddedNames.SelectMany(n => LimitLibrary.Embedded.Find(n)!.Required).SelectMany(p => p.Checks).SelectMany(c => c.OneOf).Distinct(StringComparer.Ordinal).ToList();
        Assert.True(required.Count > 40);
        foreach (var check in required)
        {
            var keys = AskedKeys.KeysOf(check, new LimitSituation { System = "Split" }).ToList();
            Assert.True(keys.Count > 0, $"{check} has no key");
            Assert.All(keys, key => Assert.True(Stands(schema, schema, key.Split('.')), $"{check}: {key} is not in the schema"));
        }
    }

    [Fact]
    public void A_blank_new_split_is_asked_for_its_work_in_order()
    {
        var asked = AskedKeys.Of(JobText.Context(JobLines.Of(equipment: ", metering: TXV, compressor: fixed")));
        var paths = asked.Select(k => k.Path).ToList();
        Assert.Equal(paths.Count, paths.Distinct(StringComparer.Ordinal).Count());
        string[] order = ["pressure test.gas", "pressure test.tightness.from", "pressure test.joints", "evacuation.gauge", "evacuation.levels", "charging.unit arrived", "equipment.piping.liquid", "charging.scale", "label", "signatures"];
        Assert.Equal(order, paths.Where(order.Contains));
        Assert.Equal(("evacuation", "evacuation.level", "common-practice"), asked.Where(k => k.Path == "evacuation.gauge").Select(k => (k.Phase, k.Check, k.Pack)).Single());
        Assert.DoesNotContain(paths, p => p.StartsWith("recovery", StringComparison.Ordinal));
        Assert.All(asked, k => Assert.NotEqual("", k.Because));
    }

    [Fact]
    public void What_is_answered_is_asked_no_longer()
    {
        var open = AskedKeys.Of(JobText.Context(JobLines.Of())).Select(k => k.Path).ToList();
        var tested = AskedKeys.Of(JobText.Context(JobLines.Of("pressure test: {gas: dry nitrogen}"))).Select(k => k.Path).ToList();
        Assert.Contains("pressure test.gas", open);
        Assert.DoesNotContain("pressure test.gas", tested);
        Assert.Contains("pressure test.joints", tested);
    }

    [Fact]
    public void Work_without_refrigerant_asks_for_no_refrigerant()
    {
        var asked = AskedKeys.Of(JobText.Context(JobLines.Of(work: "seasonal check"))).Select(k => k.Path).ToList();
        Assert.All(asked, path => Assert.True(path.StartsWith("instruments", StringComparison.Ordinal) || path == "signatures", path));
    }

    [Theory]
    [MemberData(nameof(Finished))]
    public void A_finished_ordinary_job_is_asked_for_nothing(string name)
    {
        var job = CorpusJob.All.Single(j => j.Name == name);
        Assert.Empty(AskedKeys.Of(JobText.Context(job.Yaml, job.Files)));
    }

    private static bool Stands(JsonNode root, JsonNode node, ReadOnlySpan<string> path)
    {
        if (node["$ref"] is { } reference)
            return Stands(root, root["$defs"]![reference.GetValue<string>()["#/$defs/".Length..]]!, path);
        if (path.IsEmpty)
            return true;
        if (node["properties"]?[path[0]] is { } property && Stands(root, property, path[1..]))
            return true;
        foreach (var branch in new[] { node["then"], node["else"], node["items"] })
        {
            if (branch is not null && Stands(root, branch, path))
                return true;
        }

        return false;
    }

    private static string RepositoryRoot([System.Runtime.CompilerServices.CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", "..", ".."));
}
