using System.Text;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Records.Tests.Json;

public sealed class CanonicalFormTests
{
    // RFC 8785, section 3.2.2: the sample object and its canonical form (from memory).
    [Fact]
    public void The_sample_of_the_standard_comes_out_as_printed_there()
    {
        const string Sample = """
            {
              "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
              "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
              "literals": [null, true, false]
            }
            """;
        const string Expected =
            """{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}""";
        Assert.Equal(Expected, CanonicalForm.Of(Sample));
    }

    // RFC 8785, section 3.2.3: members sort by UTF-16 units, so the emoji (D83D) comes before U+FB33 (from memory).
    [Fact]
    public void Members_sort_by_utf16_units()
    {
        const string Sample = """
            {"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One",
             "\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control","\u00f6":"Latin Small Letter O With Diaeresis"}
            """;
        var names = new[] { "Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh" };
        var canonical = CanonicalForm.Of(Sample);
        var places = names.Select(name => canonical.IndexOf($"\"{name}\"", StringComparison.Ordinal)).ToArray();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void A_record_is_written_in_that_form()
    {
        Assert.Equal(CanonicalForm.Of(Written(SampleRecord.Full)), Written(SampleRecord.Full));
        Assert.Equal(CanonicalForm.Of(Written(SampleRecord.Bare)), Written(SampleRecord.Bare));
    }

    // Every control character, both ends of the escapes, signs of two, three and four bytes.
    [Fact]
    public void Texts_are_escaped_as_the_standard_asks_and_no_further()
    {
        var text = string.Concat(Enumerable.Range(0, ' ').Select(c => (char)c)) + "\"\\/'<>&\u007f\u0085\u2028± °F 冷媒 \ud83d\ude00";
        var written = Written(SampleRecord.Bare with { Declaration = text });
        Assert.Equal(CanonicalForm.Of(written), written);
        Assert.Equal(text, RecordJson.Read(Encoding.UTF8.GetBytes(written)).Declaration);
        Assert.Contains("\\u000b\\f\\r\\u000e", written, StringComparison.Ordinal);
        Assert.Contains("\\\"\\\\/'<>&\u007f\u0085\u2028± °F 冷媒 \ud83d\ude00\"", written, StringComparison.Ordinal);
    }

    // UTF-8 has no bytes for it (RFC 3629, section 3); a file name read from a disk may hold one.
    [Fact]
    public void Half_a_surrogate_pair_becomes_the_replacement_sign() =>
        Assert.Equal("x\ufffdy", RecordJson.Read(RecordJson.Write(SampleRecord.Bare with { Declaration = "x\ud83dy" })).Declaration);

    private static string Written(CommissioningRecord record) => Encoding.UTF8.GetString(RecordJson.Write(record));
}
