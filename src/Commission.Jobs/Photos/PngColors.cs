using System.Buffers.Binary;

namespace Commission.Jobs.Photos;

/// <summary>What the header of a PNG says (ISO/IEC 15948 clause 11.2.2).</summary>
internal readonly record struct PngShape(int Width, int Height, int Depth, int Color)
{
    public const int Rgb = 2;
    public const int Indexed = 3;
    public const int GrayAlpha = 4;
    public const int RgbAlpha = 6;

    // As wide as a JPEG can be; a row then has 0.5 MB at most.
    private const int MostSide = 65_500;

    public bool IsInterlaced { get; private init; }

    public bool IsPalette => Color == Indexed;

    public bool IsGray => Color is 0 or GrayAlpha;

    public bool HasAlpha => Color is GrayAlpha or RgbAlpha;

    /// <summary>Samples of a pixel.</summary>
    public int Samples => Color switch { Rgb => 3, GrayAlpha => 2, RgbAlpha => 4, _ => 1 };

    /// <summary>Bytes from a sample to that of the pixel before it, at least 1.</summary>
    public int PixelBytes => Math.Max(1, Samples * Depth / 8);

    /// <summary>The greatest value of a sample.</summary>
    public int Most => (1 << Depth) - 1;

    /// <summary>Reads a header.</summary>
    /// <param name="header">The 13 bytes of its chunk.</param>
    /// <exception cref="PhotoStopException">There is no such PNG, or it is too large.</exception>
    public static PngShape Of(ReadOnlySpan<byte> header)
    {
        var width = BinaryPrimitives.ReadUInt32BigEndian(header);
        var height = BinaryPrimitives.ReadUInt32BigEndian(header[4..]);
        if (width is 0 or > int.MaxValue || height is 0 or > int.MaxValue || header[10] != 0 || header[11] != 0 || header[12] > 1)
            throw new PhotoStopException(PhotoFault.Damaged);
        var shape = new PngShape((int)width, (int)height, header[8], header[9]) { IsInterlaced = header[12] == 1 };
        var isKnown = shape.Color switch
        {
            0 => shape.Depth is 1 or 2 or 4 or 8 or 16,
            Indexed => shape.Depth is 1 or 2 or 4 or 8,
            Rgb or GrayAlpha or RgbAlpha => shape.Depth is 8 or 16,
            _ => false,
        };
        if (!isKnown)
            throw new PhotoStopException(PhotoFault.Damaged);
        if (width > MostSide || height > MostSide || (long)width * height > PngPhoto.MostPixels)
            throw new PhotoStopException(PhotoFault.TooManyPixels(shape.Width, shape.Height, PngPhoto.MostPixels));
        return shape;
    }

    public int RowBytes(int width) => ((width * Samples * Depth) + 7) / 8;

    /// <summary>A sample of a row, counted from its first; below 8 bits the leftmost is in the highest bits.</summary>
    public int Sample(ReadOnlySpan<byte> row, int index) => Depth switch
    {
        16 => BinaryPrimitives.ReadUInt16BigEndian(row[(2 * index)..]),
        8 => row[index],
        _ => (row[index * Depth / 8] >> (8 - Depth - (index * Depth % 8))) & Most,
    };

    /// <summary>A sample as one of 8 bits: of 16 the upper 8.</summary>
    public int InEightBits(int sample) => Depth switch { 16 => sample >> 8, 8 => sample, _ => sample * 255 / Most };
}

/// <summary>
/// Turns rows of a PNG into brightness, or into colors with what is transparent laid over white (ISO/IEC 15948 clauses 11.2.3 and 11.3.2.1). Brightness is that of
/// the stored colors, whatever shines through.
/// </summary>
internal sealed class PngColors
{
    private readonly PngShape _shape;
    private readonly bool _inColor;
    private readonly byte[] _gray;
    private readonly byte[] _colors;
    private readonly int[] _transparent;

