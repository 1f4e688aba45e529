using System.Globalization;
using System.Text;

namespace Commission.Documents.Archive;

/// <summary>
/// Takes apart a PDF that PDFsharp has just written without compression: a classic cross-reference table, one generation, lengths
/// given directly. It reads our own output only, never a file from outside.
/// </summary>
internal static class PdfObjects
{
    /// <summary>Reads all objects in the order of their numbers.</summary>
    /// <exception cref="InvalidOperationException">The file is not as PDFsharp writes it: a new version of PDFsharp, most likely.</exception>
    public static List<PdfObjectText> Read(ReadOnlySpan<byte> file, out int catalog, out int info)
    {
        var trailer = file[file.LastIndexOf("trailer"u8)..];
        catalog = Reference(trailer, "/Root "u8);
        info = Reference(trailer, "/Info "u8);
        var start = (int)Number(file[(file.LastIndexOf("startxref"u8) + 9)..]);
        var offsets = Offsets(file[start..]);
        var ends = Ends(offsets, start);
        var objects = new List<PdfObjectText>(offsets.Count);
        foreach (var (number, offset) in offsets) objects.Add(ReadObject(file[offset..ends[offset]], number));
        return objects;
    }

    /// <summary>The value of an entry of an object's dictionary that is a whole number; -1 when it is not there.</summary>
    public static int Integer(ReadOnlySpan<byte> body, ReadOnlySpan<byte> key)
    {
        var at = body.IndexOf(key);
        return at < 0 ? -1 : (int)Number(body[(at + key.Length)..]);
    }

    private static int Reference(ReadOnlySpan<byte> trailer, ReadOnlySpan<byte> key)
    {
        var number = Integer(trailer, key);
        return number > 0 ? number : throw Unexpected("the trailer");
    }

    private static List<(int Number, int Offset)> Offsets(ReadOnlySpan<byte> table)
    {
        if (!table.StartsWith("xref\n0 "u8)) throw Unexpected("the cross-reference table");
        var count = (int)Number(table[7..]);
        var entries = table[(7 + table[7..].IndexOf((byte)'\n') + 1)..];
        var offsets = new List<(int, int)>(count);
        for (var n = 1; n < count; n++)
        {
            var entry = entries.Slice(20 * n, 20);
            if (entry[17] == (byte)'n') offsets.Add((n, (int)Number(entry)));
        }

        return offsets;
    }

    // Where the next object begins: a text inside an object may hold any word of the file format.
    private static Dictionary<int, int> Ends(List<(int Number, int Offset)> offsets, int table)
    {
        var sorted = offsets.ConvertAll(entry => entry.Offset);
        sorted.Sort();
        var ends = new Dictionary<int, int>(sorted.Count);
        for (var i = 0; i < sorted.Count; i++) ends[sorted[i]] = i + 1 < sorted.Count ? sorted[i + 1] : table;
        return ends;
    }

    private static PdfObjectText ReadObject(ReadOnlySpan<byte> bytes, int number)
    {
        var opening = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n"));
        var closing = bytes.LastIndexOf("endobj"u8);
        if (!bytes.StartsWith(opening) || closing < 0) throw Unexpected("an object");
        bytes = bytes[opening.Length..closing];

        // PDFsharp escapes the line feeds of texts, so this can only be the keyword.
        var stream = bytes.IndexOf(">>\nstream\n"u8);
        if (stream < 0) return new PdfObjectText(number, bytes.TrimEnd("\n"u8).ToArray(), null);
        var body = bytes[..(stream + 2)].ToArray();
        var length = Integer(body, "/Length "u8);
        if (length < 0) throw Unexpected("a stream");
        return new PdfObjectText(number, body, bytes.Slice(stream + ">>\nstream\n".Length, length).ToArray());
    }

    private static long Number(ReadOnlySpan<byte> text)
    {
        var i = 0;
        while (i < text.Length && text[i] is (byte)' ' or (byte)'\n' or (byte)'\r') i++;
        var value = 0L;
        for (; i < text.Length && text[i] is >= (byte)'0' and <= (byte)'9'; i++) value = (value * 10) + (text[i] - '0');
        return value;
    }

    private static InvalidOperationException Unexpected(string what) => new($"PDFsharp wrote {what} in a form this program does not expect.");
}
