using System.Buffers.Binary;
using System.Collections.Concurrent;
using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using BitMiracle.LibJpeg.Classic;

namespace Commission;

/// <summary>
/// Photos of the tests, drawn from a few words: <c>gauge; size 320x240; taken 2026:06:18 10:36:00; like plate</c>. The first words are the scene: other
/// words, another picture. JPEG, or PNG with <c>png</c>; two photos of the same words are the same bytes.
/// </summary>
internal static class DrawnPhoto
{
    private static readonly ConcurrentDictionary<string, byte[]> Drawn = new(StringComparer.Ordinal);

    public static byte[] Of(string words) => Drawn.GetOrAdd(words, Draw);

    private static byte[] Draw(string words)
    {
        var parts = words.Split(';', StringSplitOptions.TrimEntries);
        var size = Said(parts, "size")?.Split('x').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToArray() ?? [400, 300];
        var exif = Exif(Said(parts, "taken"), Said(parts, "offset"), int.Parse(Said(parts, "orientation") ?? "1", CultureInfo.InvariantCulture));
        var scene = Scene(Said(parts, "like") ?? parts[0]);
        return parts.Contains("png")
            ? Png(new PngKind(size[0], size[1], 8, 0), scene, exif)
            : Jpeg(size[0], size[1], scene, int.Parse(Said(parts, "quality") ?? "80", CultureInfo.InvariantCulture), exif, parts.Contains("progressive"));
    }

    /// <summary>Bytes of a file of a test's folder: a photo where its name says so.</summary>
    public static byte[] OrText(string name, string text) => Path.GetExtension(name) is ".jpg" or ".png" ? Of(text) : Encoding.UTF8.GetBytes(text);

    private static string? Said(string[] parts, string key) => parts.FirstOrDefault(p => p.StartsWith(key + " ", StringComparison.Ordinal))?[(key.Length + 1)..];

    /// <summary>Brightness of a scene, 0 to 255, at places from 0 to 1: soft light, boxes and discs, all from the words.</summary>
    public static Func<double, double, double> Scene(string words)
    {
        var random = new Random(BinaryPrimitives.ReadInt32LittleEndian(SHA256.HashData(Encoding.UTF8.GetBytes(words))));
        var waves = Enumerable.Range(0, 12).Select(i => (X: random.NextDouble() * 6, Y: random.NextDouble() * 6, Phase: random.NextDouble() * 6.28, Height: 40 / (1.0 + (i / 3)))).ToArray();
        var shapes = Enumerable.Range(0, 9).Select(_ => (X: random.NextDouble(), Y: random.NextDouble(), Wide: 0.03 + (random.NextDouble() * 0.2), High: 0.03 + (random.NextDouble() * 0.2), Round: random.Next(2) == 0, Light: (random.NextDouble() * 160) - 80)).ToArray();
        return (x, y) =>
        {
            var light = 128.0;
            foreach (var w in waves)
                light += w.Height * Math.Sin((w.X * x * 6.28) + (w.Y * y * 6.28) + w.Phase) / 3;
            foreach (var s in shapes)
            {
                var (dx, dy) = ((x - s.X) / s.Wide, (y - s.Y) / s.High);
                if (s.Round ? (dx * dx) + (dy * dy) < 1 : Math.Abs(dx) < 1 && Math.Abs(dy) < 1)
                    light += s.Light;
            }

            return Math.Clamp(light, 0, 255);
        };
    }

    public static byte[] Jpeg(int width, int height, Func<double, double, double> scene, int quality = 80, byte[]? exif = null, bool progressive = false, int restart = 0)
    {
        using var file = new MemoryStream();
        var encoder = new jpeg_compress_struct(new jpeg_error_mgr()) { Image_width = width, Image_height = height, Input_components = 3, In_color_space = J_COLOR_SPACE.JCS_RGB };
        encoder.jpeg_stdio_dest(file);
        encoder.jpeg_set_defaults();
        encoder.jpeg_set_quality(quality, true);
        encoder.Restart_interval = restart;
        if (progressive)
            encoder.jpeg_simple_progression();
        encoder.jpeg_start_compress(true);
        if (exif is not null)
            encoder.jpeg_write_marker(0xE1, [.. "Exif\0\0"u8, .. exif]);
        byte[][] row = [new byte[width * 3]];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
                Array.Fill(row[0], (byte)scene((x + 0.5) / width, (y + 0.5) / height), 3 * x, 3);
            encoder.jpeg_write_scanlines(row, 1);
        }