    /// <summary>Prepares for a picture.</summary>
    /// <param name="shape">Its header.</param>
    /// <param name="palette">Its palette; empty when it has none.</param>
    /// <param name="transparency">Its chunk of transparency; empty when it has none.</param>
    /// <param name="inColor">Whether colors are wanted.</param>
    public PngColors(PngShape shape, byte[] palette, byte[] transparency, bool inColor)
    {
        (_shape, _inColor) = (shape, inColor);
        (_gray, _colors) = (new byte[256], new byte[3 * 256]);
        // A color that the palette does not have is black.
        for (var i = 0; i < palette.Length / 3; i++)
        {
            _gray[i] = Luma(palette[3 * i], palette[(3 * i) + 1], palette[(3 * i) + 2]);
            for (var k = 3 * i; k < (3 * i) + 3; k++)
                _colors[k] = OverWhite(palette[k], i < transparency.Length ? transparency[i] : 255);
        }

        // The one color that is transparent in a picture without alpha.
        _transparent = new int[transparency.Length == 2 * shape.Samples && !shape.HasAlpha && !shape.IsPalette ? shape.Samples : 0];
        for (var i = 0; i < _transparent.Length; i++)
            _transparent[i] = BinaryPrimitives.ReadUInt16BigEndian(transparency.AsSpan(2 * i)) & shape.Most;
    }

    /// <summary>What comes out.</summary>
    public PhotoSamples Samples => _inColor && !_shape.IsGray ? PhotoSamples.Rgb : PhotoSamples.Gray;

    /// <summary>Converts a row.</summary>
    /// <param name="row">The row without its filter.</param>
    /// <param name="pixels">Takes its pixels; as long as they are.</param>
    public void Convert(ReadOnlySpan<byte> row, Span<byte> pixels)
    {
        if (_inColor)
            Color(row, pixels);
        else
            Brightness(row, pixels);
    }

    private void Brightness(ReadOnlySpan<byte> row, Span<byte> brightness)
    {
        if (_shape.Depth < 8)
        {
            for (var x = 0; x < brightness.Length; x++)
            {
                var sample = _shape.Sample(row, x);
                brightness[x] = _shape.IsPalette ? _gray[sample] : (byte)_shape.InEightBits(sample);
            }

            return;
        }

        // Of 16 bits the upper 8.
        var step = _shape.PixelBytes;
        var next = _shape.Depth / 8;
        for (var x = 0; x < brightness.Length; x++)
        {
            var pixel = row.Slice(x * step, step);
            brightness[x] = _shape.Color switch
            {
                PngShape.Rgb or PngShape.RgbAlpha => Luma(pixel[0], pixel[next], pixel[2 * next]),
                PngShape.Indexed => _gray[pixel[0]],
                _ => pixel[0],
            };
        }
    }

    private void Color(ReadOnlySpan<byte> row, Span<byte> pixels)
    {
        if (_shape.IsPalette)
        {
            for (var x = 0; x < pixels.Length / 3; x++)
                _colors.AsSpan(3 * _shape.Sample(row, x), 3).CopyTo(pixels[(3 * x)..]);
            return;
        }

        var colors = _shape.IsGray ? 1 : 3;
        for (int x = 0, at = 0; x < pixels.Length / colors; x++, at += _shape.Samples)
        {
            var alpha = _shape.HasAlpha ? _shape.InEightBits(_shape.Sample(row, at + colors)) : IsTransparent(row, at) ? 0 : 255;
            for (var i = 0; i < colors; i++)
                pixels[(colors * x) + i] = OverWhite(_shape.InEightBits(_shape.Sample(row, at + i)), alpha);
        }
    }

    private bool IsTransparent(ReadOnlySpan<byte> row, int at)
    {
        for (var i = 0; i < _transparent.Length; i++)
        {
            if (_shape.Sample(row, at + i) != _transparent[i])
                return false;
        }

        return _transparent.Length > 0;
    }

    private static byte OverWhite(int sample, int alpha) => (byte)(((sample * alpha) + (255 * (255 - alpha)) + 127) / 255);

    // ITU-R BT.601: 0.299 R + 0.587 G + 0.114 B.
    private static byte Luma(int red, int green, int blue) => (byte)(((299 * red) + (587 * green) + (114 * blue)) / 1000);
}
