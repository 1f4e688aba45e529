using System.Globalization;
using UglyToad.PdfPig.Content;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

/// <summary>No word of a table is cut, and rows that belong together stand on one page.</summary>
public sealed class TableTests
{
    private static readonly string[] Heads =
    [
        "Time", "Vapor pressure", "Liquid pressure", "True suction pressure", "Discharge pressure", "Vapor line", "Liquid line", "Evaporator outlet", "Compressor suction", "Discharge line",
        "Compressor current", "Sight glass", "Receiver level", "Power",
    ];

    // Fourteen columns go in smaller type; twice as many do not fit at any size and stand in parts, each with the time before it.
    [Theory]
    [InlineData(6, 1)]
    [InlineData(14, 1)]
    [InlineData(28, 3)]
    public void No_word_is_cut_however_many_columns_there_are(int columns, int parts)
    {
        var heads = Enumerable.Range(0, columns).Select(i => Heads[i < Heads.Length ? i : 1 + (i % (Heads.Length - 1))]).ToArray();
        var table = $"<table><thead><tr>{string.Concat(heads.Select(head => $"<th>{head}</th>"))}</tr></thead><tbody><tr>{string.Concat(heads.Select((_, i) => i == 0 ? "<td>10:40</td>" : $"<td>{Number(i)}</td>"))}</tr></tbody></table>";
        using var pdf = SamplePdf.Open(SamplePdf.RenderTemplate(table));
        var words = Body(pdf.GetPage(1)).ToList();
        var written = words.ConvertAll(word => word.Text);
        Assert.All(heads.SelectMany(head => head.Split(' ')).Distinct(), word => Assert.Contains(word, written));
        Assert.All(Enumerable.Range(1, columns - 1), i => Assert.Single(written, Number(i)));
        Assert.Equal(parts, written.Count(word => word == "10:40"));
        Assert.Equal(parts, written.Count(word => word == "Time"));
        Assert.All(words, word => Assert.InRange(word.Letters[0].PointSize, 6.99, 9));
        Assert.Empty(Overlaps.In(pdf.GetPage(1)));
        Margins.Check(pdf.GetPage(1));

        static string Number(int i) => (100 + i).ToString(CultureInfo.InvariantCulture);
    }

    [Theory]
    [InlineData(3, true)]
    [InlineData(10, false)]
    public void Tables_too_wide_to_stand_side_by_side_stand_one_below_the_other(int columns, bool areAbreast)
    {
        var table = $"<table><thead><tr>{string.Concat(Heads.Take(columns).Select(head => $"<th>{head}</th>"))}</tr></thead><tbody><tr>{string.Concat(Heads.Take(columns).Select(_ => "<td>1</td>"))}</tr></tbody></table>";
        using var pdf = SamplePdf.Open(SamplePdf.RenderTemplate($"<div class=\"columns\"><div>{table}</div><div>{table}</div></div>"));
        var times = Body(pdf.GetPage(1)).Where(word => word.Text == "Time").Select(word => word.BoundingBox.Bottom).ToList();
        Assert.Equal(2, times.Count);
        Assert.Equal(areAbreast, Math.Abs(times[0] - times[1]) < 1);
        Assert.All(Heads.Take(columns).SelectMany(head => head.Split(' ')).Distinct(), word => Assert.Contains(Body(pdf.GetPage(1)), found => found.Text == word));
    }

    // Whatever stands above: the name of a group never ends a page, and what explains a row stands on the page of the row.
    [Fact]
    public void The_name_of_a_group_stays_with_its_rows_and_an_explanation_with_its_row()
    {
        var rows = string.Concat(Enumerable.Range(0, 12).Select(i => $"<tr id=\"g{i}\"><td></td><th scope=\"row\" colspan=\"2\">Group{i}</th></tr><tr><td>1</td><th scope=\"row\">Row{i}a</th><td>x</td></tr><tr><td></td><td colspan=\"2\">Why{i}</td></tr><tr><td>2</td><th scope=\"row\">Row{i}b</th><td>x</td></tr>"));
        for (var lines = 30; lines < 38; lines++)
        {
            var above = string.Concat(Enumerable.Repeat("<p>line</p>", lines));
            using var pdf = SamplePdf.Open(SamplePdf.RenderTemplate($"{above}<table><thead><tr><th>No.</th><th>Check</th><th>Verdict</th></tr></thead><tbody>{rows}</tbody></table>"));
            var pages = pdf.GetPages().SelectMany(page => Body(page).Select(word => (word.Text, page.Number))).Where(word => word.Text.Any(char.IsAsciiDigit) && word.Text.Length > 2).ToDictionary(word => word.Text, word => word.Number, StringComparer.Ordinal);
            for (var i = 0; i < 12; i++)
            {
                Assert.True(pages[$"Group{i}"] == pages[$"Row{i}a"], $"Group{i} stands alone under {lines} lines");
                Assert.True(pages[$"Row{i}a"] == pages[$"Why{i}"], $"Why{i} stands alone under {lines} lines");
            }
        }
    }

    private static IEnumerable<Word> Body(Page page) => page.GetWords().Where(word => word.BoundingBox.Bottom > 44);
}
