using Commission.Documents.Plots;
using Commission.Documents.Typesetting;
using PdfSharp.Drawing;
using UglyToad.PdfPig;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

public sealed class SvgPainterTests
{
    [Fact]
    public void Shapes_land_where_the_figure_puts_them()
    {
        using var pdf = Draw("<rect x=\"10\" y=\"20\" width=\"30\" height=\"5\" fill=\"#0072b2\"/>");
        var path = Assert.Single(pdf.GetPage(1).Paths);
        var box = path.GetBoundingRectangle()!.Value;

        // The figure stands at (100, 50) of a page 800 points high; PDF counts from below.
        Assert.Equal(110, box.Left, 0.01);
        Assert.Equal(140, box.Right, 0.01);
        Assert.Equal(800 - 70, box.Top, 0.01);
        Assert.Equal(800 - 75, box.Bottom, 0.01);
        Assert.True(path.IsFilled);
        Assert.False(path.IsStroked);
    }

    [Fact]
    public void A_figure_is_scaled_to_its_place()
    {
        using var pdf = Draw("<rect x=\"10\" y=\"20\" width=\"30\" height=\"5\" fill=\"#000000\"/>", width: 400);
        Assert.Equal(60, pdf.GetPage(1).Paths[0].GetBoundingRectangle()!.Value.Width, 0.01);
    }

    // Two open sub-paths in one path element: no line may join them.
    [Fact]
    public void Open_sub_paths_stay_apart()
    {
        using var pdf = Draw("<path d=\"M0 0L10 0M50 50L60 50\" fill=\"none\" stroke=\"#000000\"/>");
        Assert.Equal(2, pdf.GetPage(1).Paths.Count);
        Assert.All(pdf.GetPage(1).Paths, path => Assert.Equal(10, path.GetBoundingRectangle()!.Value.Width, 0.01));
    }

    [Fact]
    public void Curves_end_where_they_should()
    {
        using var pdf = Draw("<path d=\"M0 0C0 10 20 10 20 0Q30 -10 40 0Z\" fill=\"#d55e00\"/><ellipse cx=\"50\" cy=\"50\" rx=\"4\" ry=\"2\" fill=\"#009e73\"/>");
        var boxes = pdf.GetPage(1).Paths.Select(path => path.GetBoundingRectangle()!.Value).ToList();
        Assert.Equal(40, boxes[0].Width, 0.5);
        Assert.Equal(8, boxes[1].Width, 0.5);
        Assert.Equal(4, boxes[1].Height, 0.5);
    }

    [Theory]
    [InlineData("", 150)]
    [InlineData(" text-anchor=\"end\"", 120)]
    [InlineData(" text-anchor=\"middle\"", 135)]
    public void Text_stands_at_its_anchor(string anchor, double left)
    {
        using var pdf = Draw($"<text x=\"50\" y=\"30\" font-size=\"10\" fill=\"#1a1a1a\"{anchor}>0123456789</text>");
        var letters = pdf.GetPage(1).Letters;
        Assert.Equal("0123456789", string.Concat(letters.Select(letter => letter.Value)));
        var width = letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X;
        Assert.Equal(150 - ((150 - left) / 30 * width), letters[0].StartBaseLine.X, 0.05);
        Assert.Equal(800 - 80, letters[0].StartBaseLine.Y, 0.05);
    }

    [Fact]
    public void Text_turns()
    {
        using var pdf = Draw("<text x=\"50\" y=\"30\" font-size=\"10\" transform=\"rotate(-90 50 30)\">up</text><text x=\"0\" y=\"9\">next</text>");
        var letters = pdf.GetPage(1).Letters;
        Assert.Equal("upnext", string.Concat(letters.Select(letter => letter.Value)));
        Assert.Equal(letters[0].StartBaseLine.X, letters[1].StartBaseLine.X, 0.05);
        Assert.True(letters[1].StartBaseLine.Y > letters[0].StartBaseLine.Y);
    }

    [Fact]
    public void A_clip_ends_with_its_group()
    {
        using var pdf = Draw("<clipPath id=\"clip-1\"><rect x=\"0\" y=\"0\" width=\"5\" height=\"5\"/></clipPath><g clip-path=\"url(#clip-1)\"><rect x=\"0\" y=\"0\" width=\"50\" height=\"50\" fill=\"#000000\"/></g><rect x=\"60\" y=\"60\" width=\"9\" height=\"9\" fill=\"#000000\"/>");
        var filled = pdf.GetPage(1).Paths.Where(path => path.IsFilled).ToList();
        Assert.Equal(2, filled.Count);
        Assert.Equal(9, filled[1].GetBoundingRectangle()!.Value.Width, 0.01);
    }

    [Theory]
    [InlineData("<image/>", "<image>")]
    [InlineData("<path d=\"M0 0A1 1 0 0 0 1 1\" fill=\"#000000\"/>", "command A")]
    public void What_it_does_not_know_is_said(string svg, string expected) =>
        Assert.Contains(expected, Assert.Throws<InvalidOperationException>(() => Draw(svg)).Message, StringComparison.Ordinal);

    private static PdfDocument Draw(string content, double width = 200)
    {
        using var document = new PdfSharp.Pdf.PdfDocument();
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(600);
        page.Height = XUnit.FromPoint(800);
        using (var graphics = XGraphics.FromPdfPage(page))
        {
            var figure = new SvgFigure($"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200\" height=\"100\" viewBox=\"0 0 200 100\">{content}</svg>", 200, 100);
            SvgPainter.Draw(graphics, figure, new XRect(100, 50, width, width / 2));
        }

        using var saved = new MemoryStream();
        document.Save(saved, closeStream: false);
        return PdfDocument.Open(saved.ToArray());
    }
}
