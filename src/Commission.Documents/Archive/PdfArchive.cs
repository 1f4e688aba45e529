using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace Commission.Documents.Archive;

/// <summary>
/// Rewrites what PDFsharp saved into the file that is handed out: PDF/A-3b metadata and output intent, attachments, compressed
/// streams, objects packed in object streams (ISO 32000-1, 7.5.7), and nothing random, so that the same record is the same bytes.
/// </summary>
internal sealed class PdfArchive
{
    private const int ObjectsAStream = 200;

    private static ReadOnlySpan<byte> MetadataOpening => "<</Type/Metadata"u8;

    private readonly List<PdfObjectText> _objects;
    private readonly int _catalog;
    private readonly int _info;
    private readonly DocumentFacts _facts;
    private int _last;

    private PdfArchive(ReadOnlySpan<byte> saved, DocumentFacts facts)
    {
        _objects = PdfObjects.Read(saved, out _catalog, out _info);
        _facts = facts;
        _last = _objects[^1].Number;
    }

    /// <summary>Rewrites a file.</summary>
    /// <param name="saved">The file as PDFsharp saved it, uncompressed.</param>
    /// <param name="facts">What the document says about itself.</param>
    /// <param name="attachments">Files to carry inside.</param>
    public static byte[] Write(ReadOnlySpan<byte> saved, DocumentFacts facts, IReadOnlyList<Attachment> attachments)
    {
        var archive = new PdfArchive(saved, facts);
        archive.RenameFonts();
        archive.Describe(attachments);
        var identifier = archive.Identifier();
        archive.AddMetadata(identifier);
        return archive.Assemble(identifier);
    }

    private void RenameFonts()
    {
        var tags = new FontTags();
        for (var i = 0; i < _objects.Count; i++)
        {
            var body = _objects[i].Body.AsSpan();
            if (!body.StartsWith("<</Type/Font"u8)) continue;
            tags.Replace(_objects[i].Body);

            // What reaches below the line is negative (ISO 32000-1, table 122); PDFsharp leaves the sign out.
            var descent = body.IndexOf("/Descent "u8) + "/Descent ".Length;
            if (body.StartsWith("<</Type/FontDescriptor"u8) && descent >= "/Descent ".Length && char.IsAsciiDigit((char)body[descent]))
                _objects[i] = _objects[i] with { Body = [.. body[..descent], (byte)'-', .. body[descent..]] };
        }
    }

    private void Describe(IReadOnlyList<Attachment> attachments)
    {
        var index = _objects.FindIndex(item => item.Number == _info);
        var author = _facts.Author.Length == 0 ? "" : $"/Author{PdfText.String(_facts.Author)}";
        _objects[index] = new PdfObjectText(_info, Bytes(
            $"<</Title{PdfText.String(_facts.Title)}/Subject{PdfText.String(_facts.Subject)}{author}/Creator{PdfText.String(_facts.Program)}/Producer{PdfText.String(_facts.Program)}/CreationDate{PdfText.Date(_facts.Moment)}/ModDate{PdfText.Date(_facts.Moment)}>>"), null);
        var profile = Add($"<</N 3>>", SrgbProfile.Write());
        var intent = Add($"<</Type/OutputIntent/S/GTS_PDFA1/OutputConditionIdentifier(sRGB)/Info(sRGB IEC61966-2.1)/DestOutputProfile {profile} 0 R>>", null);
        var entries = new StringBuilder($"/OutputIntents[{intent} 0 R]");
        if (attachments.Count > 0) Attach(attachments, entries);
        ChangeCatalog(entries.ToString());
    }

    private void Attach(IReadOnlyList<Attachment> attachments, StringBuilder entries)
    {
        var names = new StringBuilder();
        var files = new StringBuilder();

        // A name tree is sorted by its keys.
        foreach (var attachment in attachments.OrderBy(attachment => attachment.Name, StringComparer.Ordinal))
        {
            var content = attachment.Content.ToArray();
            var stream = Add(
                $"<</Type/EmbeddedFile/Subtype{PdfText.Name(attachment.MediaType)}/Params<</Size {content.Length}/ModDate{PdfText.Date(_facts.Moment)}/CheckSum<{Checksum(content)}>>>>>", content);
            var name = PdfText.String(attachment.Name);
            var file = Add(
                $"<</Type/Filespec/F{name}/UF{name}/Desc{PdfText.String(attachment.Description)}/AFRelationship/{attachment.Kind}/EF<</F {stream} 0 R/UF {stream} 0 R>>>>", null);
            names.Append(CultureInfo.InvariantCulture, $"{name} {file} 0 R ");
            files.Append(CultureInfo.InvariantCulture, $"{file} 0 R ");
        }

        entries.Append(CultureInfo.InvariantCulture, $"/Names<</EmbeddedFiles<</Names[{names.ToString().TrimEnd()}]>>>>/AF[{files.ToString().TrimEnd()}]");
    }

    // MD5 is what the format asks for here (ISO 32000-1, table 46); it protects nothing. The record's digest does.
    private static string Checksum(byte[] content)
    {
#pragma warning disable CA5351
        return Convert.ToHexString(MD5.HashData(content));
#pragma warning restore CA5351
    }

    private void ChangeCatalog(string entries)
    {
        var index = _objects.FindIndex(item => item.Number == _catalog);
        var body = Encoding.Latin1.GetString(_objects[index].Body);
        var end = body.LastIndexOf(">>", StringComparison.Ordinal);
        _objects[index] = _objects[index] with { Body = Encoding.Latin1.GetBytes(body[..end] + entries + ">>") };
    }

