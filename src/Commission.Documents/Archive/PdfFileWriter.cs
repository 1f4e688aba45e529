using System.Buffers;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace Commission.Documents.Archive;

/// <summary>
/// Writes the objects of a PDFsharp document as a file of PDF 1.7 with compressed streams, objects packed in object streams (ISO 32000-1,
/// 7.5.7) and a cross-reference stream. PDFsharp 6 cannot write object streams, and without them the tags of a record, some thousand
/// small objects, would make up most of the file.
/// </summary>
internal sealed class PdfFileWriter
{
    private const int ObjectsAStream = 200;
    private const string Photo = "/DCTDecode";
    private const string Deflate = "/FlateDecode";

    private readonly ArrayBufferWriter<byte> _file = new(1 << 16);
    private readonly StringBuilder _text = new();

    // Where each object is: kind 1 at an offset, kind 2 at an index of an object stream; kind 0 for numbers that are not used.
    private readonly List<(byte Kind, int Where, int Index)> _places = [(0, 0, 65535)];
    private bool _endsRegular;

    private PdfFileWriter()
    {
    }

    /// <summary>Writes a document that PDFsharp has saved, so that its objects are complete.</summary>
    /// <param name="document">The document.</param>
    /// <param name="info">Its information dictionary.</param>
    /// <param name="identifier">16 bytes that identify the file.</param>
    /// <exception cref="InvalidOperationException">The document holds a kind of object this writer does not know.</exception>
    public static byte[] Write(PdfDocument document, PdfDocumentInformation info, byte[] identifier)
    {
        var writer = new PdfFileWriter();

        // Four bytes above 127 tell every program that the file is binary.
        writer.Raw("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n");
        writer.Objects(document.Internals.GetAllObjects());
        writer.CrossReference(document.Internals.Catalog, info, Convert.ToHexString(identifier));
        return writer._file.WrittenSpan.ToArray();
    }

    private void Objects(PdfObject[] objects)
    {
        var packed = new List<(int Number, string Body)>();
        foreach (var item in objects)
        {
            var number = PdfInternals.GetObjectNumber(item);
            while (_places.Count <= number)
                _places.Add(default);
            _text.Clear();
            _endsRegular = false;
            if (item is PdfDictionary { Stream: { } stream } dictionary)
            {
                Dictionary(dictionary, isStream: true);

                // The bytes of a photo are packed already; and a reader that knows nothing of PDF finds the metadata by looking for them.
                if (dictionary.Elements.GetName("/Filter") == Photo)
                    Stream(number, _text.ToString(), stream.Value, Photo);
                else
                    Stream(number, _text.ToString(), stream.UnfilteredValue, dictionary is PdfMetadata ? "" : Deflate);
                continue;
            }

            Item(item);
            packed.Add((number, _text.ToString()));
        }

        foreach (var part in packed.Chunk(ObjectsAStream))
            Pack(part);
    }

    private void Pack((int Number, string Body)[] part)
    {
        var number = _places.Count;
        _places.Add(default);
        _text.Clear();
        var offset = 0;
        for (var i = 0; i < part.Length; i++)
        {
            _text.Append(CultureInfo.InvariantCulture, $"{part[i].Number} {offset} ");
            offset += part[i].Body.Length + 1;
            _places[part[i].Number] = (2, number, i);
        }

        var first = _text.Length;
        foreach (var (_, body) in part)
            _text.Append(body).Append('\n');
        Stream(number, string.Create(CultureInfo.InvariantCulture, $"/Type/ObjStm/N {part.Length}/First {first}"), Encoding.Latin1.GetBytes(_text.ToString()), Deflate);
    }

    private void CrossReference(PdfCatalog catalog, PdfDocumentInformation info, string identifier)
    {
        var start = _file.WrittenCount;
        var number = _places.Count;
        _places.Add((1, start, 0));
        using var rows = new MemoryStream();
        foreach (var (kind, where, index) in _places)
            rows.Write([kind, (byte)(where >> 24), (byte)(where >> 16), (byte)(where >> 8), (byte)where, (byte)(index >> 8), (byte)index]);
        Stream(
            number,
            string.Create(CultureInfo.InvariantCulture, $"/Type/XRef/Size {_places.Count}/W[1 4 2]/Root {PdfInternals.GetObjectNumber(catalog)} 0 R/Info {PdfInternals.GetObjectNumber(info)} 0 R/ID[<{identifier}><{identifier}>]"),
            rows.ToArray(),
            Deflate);
        Raw(string.Create(CultureInfo.InvariantCulture, $"startxref\n{start}\n%%EOF\n"));
    }

