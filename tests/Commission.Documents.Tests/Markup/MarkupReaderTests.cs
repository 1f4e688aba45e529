using Commission.Documents.Markup;
using Commission.Messages;
using Commission.Source;
using Xunit;

namespace Commission.Documents.Tests.Markup;

public sealed class MarkupReaderTests
{
    [Fact]
    public void Good_markup_comes_back_without_the_line_marks()
    {
        var problems = new ProblemList();
        var document = MarkupReader.Read("<body lang=\"en\"><?at a.liquid:2?><h1 id=\"top\">A &amp; B</h1><?at a.liquid:3?><p>See <a href=\"#top\">above</a>.</p></body>", Figures, Photos, problems);
        Assert.Empty(problems.Sorted());
        Assert.Equal("<body lang=\"en\"><h1 id=\"top\">A &amp; B</h1><p>See <a href=\"#top\">above</a>.</p></body>", document!.ToString(System.Xml.Linq.SaveOptions.DisableFormatting));
    }

    // Each row: what a template wrote, and the whole complaint. The mark says line 7 of part.liquid.
    [Theory]
    [InlineData("<sektion/>", "part.liquid:7: <sektion> is not an element of the markup. Did you mean <section>? templates/README.md lists the elements.")]
    [InlineData("<script>x</script>", "part.liquid:7: <script> is not an element of the markup. templates/README.md lists the elements.")]
    [InlineData("<p onclick=\"x\">x</p>", "part.liquid:7: <p> has no attribute \"onclick\".")]
    [InlineData("<p clas=\"note\">x</p>", "part.liquid:7: <p> has no attribute \"clas\". Did you mean \"class\"?")]
    [InlineData("<ul>loose</ul>", "part.liquid:7: Text stands directly in <ul>: \"loose\". Put it into a <p> or another element that <ul> may hold.")]
    [InlineData("<ul><p>x</p></ul>", "part.liquid:7: <p> stands directly in <ul>. <ul> may hold <li>.")]
    [InlineData("<p><hr/></p>", "part.liquid:7: <hr> stands directly in <p>. <p> may hold <a>, <br>, <code>, <em>, <pageref>, <small>, <span>, <strong>.")]
    [InlineData("<p id=\"a\">x</p><p id=\"a\">y</p>", "part.liquid:7: The id \"a\" is used twice. Give every element its own id.")]
    [InlineData("<p><a href=\"#b\">x</a></p>", "part.liquid:7: A link goes to \"#b\", which is nowhere. A link goes to # and the id of an element of the document. Correct the href or give the element that id.")]
    [InlineData("<p><a href=\"https://example.org\">x</a></p>", "part.liquid:7: A link goes to \"https://example.org\", which is nowhere. A link goes to # and the id of an element of the document. Correct the href or give the element that id.")]
    [InlineData("<figure data-plot=\"holde\"/>", "part.liquid:7: The record has no figure \"holde\". Draw figures in a loop over the record's figures, or test whether there is one.")]
    [InlineData("<qr data=\"x\"/>", "part.liquid:7: <qr> lacks data or alt. It needs the text to encode and the text for people who do not see it.")]
    [InlineData("<photo alt=\"x\"/>", "part.liquid:7: There is no photo \"\". Show photos in a loop over the record's photos that are shown.")]
    [InlineData("<photo file=\"gauge.jpg\"/>", "part.liquid:7: <photo> lacks alt. It needs the words for people who do not see it.")]
    [InlineData("<photo file=\"gauge.jpg\" alt=\"x\" height=\"10\"/>", "part.liquid:7: height is \"10\". It must be points from 20 to 400.")]
    [InlineData("<figure data-plot=\"hold\" height=\"79\"/>", "part.liquid:7: height is \"79\". It must be points from 80 to 400.")]
    [InlineData("<sign alt=\"x\"/>", "part.liquid:7: <sign> lacks field or alt. It needs the name of its signature field and the words for people who do not see the line.")]
    [InlineData("<sign field=\"a\" alt=\"x\"/><sign field=\"a\" alt=\"y\"/>", "part.liquid:7: The signature field \"a\" stands twice. Give every <sign> its own field.")]
    [InlineData("<qr data=\"12345\" alt=\"x\" width=\"9999\"/>", "part.liquid:7: width is \"9999\". It must be per cent such as 12% or points such as 60.")]
    [InlineData("<table><tr><td colspan=\"0\">x</td></tr></table>", "part.liquid:7: colspan is \"0\". It must be a whole number from 1 to 99.")]
    [InlineData("<table><tr><td width=\"wide\">x</td></tr></table>", "part.liquid:7: width is \"wide\". It must be per cent such as 12% or points such as 60.")]
    [InlineData("<p xmlns=\"urn:x\" other=\"1\">x</p>", "part.liquid:7: <p> has no attribute \"xmlns\".|part.liquid:7: <p> has no attribute \"other\".")]
    public void A_fault_names_the_template_line(string markup, string expected)
    {
        var problems = new ProblemList();
        Assert.Null(MarkupReader.Read($"<body><?at part.liquid:7?>{markup}</body>", Figures, Photos, problems));
        Assert.Equal(expected.Split('|'), problems.Sorted().Select(problem => problem.ToString()));
    }

