using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.TrueType;
using UglyToad.PdfPig.Fonts.TrueType.Parser;
using Xunit;

namespace Commission.Documents.Tests.Pictures;

/// <summary>Widths of labels against PdfPig's, which reads the same file with its own code.</summary>
public class TextStyleTests
{
    [Theory]
    [InlineData("Fonts/SourceSans3-Regular.ttf", false)]
    [InlineData("Fonts/SourceSans3-SemiBold.ttf", true)]
    public void Every_character_of_a_record_is_as_wide_as_another_reader_says(string resource, bool bold)
    {
        using var stream = typeof(TextStyle).Assembly.GetManifestResourceStream(resource)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        var other = TrueTypeFontParser.Parse(new TrueTypeDataBytes(new MemoryInputBytes(bytes)));
        var style = new TextStyle(bold ? FontFace.SemiBold : FontFace.Regular, other.GetUnitsPerEm(), Palette.Ink);
        foreach (var character in "The quick brown fox jumps over 13 lazy dogs: 0123456789,.±°µΔ≤≥−–…’“”₂²³·×✓✗▲□%/()")
        {
            Assert.True(other.TryGetAdvanceWidth(character, out var width), $"U+{(int)character:X4}");
            Assert.Equal(width, style.Width(character.ToString()), 3);
        }
    }

    [Fact]
    public void All_digits_are_equally_wide() // a property of the face that tables rely on
        => Assert.Single("0123456789".Select(digit => new TextStyle(FontFace.Regular, 10, Palette.Ink).Width(digit.ToString())).Distinct());

    [Fact]
    public void Characters_that_the_face_lacks_still_take_room()
        => Assert.Equal(30, new TextStyle(FontFace.Regular, 10, Palette.Ink).Width("配管😀"), 6);

    [Fact]
    public void A_text_that_does_not_fit_is_cut_with_an_ellipsis()
    {
        var style = new TextStyle(FontFace.Regular, 8, Palette.Ink);
        Assert.Equal("short", style.Fit("short", 100));
        var cut = style.Fit("a very long label indeed", 50);
        Assert.EndsWith("…", cut, StringComparison.Ordinal);
        Assert.InRange(style.Width(cut), 30, 50);
        Assert.Equal("…", style.Fit("W", 1));
    }
}
