using Commission.Records;
using Commission.Records.Findings;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

public sealed class HostileContentTests
{
    [Theory]
    [InlineData("no blanks", 'a', 500)]
    [InlineData("only blanks", ' ', 500)]
    [InlineData("wide letters", 'W', 500)]
    public void Texts_of_any_length_stay_on_the_page(string kind, char c, int count) => Check(kind + new string(c, count));

    [Theory]
    [InlineData("words words ", 60)]
    [InlineData("日本語 😀 ", 40)]
    [InlineData("שלום \u202e ", 40)]
    [InlineData("a\u0301\u200b\u00ad\ufeff ", 40)]
    [InlineData("<b>&amp;{{ outcome }}{% include 'x' %} ", 12)]
    public void Texts_of_any_kind_stay_on_the_page(string part, int times) => Check(string.Concat(Enumerable.Repeat(part, times)));

    [Fact]
    public void A_row_taller_than_a_page_goes_on_under_its_head()
    {
        var document = SamplePdf.RenderTemplate(
            $"<table><thead><tr><th>Head</th><th>Other</th></tr></thead><tbody><tr><td width=\"20%\">{string.Concat(Enumerable.Repeat("word ", 2500))}</td><td>x</td></tr></tbody></table>");
        using var pdf = SamplePdf.Open(document);
        Assert.True(document.Pages > 2);
        var words = 0;
        foreach (var page in pdf.GetPages())
        {
            Margins.Check(page);
            Assert.Empty(Overlaps.In(page));
            Assert.StartsWith("HeadOther", SamplePdf.Lines(page)[0], StringComparison.Ordinal);
            words += page.GetWords().Count(word => word.Text == "word");
        }

        Assert.Equal(2500, words);
    }

    [Fact]
    public void Columns_too_tall_for_a_page_stand_one_below_the_other()
    {
        var tall = string.Concat(Enumerable.Repeat("<p>word</p>", 120));
        var document = SamplePdf.RenderTemplate($"<div class=\"columns\"><div>{tall}</div><div>{tall}</div></div>");
        using var pdf = SamplePdf.Open(document);
        Assert.Equal(240, pdf.GetPages().Sum(page => page.GetWords().Count(word => word.Text == "word")));
        Assert.All(pdf.GetPages(), Margins.Check);
    }

    [Fact]
    public void A_table_of_many_columns_fits_the_width()
    {
        var head = string.Concat(Enumerable.Range(0, 24).Select(i => $"<th>column {i}</th>"));
        var cells = string.Concat(Enumerable.Range(0, 24).Select(i => $"<td class=\"decimal\">{i}.25 ± 0.1</td>"));
        var document = SamplePdf.RenderTemplate($"<table><thead><tr>{head}</tr></thead><tbody><tr>{cells}</tr></tbody></table>");
        using var pdf = SamplePdf.Open(document);
        Margins.Check(pdf.GetPage(1));
    }

    [Fact]
    public void An_empty_document_is_one_page() => Assert.Equal(1, SamplePdf.RenderTemplate("<section/>").Pages);

    [Fact]
    public void Uneven_rows_and_empty_cells_are_drawn()
    {
        var document = SamplePdf.RenderTemplate("<table><tbody><tr><td/></tr><tr><td>a</td><td colspan=\"3\">b</td><td>c</td></tr><tr/></tbody></table><table/><ul/><ol><li/></ol>");
        using var pdf = SamplePdf.Open(document);
        Assert.Equal("abc", string.Concat(SamplePdf.Lines(pdf.GetPage(1))).Replace("1.", "", StringComparison.Ordinal));
    }

    // Headings, alternative texts and titles end up as strings of the file: none of them may be taken for its structure.
    [Fact]
    public void Words_of_the_file_format_in_a_text_are_only_text()
    {
        const string Text = "endobj 1 0 obj <</Type/Metadata/Type/Font/ABCDEF+X>> stream endstream trailer startxref 0 %%EOF ) \\ (";
        var full = SampleRecord.Full;
        var record = full with
        {
            Header = full.Header with { Id = Text, Site = Text },
            Findings = [.. full.Findings.Select((finding, i) => i == 3 ? finding with { Title = Text } : finding)],
            Figures = [.. full.Figures.Select(figure => figure with { AltText = Text, Title = Text })],
        };
        var first = SamplePdf.Render(record);
        Assert.Equal(first.Bytes, SamplePdf.Render(record).Bytes);
        using var pdf = SamplePdf.Open(first);
        Assert.Equal("Commissioning record " + Text, pdf.Information.Title);
        Assert.Contains(Text, SamplePdf.Text(pdf.GetPage(1)), StringComparison.Ordinal);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Contains(bookmarks.GetNodes(), node => node.Title.Contains(Text, StringComparison.Ordinal));
    }

    private static void Check(string text)
    {
        var full = SampleRecord.Full;
        var record = full with
        {
            Header = full.Header with { Id = text, Site = text, System = text, Notes = text },
            Reasons = [text],
            Cautions = [new Caution(text, text)],
            Conditions = [new PunchItem(text, 1, text)],
            Findings = [.. full.Findings.Select((finding, i) => i % 7 != 0 ? finding : finding with { Title = text, Statement = text, Subject = text, Readings = [new ReadingUse(text, text, SampleRecord.At(3), text)] })],
            Program = "Commission 0.0.0-test",
        };
        using var pdf = SamplePdf.Open(SamplePdf.Render(record));
        foreach (var page in pdf.GetPages())
        {
            Margins.Check(page);
            Assert.Empty(Overlaps.In(page));
        }
    }
}
