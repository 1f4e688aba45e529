using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Commission.Records.Integrity;
using Commission.Records.Json;
using Commission.Records.Tests.Json;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Records.Tests.Integrity;

public sealed class RecordDigestTests
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    [Fact]
    public void The_digest_does_not_cover_itself()
    {
        var once = RecordDigest.Seal(SampleRecord.Full);
        Assert.Equal(once.Record.Digest, RecordDigest.Seal(once.Record).Record.Digest);
        Assert.Equal(once.Record.Digest, RecordDigest.Seal(once.Record with { Digest = "something else" }).Record.Digest);
        Assert.Matches("^[0-9a-f]{64}$", once.Record.Digest);
    }

    [Fact]
    public void The_sealed_bytes_are_the_record_with_its_digest()
    {
        var sealedRecord = RecordDigest.Seal(SampleRecord.Bare);
        Assert.Equal(RecordJson.Write(sealedRecord.Record), sealedRecord.Json.ToArray());
        Assert.Equal(sealedRecord.Record.Digest, RecordDigest.Compute(sealedRecord.Json.Span));
    }

    // The rule as a reader of the file would follow it with a text editor and sha256sum.
    [Fact]
    public void Cutting_the_member_out_of_the_file_and_hashing_the_rest_gives_the_digest()
    {
        var sealedRecord = RecordDigest.Seal(SampleRecord.Full);
        var rest = Regex.Replace(Encoding.UTF8.GetString(sealedRecord.Json.Span), "\"digest\":\"[0-9a-f]{64}\",", "", RegexOptions.None, TimeSpan.FromSeconds(1));
        Assert.Equal(sealedRecord.Record.Digest, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(rest))));
    }

    // Another program may indent the file and turn its members round: in canonical form it is the same file.
    [Fact]
    public void A_file_that_was_laid_out_anew_has_the_same_digest()
    {
        var record = RecordDigest.Seal(SampleRecord.Full);
        var indented = JsonSerializer.Serialize(JsonDocument.Parse(record.Json), Indented);
        Assert.Equal(record.Record.Digest, RecordDigest.Compute(Encoding.UTF8.GetBytes(CanonicalForm.Of(indented))));
    }

    [Fact]
    public void Any_change_changes_it()
    {
        var record = SampleRecord.Full;
        Assert.NotEqual(record.Digest, Digest(record with { Outcome = Outcome.Accepted }));
        var findings = record.Findings;
        var changed = findings[28] with { Measured = findings[28].Measured! with { Text = "10.6 ± 1.4 °F" } };
        Assert.NotEqual(record.Digest, Digest(record with { Findings = findings.SetItem(28, changed) }));
    }

    // SHA-256 of {"a":1,"inner":{"digest":"y"}} worked out with sha256sum (coreutils).
    [Theory]
    [InlineData("""{"a":1,"digest":"","inner":{"digest":"y"}}""")]
    [InlineData("""{"a":1,"digest":"x","inner":{"digest":"y"}}""")]
    public void The_hash_is_sha256_of_the_text_without_the_outer_member(string canonical) =>
        Assert.Equal("d059c3832983c74e40dd35de6a2604a95fc9e986e007393018d99edf39224f10", RecordDigest.Compute(Encoding.UTF8.GetBytes(canonical)));

    // SHA-256 of {"a":1} worked out with sha256sum (coreutils).
    [Fact]
    public void A_digest_at_the_end_goes_with_the_comma_before_it() =>
        Assert.Equal("015abd7f5cc57a2dd94b7590f04ad8084273905ee33ec5cebeae62276a97f862", RecordDigest.Compute("""{"a":1,"digest":""}"""u8));

    // SHA-256 of {"z":1} worked out with sha256sum (coreutils).
    [Fact]
    public void A_digest_at_the_start_goes_with_the_comma_behind_it() =>
        Assert.Equal("9d80fd5b8b1e66e0eb1a8f15644749bbdcb6304691b9d3de20aa4010cdac2bc1", RecordDigest.Compute("""{"digest":"x","z":1}"""u8));

    [Fact]
    public void There_is_no_seal_on_nothing() => Assert.Throws<ArgumentNullException>(() => RecordDigest.Seal(null!));

    [Fact]
    public void Without_the_member_there_is_no_digest() => Assert.Throws<FormatException>(() => RecordDigest.Compute("""{"a":{"digest":""}}"""u8));

    private static string Digest(CommissioningRecord record) => RecordDigest.Seal(record).Record.Digest;
}
