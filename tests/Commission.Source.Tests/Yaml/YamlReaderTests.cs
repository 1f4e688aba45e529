using System.Text;
using Commission.Source.Yaml;
using CsCheck;
using Xunit;

namespace Commission.Source.Tests.Yaml;

public sealed class YamlReaderTests
{
    [Fact]
    public void Values_stay_text_and_know_their_place()
    {
        var (node, problems) = Reading.Yaml("a: 08:10\nlist:\n  - {od: 3/8 in, when: \"10:42\"}\n  - yes\n");
        Assert.Empty(problems);
        Assert.Equal("{a: 08:10, list: [{od: 3/8 in, when: \"10:42\"}, yes]}", Reading.Show(node!));
        var list = (SourceSequence)((SourceMapping)node!).Find("list")!.Value;
        var item = (SourceMapping)list.Items[0];
        Assert.Equal("job.yaml:3:24", item.Find("when")!.Value.Location.ToString());
        Assert.Equal(7, item.Find("when")!.Value.Length);
        Assert.Equal("job.yaml:3:10", item.Find("od")!.Value.Location.ToString());
        Assert.Equal(6, item.Find("od")!.Value.Length);
        Assert.True(item.IsFlow);
    }

    [Theory]
    [InlineData("a: 1\r\nb: 2\r\n", "{a: 1, b: 2}")]
    [InlineData("\uFEFFa: 1\nb: 2\n", "{a: 1, b: 2}")]
    [InlineData("a: ±0.5 K\nb: 0.5 % of full scale\nc: 3/8\"\n", "{a: ±0.5 K, b: 0.5 % of full scale, c: 3/8\"}")]
    [InlineData("design pressure: {low: 450 psig}\n---\n", null)]
    [InlineData("base: &x {a: 1}\nuse: *x\n", "{base: {a: 1}, use: {a: 1}}")]
    [InlineData("notes: |\n  first\n  second\n", "{notes: \"first\nsecond\n\"}")]
    [InlineData("# yaml-language-server: $schema=x\na: 1 # end\n", "{a: 1}")]
    public void Reads(string text, string? expected)
    {
        var (node, problems) = Reading.Yaml(text);
        if (expected is null)
        {
            Assert.Single(problems);
            return;
        }

        Assert.Empty(problems);
        Assert.Equal(expected, Reading.Show(node!));
    }

