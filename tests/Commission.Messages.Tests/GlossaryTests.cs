using System.Runtime.CompilerServices;
using Xunit;

namespace Commission.Messages.Tests;

/// <summary>The trade's words in three languages: one word an idea, one idea a word.</summary>
public sealed class GlossaryTests
{
    private const int LongGerman = 14;

    private static readonly string[][] Rows = [.. File.ReadAllLines(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "src", "Commission.Messages", "Catalogues", "glossary.tsv")).Select(line => line.Split('\t'))];

    [Fact]
    public void Every_term_has_three_languages_and_a_source()
    {
        Assert.Equal(["term", "en", "es", "de", "es_plural", "de_gender", "breaks_de", "note", "source"], Rows[0]);
        Assert.True(Rows.Length > 150);
        Assert.All(Rows, row => Assert.Equal(Rows[0].Length, row.Length));
        Assert.All(Rows, row => Assert.All([row[0], row[1], row[2], row[3], row[8]], cell => Assert.Equal(cell.Trim(), cell)));
        Assert.All(Rows, row => Assert.DoesNotContain("", new[] { row[0], row[1], row[2], row[3], row[8] }));
    }

    // Two terms of one wording would be printed as one.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void No_wording_stands_for_two_terms(int column) =>
        Assert.Empty(Rows.Skip(1).GroupBy(row => row[column], StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key}: {string.Join(", ", g.Select(r => r[0]))}"));

    // A long German word is broken at its seams and nowhere else.
    [Fact]
    public void Long_German_words_have_their_breaks() => Assert.All(Rows.Skip(1), row =>
    {
        Assert.True(row[6].Length > 0 || !row[3].Split(' ', '-').Any(word => word.Length > LongGerman), $"{row[0]}: {row[3]}");
        Assert.True(row[6].Length == 0 || row[6].Replace("·", "", StringComparison.Ordinal) == row[3], $"{row[0]}: {row[6]} is not {row[3]}");
    });

    private static string Here([CallerFilePath] string path = "") => path;
}
