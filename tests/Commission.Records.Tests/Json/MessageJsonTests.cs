using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Commission.Messages;
using Commission.Records.Findings;
using Commission.Records.Integrity;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Records.Tests.Json;

/// <summary>Messages go through the file of a record and come back the same.</summary>
public sealed class MessageJsonTests
{
    private static readonly CommissioningRecord Full = SampleRecord.Full;

    private static int Index { get; } = Full.Findings.IndexOf(Full.Findings.First(f => f.Messages is not null));

    [Fact]
    public void Every_kind_of_value_comes_back()
    {
        var read = RecordJson.Read(RecordJson.Write(Full)).Findings[Index].Messages!;
        var sent = Full.Findings[Index].Messages!;
        Assert.Equal(Rounded(sent.Statement[0]), read.Statement[0]);
        Assert.Equal(sent.Statement[1..], read.Statement[1..]);
        Assert.Equal(sent.Reservation, read.Reservation);
        Assert.Equal((sent.Reason, sent.NextStep), (read.Reason, read.NextStep));
    }

    [Fact]
    public void The_file_names_the_message_and_the_kind_of_each_value()
    {
        var message = Json()["findings"]![Index]!["messages"]!["statement"]![0]!;
        Assert.Equal("sample.every-kind", message["id"]!.GetValue<string>());
        Assert.Equal("""{"quantity":{"decimals":0,"dimension":"pressure","si":133.3223684,"unit":"micron","value":1000}}""", message["values"]!["level"]!.ToJsonString());
        Assert.Equal("""{"quantity":{"decimals":1,"dimension":"mass","expanded":0.5,"larger":"lb","si":5.103,"unit":"oz","value":180}}""", message["values"]!["mass"]!.ToJsonString());
        Assert.Equal("""{"time":"14:50:05"}""", message["values"]!["at"]!.ToJsonString());
        Assert.Equal("""{"decimals":2,"number":0.3333333333}""", message["values"]!["ratio"]!.ToJsonString());
        Assert.Equal("""{"join":"or","list":[{"name":"low"},{"name":"high"}]}""", message["values"]!["gauges"]!.ToJsonString());
        Assert.Equal("""{"message":{"id":"sample.inner"}}""", message["values"]!["inner"]!.ToJsonString());
    }

    [Fact]
    public void A_finding_without_messages_has_no_such_member()
    {
        var without = Full.Findings.IndexOf(Full.Findings.First(f => f.Messages is null));
        Assert.False(Json()["findings"]![without]!.AsObject().ContainsKey("messages"));
    }

    [Fact]
    public void The_digest_covers_a_value_of_a_message()
    {
        var json = Json();
        json["findings"]![Index]!["messages"]!["statement"]![0]!["values"]!["n"]!["count"] = 4;
        Assert.NotEqual(Full.Digest, RecordDigest.Compute(Encoding.UTF8.GetBytes(CanonicalForm.Of(json.ToJsonString()))));
    }

    [Theory]
    [InlineData("""{"id": "nophase"}""")]
    [InlineData("""{"id": ".noname"}""")]
    [InlineData("""{"id": "a.b", "values": {"x": {"colour": "red"}}}""")]
    public void What_is_no_message_is_refused(string text) => Assert.Throws<JsonException>(() => MessageJson.Read(JsonDocument.Parse(text).RootElement));

    [Fact]
    public void Only_a_message_of_a_catalogue_counts()
    {
        Assert.False(new FindingMessages([Message.Plain("a")]) { NextStep = Message.Plain("b"), Reservation = [Message.Plain("c")] }.HasMessage);
        var catalogued = Message.Of("a", "b", []);
        Assert.True(new FindingMessages([Message.Plain("a")]) { Reservation = [catalogued] }.HasMessage);
        Assert.True(new FindingMessages([catalogued]).HasMessage);
        Assert.True(new FindingMessages([Message.Plain("a")]) { Reason = catalogued }.HasMessage);
        Assert.True(new FindingMessages([Message.Plain("a")]) { NextStep = catalogued }.HasMessage);
    }

    [Theory]
    [InlineData(ListJoin.And, "and")]
    [InlineData(ListJoin.Or, "or")]
    [InlineData(ListJoin.Comma, "comma")]
    public void A_list_keeps_how_it_is_joined(ListJoin join, string word)
    {
        var message = Message.Of("a", "b", [new("l", new ListValue([new NameValue("low"), new NameValue("high")], join))]);
        var bytes = RecordJson.Write(With(new FindingMessages([message])));
        Assert.Equal(word, JsonNode.Parse(bytes)!["findings"]![0]!["messages"]!["statement"]![0]!["values"]!["l"]!["join"]!.GetValue<string>());
        Assert.Equal(message, RecordJson.Read(bytes).Findings[0].Messages!.Statement[0]);
    }

    // "What there is none of is left out": no empty lists, no nulls.
    [Fact]
    public void A_part_that_there_is_none_of_is_left_out()
    {
        var json = JsonNode.Parse(RecordJson.Write(With(new FindingMessages([Message.Of("a", "b", [])]))))!;
        Assert.Equal("""{"statement":[{"id":"a.b"}]}""", json["findings"]![0]!["messages"]!.ToJsonString());
        json["findings"]![0]!["messages"]!.AsObject().Remove("statement");
        var read = RecordJson.Read(Encoding.UTF8.GetBytes(json.ToJsonString())).Findings[0].Messages!;
        Assert.Empty(read.Statement);
        Assert.Empty(read.Reservation);
        Assert.Null(read.Reason);
        Assert.Null(read.NextStep);
    }

    private static CommissioningRecord With(FindingMessages messages) => SampleRecord.Bare with { Findings = [Full.Findings[Index] with { Messages = messages }] };

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
