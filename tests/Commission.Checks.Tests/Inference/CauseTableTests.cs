using System.Text;
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
        Assert.Contains("causes.yaml:1:1: causes.cause-low-tide\n", told, StringComparison.Ordinal);
        Assert.Contains("causes.cause-low-tide-next", told, StringComparison.Ordinal);
        Assert.Contains("causes.cause-low-tide-apart", told, StringComparison.Ordinal);
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

    private const string Small = """
        readings:
          superheat: {step: 4 K, step below: 2.6 K, scatter: 0.6}
          current: {step: 15 %, scatter: 0.7}
        causes:
          no fault shown: {often: 45, seen: {sight glass: {clear: 0.95, bubbles: 0.05}}}
          low charge: {often: 7, advice: add, valve: {superheat: 1.5}, orifice: [{superheat: 2}, {superheat: 1, current: -1}]}
          overcharge: {often: 5, advice: recover, needs: full condenser, heating: {current: 0.7}}
          passing reversing valve: {often: 1, needs: reversing valve, is a condition: yes, seen: {sight glass: {clear: 0.5}}}
        """;

    [Fact]
    public void A_table_is_read_as_it_stands()
    {
        var table = Read(Small, out var problems)!;
        Assert.Empty(problems.Sorted());
        Assert.Equal([("superheat", 4.0, 2.6, 0.6), ("current", 0.15, 0.15, 0.7)], table.Readings.Values.Select(r => (r.Id, r.Step, r.StepBelow, r.Scatter)));
        Assert.Equal(["no fault shown", "low charge", "overcharge", "passing reversing valve"], table.Causes.Select(c => c.Id));
        Assert.Equal([45.0, 7.0, 5.0, 1.0], table.Causes.Select(c => c.Often));
        Assert.Equal(["none", "add", "recover", "none"], table.Causes.Select(c => c.Advice));
        Assert.Equal([null, null, "full condenser", "reversing valve"], table.Causes.Select(c => c.Needs));
        Assert.Equal([false, false, false, true], table.Causes.Select(c => c.IsCondition));
        Assert.Equal([true, false, false, false], table.Causes.Select(c => c.IsSound));
        Assert.Equal(1.5, Assert.Single(table.Cause("low charge").Valve)["superheat"]);
        Assert.Equal([2.0, 1.0], table.Cause("low charge").Orifice.Select(l => l["superheat"]));
        Assert.Equal(-1, table.Cause("low charge").Orifice[1]["current"]);
        Assert.Empty(table.Cause("low charge").Heating);
        Assert.Same(table.Cause("low charge").Valve[0], table.Cause("low charge").Shifts(CircuitWay.Valve)[0]);
        Assert.Equal(2, table.Cause("low charge").Shifts(CircuitWay.Orifice).Length);
        Assert.Equal(0.7, table.Cause("overcharge").Shifts(CircuitWay.Heating)[0]["current"]);
        Assert.Equal(0.05, table.Cause("no fault shown").Seen["sight glass"]["bubbles"]);
        Assert.Empty(table.Cause("low charge").Seen);
        Assert.Equal(0.5, table.Cause("passing reversing valve").Seen["sight glass"]["clear"]);
        Assert.Contains("seen-sight-glass", table.Words.Keys);
        Assert.Contains("seen-sight-glass-bubbles", table.Words.Keys);
        Assert.Contains("reading-superheat", table.Words.Keys);
    }

    // Each fault is told at its line, once.
    [Theory]
    [InlineData("step: 4 K,", "step: 4 ft,", 2, "bad-step")]
    [InlineData("step: 4 K,", "step: 4,", 2, "bad-step")]
    [InlineData("step below: 2.6 K", "step below: 2.6 psi", 2, "bad-step")]
    [InlineData("{step: 4 K", "{colour: red, step: 4 K", 2, "unknown-key")]
    [InlineData("valve: {superheat: 1.5}", "valve: {superhat: 1.5}", 6, "unknown-reading")]
    [InlineData("advice: add", "advice: pray", 6, null)]
    [InlineData("advice: add", "mood: bad", 6, "unknown-key")]
    [InlineData("bubbles: 0.05", "milk: 0.05", 5, "missing-text")]
    [InlineData("sight glass: {clear: 0.95, bubbles: 0.05}", "crystal ball: {}", 5, "missing-text")]
    [InlineData("  current: {step", "  mood: {step: 1 K, scatter: 1}\n  current: {step", 3, "missing-text")]
    [InlineData("readings:", "colour: red\nreadings:", 1, "unknown-key")]
    public void A_fault_of_the_table_is_told_at_its_line(string from, string to, int line, string? code)
    {
        Read(Small.Replace(from, to, StringComparison.Ordinal), out var problems);
        var told = Assert.Single(problems.Sorted());
        Assert.Equal(line, told.Location.Line);
        Assert.True(code is null || told.Code == code, told.ToString());
    }

    [Theory]
    [InlineData("[a, b]")]
    [InlineData("causes: {no fault shown: {often: 1}}")]
    [InlineData("readings: {superheat: {step: 4 K, scatter: 0.6}}")]
    [InlineData("readings: [superheat]\ncauses: {no fault shown: {often: 1}}")]
    [InlineData("readings: {superheat: {step: 4 K, scatter: 0.6}}\ncauses: [low charge]")]
    public void Without_readings_or_causes_there_is_no_table(string text) => Assert.Null(Read(text, out _));

    private static CauseTable? Read(string text, out ProblemList problems)
    {
        problems = new ProblemList();
        return CauseTable.Read(YamlReader.Read(SourceText.Decode("causes.yaml", Encoding.UTF8.GetBytes(text), problems)!, problems)!, problems);
    }

    private static string Text(Message message) => RecordWords.Text(message, Language.English);
}
