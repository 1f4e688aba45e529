using Commission.Messages.Fluent;
using Xunit;
using static Commission.Messages.Tests.Formatting;

namespace Commission.Messages.Tests;

/// <summary>
/// The facts of the Fluent syntax guide (projectfluent.org/fluent/guide) and of its grammar (fluent.ebnf, Syntax 1.0), with sentences of our own.
/// Middle dots in a test's text stand for spaces, so that they can be counted.
/// </summary>
public sealed class FluentSyntaxTests
{
    // Guide, "Writing Text" and "Multiline Text": blanks before and after a text do not count; line breaks inside it do.
    [Theory]
    [InlineData("m = One line.", "One line.")]
    [InlineData("m =······One line.", "One line.")]
    [InlineData("m = One line.···", "One line.")]
    [InlineData("m = Pull down\n····and wait.", "Pull down\nand wait.")]
    [InlineData("m =\n····Pull down\n····and wait.", "Pull down\nand wait.")]
    [InlineData("m =\n\n\n····Pull down.", "Pull down.")]
    [InlineData("m = Pull down\n\n····and wait.\n\n", "Pull down\n\nand wait.")]
    [InlineData("m = Pull down\r\n··and wait.\r\n", "Pull down\nand wait.")]
    public void Text_is_read_as_the_guide_says(string file, string expected) => Assert.Equal(expected, Text(Spaced(file), "m"));

    // Guide, "Multiline Text": the largest indent common to all indented lines is not part of the text; a first line beside the name is no indented line.
    [Theory]
    [InlineData("m =\n····Four spaces\n········on the second line.", "Four spaces\n····on the second line.")]
    [InlineData("m =\n········Four spaces\n····on the first line.", "····Four spaces\non the first line.")]
    [InlineData("m = Four spaces\n········on the second\n····line.", "Four spaces\n····on the second\nline.")]
    [InlineData("m = No indent\n········on the second line.", "No indent\non the second line.")]
    public void Common_indent_is_dropped(string file, string expected) => Assert.Equal(Spaced(expected), Text(Spaced(file), "m"));

    // Guide, "Special Characters".
    [Theory]
    [InlineData("m = An opening brace: {\"{\"}.", "An opening brace: {.")]
    [InlineData("m = A closing brace: {\"}\"}.", "A closing brace: }.")]
    [InlineData("m = {\"    \"}Four spaces first.", "    Four spaces first.")]
    [InlineData("m = Four spaces last.{\"    \"}", "Four spaces last.    ")]
    [InlineData("m =\n    The third line\n    begins with\n    {\"[\"}.", "The third line\nbegins with\n[.")]
    [InlineData("m = {\"\\\"\"}quoted{\"\\\"\"}", "\"quoted\"")]
    [InlineData("m = \"quoted\"", "\"quoted\"")]
    [InlineData("m = Nitrogen{\"\\u00A0\"}break", "Nitrogen\u00A0break")]
    [InlineData("m = {\"\\U01F602\"}", "\U0001F602")]
    [InlineData("m = {\"\\\\\"}", "\\")]
    [InlineData("m = a\\b", "a\\b")]
    public void Quoted_text_and_escapes(string file, string expected) => Assert.Equal(expected, Text(file, "m"));

    // Grammar: a surrogate in an escape is no character; the reference implementations put U+FFFD in its place.
    [Fact]
    public void Half_a_pair_becomes_the_replacement_character() => Assert.Equal("\uFFFD", Text("m = {\"\\uD83D\"}", "m"));

    // Guide, "Placeables", "Variables", "Message References".
    [Fact]
    public void Placeables_take_variables_messages_numbers_and_placeables()
    {
        const string File = "probe = micron gauge\nm = Put the { probe } at {$place}, {  3.50 } ft off, { { $place } }.";
        Assert.Equal("Put the micron gauge at the coil, 3.50 ft off, the coil.", Text(File, "m", Name("place", "the coil")));
    }

    // Grammar, block_placeable: a placeable may begin a line that is not indented; its line then counts with an indent of nothing.
    [Fact]
    public void A_placeable_may_begin_a_line_without_indent() => Assert.Equal("One\nC1\n  three", Text("m = One\n{$c}\n  three", "m", Name("c", "C1")));

    // Guide, "Selectors": one text is standard; a number takes the text of exactly that number, or of its plural category, the first that fits.
    [Theory]
    [InlineData(0, "No leak was found.")]
    [InlineData(1, "One leak was found.")]
    [InlineData(2, "2 leaks were found.")]
    [InlineData(21, "21 leaks were found.")]
    public void A_count_chooses_by_number_and_category(int count, string expected)
    {
        const string File = """
            leaks =
                { $count ->
                    [0] No leak was found.
                    [one] One leak was found.
                   *[other] { $count } leaks were found.
                }
            """;
        Assert.Equal(expected, Text(File, "leaks", Count("count", count)));
    }

    // Guide, "Selectors": a formatted number chooses by how it is written: 1.0 is no "one" in English (CLDR: v = 0), and [0.0] matches 0.
    [Theory]
    [InlineData(0, "None at all.")]
    [InlineData(1, "1.0 points.")]
    [InlineData(0.04, "None at all.")]
    public void A_number_chooses_as_it_is_printed(double number, string expected) => Assert.Equal(
        expected, Text("m = { $score ->\n [0.0] None at all.\n [one] One.\n*[other] { $score } points.\n }", "m", Number("score", number, 1)));

    // Guide, "Selectors": a word is compared with the keys, and what fits none takes the standard text.
    [Theory]
    [InlineData("at-pump", "at the pump")]
    [InlineData("elsewhere", "somewhere")]
    public void A_word_chooses_by_key(string word, string expected) =>
        Assert.Equal(expected, Text("m = { $place ->\n  [at-pump] at the pump\n *[other] somewhere\n}", "m", Choice("place", word)));

