using System.Text.Json;
using Commission.Checks.Tests.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Messages;
using Commission.Messages.Fluent;
using Xunit;

namespace Commission.Checks.Tests.Wording;

public sealed class SchemaWordsTests
{
    /// <summary>Every word that a job may hold has its message, and no message stands there for a word that is gone.</summary>
    [Fact]
    public void Every_word_of_the_lists_has_its_message_and_no_other()
    {
        var lists = typeof(Given<>).Assembly.GetTypes().Where(t => t.IsEnum && t.Namespace == "Commission.Jobs.Model.Words").ToList();
        var wanted = lists.SelectMany(list => Enum.GetValues(list).Cast<Enum>()).Select(word => Message(word).Name).Order(StringComparer.Ordinal).ToList();
        Assert.True(wanted.Count > 300);
        Assert.Equal(wanted, FluentParser.Parse("words.ftl", MessageCatalogue.Embedded("en/words.ftl")!).Entries.Select(e => e.Id).Order(StringComparer.Ordinal));
    }

    /// <summary>In English the word is that of the file, so that a crew finds it again.</summary>
    [Fact]
    public void In_English_it_is_the_word_of_the_file()
    {
        using var schema = JsonDocument.Parse(Repository.Read("schemas", "job.schema.json"));
        var words = schema.RootElement.GetProperty("$defs").EnumerateObject().Where(d => d.Value.TryGetProperty("x-words", out _) && d.Name != "RecordLanguage")
            .SelectMany(d => d.Value.GetProperty("x-words").EnumerateObject().Select(w => w.Name)).Order(StringComparer.Ordinal);
        var said = typeof(Given<>).Assembly.GetTypes().Where(t => t.IsEnum && t.Namespace == "Commission.Jobs.Model.Words" && t.Name != "RecordLanguage")
            .SelectMany(list => Enum.GetValues(list).Cast<Enum>()).Select(word => Message(word).Said()).Order(StringComparer.Ordinal);
        Assert.Equal(words, said);
    }

    private static Message Message(Enum word) => (Message)typeof(SchemaWords).GetMethod(nameof(SchemaWords.Of))!.MakeGenericMethod(word.GetType()).Invoke(null, [word])!;
}
