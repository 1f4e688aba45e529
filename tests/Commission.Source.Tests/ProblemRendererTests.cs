using System.Text;
using Commission.Messages;
using Xunit;

namespace Commission.Source.Tests;

public sealed class ProblemRendererTests
{
    [Fact]
    public void Shows_the_line_with_a_caret_and_the_count()
    {
        var problems = new ProblemList();
        problems.Add(new SourceLocation("job.yaml", 2, 6), "\"118.9 psi\" does not say gauge or absolute.".Plain(), "".Plain(), "Write 118.9 psig or psia.".Plain(), "x", 9);
        problems.Add(new SourceLocation("job.yaml", 1, 1), "First.".Plain(), "".Plain(), "".Plain());
        Assert.Equal(
            """
            job.yaml:1:1: First.
                a: 1
                ^
            job.yaml:2:6: "118.9 psi" does not say gauge or absolute. Write 118.9 psig or psia.
                °F: 118.9 psi
                     ^~~~~~~~
            2 problems.

            """.ReplaceLineEndings("\n"),
            Render(problems, "a: 1\n°F: 118.9 psi\n"));
    }

    [Fact]
    public void Fifty_are_shown_and_the_rest_counted()
    {
        var problems = new ProblemList();
        for (var i = 0; i < 73; i++)
            problems.Add(SourceLocation.WholeFile($"f{i:00}"), "Bad.".Plain(), "".Plain(), "".Plain());
        var lines = Render(problems, "").Split('\n');
        Assert.Equal("f49: Bad.", lines[49]);
        Assert.Equal("… and 23 more.", lines[50]);
        Assert.Equal("73 problems.", lines[51]);
    }

    [Fact]
    public void A_long_line_is_cut_around_the_fault()
    {
        var problems = new ProblemList();
        problems.Add(new SourceLocation("job.yaml", 1, 2001), "Bad.".Plain(), "".Plain(), "".Plain());
        var lines = Render(problems, new string('a', 2000) + "X" + new string('b', 2000)).Split('\n');
        Assert.Equal(4 + 1 + 110 + 1, lines[1].Length);
        Assert.Equal('X', lines[1][lines[2].IndexOf('^', StringComparison.Ordinal)]);
    }

    [Fact]
    public void Nothing_wrong_renders_nothing() => Assert.Equal("", Render(new ProblemList(), ""));

    [Fact]
    public void The_same_problem_twice_counts_once()
    {
        var problems = new ProblemList();
        problems.Add(SourceLocation.WholeFile("f"), "Bad.".Plain(), "".Plain(), "".Plain());
        problems.Add(SourceLocation.WholeFile("f"), "Bad.".Plain(), "".Plain(), "".Plain());
        Assert.Equal(1, problems.Count);
    }

    private static string Render(ProblemList problems, string text)
    {
        var source = SourceText.Decode("job.yaml", Encoding.UTF8.GetBytes(text), new ProblemList());
        return ProblemRenderer.Render(problems, _ => source, Language.English);
    }
}

/// <summary>Words of a test as a message.</summary>
internal static class PlainWords
{
    public static Message Plain(this string words) => CommonMessages.AsWritten(new(words));
}
