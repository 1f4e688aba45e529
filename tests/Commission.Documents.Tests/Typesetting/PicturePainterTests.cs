using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using Commission.Documents.Typesetting;
using PdfSharp.Drawing;
using UglyToad.PdfPig;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

/// <summary>Where shapes land on a page, read back with PdfPig.</summary>
public sealed class PicturePainterTests
{
    private static readonly Stroke Line = new(Palette.Ink, 1);

    [Fact]
    public void Shapes_land_where_the_figure_puts_them()
    {
        using var pdf = Draw(canvas => canvas.Rectangle(new Box(10, 20, 40, 25), Palette.Blue));
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
    public void Every_shape_is_drawn_with_its_size_fill_and_outline()
    {
        using var pdf = Draw(canvas =>
        {
            canvas.Line(0, 0, 30, 0, Line);
            canvas.Polyline([new(0, 0), new(10, 5), new(40, 0)], Line);
            canvas.Polygon([new(0, 0), new(20, 0), new(10, 10)], Palette.Green, Line);
            canvas.Circle(50, 50, 4, Palette.Green);
        });
        var paths = pdf.GetPage(1).Paths.ToList();
        Assert.Equal([30.0, 40, 20, 8], paths.Select(path => Math.Round(path.GetBoundingRectangle()!.Value.Width, 1)));
        Assert.Equal([(true, false), (true, false), (true, true), (false, true)], paths.Select(path => (path.IsStroked, path.IsFilled)));
        Assert.Equal(8, paths[3].GetBoundingRectangle()!.Value.Height, 0.05);
    }

    // ISO 32000-1, 8.4.3.6: dashes are lengths on the page, whatever the width of the line.
    [Fact]
    public void Dashes_are_as_long_as_they_were_asked_for()
    {
        using var pdf = Draw(canvas => canvas.Line(0, 0, 30, 0, new Stroke(Palette.Ink, 0.5, new Dash(5, 2))));
        Assert.Equal([5m, 2], Assert.Single(pdf.GetPage(1).Paths).LineDashPattern!.Value.Array.Select(length => Math.Round((decimal)length, 3)));
    }

    [Theory]
    [InlineData(nameof(TextAnchor.Start), 150)]
    [InlineData(nameof(TextAnchor.End), 120)]
    [InlineData(nameof(TextAnchor.Middle), 135)]
    public void Text_stands_at_its_anchor(string anchor, double left)
    {
        using var pdf = Draw(canvas => canvas.Text(50, 30, "0123456789", new TextStyle(FontFace.Regular, 10, Palette.Ink), Enum.Parse<TextAnchor>(anchor)));
        var letters = pdf.GetPage(1).Letters;
        Assert.Equal("0123456789", string.Concat(letters.Select(letter => letter.Value)));
        var width = letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X;
        Assert.Equal(150 - ((150 - left) / 30 * width), letters[0].StartBaseLine.X, 0.05);
        Assert.Equal(800 - 80, letters[0].StartBaseLine.Y, 0.05);
    }

    // Micro sign and Greek mu share a glyph, and a PDF maps a glyph back to one character: what is copied is always the micro sign.
    [Fact]
    public void Characters_that_share_a_glyph_are_copied_as_one()
    {
        using var pdf = Draw(canvas => canvas.Text(10, 30, "5 \u03BCm", new TextStyle(FontFace.Regular, 10, Palette.Ink)));
        Assert.Equal("5 \u00B5m", string.Concat(pdf.GetPage(1).Letters.Select(letter => letter.Value)));
    }

    [Fact]
    public void A_clip_ends_with_its_group()
    {
        using var pdf = Draw(canvas =>
        {
            canvas.BeginClip(new Box(0, 0, 5, 5));
            canvas.Rectangle(new Box(0, 0, 50, 50), Palette.Ink);
            canvas.EndClip();
            canvas.Rectangle(new Box(60, 60, 69, 69), Palette.Ink);
        });
        var filled = pdf.GetPage(1).Paths.Where(path => path.IsFilled).ToList();
        Assert.Equal(2, filled.Count);
        Assert.Equal(5, filled[0].GetBoundingRectangle()!.Value.Width, 0.01);
        Assert.Equal(9, filled[1].GetBoundingRectangle()!.Value.Width, 0.01);
    }

    [Fact]
    public void A_shape_that_no_page_knows_is_named()
    {
        var unknown = new Picture(new PictureSize(10, 10), [new Star()], []);
        Assert.Contains("Star", Assert.Throws<InvalidOperationException>(() => Draw(unknown)).Message, StringComparison.Ordinal);
        Assert.Contains("Star", Assert.Throws<InvalidOperationException>(() => SvgWriter.Inside(unknown, "clip-")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clip_left_open_is_a_mistake()
    {
        var canvas = new Canvas(new PictureSize(10, 10));
        canvas.BeginClip(new Box(0, 0, 5, 5));
        Assert.Throws<InvalidOperationException>(() => canvas.Finish([]));
    }

    private static PdfDocument Draw(Action<Canvas> draw)
    {
        var canvas = new Canvas(new PictureSize(200, 100));
        draw(canvas);
        return Draw(canvas.Finish([]));
    }

    private static PdfDocument Draw(Picture picture)
    {
        EmbeddedFonts.Register();
        using var document = new PdfSharp.Pdf.PdfDocument();
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(600);
        page.Height = XUnit.FromPoint(800);
        using (var graphics = XGraphics.FromPdfPage(page))
        {
            graphics.TranslateTransform(100, 50);
            new PicturePainter(graphics, new PenCase()).Draw(picture.Shapes);
        }

        using var saved = new MemoryStream();
        document.Save(saved, closeStream: false);
        return PdfDocument.Open(saved.ToArray(), new ParsingOptions { ClipPaths = true });
    }

    private sealed record Star : Shape;
}
