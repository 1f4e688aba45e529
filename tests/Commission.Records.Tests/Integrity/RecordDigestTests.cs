using System.Text.Json.Nodes;
using Commission.Records.Integrity;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Records.Tests.Integrity;

public sealed class RecordDigestTests
{
    [Fact]
    public void The_digest_does_not_cover_itself()
    {
        var once = RecordDigest.Seal(SampleRecord.Full);
        Assert.Equal(once.Digest, RecordDigest.Seal(once).Digest);
        Assert.Matches("^[0-9a-f]{64}$", once.Digest);
    }

    [Fact]
    public void A_file_in_any_layout_and_order_has_the_same_digest()
    {
        var json = (JsonObject)JsonNode.Parse(RecordJson.Write(SampleRecord.Full))!;
        var turned = new JsonObject();
        foreach (var member in json.Reverse()) turned[member.Key] = member.Value?.DeepClone();
        Assert.Equal(SampleRecord.Full.Digest, RecordDigest.Compute((JsonObject)JsonNode.Parse(turned.ToJsonString())!));
    }

    [Fact]
    public void Any_change_changes_it()
    {
        var record = SampleRecord.Full;
        Assert.NotEqual(record.Digest, RecordDigest.Compute(record with { Outcome = Outcome.Accepted }));
        var findings = record.Findings;
        var changed = findings[28] with { Measured = findings[28].Measured! with { Text = "10.6 ± 1.4 °F" } };
        Assert.NotEqual(record.Digest, RecordDigest.Compute(record with { Findings = findings.SetItem(28, changed) }));
    }

    [Fact]
    public void A_member_unknown_to_this_version_counts_too()
    {
        var json = (JsonObject)JsonNode.Parse(RecordJson.Write(SampleRecord.Full))!;
        json["later"] = 1;
        Assert.NotEqual(SampleRecord.Full.Digest, RecordDigest.Compute(json));
    }

    // SHA-256 of {"a":1} worked out with sha256sum (coreutils).
    [Fact]
    public void The_hash_is_sha256_of_the_canonical_text()
    {
        var value = (JsonObject)JsonNode.Parse("""{ "digest": "", "a": 1.0 }""")!;
        Assert.Equal("015abd7f5cc57a2dd94b7590f04ad8084273905ee33ec5cebeae62276a97f862", RecordDigest.Compute(value));
    }
}