    [Fact]
    public void A_choice_stands_inside_a_sentence_and_inside_a_choice()
    {
        const string File = """
            m = The valve { $n ->
                [one] was { $how ->
                   *[open] open
                    [closed] closed
                }
               *[other] of { $n } were { $how ->
                   *[open] open
                    [closed] closed
                }
            }, and it held.
            """;
        Assert.Equal("The valve was closed, and it held.", Text(File, "m", Count("n", 1), Choice("how", "closed")));
        Assert.Equal("The valve of 3 were open, and it held.", Text(File, "m", Count("n", 3), Choice("how", "open")));
    }

    // Guide, "Terms": arguments choose a form of a term; without them the standard one is taken; a term does not see the message's variables.
    [Fact]
    public void Terms_take_arguments_and_see_nothing_else()
    {
        const string File = """
            -hold =
                { $case ->
                   *[nominative] die Standprobe
                    [dative] der Standprobe
                }
            after = nach { -hold(case: "dative") }
            plain = { -hold }
            host = { -hold }
            """;
        Assert.Equal("nach der Standprobe", Text(File, "after"));
        Assert.Equal("die Standprobe", Text(File, "plain"));
        Assert.Equal("die Standprobe", Text(File, "host", Choice("case", "dative")));
    }

    // Guide, "Comments": one sign belongs to the message below it; two head a group, three the file; an empty line parts a comment from a message.
    [Fact]
    public void Comments_belong_to_the_message_below()
    {
        var entries = FluentParser.Parse("t.ftl", "### File\n\n## Group\n\n# alone\n\n# first\n# second\na = A\nb = B\n#\n# third\nc = C\n").Entries;
        Assert.Equal(["first", "second"], entries[0].Comment);
        Assert.Empty(entries[1].Comment);
        Assert.Equal(["", "third"], entries[2].Comment);
        Assert.Equal([9, 10, 13], entries.Select(e => e.Line));
    }

    [Theory]
    [InlineData("m = A\n    .label = B", "t.ftl:2:5: attributes are not supported: make a message of its own of it")]
    [InlineData("m = { a.b }", "t.ftl:1:7: attributes are not supported")]
    [InlineData("m = { NUMBER($a, minimumFractionDigits: 1) }", "t.ftl:1:7: functions such as NUMBER() are not supported: how a value is written belongs to the value")]
    [InlineData("ok = A\nm =\n", "t.ftl:2:1: “m” has no text")]
    [InlineData("m =\n    .a = B\n", "t.ftl:1:1: attributes are not supported: make “m” a message with a text, and a message of its own of each attribute")]
    [InlineData("m = A }", "t.ftl:1:7: a closing brace closes nothing here; written as text it is {\"}\"}")]
    [InlineData("m = A { $b", "t.ftl:1:7: this brace is never closed")]
    [InlineData("m = { $a $b }", "t.ftl:1:10: expected “}”, found “$”")]
    [InlineData("m = { \"open }", "t.ftl:1:7: this quoted text is not closed on its line")]
    [InlineData("m = { \"\\x\" }", "t.ftl:1:8: a backslash in a quoted text stands before a quotation mark, a backslash, uXXXX or UXXXXXX")]
    [InlineData("m = { \"\\u00G0\" }", "t.ftl:1:8: expected 4 hexadecimal digits of a character")]
    [InlineData("m = { \"\\U110000\" }", "t.ftl:1:8: no character has this number; the last one is U+10FFFF")]
    [InlineData("m = { $a ->\n  [one] A\n}", "t.ftl:3:1: one text must be marked with a star: it is taken when no other fits")]
    [InlineData("m = { $a ->\n  *[one] A\n  *[two] B\n}", "t.ftl:3:3: only one text can be the one that is taken when no other fits (*)")]
    [InlineData("m = { $a -> *[one] A\n}", "t.ftl:1:13: each text of a choice begins on a line of its own")]
    [InlineData("m = { $a ->\n  *[one]\n}", "t.ftl:2:9: [one] has no text; nothing at all is {\"\"}")]
    [InlineData("m = { b ->\n  *[one] A\n}", "t.ftl:1:7: only a variable ($name) can choose between texts")]
    [InlineData("m = { 3. }", "t.ftl:1:9: expected a digit")]
    [InlineData("m A", "t.ftl:1:3: expected “=” after the name m, found “A”")]
    [InlineData("3m = A", "t.ftl:1:1: expected a message (name = text), a term (-name = text) or a comment (# …)")]
    [InlineData("  m = A", "t.ftl:1:1: an indented line belongs to no message; a message begins in the first column")]
    [InlineData("m = A\n\tB", "t.ftl:2:1: expected a message (name = text), a term (-name = text) or a comment (# …)")]
    [InlineData("m = A\nm = B", "t.ftl:2:1: “m” stands in this file twice; give one of them another name")]
    [InlineData("#no space\nm = A", "t.ftl:1:1: a comment is one to three number signs and a space")]
    [InlineData("m = { -a(\"b\") }", "t.ftl:1:10: a term takes arguments by name: (case: \"dative\")")]
    public void What_is_not_understood_is_an_error_with_its_place(string file, string expected) =>
        Assert.Equal(expected, Assert.Throws<FluentException>(() => FluentParser.Parse("t.ftl", file)).Message);

    [Fact]
    public void A_term_and_a_message_may_share_a_name() => Assert.Equal("B", Text("-m = B\nm = { -m }", "m"));

    private static string Spaced(string text) => text.Replace('·', ' ');
}