    // Literal texts and places: what a person reads on the screen.
    [Theory]
    [InlineData("", "job.yaml: The file is empty.")]
    [InlineData("# only a comment\n", "job.yaml: The file is empty.")]
    [InlineData("a: 1\nb: 2\na: 3\n", "job.yaml:3:1: \"a\" is written twice; the first is in line 1. Keep one of them.")]
    [InlineData("site: {name: Tarn flats, unit 14}\n", "job.yaml:1:26: \"unit 14\" stands alone: the comma before it ended \"Tarn flats\". If it belongs to the value, write name: \"Tarn flats, unit 14\".")]
    [InlineData("site: {name: Tarn flats, unit 14, block C, elevation: 5 m}\n", "job.yaml:1:26: \"unit 14, block C\" stands alone: the comma before it ended \"Tarn flats\". If it belongs to the value, write name: \"Tarn flats, unit 14, block C\".")]
    [InlineData("r: {p: 119,8, t: 57.9}\n", "job.yaml:1:8: \"119,8\" has a decimal comma, and in braces a comma ends the value. Write p: 119.8 with a point.")]
    [InlineData("r: {Tarn flats}\n", "job.yaml:1:5: \"Tarn flats\" has no colon. In braces each entry is key: value. Write Tarn flats: and its value.")]
    [InlineData("a: !!float 3\n", "job.yaml:1:4: The tag tag:yaml.org,2002:float stands before a value. Plain values are expected. Delete the tag.")]
    [InlineData("a: !pressure 3 psig\n", "job.yaml:1:4: The tag !pressure stands before a value. Plain values are expected. Delete the tag.")]
    [InlineData("a: 1\n---\nb: 2\n", "job.yaml:2:1: A second document begins here. A file holds one document. Delete this --- line, or put the rest into a file of its own.")]
    [InlineData("a: *x\n", "job.yaml:1:4: *x refers to nothing: no &x comes before it. Put the value in quotes if it is meant to begin with *.")]
    [InlineData("a: &x [1, *x]\n", "job.yaml:1:11: *x stands inside &x itself. Write the value out.")]
    [InlineData("[a, b]: 1\n", "job.yaml:1:1: This key is a list, a mapping or an alias. A key is a word. Write the key as plain text.")]
    [InlineData("a: {b: 1, c: 2\nd: 3\n", "job.yaml:1:4: This { is never closed. A } is expected. Write } at its end.")]
    [InlineData("a: [1, 2\n", "job.yaml:1:4: This [ is never closed. A ] is expected. Write ] at its end.")]
    [InlineData("site: {name: Flats #14}\nnext: 1\n", "job.yaml:1:7: This { is never closed. A } is expected. The # in column 20 begins a comment and hides the rest of the line: put that value in quotes.")]
    [InlineData("a:\n\tb: 1\n", "job.yaml:2:1: A tab stands in the indentation. Only spaces indent. Replace it by spaces.")]
    [InlineData("a: \"open\nb: 2\n", "job.yaml:1:4: A quote \" is opened and never closed. Write \" at the end of the value.")]
    [InlineData("a: @home\n", "job.yaml:1:4: A value cannot begin with @. Put the value in quotes.")]
    [InlineData("a: \"C:\\Users\"\n", "job.yaml:1:7: A backslash in double quotes begins an escape, and this one does not exist. Use single quotes, or write \\\\ for a backslash.")]
    [InlineData("a: 1\nno colon here\nb: 2\n", "job.yaml:2:1: This line has no colon. A key is followed by a colon and a space. Write key: value.")]
    [InlineData("note: see page: 12\n", "job.yaml:1:15: A second colon stands in this line. Put a value that contains a colon in quotes.")]
    [InlineData("a: 1\n b: 2\n", "job.yaml:2:3: This line is indented further than its neighbors. Keys of one block begin in the same column. Correct the indentation.")]
    [InlineData("a:\n    b: 1\n  c: 2\n", "job.yaml:3:3: This line does not line up with the ones above. Keys of one block begin in the same column. Correct the indentation of this line or of the one before.")]
    public void Faults_are_told_in_plain_words(string text, string expected) =>
        Assert.Equal([expected], Reading.Yaml(text).Problems);

    [Fact]
    public void Several_faults_are_all_told()
    {
        var (_, problems) = Reading.Yaml("a: 1\na: 2\nb: !x 3\nc: {d: e, f}\n");
        Assert.Equal(3, problems.Length);
    }

    [Fact]
    public void Ten_thousand_levels_are_refused_at_once()
    {
        var (node, problems) = Reading.Yaml("a: " + new string('[', 10_000));
        Assert.Null(node);
        Assert.Equal(["job.yaml:1:43: Brackets or indentation are nested more than 40 deep. A job file needs fewer than ten levels: look for a bracket that is not closed."], problems);
    }

    [Fact]
    public void Forty_levels_are_read() =>
        Assert.Empty(Reading.Yaml("a: " + new string('[', 39) + new string(']', 39)).Problems);

