using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using Commission.Documents.Typesetting;
using CsCheck;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

public sealed class TextBlockTests
{
    private static readonly TextStyle Style = new(FontFace.Regular, 10, Palette.Ink);

    // PDFsharp measures with its own reading of the font's tables.
    [Theory]
    [InlineData("SourceSans3-Regular", XFontStyleEx.Regular)]
    [InlineData("SourceSans3-SemiBold", XFontStyleEx.Bold)]
    [InlineData("SourceSans3-Italic", XFontStyleEx.Italic)]
    public void Widths_agree_with_another_reader_of_the_font(string name, XFontStyleEx style)
    {
        EmbeddedFonts.Register();
        var face = name.EndsWith("Bold", StringComparison.Ordinal) ? FontFace.SemiBold : name.EndsWith("Italic", StringComparison.Ordinal) ? FontFace.Italic : FontFace.Regular;
        Assert.Equal(name, face.Name);
        using var document = new PdfDocument();
        using var graphics = XGraphics.FromPdfPage(document.AddPage());
        var font = new XFont(EmbeddedFonts.Family, 100, style, new XPdfFontOptions(PdfFontEncoding.Unicode));
        foreach (var text in new[] { "Superheat 12.9 ± 1.5 °F", "µ Ω Δ √ ≤ ≥ ✓ ✗ ■ ▲ △ □", "CO₂ m³/s ft²", "ÄÖÜ éèñ čšž Ελ Жд" })
            Assert.Equal(graphics.MeasureString(text, font).Width, face.Width(text, 100), 0.2);
    }

    // All digits of the typeface have one width: columns of numbers stand under each other.
    [Fact]
    public void Digits_are_equally_wide()
    {
        foreach (var face in new[] { FontFace.Regular, FontFace.SemiBold })
            Assert.Single("0123456789".Select(face.Advance).Distinct());
    }

    [Theory]
    [InlineData("12.9 ± 1.5 °F", "12.9 ± 1.5 °F")]
    [InlineData("held for 10 min at 5 psig", "held|for|10 min|at|5 psig")]
    [InlineData("7 lb 9.92 oz in all", "7 lb 9.92 oz|in|all")]
    [InlineData("one two", "one|two")]
    [InlineData("see finding\u00a012", "see|finding 12")]
    [InlineData("2026-06-18 was dry", "2026-06-18|was|dry")]
    [InlineData("non-condensable", "non-|condensable")]
    [InlineData("first\nsecond", "first|second")]
    public void A_line_breaks_between_words_and_not_between_number_and_unit(string text, string expected)
    {
        var narrow = Block(text).LeastWidth() + 0.01;
        var block = Block(text);
        Assert.Equal(expected.Split('|').Max(part => Style.Face.Width(part, 10)), block.LeastWidth(), 0.001);
        Assert.Equal(string.Concat(expected.Where(c => c is not ('|' or ' '))), string.Concat(block.Lines(narrow).SelectMany(Text).Where(c => c != ' ')));
        Assert.All(expected.Split('|'), part => Assert.Contains(block.Lines(narrow), line => string.Concat(Text(line)).Contains(part, StringComparison.Ordinal)));
    }

    [Fact]
    public void Lines_hold_all_the_text_and_stay_within_the_width()
    {
        var letters = Gen.Char["abcdefgh ijk- lm/± °F 0123456789.,"].Array[0, 200].Select(chars => new string(chars));
        Gen.Select(letters, Gen.Double[12, 300]).Sample((text, width) =>
        {
            var block = Block(text);
            var lines = block.Lines(width);
            Assert.All(lines, line => Assert.True(line.Width <= width + 0.01 || line.Pieces.Sum(piece => piece.Text.Length) == 1));
            Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines.SelectMany(Text).Where(c => c != ' ')));
        });
    }

    // Where the whole does not fit, a number leaves its unit before either is cut in its middle.
    [Fact]
    public void A_blank_that_holds_together_breaks_before_a_word_does()
    {
        var lines = Block("1234.5 ± 123.4 micron").Lines(40).ConvertAll(line => string.Concat(Text(line)));
        Assert.Equal("1234.5 ± 123.4 micron".Split(' '), lines.SelectMany(line => line.Split(' ')));
        Assert.True(lines.Count > 1);
    }

    [Fact]
    public void A_word_wider_than_the_line_breaks_where_it_must()
    {
        var lines = Block(new string('a', 64)).Lines(50);
        Assert.True(lines.Count > 5);
        Assert.Equal(64, lines.Sum(line => line.Pieces.Sum(piece => piece.Text.Length)));
    }

    private static TextBlock Block(string text) => new([new TextRun(text, Style, null)]);

    private static string Text(TextLine line) => string.Concat(line.Pieces.Select(piece => piece.Text));
}
