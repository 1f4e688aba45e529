using System.Globalization;
using System.Security;
using System.Security.Cryptography;
using System.Text;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace Commission.Documents.Archive;

/// <summary>What a document says about itself.</summary>
/// <param name="Title">Title.</param>
/// <param name="Author">Who issues the record; empty when nobody is named.</param>
/// <param name="Subject">Subject in one line.</param>
/// <param name="Language">Language tag.</param>
/// <param name="Program">Program and version.</param>
/// <param name="Moment">The moment the record speaks for.</param>
/// <param name="Digest">Digest of the record.</param>
internal sealed record DocumentFacts(string Title, string Author, string Subject, string Language, string Program, DateTimeOffset Moment, string Digest);

/// <summary>
/// Makes a drawn document a file that is kept and read by everybody: metadata of PDF/A-3a and PDF/UA-1, output intent, labels of pages, signature
/// fields, attachments, and nothing random, so that the same record is the same bytes. It works on PDFsharp's objects, never on bytes that PDFsharp wrote.
/// </summary>
internal static class PdfArchive
{
    /// <summary>Begins a document. Tagging and the output intent are PDFsharp's.</summary>
    public static PdfDocument Begin()
    {
        var document = new PdfDocument();
        document.SetPdfA();

        // The file writer compresses: PDFsharp's own streams end without the checksum that strict readers expect.
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
        return document;
    }

    /// <summary>Finishes a document and writes it.</summary>
    /// <param name="document">What <see cref="Begin"/> gave, drawn.</param>
    /// <param name="facts">What the document says about itself.</param>
    /// <param name="attachments">Files to carry inside.</param>
    public static byte[] Finish(PdfDocument document, DocumentFacts facts, IReadOnlyList<Attachment> attachments)
    {
        // PDFsharp completes its objects (subsets of fonts, links, the outline, numbers of objects) only while it saves.
        document.Save(Stream.Null);
        var catalog = document.Internals.Catalog;
        var metadata = catalog.Elements.GetDictionary("/Metadata") ?? throw new InvalidOperationException("PDFsharp made a document without metadata.");
        NameFonts(document);
        SignatureForm.Add(document);
        LabelPages(document);
        Describe(document.Info, facts);
        Attach(document, facts, attachments);
        var identifier = Identifier(document, metadata, facts);
        metadata.Stream.Value = XmpPacket.Write(facts, identifier);
        return PdfFileWriter.Write(document, document.Info, identifier);
    }

    // The six letters before the name of a subset (ISO 32000-1, 9.6.4) are drawn by lot; here they count from AAAAAA.
    private static void NameFonts(PdfDocument document)
    {
        var tags = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var font in document.Internals.GetAllObjects().OfType<PdfDictionary>())
        {
            if (font.Elements.GetName("/Type") is not ("/Font" or "/FontDescriptor"))
                continue;
            foreach (var key in new[] { "/BaseFont", "/FontName" })
            {
                var name = font.Elements.GetName(key);
                var plus = name.IndexOf('+', StringComparison.Ordinal);
                if (plus < 0)
                    continue;
                if (!tags.TryGetValue(name[..plus], out var tag))
                    tags.Add(name[..plus], tag = Tag(tags.Count));
                font.Elements.SetName(key, tag + name[plus..]);
            }

            // What reaches below the line is negative (ISO 32000-1, table 122); PDFsharp leaves the sign out.
            if (font.Elements.GetInteger("/Descent") is > 0 and var descent)
                font.Elements.SetInteger("/Descent", -descent);
        }
    }

    private static string Tag(int count) => string.Create(7, count, static (letters, number) =>
    {
        letters[0] = '/';
        for (var i = 6; i > 0; i--)
        {
            letters[i] = (char)('A' + number % 26);
            number /= 26;
        }
    });

    // Numbers from 1, as the foot of the page prints them (ISO 32000-1, 12.4.2).
    private static void LabelPages(PdfDocument document)
    {
        var style = new PdfDictionary(document);
        style.Elements.SetName("/S", "/D");
        var labels = new PdfDictionary(document);
        labels.Elements.SetObject("/Nums", new PdfArray(document, new PdfInteger(0), style));
        document.Internals.Catalog.Elements.SetObject("/PageLabels", labels);
    }

    // PDFsharp names itself as producer and puts the clock of the machine in.
    private static void Describe(PdfDocumentInformation info, DocumentFacts facts)
    {
        info.Elements.Clear();
        info.Elements.SetString("/Title", facts.Title);
        if (facts.Author.Length > 0)
            info.Elements.SetString("/Author", facts.Author);
        info.Elements.SetString("/Subject", facts.Subject);
        info.Elements.SetString("/Creator", facts.Program);
        info.Elements.SetString("/Producer", facts.Program);
        info.Elements.SetString("/CreationDate", Date(facts.Moment));
        info.Elements.SetString("/ModDate", Date(facts.Moment));
    }

    // PdfDocument.AddEmbeddedFile gives no hold of what it adds, which lacks media type, description, relation and checksum.
    private static void Attach(PdfDocument document, DocumentFacts facts, IReadOnlyList<Attachment> attachments)
    {
        if (attachments.Count == 0)
            return;
        var names = new PdfNameTreeNode();
        var related = new PdfArray(document);
        foreach (var attachment in attachments.OrderBy(attachment => attachment.Name, StringComparer.Ordinal))
        {
            var bytes = attachment.Content.ToArray();
            var content = new PdfEmbeddedFileStream(document, new MemoryStream(bytes));
            content.Elements.SetName("/Subtype", "/" + attachment.MediaType);
            var parameters = new PdfDictionary(document);
            parameters.Elements.SetInteger("/Size", bytes.Length);
            parameters.Elements.SetString("/ModDate", Date(facts.Moment));
            parameters.Elements["/CheckSum"] = new PdfString(Encoding.Latin1.GetString(Checksum(bytes)), PdfStringEncoding.RawEncoding);
            content.Elements.SetObject("/Params", parameters);
            var file = new PdfFileSpecification(document, content, attachment.Name);
            file.Elements.SetString("/Desc", attachment.Description);
            file.Elements.SetName("/AFRelationship", "/" + attachment.Kind);
            document.Internals.AddObject(file);
            names.AddName(attachment.Name, file.Reference!);
            related.Elements.Add(file.Reference!);
        }

        document.Internals.AddObject(names);
        var dictionary = new PdfDictionary(document);
        dictionary.Elements.SetReference("/EmbeddedFiles", names);
        document.Internals.Catalog.Elements.SetObject("/Names", dictionary);
        document.Internals.Catalog.Elements.SetObject("/AF", related);
    }

    // MD5 is what the format asks for here (ISO 32000-1, table 46); it protects nothing. The record's digest does.
    private static byte[] Checksum(byte[] content)
    {
#pragma warning disable CA5351
        return MD5.HashData(content);
#pragma warning restore CA5351
    }

    // Of all that is drawn or carried, and of the record; the metadata that PDFsharp wrote hold random identifiers and the clock.
    private static byte[] Identifier(PdfDocument document, PdfDictionary metadata, DocumentFacts facts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(string.Join('\n', facts.Digest, facts.Title, facts.Author, facts.Subject, facts.Language, facts.Program, Date(facts.Moment))));
        foreach (var part in document.Internals.GetAllObjects().OfType<PdfDictionary>())
        {
            if (part != metadata && part.Stream is { } stream)
                hash.AppendData(stream.Value);
        }

        return hash.GetHashAndReset()[..16];
    }

    // In UTC (ISO 32000-1, 7.9.4); PDFsharp would write it in the time zone of the machine.
    private static string Date(DateTimeOffset moment) => string.Create(CultureInfo.InvariantCulture, $"D:{moment.ToUniversalTime():yyyyMMddHHmmss}Z");
}