    // YAML 1.2.2, 6.9.2 and 7.1: an anchor may stand before any node, also before a plain or quoted scalar in a flow mapping.
    [Theory]
    [InlineData("{a: &x 1, b: *x}", "{a: 1, b: 1}")]
    [InlineData("{a: &x 1, b: 2, c: *x}", "{a: 1, b: 2, c: 1}")]
    [InlineData("{a: &x \"1, 2\", b: *x , c: 3}", "{a: \"1, 2\", b: \"1, 2\", c: 3}")]
    [InlineData("[{a: &x-1 1, b: *x-1}, *x-1]", "[{a: 1, b: 1}, 1]")]
    [InlineData("{a: &x {b: &y 1, c: *y}, d: *x, e: *y}", "{a: {b: 1, c: 1}, d: {b: 1, c: 1}, e: 1}")]
    [InlineData("{a: &x [1, &y 2, *y], b: *x}", "{a: [1, 2, 2], b: [1, 2, 2]}")]
    [InlineData("a: &x 1\nb: {c: *x, d: &x 2, e: *x}\n", "{a: 1, b: {c: 1, d: 2, e: 2}}")]
    [InlineData("a: {b: '&x 1', c: &x 2}\nd: *x\n", "{a: {b: \"&x 1\", c: 2}, d: 2}")]
    public void Anchors_stand_in_brackets(string yaml, string shown)
    {
        var (node, problems) = Reading.Yaml(yaml);
        Assert.Empty(problems);
        Assert.Equal(shown, Reading.Show(node!));
    }

    [Theory]
    [InlineData("{a: &x 1, b: *y}", "job.yaml:1:14: *y refers to nothing: no &y comes before it. Put the value in quotes if it is meant to begin with *.")]
    [InlineData("{a: &x 1, b: *x, b: 2}", "job.yaml:1:18: \"b\" is written twice; the first is in line 1. Keep one of them.")]
    public void Faults_beside_anchors_keep_their_place(string yaml, string problem) => Assert.Equal([problem], Reading.Yaml(yaml).Problems);

    [Fact]
    public void An_alias_bomb_is_refused_without_expanding_it()
    {
        var bomb = new StringBuilder("a0: &a0 [x,x,x,x,x,x,x,x,x]\n");
        for (var i = 1; i < 10; i++)
            bomb.Append("a" + i + ": &a" + i + " [").AppendJoin(',', Enumerable.Repeat($"*a{i - 1}", 9)).Append("]\n");
        var (node, problems) = Reading.Yaml(bomb.ToString());
        Assert.Null(node);
        Assert.Equal(["job.yaml:6:14: With aliases written out, the file holds more than 200,000 values. Use fewer aliases, and a CSV file for long series."], problems);
    }

    [Fact]
    public void Aliases_cannot_nest_past_the_limit()
    {
        var text = new StringBuilder("a0: &a0 [x]\n");
        for (var i = 1; i < 60; i++)
            text.Append("a" + i + ": &a" + i + " [*a" + (i - 1) + "]\n");
        Assert.Contains("nested more than 40 deep", Assert.Single(Reading.Yaml(text.ToString()).Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Any_text_gives_a_node_or_problems_and_never_throws()
    {
        const string alphabet = "ab1 :,-[]{}#&*!|>'\"%@`\n\n  \t?~.<=\\é";
        Gen.Char[alphabet].Array[0, 60].Sample(chars => NodeOrProblem(new string(chars)), iter: 20_000, threads: 1);
    }

    [Fact]
    public void Any_bytes_give_a_node_or_problems_and_never_throw() =>
        Gen.Byte.Array[0, 80].Sample(bytes => NodeOrProblem(bytes), iter: 10_000, threads: 1);

    [Fact]
    public void Any_small_damage_to_a_good_file_gives_a_node_or_problems()
    {
        const string good = "commission: 1\nsite: {name: \"Flats, 14\", elevation: 5280 ft}\nreadings:\n  - {at: \"11:20\", p: 119.8, t: &t 57.9}\n  - {at: \"11:35\", p: 118.9, t: *t}\nnotes: |\n  two\n  lines\n";
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Int[0, 6], Gen.Char["{}[]:,'\"#&*!\t\n -\\"])
            .Sample(damage => NodeOrProblem(good.Remove(damage.Item1, Math.Min(damage.Item2, good.Length - damage.Item1)).Insert(damage.Item1, damage.Item3.ToString())), iter: 20_000, threads: 1);
    }

    private static bool NodeOrProblem(string text) => NodeOrProblem(Encoding.UTF8.GetBytes(text));

    private static bool NodeOrProblem(byte[] bytes)
    {
        var (node, problems) = Reading.Yaml(bytes);
        return node is not null || problems.Length > 0;
    }
}
