using System.Collections.Immutable;
using Xunit;
using static Commission.Messages.Tests.Formatting;

namespace Commission.Messages.Tests;

/// <summary>Messages as values, and what is said when one cannot be written.</summary>
public sealed class MessageTests
{
    [Fact]
    public void Messages_are_equal_when_name_and_values_are()
    {
        var one = Message.Of("test", "m", [new("a", Names(ListJoin.And, "x", "y")), Count("n", 2)]);
        Assert.Equal(one, Message.Of("test", "m", [new("a", Names(ListJoin.And, "x", "y")), Count("n", 2)]));
        Assert.Equal(one.GetHashCode(), Message.Of("test", "m", [new("a", Names(ListJoin.And, "x", "y")), Count("n", 2)]).GetHashCode());
        Assert.NotEqual(one, Message.Of("test", "m", [new("a", Names(ListJoin.Or, "x", "y")), Count("n", 2)]));
        Assert.NotEqual(one, Message.Of("test", "m", [new("a", Names(ListJoin.And, "x", "y")), Count("n", 3)]));
        Assert.NotEqual(one, Message.Of("test", "k", one.Values));
        Assert.Equal("test.m", one.Id);
    }

    [Fact]
    public void A_message_stands_inside_another()
    {
        var writer = Writer(f => f == "en/test.ftl" ? "outer = So: { $inner } and { $written }\ninner = { $n } left" : null);
        var message = Message.Of("test", "outer", [new("inner", Message.Of("test", "inner", [Count("n", 4)])), new("written", new TextValue("as it was"))]);
        Assert.Equal("So: 4 left and as it was", writer.Format(message, Language.English));
    }

    [Fact]
    public void Terms_of_all_phases_stand_in_one_file()
    {
        var writer = Writer(f => f switch { "de/test.ftl" => "m = { -hold } { -rig }\n-rig = Pumpstand", "de/terms.ftl" => "-hold = Standprobe\n-rig = Aufbau", _ => null });
        Assert.Equal("Standprobe Pumpstand", writer.Format(Message.Of("test", "m", []), Language.German));
    }

    [Theory]
    [InlineData("other", "There is no text for test.other in English.")]
    [InlineData("gap", "test.gap brings nothing for level.")]
    [InlineData("lost", "test.lost brings nothing for -hold.")]
    [InlineData("choose", "test.choose brings nothing for n.")]
    public void What_cannot_be_written_is_told(string name, string expected) => Assert.Equal(
        expected, Assert.Throws<FormatException>(() => Text("gap = { $level }\nlost = { -hold }\nchoose = { $n ->\n*[other] A\n}", name)).Message);

    [Fact]
    public void A_file_is_read_when_it_is_first_needed_and_only_then()
    {
        var read = new List<string>();
        var writer = Writer(f =>
        {
            read.Add(f);
            return "m = A";
        });
        Assert.Empty(read);
        writer.Format(Message.Of("air", "m", []), Language.English);
        writer.Format(Message.Of("air", "m", []), Language.English);
        Assert.Equal(["en/air.ftl"], read);
    }
}
