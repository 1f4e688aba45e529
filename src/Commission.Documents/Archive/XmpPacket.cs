using System.Globalization;
using System.Security;
using System.Text;

namespace Commission.Documents.Archive;

/// <summary>The metadata stream (ISO 16684-1) that declares PDF/A-3b and repeats the document information.</summary>
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
            <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/">
            <pdfaid:part>3</pdfaid:part>
            <pdfaid:conformance>B</pdfaid:conformance>
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Xml(facts.Title)}</rdf:li></rdf:Alt></dc:title>
            <dc:description><rdf:Alt><rdf:li xml:lang="x-default">{Xml(facts.Subject)}</rdf:li></rdf:Alt></dc:description>
            <dc:language><rdf:Bag><rdf:li>{Xml(facts.Language)}</rdf:li></rdf:Bag></dc:language>
            <xmp:CreatorTool>{Xml(facts.Program)}</xmp:CreatorTool>
            <xmp:CreateDate>{moment}</xmp:CreateDate>
            <xmp:ModifyDate>{moment}</xmp:ModifyDate>
            <pdf:Producer>{Xml(facts.Program)}</pdf:Producer>
            <xmpMM:DocumentID>uuid:{uuid}</xmpMM:DocumentID>
            <xmpMM:InstanceID>uuid:{uuid}</xmpMM:InstanceID>
            </rdf:Description>
            </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="w"?>
            """.ReplaceLineEndings("\n"));
    }

    private static string Xml(string text) => SecurityElement.Escape(text);
}
