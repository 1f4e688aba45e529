using System.Text;
using System.Text.Json.Nodes;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Commission.Source;
using Xunit;

namespace Commission.Records.Tests.Json;

public sealed class RecordJsonTests
{
    [Fact]
    public void A_record_reads_back_to_the_same_bytes()
    {
        var bytes = RecordJson.Write(SampleRecord.Full);
        Assert.Equal(bytes, RecordJson.Write(RecordJson.Read(bytes)));
    }

    [Fact]
    public void Two_writings_are_the_same_bytes() =>
        Assert.Equal(RecordJson.Write(SampleRecord.Full), RecordJson.Write(SampleRecord.Full));

    [Fact]
    public void Signs_and_units_stay_readable()
    {
        var text = Encoding.UTF8.GetString(RecordJson.Write(SampleRecord.Full));
        Assert.Contains("\"text\":\"12.9 ± 1.5 °F\"", text, StringComparison.Ordinal);
        Assert.Contains("\"verdict\":\"conditional\"", text, StringComparison.Ordinal);
        Assert.Contains("\"at\":\"job.yaml:97:38\"", text, StringComparison.Ordinal);
    }

    // The value was worked with 2/3 in it; the file holds ten of its digits.
    [Fact]
    public void Computed_numbers_are_rounded_where_they_are_written()
    {
        var quantity = new DisplayQuantity(2.0 / 3, "ratio", "", 0, 0, "");
        var record = SampleRecord.Bare with { Findings = [Minimal(new MeasuredQuantity(quantity, 1.0 / 3, null, null, null, "", null))] };
        var text = Encoding.UTF8.GetString(RecordJson.Write(record));
        Assert.Contains("\"si\":0.6666666667,", text, StringComparison.Ordinal);
        Assert.Contains("\"standardUncertaintySi\":0.3333333333,", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Unlimited_degrees_of_freedom_are_null()
    {
        var quantity = new MeasuredQuantity(new DisplayQuantity(1, "ratio", "", 1, 0, "1"), 0.1, 0.2, 2, double.PositiveInfinity, "1.0 ± 0.2", "0.2");
        var bytes = RecordJson.Write(SampleRecord.Bare with { Findings = [Minimal(quantity)] });
        Assert.Null(RecordJson.Read(bytes).Findings[0].Measured!.DegreesOfFreedom);
    }

    [Fact]
    public void A_place_may_have_colons_in_its_file_name()
    {
        var at = new SourceLocation(@"C:\jobs\a:b.yaml", 3, 9);
        var record = SampleRecord.Bare with { Findings = [Minimal(null) with { Readings = [new ReadingUse("x", "1 psig", at, null)] }] };
        Assert.Equal(at, RecordJson.Read(RecordJson.Write(record)).Findings[0].Readings[0].At);
    }

    [Theory]
    [InlineData("", "line 1")]
    [InlineData("{", "line 1")]
    [InlineData("null", "not a record")]
    [InlineData("[]", "does not fit")]
    [InlineData("{\"version\": 1}", "missing member")]
    [InlineData("{\n\"version\": \"one\"}", "line 2")]
    public void What_is_no_record_is_said_in_words(string text, string expected)
    {
        Assert.False(RecordJson.TryRead(Encoding.UTF8.GetBytes(text), out var record, out var fault));
        Assert.Null(record);
        Assert.Contains(expected, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_of_a_later_version_is_refused()
    {
        var json = (JsonObject)JsonNode.Parse(RecordJson.Write(SampleRecord.Bare))!;
        json["version"] = 2;
        Assert.False(RecordJson.TryRead(Encoding.UTF8.GetBytes(json.ToJsonString()), out _, out var fault));
        Assert.Equal("The record is of version 2; this program reads versions 1 to 1.", fault);
    }

    [Fact]
    public void A_byte_order_mark_does_not_matter()
    {
        byte[] marked = [0xEF, 0xBB, 0xBF, .. RecordJson.Write(SampleRecord.Bare)];
        Assert.True(RecordJson.TryRead(marked, out var record, out _));
        Assert.Equal("TEST-0", record.Header.Id);
    }

    [Fact]
    public void A_list_that_is_missing_reads_as_empty()
    {
        var json = (JsonObject)JsonNode.Parse(RecordJson.Write(SampleRecord.Bare))!;
        json.Remove("photos");
        Assert.Empty(RecordJson.Read(Encoding.UTF8.GetBytes(json.ToJsonString())).Photos);
    }

    // The schema asks for the text, for a version from 1 on, and for a word.
    [Theory]
    [InlineData("program", "null", "line 1, at $.program,")]
    [InlineData("version", "0", "version 0; this program reads versions 1 to 1.")]
    [InlineData("outcome", "0", "line 1, at $.outcome,")]
    public void What_the_schema_refuses_is_no_record(string member, string value, string expected)
    {
        var json = (JsonObject)JsonNode.Parse(RecordJson.Write(SampleRecord.Bare))!;
        json[member] = JsonNode.Parse(value);
        Assert.False(RecordJson.TryRead(Encoding.UTF8.GetBytes(json.ToJsonString()), out var record, out var fault));
        Assert.Null(record);
        Assert.Contains(expected, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_record_throws_where_a_record_was_promised()
    {
        var thrown = Assert.Throws<FormatException>(() => RecordJson.Read("[]"u8));
        Assert.Equal("The file is not a record: line 1, at the outermost object, does not fit schemas/record.schema.json (a wrong kind of value, or a missing member).", thrown.Message);
        Assert.Throws<ArgumentNullException>(() => RecordJson.Write(null!));
    }

    // As compilers write a place: file, file:line, file:line:column (GNU Coding Standards, "Formatting Error Messages").
    [Theory]
    [InlineData("job.yaml", "job.yaml", 0, 0)]
    [InlineData("job.yaml:52", "job.yaml", 52, 0)]
    [InlineData("job.yaml:52:31", "job.yaml", 52, 31)]
    [InlineData("a:b.yaml", "a:b.yaml", 0, 0)]
    [InlineData("a:b:31", "a:b", 31, 0)]
    [InlineData(":52", ":52", 0, 0)]
    [InlineData("job.yaml:-3", "job.yaml:-3", 0, 0)]
    public void A_place_reads_as_it_is_written(string text, string file, int line, int column)
    {
        var at = new SourceLocation(file, line, column);
        var record = SampleRecord.Bare with { Findings = [Minimal(null) with { Readings = [new ReadingUse("x", "1 psig", at, null)] }] };
        var json = JsonNode.Parse(RecordJson.Write(record))!;
        Assert.Equal(text, json["findings"]![0]!["readings"]![0]!["at"]!.GetValue<string>());
        Assert.Equal(at, RecordJson.Read(RecordJson.Write(record)).Findings[0].Readings[0].At);
    }

    [Fact]
    public void A_place_that_is_null_is_refused()
    {
        var json = JsonNode.Parse(RecordJson.Write(SampleRecord.Full))!;
        json["findings"]![0]!["readings"]![0]!["at"] = null;
        Assert.False(RecordJson.TryRead(Encoding.UTF8.GetBytes(json.ToJsonString()), out _, out var fault));
        Assert.Contains("at $.findings[0].readings[0].at,", fault, StringComparison.Ordinal);
    }

    private static Finding Minimal(MeasuredQuantity? measured) => new()
    {
        Check = "air.test",
        Phase = "air",
        Title = "Test",
        Verdict = Verdict.Information,
        Statement = "Test.",
        Measured = measured,
    };
}
