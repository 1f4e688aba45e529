using Commission.Checks.Inference;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Messages.Fluent;
using Commission.Records;
using Commission.Source;
using Commission.Source.Yaml;
using Xunit;

namespace Commission.Checks.Tests.Inference;

/// <summary>The words of the table of causes stand in the catalogue under the table's keys: none is missing, none is left over.</summary>
public sealed class CauseTableTests
{
    private static readonly CauseTable Table = CauseTable.Instance;

    [Fact]
    public void No_message_of_the_catalogue_is_left_over()
    {
        const string File = "en/causes.ftl";
        var there = FluentParser.Parse(File, MessageCatalogue.Embedded(File)!).Entries.Select(e => e.Id);
        Assert.Empty(there.Except(Table.Words.Keys, StringComparer.Ordinal));
    }

    [Fact]
    public void A_key_without_its_words_is_a_fault_at_its_line()
    {
        var problems = new ProblemList();
        var key = Assert.IsType<SourceMapping>(YamlReader.Read(SourceText.Decode("causes.yaml", "low tide: {often: 1}"u8.ToArray(), problems)!, problems)).Entries[0].Key;
        new CauseWords(problems).Of(key, isSound: false);
        var told = string.Join('\n', problems.Sorted());
        Assert.Contains("causes.yaml:1:1: \"low tide\" has no text \"cause-low-tide\".", told, StringComparison.Ordinal);
        Assert.Contains("cause-low-tide-next", told, StringComparison.Ordinal);
        Assert.Contains("cause-low-tide-apart", told, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_crew_may_see_has_a_name_and_words()
    {
        var frost = Enum.GetNames<FrostPlace>().Select(f => new Seen("frost", MemberWords.Of(f)));
        var glass = Enum.GetValues<SightGlass>().Where(g => g != SightGlass.None).Select(g => new Seen("sight glass", MemberWords.Of(g.ToString())));
        var causes = Table.Causes.SelectMany(c => c.Seen.SelectMany(s => s.Value.Keys.Select(w => new Seen(s.Key, w))));
        Assert.All(frost.Concat(glass).Concat(causes), seen => Assert.NotEmpty(Text(Table.Told(seen)) + Text(Table.NameOf(seen.What))));
    }

    // Where there is no valve nothing may be said of one.
    [Fact]
    public void With_an_orifice_no_cause_and_no_next_step_names_the_valve_that_is_not_there() =>
        Assert.All(
            Table.Causes.Where(c => !c.Shifts(CircuitWay.Orifice).IsEmpty).Select(c => c.SaidIn(CircuitWay.Orifice)).Where(s => s.Next is not null),
            said => Assert.DoesNotContain("metering valve", Text(said.Name) + Text(said.Next!) + Text(said.Apart!), StringComparison.Ordinal));

    [Fact]
    public void Every_next_step_is_a_sentence_and_every_way_to_tell_apart_is_an_order_without_a_full_stop() => Assert.All(
        Table.Causes.SelectMany(c => new[] { c.Said, c.Said.WithOrifice }).OfType<CauseSayings>().Where(s => s.Next is not null),
        said =>
        {
            Assert.True(char.IsUpper(Text(said.Next!)[0]) && Text(said.Next!).EndsWith('.'), Text(said.Next!));
            Assert.True(char.IsLower(Text(said.Apart!)[0]) && !Text(said.Apart!).EndsWith('.'), Text(said.Apart!));
        });

    private static string Text(Message message) => RecordWords.Text(message, Language.English);
}
