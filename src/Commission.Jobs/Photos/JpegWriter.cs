using BitMiracle.LibJpeg.Classic;

namespace Commission.Jobs.Photos;

/// <summary>Writes a picture as a baseline JPEG with whole numbers only: the same picture, the same bytes.</summary>
internal static class JpegWriter
{
    // Of 100: no blocks are seen on paper, and a photo for half a page's width has some ten kilobytes.
    private const int Quality = 82;

    private const int MarkerOfExif = 0xE1;

    // A segment's length has two bytes and counts itself.
    private const int MostInSegment = 65_533;

    /// <summary>Writes a picture.</summary>
    /// <param name="rows">Its rows from the top, at least one.</param>
    /// <param name="samples">What their bytes are.</param>
    /// <param name="exif">A block of EXIF from its byte order on; empty to write none. One that is too long for a JPEG is left out.</param>
    public static byte[] Write(byte[][] rows, PhotoSamples samples, ReadOnlySpan<byte> exif)
    {
        var colors = samples == PhotoSamples.Gray ? 1 : 3;
        using var file = new MemoryStream();
        var encoder = new jpeg_compress_struct(new jpeg_error_mgr())
        {
            Image_width = rows[0].Length / colors,
            Image_height = rows.Length,
            Input_components = colors,
            In_color_space = samples switch { PhotoSamples.Gray => J_COLOR_SPACE.JCS_GRAYSCALE, PhotoSamples.Rgb => J_COLOR_SPACE.JCS_RGB, _ => J_COLOR_SPACE.JCS_YCbCr },
        };
        encoder.jpeg_stdio_dest(file);
        encoder.jpeg_set_defaults();
        encoder.jpeg_set_quality(Quality, true);
        encoder.Dct_method = J_DCT_METHOD.JDCT_ISLOW;
        encoder.Optimize_coding = true;
        encoder.jpeg_start_compress(true);
        byte[] block = exif.IsEmpty ? [] : [.. ExifReader.Sign, .. exif];
        if (block.Length is > 0 and <= MostInSegment)
            encoder.jpeg_write_marker(MarkerOfExif, block);
        var one = new byte[1][];
        foreach (var row in rows)
        {
            one[0] = row;
            encoder.jpeg_write_scanlines(one, 1);
        }

        encoder.jpeg_finish_compress();
        return file.ToArray();
    }
}