/// <summary>A file to be carried inside the PDF.</summary>
/// <param name="Name">File name, unique within the document; folders are separated by a forward slash.</param>
/// <param name="MediaType">Media type, for example <c>application/json</c>.</param>
/// <param name="Kind">How it relates to the pages.</param>
/// <param name="Description">What it is, for a person.</param>
/// <param name="Content">Its bytes.</param>
public sealed record Attachment(string Name, string MediaType, AttachmentKind Kind, string Description, ReadOnlyMemory<byte> Content);

/// <summary>How an attached file relates to the pages (AFRelationship of ISO 32000-2 and PDF/A-3).</summary>
public enum AttachmentKind
{
    /// <summary>The pages were made from it: the job file, a log.</summary>
    Source,

    /// <summary>It says the same as the pages in a form for programs: the record as JSON.</summary>
    Data,
}

/// <summary>
/// The metadata stream (ISO 16684-1) that declares PDF/A-3a and PDF/UA-1 and repeats the document information. PDF/A knows no property of PDF/UA, so the
/// stream describes it (ISO 19005-3, 6.6.2.3).
/// </summary>
internal static class XmpPacket
{
    /// <param name="facts">What the document says about itself.</param>
    /// <param name="identifier">16 bytes that identify the file.</param>
    public static byte[] Write(DocumentFacts facts, ReadOnlySpan<byte> identifier)
    {
        var moment = facts.Moment.ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        var uuid = new Guid(identifier, bigEndian: true).ToString("D", CultureInfo.InvariantCulture);
        return Encoding.UTF8.GetBytes(
            $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/">
            <pdfaid:part>3</pdfaid:part>
            <pdfaid:conformance>A</pdfaid:conformance>
            <pdfuaid:part>1</pdfuaid:part>
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Xml(facts.Title)}</rdf:li></rdf:Alt></dc:title>{(facts.Author.Length == 0 ? "" : $"\n<dc:creator><rdf:Seq><rdf:li>{Xml(facts.Author)}</rdf:li></rdf:Seq></dc:creator>")}
            <dc:description><rdf:Alt><rdf:li xml:lang="x-default">{Xml(facts.Subject)}</rdf:li></rdf:Alt></dc:description>
            <dc:language><rdf:Bag><rdf:li>{Xml(facts.Language)}</rdf:li></rdf:Bag></dc:language>
            <xmp:CreatorTool>{Xml(facts.Program)}</xmp:CreatorTool>
            <xmp:CreateDate>{moment}</xmp:CreateDate>
            <xmp:ModifyDate>{moment}</xmp:ModifyDate>
            <pdf:Producer>{Xml(facts.Program)}</pdf:Producer>
            <xmpMM:DocumentID>uuid:{uuid}</xmpMM:DocumentID>
            <xmpMM:InstanceID>uuid:{uuid}</xmpMM:InstanceID>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
            <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
            <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
            <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
            <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
            <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name>
            <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>Part of ISO 14289 that the file follows</pdfaProperty:description>
            </rdf:li></rdf:Seq></pdfaSchema:property>
            </rdf:li></rdf:Bag></pdfaExtension:schemas>
            </rdf:Description>
            </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="w"?>
            """.ReplaceLineEndings("\n"));
    }

    private static string Xml(string text) => SecurityElement.Escape(text);
}