        encoder.jpeg_finish_compress();
        return file.ToArray();
    }

    /// <summary>A PNG (ISO/IEC 15948).</summary>
    public static byte[] Png(PngKind kind, Func<double, double, double> scene, byte[]? exif = null)
    {
        using var data = new MemoryStream();
        using (var packed = new ZLibStream(data, CompressionLevel.Fastest, leaveOpen: true))
        {
            foreach (var (x0, y0, dx, dy) in kind.Interlaced ? [(0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2), (0, 1, 1, 2)] : new[] { (0, 0, 1, 1) })
                WritePass(packed, kind, scene, (x0, y0, dx, dy));
        }

        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, kind.Width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), kind.Height);
        (header[8], header[9], header[12]) = ((byte)kind.Depth, (byte)kind.Color, (byte)(kind.Interlaced ? 1 : 0));
        var bytes = data.ToArray();
        var half = bytes.Length / 2;
        return
        [
            0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR", header), .. kind.Color == 3 ? Chunk("PLTE", Palette(1 << kind.Depth)) : [], .. exif is null ? [] : Chunk("eXIf", exif),
            .. Chunk("tEXt", "Comment\0drawn"u8.ToArray()), .. Chunk("IDAT", bytes[..half]), .. Chunk("IDAT", []), .. Chunk("IDAT", bytes[half..]), .. Chunk("IEND", []),
        ];
    }

    private static void WritePass(ZLibStream packed, PngKind kind, Func<double, double, double> scene, (int X, int Y, int StepX, int StepY) pass)
    {
        var above = Array.Empty<byte>();
        var n = 0;
        for (var y = pass.Y; y < kind.Height; y += pass.StepY)
        {
            List<int> samples = [];
            for (var x = pass.X; x < kind.Width; x += pass.StepX)
            {
                var light = (int)scene((x + 0.5) / kind.Width, (y + 0.5) / kind.Height);
                var sample = kind.Depth == 16 ? light * 257 : kind.Depth == 8 ? light : light >> (8 - kind.Depth);
                samples.AddRange(kind.Color switch { 2 => [sample, sample, sample], 4 => [sample, 77], 6 => [sample, sample, sample, 77], _ => [sample] });
            }

            if (samples.Count == 0)
                return;
            var row = new byte[((samples.Count * kind.Depth) + 7) / 8];
            for (var i = 0; i < samples.Count; i++)
            {
                if (kind.Depth == 16)
                    BinaryPrimitives.WriteUInt16BigEndian(row.AsSpan(2 * i), (ushort)samples[i]);
                else
                    row[i * kind.Depth / 8] |= (byte)(samples[i] << (8 - kind.Depth - (i * kind.Depth % 8)));
            }

            if (above.Length == 0)
                above = new byte[row.Length];
            packed.Write(Filtered(row, above, kind.Filter ?? n++ % 5, Math.Max(1, kind.Depth * (kind.Color switch { 2 => 3, 4 => 2, 6 => 4, _ => 1 }) / 8)));
            above = row;
        }
    }

    private static byte[] Filtered(byte[] row, byte[] above, int filter, int pixel)
    {
        var filtered = new byte[row.Length + 1];
        filtered[0] = (byte)filter;
        for (var i = 0; i < row.Length; i++)
        {
            int left = i < pixel ? 0 : row[i - pixel], up = above[i], corner = i < pixel ? 0 : above[i - pixel];
            var (a, b, c) = (Math.Abs(up - corner), Math.Abs(left - corner), Math.Abs(left + up - (2 * corner)));
            var guess = filter switch { 1 => left, 2 => up, 3 => (left + up) / 2, 4 => a <= b && a <= c ? left : b <= c ? up : corner, _ => 0 };
            filtered[i + 1] = (byte)(row[i] - guess);
        }

        return filtered;
    }

    private static byte[] Palette(int colors) => [.. Enumerable.Range(0, colors).SelectMany(i => Enumerable.Repeat((byte)(i * 255 / (colors - 1)), 3))];

    /// <summary>A chunk with the check sum of ISO/IEC 15948 annex D.</summary>
    public static byte[] Chunk(string type, byte[] content)
    {
        byte[] summed = [.. Encoding.ASCII.GetBytes(type), .. content];
        var sum = uint.MaxValue;
        foreach (var value in summed)
        {
            sum ^= value;
            for (var i = 0; i < 8; i++)
                sum = (sum & 1) == 1 ? 0xEDB88320 ^ (sum >> 1) : sum >> 1;
        }

        var chunk = new byte[summed.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(chunk, content.Length);
        summed.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(chunk.Length - 4), ~sum);
        return chunk;
    }

    /// <summary>An EXIF block (EXIF 2.32): orientation, and time and offset of the picture where they are given; null when there is nothing to write.</summary>
    public static byte[]? Exif(string? taken, string? offset = null, int orientation = 1, bool little = true)
    {
        if (taken is null && orientation == 1)
            return null;
        var block = new byte[160];
        void U16(int at, int value)
        {
            if (little)
                BinaryPrimitives.WriteUInt16LittleEndian(block.AsSpan(at), (ushort)value);
            else
                BinaryPrimitives.WriteUInt16BigEndian(block.AsSpan(at), (ushort)value);
        }

        void U32(int at, int value)
        {
            if (little)
                BinaryPrimitives.WriteInt32LittleEndian(block.AsSpan(at), value);
            else
                BinaryPrimitives.WriteInt32BigEndian(block.AsSpan(at), value);
        }

        void Entry(int at, int tag, int type, int count, int value)
        {
            U16(at, tag);
            U16(at + 2, type);
            U32(at + 4, count);
            if (type == 3)
                U16(at + 8, value);
            else
                U32(at + 8, value);
        }

        (little ? "II"u8 : "MM"u8).CopyTo(block);
        U16(2, 42);
        U32(4, 8);
        U16(8, 2);
        Entry(10, 0x0112, 3, 1, orientation);
        Entry(22, 0x8769, 4, 1, 40);
        U16(40, taken is null ? 0 : offset is null ? 1 : 2);
        Entry(42, 0x9003, 2, 20, 80);
        Entry(54, 0x9011, 2, 7, 110);
        Encoding.ASCII.GetBytes(taken ?? "").CopyTo(block, 80);
        Encoding.ASCII.GetBytes(offset ?? "").CopyTo(block, 110);
        return block;
    }
}

/// <summary>A kind of PNG; of the five filters one for all rows, or each by turns.</summary>
internal sealed record PngKind(int Width, int Height, int Depth, int Color, bool Interlaced = false, int? Filter = null);
