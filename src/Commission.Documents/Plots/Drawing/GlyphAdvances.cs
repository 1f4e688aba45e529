using System.Buffers.Binary;

namespace Commission.Documents.Plots.Drawing;

/// <summary>
/// The advance widths of one TrueType face, read from its <c>cmap</c> (format 12) and <c>hmtx</c> tables. Enough to know how wide a
/// label will be, without a graphics library: neither PDF nor browser is running yet when labels are kept apart.
/// </summary>
internal sealed class GlyphAdvances
{
    private readonly byte[] _font;
    private readonly int _cmap;
    private readonly int _hmtx;
    private readonly int _longMetrics;
    private readonly double _unitsPerEm;
    private readonly Dictionary<int, double> _known = [];
    private readonly Lock _gate = new();

    private GlyphAdvances(byte[] font)
    {
        _font = font;
        _unitsPerEm = U16(Table("head") + 18);
        _longMetrics = U16(Table("hhea") + 34);
        _hmtx = Table("hmtx");
        _cmap = FullRepertoire(Table("cmap"));
    }

    /// <summary>Reads an embedded face.</summary>
    /// <param name="resource">Logical name of the resource, e.g. <c>Fonts/SourceSans3-Regular.ttf</c>.</param>
    /// <returns>The widths of the face.</returns>
    /// <exception cref="InvalidOperationException">The program was built without the face.</exception>
    public static GlyphAdvances FromResource(string resource)
    {
        using var stream = typeof(GlyphAdvances).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The typeface {resource} is not embedded in this build.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new GlyphAdvances(bytes);
    }

    /// <summary>Width of a text set solid (no kerning, as the PDF sets it).</summary>
    /// <param name="text">Text; characters the face lacks count as its empty box.</param>
    /// <param name="size">Size of type, any unit.</param>
    /// <returns>Width in the unit of <paramref name="size"/>.</returns>
    public double Width(string text, double size)
    {
        var sum = 0.0;
        lock (_gate)
        {
            foreach (var rune in text.EnumerateRunes())
            {
                if (!_known.TryGetValue(rune.Value, out var advance))
                {
                    advance = Advance(rune.Value);
                    _known.Add(rune.Value, advance);
                }

                sum += advance;
            }
        }

        return sum * size / _unitsPerEm;
    }

    private double Advance(int codePoint)
    {
        var glyph = Glyph(codePoint);
        return U16(_hmtx + 4 * Math.Min(glyph, _longMetrics - 1));
    }

    private int Glyph(int codePoint)
    {
        var groups = (int)U32(_cmap + 12);
        int low = 0, high = groups - 1;
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var at = _cmap + 16 + 12 * middle;
            if (codePoint < U32(at))
                high = middle - 1;
            else if (codePoint > U32(at + 4))
                low = middle + 1;
            else
                return (int)(U32(at + 8) + (codePoint - U32(at)));
        }

        return 0;
    }

    private int Table(string tag)
    {
        int count = U16(4);
        for (var i = 0; i < count; i++)
        {
            var at = 12 + 16 * i;
            if (_font[at] == tag[0] && _font[at + 1] == tag[1] && _font[at + 2] == tag[2] && _font[at + 3] == tag[3])
                return (int)U32(at + 8);
        }

        throw new InvalidOperationException($"The embedded typeface has no {tag} table.");
    }

    private int FullRepertoire(int cmap)
    {
        int count = U16(cmap + 2);
        for (var i = 0; i < count; i++)
        {
            var subtable = cmap + (int)U32(cmap + 8 + 8 * i);
            if (U16(subtable) == 12)
                return subtable;
        }

        throw new InvalidOperationException("The embedded typeface has no character map of format 12.");
    }

    private ushort U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_font.AsSpan(at));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(_font.AsSpan(at));
}
