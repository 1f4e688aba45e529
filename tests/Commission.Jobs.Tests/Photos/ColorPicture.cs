using System.Buffers.Binary;
using System.IO.Compression;
using BitMiracle.LibJpeg.Classic;

namespace Commission.Jobs.Tests.Photos;

/// <summary>Pictures of given colors, pixel by pixel, in every kind of file; and the colors of a file.</summary>
internal static class ColorPicture
{
    private static readonly (int X, int Y, int StepX, int StepY)[] Passes = [(0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2), (0, 1, 1, 2)];

    /// <summary>A JPEG with the colors' components as they are given: one gray, three RGB, four of inks; 4:4:4.</summary>
    public static byte[] Jpeg(int width, int height, Func<int, int, byte[]> color, J_COLOR_SPACE? stored = null, bool adobe = true, bool progressive = false, int quality = 95)
    {
        var colors = color(0, 0).Length;
        using var file = new MemoryStream();
        var encoder = new jpeg_compress_struct(new jpeg_error_mgr())
        {
            Image_width = width,
            Image_height = height,
            Input_components = colors,
            In_color_space = colors switch { 1 => J_COLOR_SPACE.JCS_GRAYSCALE, 3 => J_COLOR_SPACE.JCS_RGB, 4 => J_COLOR_SPACE.JCS_CMYK, _ => J_COLOR_SPACE.JCS_UNKNOWN },
        };
        encoder.jpeg_stdio_dest(file);
        encoder.jpeg_set_defaults();
        if (stored is { } space)
            encoder.jpeg_set_colorspace(space);
        if (!adobe)
            encoder.Write_Adobe_marker = false;
        encoder.jpeg_set_quality(quality, true);
        foreach (var component in encoder.Component_info)
            (component.H_samp_factor, component.V_samp_factor) = (1, 1);
        if (progressive)
            encoder.jpeg_simple_progression();
        encoder.jpeg_start_compress(true);
        for (var y = 0; y < height; y++)
            encoder.jpeg_write_scanlines([[.. Enumerable.Range(0, width).SelectMany(x => color(x, y))]], 1);
        encoder.jpeg_finish_compress();
        return file.ToArray();
    }

    /// <summary>
    /// A JPEG of red, green and blue whose brightness and chroma have so many samples across and down, each that of the pixel where it begins. Put together
    /// from three gray ones, a scan to each component (ITU-T T.81 A.2.2: the blocks of such a scan lie as those of a gray picture).
    /// </summary>
    public static byte[] Sampled(int width, int height, Func<int, int, byte[]> color, (int Across, int Down) brightness, (int Across, int Down) chroma)
    {
        var (most, mostDown) = (Math.Max(brightness.Across, chroma.Across), Math.Max(brightness.Down, chroma.Down));
        List<byte> frame = [8, (byte)(height >> 8), (byte)height, (byte)(width >> 8), (byte)width, 3];
        List<byte> tables = [];
        List<byte> scans = [];
        for (var i = 0; i < 3; i++)
        {
            var (n, samples) = (i, i == 0 ? brightness : chroma);
            var plane = Jpeg(((width * samples.Across) + most - 1) / most, ((height * samples.Down) + mostDown - 1) / mostDown, (x, y) => [Component(n, color(x * most / samples.Across, y * mostDown / samples.Down))]);
            frame.AddRange([(byte)(i + 1), (byte)((samples.Across << 4) + samples.Down), 0]);
            tables = [.. Segments(plane).Where(s => s.Marker is 0xDB or 0xC4).SelectMany(s => Segment(s.Marker, s.Content))];
            scans.AddRange([.. Segment(0xDA, 1, (byte)(i + 1), 0, 0, 63, 0), .. ScanData(plane)[..^2]]);
        }

        return [0xFF, 0xD8, .. tables, .. Segment(0xC0, [.. frame]), .. scans, 0xFF, 0xD9];

        // ITU-T T.871 clause 7.
        static byte Component(int i, byte[] c) => (byte)Math.Round(Math.Clamp(
            i switch
            {
                0 => (0.299 * c[0]) + (0.587 * c[1]) + (0.114 * c[2]),
                1 => 128 - (0.168736 * c[0]) - (0.331264 * c[1]) + (0.5 * c[2]),
                _ => 128 + (0.5 * c[0]) - (0.418688 * c[1]) - (0.081312 * c[2]),
            },
            0,
            255));
    }

