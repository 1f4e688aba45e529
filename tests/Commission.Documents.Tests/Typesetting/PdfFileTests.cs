using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using Commission.Records.Tests.Samples;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Actions;
using UglyToad.PdfPig.Annotations;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

public sealed class PdfFileTests
{
    [Fact]
    public void The_same_record_is_the_same_bytes() => Assert.Equal(SamplePdf.Full.Bytes, SamplePdf.Render(SampleRecord.Full).Bytes);

    [Fact]
    public void The_language_of_the_machine_does_not_matter()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(SamplePdf.Full.Bytes, SamplePdf.Render(SampleRecord.Full).Bytes);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Two_threads_write_the_same()
    {
        var documents = new byte[4][];
        Parallel.For(0, documents.Length, i => documents[i] = SamplePdf.Render(SampleRecord.Full).Bytes);
        Assert.All(documents, bytes => Assert.Equal(SamplePdf.Full.Bytes, bytes));
    }

    [Fact]
    public void Another_record_is_another_file()
    {
        var other = SamplePdf.Render(SampleRecord.Full with { Digest = new string('0', 64) });
        Assert.NotEqual(Id(SamplePdf.Full.Bytes), Id(other.Bytes));
    }

    // Viewers that round each lone rectangle outward to whole pixels (PDFium does, seen at 100 %) would fill the white squares of a QR code drawn run by run.
    [Fact]
    public void The_squares_of_the_QR_code_are_one_shape()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        var code = Assert.Single(document.GetPage(1).Paths, path => path.Count > 100);
        Assert.True(code is { IsFilled: true, IsStroked: false });
    }

    [Fact]
    public void It_stays_small() => Assert.InRange(SamplePdf.Full.Bytes.Length, 50_000, 400_000);

    [Fact]
    public void Attachments_come_back_byte_for_byte_with_their_relation()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        Assert.True(document.Advanced.TryGetEmbeddedFiles(out var files));
        Assert.Equal(["job.yaml", "logs/evacuation.csv", "record.json"], files.Select(file => file.Name).Order(StringComparer.Ordinal));
        Assert.All(SamplePdf.Attachments, attachment =>
            Assert.Equal(attachment.Content.ToArray(), files.Single(file => file.Name == attachment.Name).Memory.ToArray()));
        var related = (ArrayToken)document.Structure.Catalog.CatalogDictionary.Data["AF"];
        var relations = related.Data.Select(file => ((NameToken)((DictionaryToken)Resolve(document, file)).Data["AFRelationship"]).Data);
        Assert.Equal(["Source", "Source", "Data"], relations);
    }

    // ISO 32000-1, tables 45 and 46: media type, size, MD5 of the content; the moment is the record's, not the machine's.
    [Fact]
    public void Attachments_say_what_they_are()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        var related = (ArrayToken)document.Structure.Catalog.CatalogDictionary.Data["AF"];
        var job = (DictionaryToken)Resolve(document, related.Data[0]);
        Assert.Equal("The job file, ± as written", Words(job.Data["Desc"]));
        var stream = ((StreamToken)Resolve(document, ((DictionaryToken)job.Data["EF"]).Data["F"])).StreamDictionary;
        Assert.Equal("application/yaml", ((NameToken)stream.Data["Subtype"]).Data);
        var parameters = (DictionaryToken)stream.Data["Params"];
        var content = SamplePdf.Attachments[1].Content.ToArray();
        Assert.Equal(content.Length, ((NumericToken)parameters.Data["Size"]).Int);
#pragma warning disable CA5351 // ISO 32000-2, 7.11.4.2: the checksum of an embedded file is MD5; it guards nothing.
        Assert.Equal(System.Security.Cryptography.MD5.HashData(content), ((HexToken)parameters.Data["CheckSum"]).Bytes.ToArray());
