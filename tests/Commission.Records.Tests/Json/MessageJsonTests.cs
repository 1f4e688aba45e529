using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Commission.Messages;
using Commission.Records.Integrity;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Records.Tests.Json;

/// <summary>Messages go through the file of a record and come back the same.</summary>
public sealed class MessageJsonTests
{
    private static readonly CommissioningRecord Full = SampleRecord.Full;

    [Fact]
    public void Every_kind_of_value_comes_back()
    {
        var read = RecordJson.Read(RecordJson.Write(Full)).Phrases;
        var sent = Full.Phrases;
        Assert.Equal(sent.Select(p => p.Text), read.Select(p => p.Text));
        Assert.Null(read[0].Value);
        Assert.Equal(Rounded(SampleMessages.EveryKind), read[1].Value);
        var sentences = Assert.IsType<ListValue>(read[2].Value);
        Assert.Equal((ListJoin.Sentences, Message.Of("sample", "one", []), Rounded(SampleMessages.EveryKind)), (sentences.Join, sentences.Items[0], sentences.Items[1]));
    }

    [Fact]
    public void The_file_names_the_message_and_the_kind_of_each_value()
    {
        var message = Json()["phrases"]![1]!["value"]!["message"]!;
        Assert.Equal("sample.every-kind", message["id"]!.GetValue<string>());
        Assert.Equal("""{"quantity":{"decimals":0,"dimension":"pressure","si":133.3223684,"unit":"micron","value":1000}}""", message["values"]!["level"]!.ToJsonString());
        Assert.Equal("""{"quantity":{"decimals":1,"dimension":"mass","expanded":0.5,"larger":"lb","si":5.103,"unit":"oz","value":180}}""", message["values"]!["mass"]!.ToJsonString());
        Assert.Equal("""{"time":"14:50:05"}""", message["values"]!["at"]!.ToJsonString());
        Assert.Equal("""{"decimals":2,"number":0.3333333333}""", message["values"]!["ratio"]!.ToJsonString());
        Assert.Equal("""{"join":"or","list":[{"name":"low"},{"name":"high"}]}""", message["values"]!["gauges"]!.ToJsonString());
        Assert.Equal("""{"symbols":"118.9 psig \u2212 12.2 psi"}""", message["values"]!["numbers"]!.ToJsonString());
        Assert.Equal("""{"message":{"id":"sample.inner"}}""", message["values"]!["inner"]!.ToJsonString());
    }

    [Fact]
    public void A_phrase_of_numbers_alone_has_no_value() => Assert.False(Json()["phrases"]![0]!.AsObject().ContainsKey("value"));

    [Fact]
    public void The_digest_covers_a_value_of_a_message()
    {
        var json = Json();
        json["phrases"]![1]!["value"]!["message"]!["values"]!["n"]!["count"] = 4;
        Assert.NotEqual(Full.Digest, RecordDigest.Compute(Encoding.UTF8.GetBytes(CanonicalForm.Of(json.ToJsonString()))));
    }

    [Theory]
    [InlineData("""{"id": "nophase"}""")]
    [InlineData("""{"id": ".noname"}""")]
    [InlineData("""{"id": "a.b", "values": {"x": {"colour": "red"}}}""")]
    public void What_is_no_message_is_refused(string text) => Assert.Throws<JsonException>(() => MessageJson.Value(JsonDocument.Parse($"{{\"message\":{text}}}").RootElement));

    [Theory]
    [InlineData(ListJoin.And, "and")]
    [InlineData(ListJoin.Or, "or")]
    [InlineData(ListJoin.Comma, "comma")]
    [InlineData(ListJoin.Sentences, "sentences")]
    [InlineData(ListJoin.Semicolons, "semicolons")]
    public void A_list_keeps_how_it_is_joined(ListJoin join, string word)
    {
        var list = new ListValue([new NameValue("low"), new NameValue("high")], join);
        var bytes = RecordJson.Write(SampleRecord.Bare with { Phrases = [new Phrase("a", list)] });
        Assert.Equal(word, JsonNode.Parse(bytes)!["phrases"]![0]!["value"]!["join"]!.GetValue<string>());
        Assert.Equal(list, RecordJson.Read(bytes).Phrases[0].Value);
    }

    private static JsonNode Json() => JsonNode.Parse(RecordJson.Write(Full))!;

    private static double TenDigits(double value) => double.Parse(value.ToString("E9", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    // As a file has it: numbers of ten digits, values in the order of their names.
    private static Message Rounded(Message message) => Message.Of(message.Phase, message.Name,
        [.. message.Values.OrderBy(v => v.Name, StringComparer.Ordinal).Select(v => v.Value switch
        {
            QuantityValue q => v with { Value = q with { Si = TenDigits(q.Si) } },
            NumberValue n => v with { Value = n with { Number = TenDigits(n.Number) } },
            _ => v,
        })]);
}
