using System.Text.Json;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Records.Tests;

/// <summary>The words for verdicts and outcomes: what a person reads in English is what the file says.</summary>
public sealed class RecordWordsTests
{
    [Fact]
    public void Verdicts_read_as_the_file_has_them()
    {
        foreach (var verdict in Enum.GetValues<Verdict>())
            Assert.Equal(TradeWords.Policy.ConvertName(verdict.ToString()), RecordWords.Text(RecordWords.Of(verdict), Language.English));
    }

    [Theory]
    [InlineData(Outcome.Accepted, "accepted", true)]
    [InlineData(Outcome.AcceptedWithConditions, "accepted with conditions", true)]
    [InlineData(Outcome.NotAccepted, "not accepted", false)]
    [InlineData(Outcome.Incomplete, "incomplete", false)]
    public void Outcomes_read_as_the_file_has_them(Outcome outcome, string words, bool accepted)
    {
        var record = SampleRecord.Bare with { Outcome = outcome };
        using var json = JsonDocument.Parse(RecordJson.Write(record));
        Assert.Equal(words, json.RootElement.GetProperty("outcome").GetString());
        Assert.Equal(words, RecordWords.Text(RecordWords.Of(outcome), Language.English));
        Assert.Equal(accepted, record.IsAccepted);
        Assert.False(json.RootElement.TryGetProperty("isAccepted", out _));
    }
}