    /// <summary>A PNG of samples as they are stored, without filters.</summary>
    /// <param name="shape">Width, height, depth, kind of color.</param>
    /// <param name="samples">Samples of a pixel.</param>
    /// <param name="interlaced">Whether it is stored in seven passes.</param>
    /// <param name="before">Chunks before the data.</param>
    /// <param name="after">Chunks behind them.</param>
    public static byte[] Png((int Width, int Height, int Depth, int Color) shape, Func<int, int, int[]> samples, bool interlaced = false, byte[]? before = null, byte[]? after = null)
    {
        using var data = new MemoryStream();
        using (var packed = new ZLibStream(data, CompressionLevel.Fastest, leaveOpen: true))
        {
            foreach (var (x0, y0, stepX, stepY) in interlaced ? Passes : [(0, 0, 1, 1)])
            {
                for (var y = y0; y < shape.Height && x0 < shape.Width; y += stepY)
                {
                    var bits = Enumerable.Range(0, (shape.Width - x0 + stepX - 1) / stepX).SelectMany(i => samples(x0 + (i * stepX), y)).SelectMany(s => Enumerable.Range(0, shape.Depth).Select(b => (s >> (shape.Depth - 1 - b)) & 1)).ToArray();
                    var row = new byte[(bits.Length + 7) / 8];
                    for (var i = 0; i < bits.Length; i++)
                        row[i / 8] |= (byte)(bits[i] << (7 - (i % 8)));
                    packed.Write([0, .. row]);
                }
            }
        }

        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, shape.Width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), shape.Height);
        (header[8], header[9], header[12]) = ((byte)shape.Depth, (byte)shape.Color, (byte)(interlaced ? 1 : 0));
        return
        [
            0x89, .. "PNG\r\n\u001a\n"u8, .. DrawnPhoto.Chunk("IHDR", header), .. before ?? [], .. DrawnPhoto.Chunk("IDAT", data.ToArray()), .. after ?? [], .. DrawnPhoto.Chunk("IEND", []),
        ];
    }

    /// <summary>A segment of a JPEG.</summary>
    public static byte[] Segment(int marker, params byte[] content) => [0xFF, (byte)marker, (byte)((content.Length + 2) >> 8), (byte)(content.Length + 2), .. content];

    /// <summary>A JPEG with segments behind its first marker.</summary>
    public static byte[] With(byte[] jpeg, params byte[][] segments) => [.. jpeg[..2], .. segments.SelectMany(s => s), .. jpeg[2..]];

    /// <summary>The segments of a JPEG up to its first scan, their markers and contents.</summary>
    public static List<(int Marker, byte[] Content)> Segments(byte[] jpeg)
    {
        List<(int, byte[])> segments = [];
        for (var at = 2; ; at += 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 2)))
        {
            Assert255(jpeg[at]);
            segments.Add((jpeg[at + 1], jpeg[(at + 4)..(at + 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 2)))]));
            if (jpeg[at + 1] == 0xDA)
                return segments;
        }
    }

    /// <summary>What lies behind the header of the first scan.</summary>
    public static byte[] ScanData(byte[] jpeg) => jpeg[(2 + Segments(jpeg).Sum(s => s.Content.Length + 4))..];

    /// <summary>Colors of a JPEG as a viewer shows them that goes by Adobe's segment.</summary>
    public static Func<int, int, (int Red, int Green, int Blue)> Colors(byte[] jpeg)
    {
        var decoder = new jpeg_decompress_struct(new jpeg_error_mgr());
        decoder.jpeg_stdio_src(new MemoryStream(jpeg));
        decoder.jpeg_read_header(true);
        if (decoder.Num_components == 3)
            decoder.Jpeg_color_space = Segments(jpeg).Any(s => s.Marker == 0xEE && s.Content[11] == 0) ? J_COLOR_SPACE.JCS_RGB : J_COLOR_SPACE.JCS_YCbCr;
        decoder.Out_color_space = J_COLOR_SPACE.JCS_RGB;
        decoder.jpeg_start_decompress();
        var rows = new byte[decoder.Output_height][];
        for (var y = 0; y < rows.Length; y++)
        {
            rows[y] = new byte[decoder.Output_width * 3];
            decoder.jpeg_read_scanlines([rows[y]], 1);
        }

        return (x, y) => (rows[y][3 * x], rows[y][(3 * x) + 1], rows[y][(3 * x) + 2]);
    }

    private static void Assert255(byte value)
    {
        if (value != 0xFF)
            throw new InvalidOperationException("A segment does not begin where the one before it ends.");
    }
}
