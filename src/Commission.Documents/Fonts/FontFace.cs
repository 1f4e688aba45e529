using System.Buffers.Binary;

namespace Commission.Documents.Fonts;

/// <summary>
/// Widths of one face of the embedded typeface, read once from its tables (OpenType: head, hhea, hmtx, cmap formats 4 and 12).
/// Measuring a text is then a sum over an array.
/// </summary>
internal sealed class FontFace
{
    // Beyond this only a few rare signs have glyphs.
    private const int DenseLimit = 0x2800;

    private readonly float[] _dense = new float[DenseLimit];
    private readonly Dictionary<int, float> _rare = [];
    private readonly Dictionary<int, char> _firstOfGlyph = [];
    private readonly Dictionary<char, char> _twins = [];

    private FontFace(string name)
    {
        Name = name;
        Data = EmbeddedFonts.Read(name);
        ReadWidths(Data);
        _firstOfGlyph.Clear();
    }

    public static FontFace Regular => Faces.Regular;

    public static FontFace SemiBold => Faces.SemiBold;

    public static FontFace Italic => Faces.Italic;

    /// <summary>Name of the font file without its ending.</summary>
    public string Name { get; }

    /// <summary>The font file.</summary>
    public byte[] Data { get; }

    /// <summary>True when the face can draw the character.</summary>
    public bool Has(char c) => c < DenseLimit ? _dense[c] > 0 : _rare.ContainsKey(c);

    /// <summary>Advance width of a character at size 1.</summary>
    public float Advance(char c) => c < DenseLimit ? _dense[c] : _rare.GetValueOrDefault(c);

    /// <summary>
    /// The first character that has the same glyph, such as the micro sign for the Greek mu. A PDF maps a glyph back to one
    /// character only; drawing always the same one makes what is copied from a page predictable.
    /// </summary>
    public char Twin(char c) => _twins.GetValueOrDefault(c, c);

    /// <summary>Width of a text.</summary>
    public double Width(ReadOnlySpan<char> text, double size)
    {
        var sum = 0.0;
        foreach (var c in text)
            sum += Advance(c);
        return sum * size;
    }

    private void ReadWidths(ReadOnlySpan<byte> font)
    {
        var unitsPerEm = (float)U16(Table(font, "head"u8), 18);
        var metricCount = U16(Table(font, "hhea"u8), 34);
        var hmtx = Table(font, "hmtx"u8);
        var cmap = Table(font, "cmap"u8);
        var map = Subtable(cmap, 12, out var isWide);
        if (!isWide)
            map = Subtable(cmap, 4, out _);
        if (isWide)
            ReadWide(map, hmtx, metricCount, unitsPerEm);
        else
            ReadBasic(map, hmtx, metricCount, unitsPerEm);
    }

    private void ReadWide(ReadOnlySpan<byte> map, ReadOnlySpan<byte> hmtx, int metricCount, float unitsPerEm)
    {
        var groups = (int)BinaryPrimitives.ReadUInt32BigEndian(map[12..]);
        for (var g = 0; g < groups; g++)
        {
            var group = map.Slice(16 + (12 * g), 12);
            var first = (int)BinaryPrimitives.ReadUInt32BigEndian(group);
            var last = (int)BinaryPrimitives.ReadUInt32BigEndian(group[4..]);
            var glyph = (int)BinaryPrimitives.ReadUInt32BigEndian(group[8..]);
            for (var c = first; c <= last && c <= char.MaxValue; c++)
                Set(c, glyph + c - first, hmtx, metricCount, unitsPerEm);
        }
    }

    private void ReadBasic(ReadOnlySpan<byte> map, ReadOnlySpan<byte> hmtx, int metricCount, float unitsPerEm)
    {
        var segments = U16(map, 6) / 2;
        for (var s = 0; s < segments; s++)
        {
            var end = U16(map, 14 + (2 * s));
            var start = U16(map, 16 + (2 * segments) + (2 * s));
            var delta = U16(map, 16 + (4 * segments) + (2 * s));
            var offsetAt = 16 + (6 * segments) + (2 * s);
            var offset = U16(map, offsetAt);
            for (var c = start; c <= end && c != char.MaxValue; c++)
            {
                var glyph = offset == 0 ? c + delta : U16(map, offsetAt + offset + (2 * (c - start)));
                if (offset != 0 && glyph != 0)
                    glyph += delta;
                Set(c, glyph & 0xFFFF, hmtx, metricCount, unitsPerEm);
            }
        }
    }

    private void Set(int c, int glyph, ReadOnlySpan<byte> hmtx, int metricCount, float unitsPerEm)
    {
        if (glyph == 0)
            return;
        if (!_firstOfGlyph.TryAdd(glyph, (char)c))
            _twins[(char)c] = _firstOfGlyph[glyph];
        var width = U16(hmtx, 4 * Math.Min(glyph, metricCount - 1)) / unitsPerEm;
        if (c < DenseLimit)
            _dense[c] = width;
        else
            _rare[c] = width;
    }

    private static ReadOnlySpan<byte> Table(ReadOnlySpan<byte> font, ReadOnlySpan<byte> tag)
    {
        var count = U16(font, 4);
        for (var i = 0; i < count; i++)
        {
            var entry = font.Slice(12 + (16 * i), 16);
            if (entry[..4].SequenceEqual(tag))
                return font.Slice((int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]), (int)BinaryPrimitives.ReadUInt32BigEndian(entry[12..]));
        }

        throw new InvalidOperationException("The embedded font lacks a table it needs.");
    }

    private static ReadOnlySpan<byte> Subtable(ReadOnlySpan<byte> cmap, int format, out bool found)
    {
        var count = U16(cmap, 2);
        for (var i = 0; i < count; i++)
        {
            var subtable = cmap[(int)BinaryPrimitives.ReadUInt32BigEndian(cmap[(8 + (8 * i))..])..];
            if (U16(subtable, 0) != format)
                continue;
            found = true;
            return subtable;
        }

        found = false;
        return default;
    }

    private static int U16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);

    private static class Faces
    {
        internal static readonly FontFace Regular = new("SourceSans3-Regular");
        internal static readonly FontFace SemiBold = new("SourceSans3-SemiBold");
        internal static readonly FontFace Italic = new("SourceSans3-Italic");
    }
}
