using Commission.Checks.Recording;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Json;
using Commission.Source;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>A record read from its file holds all that its sentences were made from.</summary>
public sealed class MessagesOfExamplesTests
{
    public static TheoryData<string> Examples => ExamplesLibrary.Names;

    [Theory]
    [MemberData(nameof(Examples))]
    public void Sentences_can_be_written_again_from_the_file(string example)
    {
        var record = RecordJson.Read(RecordJson.Write(JobEvaluation.Evaluate(ExamplesLibrary.Read(example), new RecordChoices(), "commission", new ProblemList())!));
        var language = Language.Find(record.Language)!;
        foreach (var finding in record.Findings)
        {
            if (finding.Messages is not { } messages)
                continue;
            Assert.Equal(finding.Statement, string.Join(" ", messages.Statement.Select(Text)));
            Assert.Equal(finding.Reservation ?? "", string.Join("; ", messages.Reservation.Select(Text)));
            Assert.Equal(finding.Reason, messages.Reason is { } reason ? Text(reason) : null);
            Assert.Equal(finding.NextStep, messages.NextStep is { } next ? Text(next) : null);
        }

        string Text(Message message) => RecordWords.Text(message, language);
    }
}
