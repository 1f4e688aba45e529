using System.Globalization;
using System.Text;
using System.Xml.Linq;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Graphics.Operations.SpecialGraphicsState;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>
/// The clauses of ISO 19005-3 (PDF/A-3a) and ISO 14289-1 (PDF/UA-1) that a program can hold a file against (from memory), on the record of every example.
/// DEVELOPERS.md lists them, with those that only a reader can judge.
/// </summary>
public sealed class PdfClausesTests
{
    private static readonly Dictionary<string, byte[]> Rendered = new(StringComparer.Ordinal);

    public static TheoryData<string> Examples() => new(Repository.Examples);

    // 19005-3, 6.1.2 to 6.1.8: header with a binary line, an identifier, nothing encrypted, no stream in another file and none that LZW packs.
    [Theory]
    [MemberData(nameof(Examples))]
    public void The_file_stands_alone(string example)
    {
        var text = Encoding.Latin1.GetString(Of(example));
        Assert.StartsWith("%PDF-1.7\n%", text, StringComparison.Ordinal);
        Assert.True(text[10..14].All(c => c > 127));
        Assert.Contains("/ID[<", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/Encrypt", text, StringComparison.Ordinal);
        Assert.DoesNotContain("LZWDecode", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/FFilter", text, StringComparison.Ordinal);
    }

    // 19005-3, 6.2.3 and 6.2.4.3: one output intent with a profile of three colors, and nothing but grey and RGB on the pages.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Colors_are_those_of_the_output_intent(string example) => With(example, document =>
    {
        var intent = (DictionaryToken)Resolve(document, Assert.Single(((ArrayToken)Resolve(document, Catalog(document)["OutputIntents"])).Data));
        Assert.Equal("GTS_PDFA1", ((NameToken)intent.Data["S"]).Data);
        var profile = (StreamToken)Resolve(document, intent.Data["DestOutputProfile"]);
        Assert.Equal(3, ((NumericToken)profile.StreamDictionary.Data["N"]).Int);
        Assert.All(document.GetPages().SelectMany(page => page.Operations), operation => Assert.False(operation.Operator is "k" or "K" or "cs" or "CS" or "sh", operation.Operator));
    });

    // 19005-3, 6.2.8.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Pictures_are_plain(string example) => With(example, document => Assert.All(
        document.GetPages().SelectMany(page => page.GetImages()),
        image =>
        {
            Assert.False(image.Interpolate);
            Assert.All(new[] { "Alternates", "OPI", "SMask" }, key => Assert.False(image.ImageDictionary.ContainsKey(NameToken.Create(key))));
        }));

    // 19005-3, 6.3 and 6.4; 14289-1, 7.18: annotations print, have words and, but for links, a look; they belong to the structure; pages go by it. Nothing acts by itself.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Annotations_print_have_words_and_belong_to_the_structure(string example) => With(example, document =>
    {
        Assert.All(document.GetPages(), page =>
        {
            if (!page.Dictionary.Data.TryGetValue("Annots", out var token))
                return;
            Assert.Equal("S", ((NameToken)page.Dictionary.Data["Tabs"]).Data);
            foreach (var annotation in ((ArrayToken)Resolve(document, token)).Data.Select(a => ((DictionaryToken)Resolve(document, a)).Data))
            {
                Assert.Equal(4, ((NumericToken)annotation["F"]).Int);
                Assert.True(annotation.ContainsKey("StructParent"));
                Assert.True(annotation.ContainsKey("Contents") || annotation.ContainsKey("TU"));
                Assert.True(((NameToken)annotation["Subtype"]).Data == "Link" || annotation.ContainsKey("AP"));
                Assert.False(annotation.ContainsKey("AA"));
            }
        });
        var catalog = Catalog(document);
        Assert.DoesNotContain("OpenAction", catalog.Keys);
        Assert.DoesNotContain("AA", catalog.Keys);
        Assert.DoesNotContain("OCProperties", catalog.Keys);
        Assert.DoesNotContain("XFA", ((DictionaryToken)Resolve(document, catalog["AcroForm"])).Data.Keys);
        Assert.DoesNotContain("NeedAppearances", ((DictionaryToken)Resolve(document, catalog["AcroForm"])).Data.Keys);
    });

    // 19005-3, 6.6: the metadata say what the information dictionary says.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Metadata_repeat_the_information(string example) => With(example, document =>
    {
        Assert.True(document.TryGetXmpMetadata(out var metadata));
        var xmp = XDocument.Parse(Encoding.UTF8.GetString(metadata!.GetXmlBytes().ToArray()).TrimStart('\uFEFF'));
        XNamespace dc = "http://purl.org/dc/elements/1.1/";
        Assert.Equal(document.Information.Title, xmp.Descendants(dc + "title").Single().Value);
        Assert.Equal(document.Information.Subject, xmp.Descendants(dc + "description").Single().Value);
        Assert.Equal(document.Information.Author, xmp.Descendants(dc + "creator").SingleOrDefault()?.Value);
        Assert.Equal(document.Information.Producer, xmp.Descendants(XNamespace.Get("http://ns.adobe.com/pdf/1.3/") + "Producer").Single().Value);
        Assert.Equal("A", xmp.Descendants(XNamespace.Get("http://www.aiim.org/pdfa/ns/id/") + "conformance").Single().Value);
        Assert.Equal("1", xmp.Descendants(XNamespace.Get("http://www.aiim.org/pdfua/ns/id/") + "part").Single().Value);
    });

    // 19005-3, 6.8: every file inside has both names, a media type and its relation, and belongs to the document.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Files_inside_say_what_they_are(string example) => With(example, document =>
    {
        var files = ((ArrayToken)Resolve(document, Catalog(document)["AF"])).Data.Select(f => ((DictionaryToken)Resolve(document, f)).Data).ToList();
        Assert.NotEmpty(files);
        Assert.All(files, file =>
        {
            Assert.True(file.ContainsKey("F") && file.ContainsKey("UF") && file.ContainsKey("AFRelationship"));
            Assert.True(((StreamToken)Resolve(document, ((DictionaryToken)Resolve(document, file["EF"])).Data["F"])).StreamDictionary.Data.ContainsKey("Subtype"));
        });
    });

    // 19005-3, 6.7.2 and 6.7.3; 14289-1, 7.1 and 7.2: tagged, with a language, and everything drawn is either content or artifact.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Everything_drawn_is_marked(string example) => With(example, document =>
    {
        Assert.True(((BooleanToken)((DictionaryToken)Resolve(document, Catalog(document)["MarkInfo"])).Data["Marked"]).Data);
        Assert.True(((BooleanToken)((DictionaryToken)Resolve(document, Catalog(document)["ViewerPreferences"])).Data["DisplayDocTitle"]).Data);
        Assert.Contains("Lang", Catalog(document).Keys);
        foreach (var page in document.GetPages())
        {
            var depth = 0;
            foreach (var operation in page.Operations)
            {
                depth += operation is BeginMarkedContent or BeginMarkedContentWithProperties ? 1 : operation is EndMarkedContent ? -1 : 0;
                Assert.False(depth == 0 && Draws(operation), string.Create(CultureInfo.InvariantCulture, $"page {page.Number}: {operation.Operator} outside of marked content"));
            }

            Assert.Equal(0, depth);
        }
    });

    // 14289-1, 7.3 and 7.5, 7.6: figures have words and a place; cells of a head say for what; rows are as wide as each other; lists are whole.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Figures_tables_and_lists_are_whole(string example) => With(example, document =>
    {
        var root = (DictionaryToken)Resolve(document, Catalog(document)["StructTreeRoot"]);
        var standard = new HashSet<string>(StringComparer.Ordinal) { "Document", "Sect", "Div", "P", "H1", "H2", "H3", "H4", "H5", "H6", "L", "LI", "Lbl", "LBody", "Table", "THead", "TBody", "TR", "TH", "TD", "Caption", "Figure", "Link", "Form", "Span", "Note", "Part" };
        Visit(document, root.Data["K"], (type, element) =>
        {
            Assert.Contains(type, standard);
            switch (type)
            {
                case "Figure":
                    Assert.NotEmpty(Words(element["Alt"]));
                    Assert.True(element.ContainsKey("A"));
                    break;
                case "TH":
                    Assert.Contains("Scope", Attributes(document, element).Keys);
                    break;
                case "Table":
                    var widths = Kids(document, element).SelectMany(kid => kid.Type == "TR" ? [kid.Element] : Kids(document, kid.Element).Where(k => k.Type == "TR").Select(k => k.Element))
                        .Select(row => Kids(document, row).Sum(cell => Attributes(document, cell.Element).TryGetValue("ColSpan", out var span) ? ((NumericToken)span).Int : 1)).Distinct().ToList();
                    Assert.Single(widths);
                    break;
                case "L":
                    Assert.All(Kids(document, element), kid => Assert.Contains(kid.Type, new[] { "LI", "Caption" }));
                    break;
                default:
                    break;
            }
        });
    });

    private static bool Draws(IGraphicsStateOperation operation) => operation is ShowText or ShowTextsWithPositioning or InvokeNamedXObject || operation.Operator is "f" or "f*" or "S" or "s" or "B" or "B*" or "b" or "b*" or "F";

    private static void Visit(PdfDocument document, IToken token, Action<string, IReadOnlyDictionary<string, IToken>> visit)
    {
        var open = new Stack<IToken>([token]);
        while (open.TryPop(out var next))
        {
            switch (Resolve(document, next))
            {
                case ArrayToken kids:
                    foreach (var kid in kids.Data)
                        open.Push(kid);
                    break;
                case DictionaryToken element when element.Data.TryGetValue("S", out var type):
                    visit(((NameToken)type).Data, element.Data);
                    if (element.Data.TryGetValue("K", out var inner))
                        open.Push(inner);
                    break;
                default:
                    break;
            }
        }
    }

    private static List<(string Type, IReadOnlyDictionary<string, IToken> Element)> Kids(PdfDocument document, IReadOnlyDictionary<string, IToken> element)
    {
        if (!element.TryGetValue("K", out var token))
            return [];
        var kids = Resolve(document, token) is ArrayToken list ? list.Data : [token];
        return [.. kids.Select(kid => Resolve(document, kid)).OfType<DictionaryToken>().Where(kid => kid.Data.ContainsKey("S")).Select(kid => (((NameToken)kid.Data["S"]).Data, kid.Data))];
    }

    private static IReadOnlyDictionary<string, IToken> Attributes(PdfDocument document, IReadOnlyDictionary<string, IToken> element) =>
        element.TryGetValue("A", out var token) && Resolve(document, token) is DictionaryToken attributes ? attributes.Data : new Dictionary<string, IToken>();

    private static IReadOnlyDictionary<string, IToken> Catalog(PdfDocument document) => document.Structure.Catalog.CatalogDictionary.Data;

    private static IToken Resolve(PdfDocument document, IToken token) =>
        token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token;

    private static string Words(IToken token) => token is HexToken hex ? hex.Data : ((StringToken)token).Data;

    private static void With(string example, Action<PdfDocument> check)
    {
        using var document = PdfDocument.Open(Of(example));
        check(document);
    }

    private static byte[] Of(string example)
    {
        lock (Rendered)
        {
            if (Rendered.TryGetValue(example, out var known))
                return known;
            using var folder = new TemporaryFolder();
            CommandRun.Of("render", Repository.PathTo("examples", example, "job.yaml"), "--out", folder.Path, "--format", "pdf", "--annex", "full");
            return Rendered[example] = File.ReadAllBytes(Assert.Single(Directory.GetFiles(folder.Path, "*.pdf")));
        }
    }
}
