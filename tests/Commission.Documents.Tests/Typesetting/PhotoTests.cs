using System.Globalization;
using System.Text;
using Commission.Documents.Media;
using Commission.Documents.Plots;
using Commission.Documents.Templates;
using Commission.Messages;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Commission.Source;
using UglyToad.PdfPig;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

/// <summary>Photos on pages: where they lie, how they are turned, and that their bytes go in as they are.</summary>
public sealed class PhotoTests
{
    // A JPEG of 16 × 8 pixels, made once from drawn noise with a general-purpose program.
    private static readonly byte[] Jpeg = Convert.FromBase64String(Small);

    private const string Small =
        "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAAYEBQYFBAYGBQYHBwYIChAKCgkJChQODwwQFxQYGBcUFhYaHSUfGhsjHBYWICwgIyYnKSopGR8tMC0oMCUoKSj/2wBDAQcHBwoIChMKChMoGhYaKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCj/wAARCAAIABADASIAAhEBAxEB/8QAFgABAQEAAAAAAAAAAAAAAAAAAAEH/8QAHxAAAgICAQUAAAAAAAAAAAAAAQIDEQAxBAUSE3Hh/8QAFQEBAQAAAAAAAAAAAAAAAAAAAQf/xAAfEQABAwMFAAAAAAAAAAAAAAABAAMFAgQRBiEiQXH/2gAMAwEAAhEDEQA/AMdm6srnvkU2FC3evVa+ZE5sip5RIFiVqsG9HdYxlic0tHbAUYHqHJ69yOfa/9k=";

    [Fact]
    public void The_bytes_of_a_photo_go_into_the_file_as_they_are()
    {
        var pdf = Pdf(1);
        Assert.Contains(Encoding.Latin1.GetString(Jpeg), Encoding.Latin1.GetString(pdf), StringComparison.Ordinal);
        Assert.Contains("/Filter/DCTDecode", Encoding.Latin1.GetString(pdf), StringComparison.Ordinal);
        Assert.Equal(pdf, Pdf(1));
    }

    // EXIF 2.32, tag 274 (from memory): where the first row and the first column of the stored picture lie when it is seen upright.
    [Theory]
    [InlineData(1, "top", "left")]
    [InlineData(2, "top", "right")]
    [InlineData(3, "bottom", "right")]
    [InlineData(4, "bottom", "left")]
    [InlineData(5, "left", "top")]
    [InlineData(6, "right", "top")]
    [InlineData(7, "right", "bottom")]
    [InlineData(8, "left", "bottom")]
    public void It_is_turned_upright(int orientation, string firstRow, string firstColumn)
    {
        using var document = PdfDocument.Open(Pdf(orientation));
        var image = Assert.Single(document.GetPage(1).GetImages());
        var box = image.BoundingBox;

        // PDF maps the unit square: its upper edge (0,1)–(1,1) is the first row, its left edge (0,0)–(0,1) the first column.
        Assert.Equal(firstRow, Side(box.TopLeft.X, box.TopLeft.Y, box.TopRight.X, box.TopRight.Y, box));
        Assert.Equal(firstColumn, Side(box.TopLeft.X, box.TopLeft.Y, box.BottomLeft.X, box.BottomLeft.Y, box));
        var (width, height) = (Math.Abs(box.TopRight.X - box.BottomLeft.X), Math.Abs(box.TopRight.Y - box.BottomLeft.Y));
        Assert.Equal(orientation >= 5 ? 0.5 : 2, width / height, 1e-3);
    }

    [Fact]
    public void A_photo_that_is_not_there_is_a_fault_of_the_template()
    {
        var problems = new ProblemList();
        Assert.Null(Markup("<photo file=\"other.jpg\" alt=\"x\"/>", Shelf(1), problems));
        Assert.Contains("There is no photo \"other.jpg\"", Assert.Single(problems.Sorted()).Text(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_pictures_are_not_at_hand_the_words_stand_alone()
    {
        var problems = new ProblemList();
        var media = new PageMedia(new FigureShelf(SampleRecord.Full), PhotoShelf.Empty);
        var markup = DocumentRenderer.ToMarkup(RecordJson.Write(SampleRecord.Full), media, TemplateSet.BuiltIn, problems);
        using var document = PdfDocument.Open(DocumentRenderer.ToPdf(SampleRecord.Full, markup!, media, []).Bytes);
        Assert.Empty(document.GetPages().SelectMany(page => page.GetImages()));
        Assert.Contains(document.GetPages(), page => SamplePdf.Text(page).Contains("gauge at isolation", StringComparison.Ordinal));
        Assert.DoesNotContain("<img", DocumentRenderer.ToHtml(SampleRecord.Full, markup!, media), StringComparison.Ordinal);
    }

    [Fact]
    public void A_screen_gets_the_photo_that_turns_itself()
    {
        var problems = new ProblemList();
        var media = new PageMedia(new FigureShelf(SampleRecord.Full), Shelf(6));
        var page = DocumentRenderer.ToHtml(SampleRecord.Full, Markup("<photo file=\"a.jpg\" alt=\"A &lt;gauge&gt;\"/>", Shelf(6), problems)!, media);
        Assert.Contains("<img class=\"photo\" width=\"8\" height=\"16\" alt=\"A &lt;gauge&gt;\" src=\"data:image/jpeg;base64," + Convert.ToBase64String(Turned), page, StringComparison.Ordinal);
    }

    private static readonly byte[] Turned = [1, 2, 3];

    private static string Side(double x1, double y1, double x2, double y2, UglyToad.PdfPig.Core.PdfRectangle box)
    {
        var left = Math.Min(box.TopLeft.X, box.BottomRight.X);
        var bottom = Math.Min(box.TopLeft.Y, box.BottomRight.Y);
        return Math.Abs(y1 - y2) < 0.01 ? Math.Abs(y1 - bottom) < 0.01 ? "bottom" : "top"
            : Math.Abs(x1 - x2) < 0.01 ? Math.Abs(x1 - left) < 0.01 ? "left" : "right"
            : string.Create(CultureInfo.InvariantCulture, $"{x1} {y1} {x2} {y2}");
    }

    private static PhotoShelf Shelf(int orientation) => new(["a.jpg"], _ => new EmbeddedPhoto(Jpeg, 16, 8, orientation, Turned));

    private static System.Xml.Linq.XDocument? Markup(string body, PhotoShelf photos, ProblemList problems)
    {
        var templates = TemplateSet.With(new Dictionary<string, string>(StringComparer.Ordinal) { [TemplateSet.Main] = $"<body lang=\"en\" title=\"Test\">{body}</body>" });
        return DocumentRenderer.ToMarkup(RecordJson.Write(SampleRecord.Full), new PageMedia(new FigureShelf(SampleRecord.Full), photos), templates, problems);
    }

    private static byte[] Pdf(int orientation)
    {
        var problems = new ProblemList();
        var photos = Shelf(orientation);
        var markup = Markup("<photo file=\"a.jpg\" alt=\"A gauge\"/>", photos, problems);
        Assert.Empty(problems.Sorted());
        return DocumentRenderer.ToPdf(SampleRecord.Full, markup!, new PageMedia(new FigureShelf(SampleRecord.Full), photos), []).Bytes;
    }
}