#pragma warning restore CA5351
        Assert.Equal("D:20260618180500Z", Words(parameters.Data["ModDate"]));
    }

    // ISO 19005-3: part and conformance stand in the metadata, an output intent names the colour space.
    [Fact]
    public void It_declares_the_archive_format()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        var xmp = Metadata(document);
        XNamespace archive = "http://www.aiim.org/pdfa/ns/id/";
        XNamespace dc = "http://purl.org/dc/elements/1.1/";
        Assert.Equal("3", xmp.Descendants(archive + "part").Single().Value);
        Assert.Equal("A", xmp.Descendants(archive + "conformance").Single().Value);
        Assert.Equal("Commissioning record TEST-2026-061", xmp.Descendants(dc + "title").Single().Value);
        Assert.Equal("new installation, Test flats, unit 14 & stairs <north>: accepted with conditions", xmp.Descendants(dc + "description").Single().Value);
        Assert.True(document.Structure.Catalog.CatalogDictionary.ContainsKey(NameToken.Create("OutputIntents")));

        // A reader that knows nothing of PDF finds the packet by looking for it: it is not compressed.
        Assert.Contains("<pdfaid:part>3</pdfaid:part>", Encoding.Latin1.GetString(SamplePdf.Full.Bytes), StringComparison.Ordinal);
    }

    // ISO 14289-1, 5: the part stands in the metadata, and PDF/A wants the property described (ISO 19005-3, 6.6.2.3).
    [Fact]
    public void It_declares_that_everybody_can_read_it()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        var xmp = Metadata(document);
        XNamespace access = "http://www.aiim.org/pdfua/ns/id/";
        XNamespace schema = "http://www.aiim.org/pdfa/ns/schema#";
        XNamespace property = "http://www.aiim.org/pdfa/ns/property#";
        Assert.Equal("1", xmp.Descendants(access + "part").Single().Value);
        Assert.Equal(access.NamespaceName, xmp.Descendants(schema + "namespaceURI").Single().Value);
        Assert.Equal("part", xmp.Descendants(property + "name").Single().Value);
        var catalog = document.Structure.Catalog.CatalogDictionary;
        Assert.True(((BooleanToken)((DictionaryToken)Resolve(document, catalog.Data["MarkInfo"])).Data["Marked"]).Data);
        Assert.True(((BooleanToken)((DictionaryToken)Resolve(document, catalog.Data["ViewerPreferences"])).Data["DisplayDocTitle"]).Data);
    }

    // ISO 14289-1, 7.4.2: levels of headings have no gap.
    [Fact]
    public void No_level_of_headings_is_left_out()
    {
        using var document = SamplePdf.Open(SamplePdf.WithAnnex);
        var levels = StructureElements(document).Where(element => element.Type is ['H', >= '1' and <= '6']).Select(element => element.Type[1] - '0').ToList();
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1, $"H{pair.Second} follows H{pair.First}"));
    }

    // ISO 32000-1, 12.7.4.5 and 12.5.6.19: an empty signature field for every line, on the line, with words and a blank look; ISO 14289-1, 7.18.4: inside a Form element.
    [Fact]
    public void Every_line_to_sign_is_an_empty_signature_field()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        var form = (DictionaryToken)Resolve(document, document.Structure.Catalog.CatalogDictionary.Data["AcroForm"]);
        var fields = ((ArrayToken)form.Data["Fields"]).Data.Select(field => (DictionaryToken)Resolve(document, field)).ToList();
        Assert.Equal(SampleRecord.Full.Signatures.Length, fields.Count);
        Assert.Equal(fields.Count, fields.Select(field => Words(field.Data["T"])).Distinct(StringComparer.Ordinal).Count());
        Assert.All(fields.Zip(SampleRecord.Full.Signatures), pair =>
        {
            var (field, line) = pair;
            Assert.Equal("Sig", ((NameToken)field.Data["FT"]).Data);
            Assert.Equal("Widget", ((NameToken)field.Data["Subtype"]).Data);
            Assert.False(field.Data.ContainsKey("V"));
            Assert.False(field.Data.ContainsKey("M"));
            Assert.Equal(4, ((NumericToken)field.Data["F"]).Int);
            Assert.Contains(line.Statement, Words(field.Data["TU"]), StringComparison.Ordinal);
            Assert.IsType<StreamToken>(Resolve(document, ((DictionaryToken)Resolve(document, field.Data["AP"])).Data["N"]));
        });

        // The tree of parents leads from each field to its element, and the element back to the field.
        var root = (DictionaryToken)Resolve(document, document.Structure.Catalog.CatalogDictionary.Data["StructTreeRoot"]);
        var pairs = ((ArrayToken)Resolve(document, ((DictionaryToken)Resolve(document, root.Data["ParentTree"])).Data["Nums"])).Data;
        var keys = Enumerable.Range(0, pairs.Count / 2).Select(i => ((NumericToken)pairs[2 * i]).Int).ToList();
        Assert.Equal(keys.Order(), keys);
        Assert.Equal(keys.Distinct(), keys);
        Assert.True(((NumericToken)root.Data["ParentTreeNextKey"]).Int > keys[^1]);
        Assert.All(fields, field =>
        {
            var element = (DictionaryToken)Resolve(document, pairs[(2 * keys.IndexOf(((NumericToken)field.Data["StructParent"]).Int)) + 1]);
            Assert.Equal("Form", ((NameToken)element.Data["S"]).Data);
            var back = (DictionaryToken)Resolve(document, element.Data["K"]);
            Assert.Same(field, Resolve(document, back.Data["Obj"]));
        });

        // Each lies on the rule that others sign with a pen: the name stands right below it.
        var page = document.GetPage(1);
        Assert.All(fields, field =>
        {
            var box = ((ArrayToken)Resolve(document, field.Data["Rect"])).Data.Select(edge => ((NumericToken)edge).Double).ToList();
            Assert.Contains(page.Letters, letter => letter.StartBaseLine.X >= box[0] - 1 && letter.StartBaseLine.X < box[2] && letter.StartBaseLine.Y < box[1] && letter.StartBaseLine.Y > box[1] - 14);
            Assert.DoesNotContain(page.Letters, letter => letter.StartBaseLine.X >= box[0] && letter.StartBaseLine.X < box[2] && letter.StartBaseLine.Y > box[1] && letter.StartBaseLine.Y < box[3]);
        });
    }

    // ISO 14289-1, 7.18.5: a link says where it goes.
    [Fact]
    public void Every_link_has_words()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        Assert.All(document.GetPages().SelectMany(page => page.GetAnnotations()).Where(a => a.Type == AnnotationType.Link), link => Assert.NotEmpty(link.Content!));
    }

    [Fact]
    public void Pages_are_labelled_as_the_foot_prints_them()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        var labels = (DictionaryToken)Resolve(document, document.Structure.Catalog.CatalogDictionary.Data["PageLabels"]);
        var pairs = ((ArrayToken)labels.Data["Nums"]).Data;
        Assert.Equal(0, ((NumericToken)pairs[0]).Int);
        Assert.Equal("D", ((NameToken)((DictionaryToken)Resolve(document, pairs[1])).Data["S"]).Data);
    }

    [Fact]
    public void Title_and_moment_come_from_the_record()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        Assert.Equal("Commissioning record TEST-2026-061", document.Information.Title);
        Assert.Equal("D:20260618180500Z", document.Information.CreationDate);
        Assert.Equal("Commission 0.0.0-test", document.Information.Producer);
        Assert.Equal("en", ((StringToken)document.Structure.Catalog.CatalogDictionary.Data["Lang"]).Data);
    }

    [Fact]
    public void Every_link_leads_to_the_row_or_the_trace_of_its_number()
    {
        using var document = SamplePdf.Open(SamplePdf.WithAnnex);
        var pages = document.GetPages().ToList();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var source in pages.Skip(1))
        {
            foreach (var annotation in source.GetAnnotations().Where(annotation => annotation.Type == AnnotationType.Link))
            {
                var text = string.Concat(source.Letters
                    .Where(letter => Contains(annotation.Rectangle, (letter.StartBaseLine.X + letter.EndBaseLine.X) / 2, letter.StartBaseLine.Y + 1))
                    .Select(letter => letter.Value)).Trim();
                var number = text.Split(' ', '\u00a0')[^1];
                var target = SamplePdf.Lines(pages[((GoToAction)annotation.Action!).Destination.PageNumber - 1]);
                Assert.Contains(target, line => line.StartsWith(number + " ", StringComparison.Ordinal));
                seen.Add(number);
            }
        }

        Assert.All(SampleRecord.Full.Findings.Where(f => f.Phase is not ("evidence" or "instruments") && f.Verdict is not (Commission.Measurement.Decisions.Verdict.Information or Commission.Measurement.Decisions.Verdict.NotEvaluated)), finding => Assert.Contains(finding.Number.ToString(CultureInfo.InvariantCulture), seen));
    }

    // Page 1 names pages: each number of its last column is that of the page its link goes to.
    [Fact]
    public void The_page_numbers_of_page_one_are_right()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        var first = document.GetPage(1);
        var links = first.GetAnnotations().Where(annotation => annotation.Type == AnnotationType.Link).ToList();
        Assert.NotEmpty(links);
        Assert.All(links, link =>
        {
            var text = string.Concat(first.Letters.Where(letter => Contains(link.Rectangle, (letter.StartBaseLine.X + letter.EndBaseLine.X) / 2, letter.StartBaseLine.Y + 1)).Select(letter => letter.Value)).Trim();
            Assert.Equal(((GoToAction)link.Action!).Destination.PageNumber.ToString(CultureInfo.InvariantCulture), text);
        });
    }

    [Fact]
    public void The_outline_lists_sections_and_traces()
    {
        using var document = SamplePdf.Open(SamplePdf.WithAnnex);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        var titles = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().ToList();
        Assert.Contains(titles, entry => entry.Title == "Evacuation");
        Assert.Contains(titles, entry => entry.Title.StartsWith("29 Subcooling, 11:35: 10.5 ± 1.4 °F", StringComparison.Ordinal));
        Assert.All(titles, entry => Assert.Contains(entry.Title[..Math.Min(12, entry.Title.Length)], SamplePdf.Text(document.GetPage(entry.PageNumber)), StringComparison.Ordinal));
    }

    // ISO 32000-1, 7.5.8: every row of the cross-reference stream leads to the object it names; every stream is whole.
    [Fact]
    public void Every_cross_reference_leads_to_its_object()
    {
        var bytes = SamplePdf.Full.Bytes;
        var text = Encoding.Latin1.GetString(bytes);
        var start = int.Parse(text[(text.LastIndexOf("startxref", StringComparison.Ordinal) + 9)..].Split('\n', StringSplitOptions.RemoveEmptyEntries)[0], CultureInfo.InvariantCulture);
        var rows = Inflate(bytes, text, start);
        Assert.Equal(0, rows.Length % 7);
        for (var n = 1; n < rows.Length / 7; n++)
        {
            var row = rows.AsSpan(7 * n, 7);
            if (row[0] != 1)
                continue;
            var offset = (row[1] << 24) | (row[2] << 16) | (row[3] << 8) | row[4];
            var opening = text[offset..Math.Min(text.Length, offset + 60)];
            Assert.StartsWith(string.Create(CultureInfo.InvariantCulture, $"{n} 0 obj\n"), opening, StringComparison.Ordinal);
            if (!opening.Contains("/Type/Metadata", StringComparison.Ordinal))
                Assert.NotEmpty(Inflate(bytes, text, offset));
        }
    }

    // ISO 19005-3, 6.2.11: every font is embedded as a subset and says which characters its glyphs are; names are counted, not drawn by lot.
    [Fact]
    public void Every_font_is_embedded_and_maps_to_characters()
    {
        using var document = SamplePdf.Open(SamplePdf.Full);
        var fonts = new Dictionary<string, DictionaryToken>(StringComparer.Ordinal);
        foreach (var page in document.GetPages())
        {
            var resources = (DictionaryToken)Resolve(document, page.Dictionary.Data["Resources"]);
            foreach (var font in ((DictionaryToken)Resolve(document, resources.Data["Font"])).Data.Values.Select(font => (DictionaryToken)Resolve(document, font)))
                fonts[((NameToken)font.Data["BaseFont"]).Data] = font;
        }

        Assert.Equal(["AAAAAA+Source Sans 3 Semi", "AAAAAB+Source Sans 3 Regular", "AAAAAC+Source Sans 3,Italic"], fonts.Keys.Order(StringComparer.Ordinal));
        Assert.All(fonts.Values, font =>
        {
            Assert.True(font.Data.ContainsKey("ToUnicode"));
            var inner = (DictionaryToken)Resolve(document, ((ArrayToken)Resolve(document, font.Data["DescendantFonts"])).Data[0]);
            Assert.Equal("Identity", ((NameToken)inner.Data["CIDToGIDMap"]).Data);
            var descriptor = (DictionaryToken)Resolve(document, inner.Data["FontDescriptor"]);
            Assert.True(descriptor.Data.ContainsKey("FontFile2"));
            Assert.True(((NumericToken)descriptor.Data["Descent"]).Double < 0);
        });
    }

    // ISO 32000-1, 14.8: what a screen reader needs.
    [Fact]
    public void It_is_tagged_with_heads_rows_and_words_for_figures()
    {
        using var document = SamplePdf.Open(SamplePdf.WithAnnex);
        var elements = StructureElements(document);
        var counts = elements.GroupBy(element => element.Type, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Count(), StringComparer.Ordinal);
        Assert.Equal(1, counts["H1"]);
        Assert.Equal(SampleRecord.Full.Figures.Length + SampleRecord.Full.Certificate.Figures.Length + 1, counts["Figure"]);
        Assert.All(elements.Where(element => element.Type == "Figure"), figure => Assert.True(figure.Dictionary.ContainsKey(NameToken.Create("Alt"))));
        Assert.All(elements.Where(element => element.Type == "TH"), head => Assert.True(head.Dictionary.ContainsKey(NameToken.Create("A"))));
        Assert.All(elements.Where(element => element.Type == "TR"), row => Assert.Equal("Table", row.Parent));
        Assert.All(elements.Where(element => element.Type is "TH" or "TD"), cell => Assert.Equal("TR", cell.Parent));
        Assert.All(elements.Where(element => element.Type == "LBody"), item => Assert.Equal("LI", item.Parent));
        Assert.All(elements.Where(element => element.Type == "LI"), item => Assert.Equal("L", item.Parent));
        Assert.All(elements.Where(element => element.Type is "P" or "H2" or "Figure" or "Table"), block => Assert.Contains(block.Parent, new[] { "Document", "Sect", "Div" }));
    }

    private static List<(string Type, string Parent, DictionaryToken Dictionary)> StructureElements(PdfDocument document)
    {
        var root = (DictionaryToken)Resolve(document, document.Structure.Catalog.CatalogDictionary.Data["StructTreeRoot"]);
        var found = new List<(string, string, DictionaryToken)>();
        var open = new Stack<(IToken Token, string Parent)>();
        open.Push((root.Data["K"], ""));
        while (open.TryPop(out var next))
        {
            switch (Resolve(document, next.Token))
            {
                case ArrayToken kids:
                    // In the order of the pages: the last is put down first.
                    foreach (var kid in kids.Data.Reverse())
                        open.Push((kid, next.Parent));
                    break;
                case DictionaryToken element when element.Data.TryGetValue("S", out var type):
                    var name = ((NameToken)type).Data;
                    found.Add((name, next.Parent, element));
                    if (element.Data.TryGetValue("K", out var inner))
                        open.Push((inner, name));
                    break;
            }
        }

        return found;
    }

    private static XDocument Metadata(PdfDocument document)
    {
        Assert.True(document.TryGetXmpMetadata(out var metadata));
        return XDocument.Parse(Encoding.UTF8.GetString(metadata!.GetXmlBytes().ToArray()).TrimStart('\uFEFF'));
    }

    private static string Words(IToken token) => token is HexToken hex ? hex.Data : ((StringToken)token).Data;

    private static IToken Resolve(PdfDocument document, IToken token) =>
        token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token;

    private static byte[] Inflate(byte[] bytes, string text, int offset)
    {
        var dictionary = text[offset..text.IndexOf("stream\n", offset, StringComparison.Ordinal)];
        var lengthAt = dictionary.LastIndexOf("/Length ", StringComparison.Ordinal) + 8;
        var length = int.Parse(dictionary[lengthAt..dictionary.IndexOf(">>", lengthAt, StringComparison.Ordinal)], CultureInfo.InvariantCulture);
        using var inflate = new ZLibStream(new MemoryStream(bytes, offset + dictionary.Length + 7, length), CompressionMode.Decompress);
        using var content = new MemoryStream();
        inflate.CopyTo(content);
        return content.ToArray();
    }

    private static bool Contains(PdfRectangle area, double x, double y) => x > area.Left && x < area.Right && y > area.Bottom && y < area.Top;

    private static string Id(byte[] bytes)
    {
        var text = Encoding.Latin1.GetString(bytes);
        var at = text.IndexOf("/ID[", StringComparison.Ordinal);
        return text[at..text.IndexOf(']', at)];
    }
}
