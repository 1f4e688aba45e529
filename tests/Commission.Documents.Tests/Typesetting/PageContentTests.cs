using Commission.Records.Tests.Samples;
using UglyToad.PdfPig.Content;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

public sealed class PageContentTests
{
    [Fact]
    public void A_rich_job_takes_few_pages_and_its_annex_some_more()
    {
        Assert.InRange(SamplePdf.Full.Pages, 5, 8);
        Assert.InRange(SamplePdf.WithAnnex.Pages, SamplePdf.Full.Pages + 2, 18);
    }

    [Fact]
    public void Sections_come_in_the_order_of_the_record()
    {
        using var document = SamplePdf.Open(SamplePdf.WithAnnex);
        var text = string.Concat(document.GetPages().Select(SamplePdf.Text));
        string[] headings =
        [
            "Commissioning record", "Accepted with conditions: return in warm weather, and one more.", "The work in figures", "Pressure test", "Evacuation", "Charge", "Air",
            "Machine, wiring, piping, safety", "Instruments", "Photos", "Is this record worth relying on?", "Cautions", "Sources, uncertainty, files", "Files and digest", "How each number was reached", "Limits in force",
            "Constants, formulas and equations of state",
        ];
        var at = -1;
        foreach (var heading in headings)
        {
            var next = text.IndexOf(heading, at + 1, StringComparison.Ordinal);
            Assert.True(next > at, $"\"{heading}\" is missing or out of order");
            at = next;
        }
    }

    [Fact]
    public void Signs_of_the_trade_can_be_copied()
    {
        using var document = SamplePdf.Open(SamplePdf.WithAnnex);
        var text = string.Concat(document.GetPages().Select(SamplePdf.Text));
        Assert.Contains("12.9 ± 1.5 °F", text, StringComparison.Ordinal);
        Assert.Contains("44.1 ± 0.7 µF", text, StringComparison.Ordinal);
        Assert.Contains("770 ft²", text, StringComparison.Ordinal);
        Assert.Contains("CO₂ equivalent", text, StringComparison.Ordinal);
        Assert.Contains("✓ pass", text, StringComparison.Ordinal);
        Assert.Contains("✗ fail", text, StringComparison.Ordinal);
        Assert.Contains("△ conditional", text, StringComparison.Ordinal);
        Assert.Contains("Test flats, unit 14 & stairs <north>", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("letter", 612, 792)]
    [InlineData("a4", 595, 842)]
    public void Nothing_stands_outside_the_margins(string paper, int width, int height)
    {
        using var document = SamplePdf.Open(SamplePdf.Render(SampleRecord.Full with { Paper = paper }));
        foreach (var page in document.GetPages())
        {
            Assert.Equal(width, page.Width, 0.5);
            Assert.Equal(height, page.Height, 0.5);
            Margins.Check(page);
        }
    }

    [Fact]
    public void No_text_covers_another()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        foreach (var page in document.GetPages())
            Assert.Empty(Overlaps.In(page));
    }

    [Fact]
    public void Every_page_has_its_foot_and_later_pages_a_head()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        foreach (var page in document.GetPages())
        {
            var text = SamplePdf.Text(page);
            Assert.Contains($"page {page.Number} of {SamplePdf.Full.Pages}", text, StringComparison.Ordinal);
            Assert.Contains("TEST-2026-061", text, StringComparison.Ordinal);
            Assert.Contains($"digest {SampleRecord.Full.Digest[..12]} · Commission 0.0.0-test", text, StringComparison.Ordinal);
            Assert.Equal(page.Number > 1, text.Contains("Commissioning record · Test flats", StringComparison.Ordinal));
        }
    }

    // Section headings are the only text at 13 points.
    [Fact]
    public void No_page_ends_with_a_heading()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        foreach (var page in document.GetPages())
        {
            var body = page.Letters.Where(letter => letter.StartBaseLine.Y > 44).ToList();
            var lowest = body.Min(letter => letter.StartBaseLine.Y);
            Assert.All(
                body.Where(letter => letter.StartBaseLine.Y < lowest + 0.1),
                letter => Assert.True(letter.PointSize < 12, $"page {page.Number} ends with \"{letter.Value}\" of a heading"));
        }
    }

    [Fact]
    public void The_head_of_a_table_repeats_on_the_next_page()
    {
        using var document = SamplePdf.Open(SamplePdf.RenderTemplate($"<table><thead><tr><th>No.</th><th>Measured</th></tr></thead><tbody>{string.Concat(Enumerable.Repeat("<tr><td>1</td><td>2</td></tr>", 90))}</tbody></table>"));
        Assert.All(document.GetPages(), page => Assert.Equal("No.Measured", SamplePdf.Lines(page)[0]));
        Assert.True(document.NumberOfPages > 1);
    }

    [Fact]
    public void Numbers_of_a_column_stand_on_their_decimal_point()
    {
        var document = SamplePdf.RenderTemplate(
            "<table><thead><tr><th>What</th><th class=\"decimal\">Number</th></tr></thead><tbody>" +
            string.Concat(new[] { "1.25", "312.5 ± 0.5", "−4", "0.001", "1,234.5" }.Select(number => $"<tr><td>x</td><td class=\"decimal\">{number}</td></tr>")) + "</tbody></table>");
        using var pdf = SamplePdf.Open(document);
        var points = Rows(pdf.GetPage(1)).Select(PointOf).OfType<double>().ToList();
        Assert.Equal(5, points.Count);
        Assert.All(points, x => Assert.Equal(points[0], x, 0.05));
    }

    private static IEnumerable<List<Letter>> Rows(Page page) => page.Letters
        .Where(letter => letter.StartBaseLine.Y > 44 && letter.StartBaseLine.Y < page.Height - 30)
        .GroupBy(letter => Math.Round(letter.StartBaseLine.Y, 1))
        .Select(row => row.Where(letter => letter.StartBaseLine.X > 150).OrderBy(letter => letter.StartBaseLine.X).ToList())
        .Where(row => row.Count > 0 && row.Exists(letter => char.IsAsciiDigit(letter.Value[0])));

    // The point itself, or the end of the last digit where there is none.
    private static double? PointOf(List<Letter> row)
    {
        var point = row.Find(letter => letter.Value == ".");
        return point is not null ? point.StartBaseLine.X : row.FindLast(letter => char.IsAsciiDigit(letter.Value[0]))?.EndBaseLine.X;
    }
}