    private void AddMetadata(byte[] identifier)
    {
        var body = _objects.Find(item => item.Number == _catalog)!.Body;
        var number = PdfObjects.Integer(body, "/Metadata "u8);
        var index = _objects.FindIndex(item => item.Number == number);
        _objects[index] = new PdfObjectText(number, Bytes("<</Type/Metadata/Subtype/XML>>"), XmpPacket.Write(_facts, identifier));
    }

    // PDFsharp's own metadata holds random identifiers and the clock: it is not part of what identifies the file.
    private byte[] Identifier()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Bytes(_facts.Digest));
        foreach (var item in _objects)
        {
            if (item.Body.AsSpan().StartsWith(MetadataOpening)) continue;
            hash.AppendData(item.Body);
            if (item.Stream is not null) hash.AppendData(item.Stream);
        }

        return hash.GetHashAndReset()[..16];
    }

    private byte[] Assemble(byte[] identifier)
    {
        using var file = new MemoryStream();
        file.Write("%PDF-1.7\n%"u8);

        // Four bytes above 127 tell every program that the file is binary.
        file.Write([0xE2, 0xE3, 0xCF, 0xD3, (byte)'\n']);
        var places = new SortedDictionary<int, (byte Kind, long Where, int Index)> { [0] = (0, 0, 65535) };
        var plain = new List<PdfObjectText>();
        foreach (var item in _objects)
        {
            if (item.Stream is null)
            {
                plain.Add(item);
                continue;
            }

            places[item.Number] = (1, file.Position, 0);
            WriteStream(file, item.Number, item.Body, item.Stream, compress: !item.Body.AsSpan().StartsWith(MetadataOpening));
        }

        for (var from = 0; from < plain.Count; from += ObjectsAStream)
        {
            var packed = plain.GetRange(from, Math.Min(ObjectsAStream, plain.Count - from));
            var number = ++_last;
            for (var i = 0; i < packed.Count; i++) places[packed[i].Number] = (2, number, i);
            places[number] = (1, file.Position, 0);
            WritePacked(file, number, packed);
        }

        WriteCrossReference(file, places, identifier);
        return file.ToArray();
    }

    private static void WritePacked(MemoryStream file, int number, List<PdfObjectText> packed)
    {
        var head = new StringBuilder();
        using var bodies = new MemoryStream();
        foreach (var item in packed)
        {
            head.Append(CultureInfo.InvariantCulture, $"{item.Number} {bodies.Position} ");
            bodies.Write(item.Body);
            bodies.WriteByte((byte)'\n');
        }

        byte[] content = [.. Bytes(head.ToString()), .. bodies.ToArray()];
        WriteStream(file, number, Bytes($"<</Type/ObjStm/N {packed.Count}/First {head.Length}>>"), content, compress: true);
    }

    private void WriteCrossReference(MemoryStream file, SortedDictionary<int, (byte Kind, long Where, int Index)> places, byte[] identifier)
    {
        var start = file.Position;
        var number = ++_last;
        places[number] = (1, start, 0);
        using var rows = new MemoryStream();
        for (var n = 0; n <= number; n++)
        {
            var (kind, where, index) = places.TryGetValue(n, out var place) ? place : ((byte)0, 0, 0);
            rows.Write([kind, (byte)(where >> 24), (byte)(where >> 16), (byte)(where >> 8), (byte)where, (byte)(index >> 8), (byte)index]);
        }

        var id = Convert.ToHexString(identifier);
        WriteStream(
            file,
            number,
            Bytes($"<</Type/XRef/Size {number + 1}/W[1 4 2]/Root {_catalog} 0 R/Info {_info} 0 R/ID[<{id}><{id}>]>>"),
            rows.ToArray(),
            compress: true);
        file.Write(Bytes($"startxref\n{start}\n%%EOF\n"));
    }

    private static void WriteStream(MemoryStream file, int number, byte[] body, byte[] content, bool compress)
    {
        if (compress) content = Compress(content);
        var dictionary = WithoutLength(Encoding.Latin1.GetString(body));
        var filter = compress ? "/Filter/FlateDecode" : "";
        file.Write(Bytes($"{number} 0 obj\n"));
        file.Write(Encoding.Latin1.GetBytes(dictionary[..dictionary.LastIndexOf(">>", StringComparison.Ordinal)]));
        file.Write(Bytes($"{filter}/Length {content.Length}>>\nstream\n"));
        file.Write(content);
        file.Write("\nendstream\nendobj\n"u8);
    }

    private static string WithoutLength(string dictionary)
    {
        var at = dictionary.IndexOf("/Length ", StringComparison.Ordinal);
        if (at < 0) return dictionary;
        var end = at + "/Length ".Length;
        while (char.IsAsciiDigit(dictionary[end])) end++;
        return dictionary.Remove(at, end - at);
    }

    private static byte[] Compress(byte[] content)
    {
        using var buffer = new MemoryStream();
        using (var deflate = new ZLibStream(buffer, CompressionLevel.Optimal, leaveOpen: true)) deflate.Write(content);
        return buffer.ToArray();
    }

    private int Add(FormattableString body, byte[]? stream)
    {
        _objects.Add(new PdfObjectText(++_last, Bytes(body.ToString(CultureInfo.InvariantCulture)), stream));
        return _last;
    }

    private static byte[] Bytes(FormattableString text) => Encoding.Latin1.GetBytes(text.ToString(CultureInfo.InvariantCulture));

    private static byte[] Bytes(string text) => Encoding.Latin1.GetBytes(text);
}
