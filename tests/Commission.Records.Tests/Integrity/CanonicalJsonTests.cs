using System.Text;
using System.Text.Json.Nodes;
using Commission.Records.Integrity;
using Xunit;

namespace Commission.Records.Tests.Integrity;

public sealed class CanonicalJsonTests
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
        Assert.Equal(Expected, Encoding.UTF8.GetString(CanonicalJson.Write(JsonNode.Parse(Sample))));
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
        var canonical = Encoding.UTF8.GetString(CanonicalJson.Write(JsonNode.Parse(Sample)));
        var places = names.Select(name => canonical.IndexOf($"\"{name}\"", StringComparison.Ordinal)).ToArray();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Only_the_outer_member_is_left_out()
    {
        var value = (JsonObject)JsonNode.Parse("""{"digest":"x","inner":{"digest":"y"}}""")!;
        Assert.Equal("""{"inner":{"digest":"y"}}""", Encoding.UTF8.GetString(CanonicalJson.WriteWithout(value, "digest")));
        Assert.Equal("x", (string?)value["digest"]);
    }

    [Fact]
    public void Half_a_surrogate_pair_is_refused() =>
        Assert.Throws<EncoderFallbackException>(() => CanonicalJson.Write(JsonValue.Create("\ud83d")));

    [Fact]
    public void Whole_numbers_made_in_memory_are_numbers() =>
        Assert.Equal("[1,2,-3]", Encoding.UTF8.GetString(CanonicalJson.Write(new JsonArray(1, 2L, (short)-3))));
}