    [Fact]
    public void Every_fault_is_reported_at_once()
    {
        var problems = new ProblemList();
        MarkupReader.Read("<body><?at a.liquid:3?><b>x</b><?at a.liquid:1?><i>x</i></body>", Figures, Photos, problems);
        Assert.Equal(["a.liquid:1", "a.liquid:3"], problems.Sorted().Select(problem => problem.Location.ToString()));
    }

    [Theory]
    [InlineData("<body><?at a.liquid:9?><p>one</body>")]
    [InlineData("<body><?at a.liquid:9?><p>a & b</p></body>")]
    [InlineData("<body><?at a.liquid:9?><p>&nbsp;</p></body>")]
    [InlineData("<body><?at a.liquid:9?><p>\u001b</p></body>")]
    public void Broken_xml_names_the_last_line_before_the_fault(string xml)
    {
        var problems = new ProblemList();
        Assert.Null(MarkupReader.Read(xml, Figures, Photos, problems));
        var problem = Assert.Single(problems.Sorted());
        Assert.Equal("a.liquid:9", problem.Location.ToString());
        Assert.StartsWith("What the template wrote is not well-formed XML", problem.Text(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void A_document_type_is_refused()
    {
        var problems = new ProblemList();
        Assert.Null(MarkupReader.Read("<!DOCTYPE body [<!ENTITY a \"b\">]><body><p>&a;</p></body>", Figures, Photos, problems));
        Assert.Equal(1, problems.Count);
    }

    [Fact]
    public void Nesting_stops_at_a_depth()
    {
        var problems = new ProblemList();
        Assert.Null(MarkupReader.Read("<body>" + string.Concat(Enumerable.Repeat("<div>", 100_000)), Figures, Photos, problems));
        Assert.Equal("nesting", Assert.Single(problems.Sorted()).Code);
    }

    [Fact]
    public void A_code_too_long_to_read_is_refused()
    {
        var problems = new ProblemList();
        Assert.Null(MarkupReader.Read($"<body><?at a.liquid:4?><qr alt=\"x\" data=\"{new string('€', 400)}\"/></body>", Figures, Photos, problems));
        Assert.Equal(
            "a.liquid:4: The text of a <qr> is 1200 bytes long. At most 1000 bytes can still be read from paper. Shorten it, for example with the filter truncate.",
            Assert.Single(problems.Sorted()).ToString());
    }

    private static bool Figures(string id) => id == "hold";

    private static bool Photos(string file) => file == "gauge.jpg";
}