    private void Stream(int number, string entries, byte[] content, string filter)
    {
        _places[number] = (1, _file.WrittenCount, 0);
        if (filter == Deflate)
        {
            using var buffer = new MemoryStream();
            using (var deflate = new ZLibStream(buffer, CompressionLevel.Optimal, leaveOpen: true))
                deflate.Write(content);
            content = buffer.ToArray();
        }

        Raw(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n<<{entries}{(filter.Length > 0 ? "/Filter" : "")}{filter}/Length {content.Length}>>\nstream\n"));
        _file.Write(content);
        Raw("\nendstream\nendobj\n");
    }

    private void Raw(string text) => _file.Write(Encoding.Latin1.GetBytes(text));

    private void Item(PdfItem item)
    {
        switch (item)
        {
            case PdfReference reference:
                Regular(string.Create(CultureInfo.InvariantCulture, $"{reference.ObjectNumber} 0 R"));
                break;
            case PdfName name:
                Name(name.Value);
                break;
            case PdfInteger number:
                Regular(number.Value.ToString(CultureInfo.InvariantCulture));
                break;
            case PdfReal number:
                Regular(number.Value.ToString("0.#####", CultureInfo.InvariantCulture));
                break;
            case PdfBoolean truth:
                Regular(truth.Value ? "true" : "false");
                break;
            case PdfNull:
                Regular("null");
                break;
            case PdfString text:
                Text(text);
                break;
            case PdfLiteral literal:
                // Written by PDFsharp in the syntax of the file.
                Regular(literal.Value);
                break;
            case PdfRectangle box:
                Delimiter('[');
                foreach (var edge in new[] { box.X1, box.Y1, box.X2, box.Y2 })
                    Regular(edge.ToString("0.###", CultureInfo.InvariantCulture));
                Delimiter(']');
                break;
            case PdfArray array:
                Delimiter('[');
                foreach (var entry in array.Elements)
                    Item(entry);
                Delimiter(']');
                break;
            case PdfDictionary dictionary:
                Delimiter('<', '<');
                Dictionary(dictionary, isStream: false);
                Delimiter('>', '>');
                break;
            default:
                throw new InvalidOperationException($"The PDF writer does not know how to write a {item.GetType().Name}.");
        }
    }

    // What says how a stream is packed is said anew.
    private void Dictionary(PdfDictionary dictionary, bool isStream)
    {
        foreach (var (key, value) in dictionary.Elements)
        {
            if (value is null || (isStream && key is ("/Length" or "/Filter" or "/DecodeParms")))
                continue;
            Name(key);
            Item(value);
        }
    }

    private void Regular(string token)
    {
        if (_endsRegular && token[0] is not ('[' or '<' or '/' or '('))
            _text.Append(' ');
        _text.Append(token);
        _endsRegular = true;
    }

    private void Delimiter(params ReadOnlySpan<char> signs)
    {
        _text.Append(signs);
        _endsRegular = false;
    }

    // ISO 32000-1, 7.3.5: what is neither letter nor digit is safest as its number.
    private void Name(string name)
    {
        _text.Append('/');
        foreach (var b in Encoding.UTF8.GetBytes(name, 1, name.Length - 1))
        {
            if (char.IsAsciiLetterOrDigit((char)b) || b is (byte)'-' or (byte)'.' or (byte)'_' or (byte)'+' or (byte)',')
                _text.Append((char)b);
            else
                _text.Append(CultureInfo.InvariantCulture, $"#{b:X2}");
        }

        _endsRegular = true;
    }

    // ISO 32000-1, 7.9.2: plain when ASCII; bytes, or UTF-16 with a mark, in hexadecimal.
    private void Text(PdfString text)
    {
        if (!text.Value.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            Delimiter('(');
            foreach (var c in text.Value)
            {
                if (c is '(' or ')' or '\\')
                    _text.Append('\\');
                _text.Append(c);
            }

            Delimiter(')');
            return;
        }

        var isBytes = text.Encoding == PdfStringEncoding.RawEncoding;
        Delimiter('<');
        _text.Append(isBytes ? "" : "FEFF").Append(Convert.ToHexString((isBytes ? Encoding.Latin1 : Encoding.BigEndianUnicode).GetBytes(text.Value)));
        Delimiter('>');
    }
}
