using System.Diagnostics;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Commission.Jobs.Photos;
using Commission.Messages;
using Xunit;

namespace Commission.Jobs.Tests.Photos;

/// <summary>Strangers' files named as photos: what is a picture is decoded to its end, what is none is told in words, and nothing brings the program down.</summary>
public sealed class PhotoReaderTests
{
    /// <summary>Color type and depth of every kind of PNG (ISO/IEC 15948 table 11.1).</summary>
    public static TheoryData<int, int> KindsOfPng() => new((0, 1), (0, 2), (0, 4), (0, 8), (0, 16), (2, 8), (2, 16), (3, 1), (3, 2), (3, 4), (3, 8), (4, 8), (4, 16), (6, 8), (6, 16));

    private const long Most = 64L << 20;

    // JPEG: ITU-T T.81; PNG: ISO/IEC 15948. A phone's picture has EXIF before it and its maker's notes behind it.
    [Theory]
    [InlineData("plate", "JPEG", 400, 300)]
    [InlineData("plate; progressive", "JPEG", 400, 300)]
    [InlineData("plate; png", "PNG", 400, 300)]
    [InlineData("plate; size 333x251", "JPEG", 333, 251)]
    [InlineData("plate; size 7x5", "JPEG", 7, 5)]
    [InlineData("plate; size 1x1; png", "PNG", 1, 1)]
    [InlineData("plate; orientation 6", "JPEG", 300, 400)]
    [InlineData("plate; orientation 3; png", "PNG", 400, 300)]
    [InlineData("plate; orientation 8; png", "PNG", 300, 400)]
    public void A_picture_is_read(string words, string format, int width, int height)
    {
        byte[] file = [.. DrawnPhoto.Of(words), .. new byte[5000]];
        var (facts, fault) = Read(file);
        Assert.Null(fault);
        Assert.Equal((format, width, height, (long)file.Length), (facts!.Format, facts.Width, facts.Height, facts.Bytes));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(file)), facts.Sha256);
        Assert.Null(facts.Taken);
    }

    // Every kind of PNG that ISO/IEC 15948 table 11.1 allows shows the same scene: to 1 bit of depth a coarse one.
    [Theory]
    [MemberData(nameof(KindsOfPng))]
    public void Each_kind_of_png_shows_the_same_scene(int color, int depth)
    {
        var scene = DrawnPhoto.Scene("gauge");
        var wanted = Read(DrawnPhoto.Jpeg(331, 253, scene, quality: 95)).Facts!.Print!.Value;
        foreach (var interlaced in new[] { false, true })
        {
            var (facts, fault) = Read(DrawnPhoto.Png(new PngKind(331, 253, depth, color, interlaced), scene));
            Assert.Null(fault);
            Assert.InRange(facts!.Print!.Value.DistanceTo(wanted), 0, depth switch { 1 => 90, 2 => 60, 4 => 20, _ => 10 });
        }
    }

    // Noise, a pixel to a cell: a filter undone wrongly anywhere would spoil all that lies behind it.
    [Fact]
    public void What_was_filtered_comes_back()
    {
        var random = new Random(20261130);
        var noise = Enumerable.Range(0, 64 * 64).Select(_ => (double)random.Next(256)).ToArray();
        PicturePrint Print(int filter, int color) => Read(DrawnPhoto.Png(new PngKind(64, 64, 8, color, Filter: filter), (x, y) => noise[((int)(y * 64) * 64) + (int)(x * 64)])).Facts!.Print!.Value;
        foreach (var color in new[] { 0, 2, 6 })
            Assert.All([1, 2, 3, 4], filter => Assert.Equal(Print(0, 0), Print(filter, color)));
    }

    // A table of EXIF that claims more entries than there is room for: what is there counts.
    [Fact]
    public void Exif_that_claims_too_much_spoils_no_picture()
    {
        var block = DrawnPhoto.Exif("2026:06:18 10:36:05", null, 6)!;
        (block[8], block[9]) = (0xFF, 0xFF);
        var (facts, _) = Read(DrawnPhoto.Jpeg(64, 48, DrawnPhoto.Scene("x"), exif: block));
        Assert.Equal((48, 10), (facts!.Width, facts.Taken!.Value.Clock.Hour));
    }

    // The picture as it is to be seen is the same whichever way the camera was held: EXIF 2.32, tag 274. The stored scene is turned back by hand.
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Orientation_turns_the_print(int orientation)
    {
        var scene = DrawnPhoto.Scene("turned");
        // Where a place of the stored picture is seen: 6, for one, is stored lying on its left side.
        Func<double, double, double> stored = orientation switch
        {
            2 => (x, y) => scene(1 - x, y),
            3 => (x, y) => scene(1 - x, 1 - y),
            4 => (x, y) => scene(x, 1 - y),
            5 => (x, y) => scene(y, x),
            6 => (x, y) => scene(1 - y, x),
            7 => (x, y) => scene(1 - y, 1 - x),
            _ => (x, y) => scene(y, 1 - x),
        };
        var wanted = Read(DrawnPhoto.Jpeg(400, 300, scene)).Facts!.Print!.Value;
        var turned = Read(DrawnPhoto.Jpeg(400, 300, stored, exif: DrawnPhoto.Exif(null, orientation: orientation))).Facts!.Print!.Value;
        Assert.InRange(turned.DistanceTo(wanted), 0, 16);
        Assert.True(Read(DrawnPhoto.Jpeg(400, 300, stored)).Facts!.Print!.Value.DistanceTo(wanted) > 60);
    }

    [Theory]
    [InlineData("2026:06:18 10:36:05", null, true, "2026-06-18T10:36:05", null)]
    [InlineData("2026:06:18 10:36:05", "-06:00", false, "2026-06-18T10:36:05", "-06:00:00")]
    [InlineData("2026:06:18 10:36:05", "+05:45", true, "2026-06-18T10:36:05", "05:45:00")]
    [InlineData("2026:06:18 10:36:05", "25:00", true, "2026-06-18T10:36:05", null)]
    [InlineData("0000:00:00 00:00:00", null, true, null, null)]
    [InlineData("yesterday", null, true, null, null)]
    public void The_cameras_time_is_read(string written, string? offset, bool little, string? clock, string? distance)
    {
        foreach (var file in new[] { DrawnPhoto.Jpeg(64, 48, DrawnPhoto.Scene("x"), exif: DrawnPhoto.Exif(written, offset, 1, little)), DrawnPhoto.Png(new PngKind(64, 48, 8, 0), DrawnPhoto.Scene("x"), DrawnPhoto.Exif(written, offset, 1, little)) })
        {
            var taken = Read(file).Facts!.Taken;
            Assert.Equal(clock, taken?.Clock.ToString("s"));
            Assert.Equal(distance, taken?.Offset?.ToString());
        }
    }

    // First bytes of the formats as their specifications give them (ISO/IEC 23008-12 brands for HEIC, from memory; RIFF, TIFF 6.0, GIF89a …).
    [Theory]
    [InlineData("0000001c 66747970 68656963 00000000", "HEIC")]
    [InlineData("00000018 66747970 6d696631 00000000", "HEIC")]
    [InlineData("0000001c 66747970 61766966 00000000", "AVIF")]
    [InlineData("0000001c 66747970 69736f6d 00000000", "video")]
    [InlineData("52494646 24000000 57454250 56503820", "WebP")]
    [InlineData("47494638 39610100", "GIF")]
    [InlineData("424d3600 00000000", "BMP")]
    [InlineData("49492a00 08000000", "TIFF")]
    [InlineData("4d4d002a 00000008", "TIFF")]
    [InlineData("ff0afa1f", "JPEG XL")]
    [InlineData("0000000c 4a584c20 0d0a870a", "JPEG XL")]
    [InlineData("0000000c 6a502020 0d0a870a", "JPEG 2000")]
    [InlineData("25504446 2d312e37", "PDF")]
    [InlineData("504b0304 14000000", "ZIP")]
    [InlineData("3c737667 20786d6c", "SVG")]
    [InlineData("00010203 04050607", "no picture")]
    [InlineData("636f6d6d 697373696f6e3a20310a", "text")]
    [InlineData("66c3bc72 20", "text")]
    [InlineData("fffe6300 6f00", "text")]
    [InlineData("", "empty")]
    [InlineData("ffd8", "no picture")]
    public void What_is_no_photo_is_told_in_words(string hex, string said)
    {
        var (facts, fault) = Read(Convert.FromHexString(hex.Replace(" ", "", StringComparison.Ordinal)));
        Assert.Null(facts);
        Assert.Contains(said, MessageWriter.Words.Format(fault!.Found(new("photo.jpg")), Language.English), StringComparison.Ordinal);
        Assert.NotEqual("", MessageWriter.Words.Format(fault.Advice, Language.English));
    }

    [Theory]
    [InlineData("plate; size 200x150")]
    [InlineData("plate; size 200x150; progressive")]
    [InlineData("plate; size 200x150; png")]
    public void A_file_that_was_cut_is_refused_wherever_it_was_cut(string words)
    {
        var whole = DrawnPhoto.Of(words);
        for (var part = 1; part <= 40; part++)
        {
            var (facts, fault) = Read(whole[..((whole.Length - 1) * part / 40)]);
            Assert.Null(facts);
            Assert.Contains(fault!.Code, (string[])["photo-damaged", "photo-format"]);
        }

        // An end that was put back does not help.
        Assert.Null(Read([.. whole[..(whole.Length / 2)], 0xFF, 0xD9]).Facts);
    }

    [Fact]
    public void Check_sums_of_a_png_are_held_against_it()
    {
        var whole = DrawnPhoto.Of("plate; size 200x150; png");
        for (var at = 8; at < whole.Length; at += 397)
        {
            var changed = (byte[])whole.Clone();
            changed[at] ^= 0x10;
            Assert.Null(Read(changed).Facts);
        }

        // Nothing but its sum says that a comment was changed.
        var comment = (byte[])whole.Clone();
        comment[whole.AsSpan().IndexOf("drawn"u8)] ^= 1;
        Assert.Equal(PhotoFault.Damaged, Read(comment).Fault);

        // A sum that is right around data that end too early.
        var data = whole.AsSpan().IndexOf("IDAT"u8) - 4;
        Assert.Equal(PhotoFault.Damaged, Read([.. whole[..data], .. DrawnPhoto.Chunk("IDAT", [0x78, 0x9C, 0x03, 0, 0, 0, 0, 1]), .. DrawnPhoto.Chunk("IEND", [])]).Fault);
        Assert.Equal(PhotoFault.Damaged, Read([.. whole[..data], .. DrawnPhoto.Chunk("IEND", [])]).Fault);
    }

    // 40,000 × 40,000 in 1 kB, in either format; a JPEG in passes whose whole would have to be held; a JPEG of more passes than any camera writes.
    [Fact]
    public void Sizes_are_bounded_before_anything_is_decoded()
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal("photo-size", Read(Resized(DrawnPhoto.Of("x; size 16x16"), 40_000, 40_000)).Fault!.Code);
        Assert.Equal("photo-size", Read(Resized(DrawnPhoto.Of("x; size 16x16; progressive"), 8_000, 8_000)).Fault!.Code);
        var png = DrawnPhoto.Of("x; size 16x16; png");
        byte[] header = [0, 0, 0x9C, 0x40, 0, 0, 0x9C, 0x40, .. png[24..29]];
        Assert.Equal("photo-size", Read([.. png[..8], .. DrawnPhoto.Chunk("IHDR", header), .. png[33..]]).Fault!.Code);
        byte[] tall = [0, 0, 0, 1, 0x7F, 0xFF, 0xFF, 0xFF, .. png[24..29]];
        Assert.Equal("photo-size", Read([.. png[..8], .. DrawnPhoto.Chunk("IHDR", tall), .. png[33..]]).Fault!.Code);
        Assert.Equal("photo-size", Read(ManyPasses(200)).Fault!.Code);
        Assert.Null(Read(ManyPasses(20)).Fault);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 8 << 20);
    }

    // 100 million pixels of nothing in 100 kB: a row at a time.
    [Fact]
    public void A_large_picture_needs_the_memory_of_its_rows()
    {
        var png = DrawnPhoto.Of("x; size 16x16; png");
        using var data = new MemoryStream();
        using (var packed = new ZLibStream(data, CompressionLevel.Fastest, leaveOpen: true))
        {
            for (var row = 0; row < 5_000; row++)
                packed.Write(new byte[20_001]);
        }

        byte[] bomb = [.. png[..8], .. DrawnPhoto.Chunk("IHDR", [0, 0, 0x4E, 0x20, 0, 0, 0x13, 0x88, .. png[24..29]]), .. DrawnPhoto.Chunk("IDAT", data.ToArray()), .. DrawnPhoto.Chunk("IEND", [])];
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Null(Read(bomb).Fault);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 2 << 20);
    }

    [Fact]
    public void A_file_that_grows_while_it_is_read_is_read_no_further() =>
        Assert.Throws<IOException>(() => PhotoReader.Read(new MemoryStream([.. DrawnPhoto.Of("plate"), .. new byte[100_000]]), 60_000));

    // Valid files with bytes changed, cut out, put in and repeated: never an exception, never more memory than a picture of its kind, never long.
    [Fact]
    public void Mutated_files_are_pictures_or_faults()
    {
        var random = new Random(20261130);
        byte[][] valid =
        [
            DrawnPhoto.Of("a; size 96x72"), DrawnPhoto.Of("b; size 96x72; progressive"), DrawnPhoto.Jpeg(96, 72, DrawnPhoto.Scene("c"), exif: DrawnPhoto.Exif("2026:06:18 10:36:05", "-06:00", 6), restart: 4),
            DrawnPhoto.Of("d; size 96x72; png; orientation 5"), DrawnPhoto.Png(new PngKind(61, 47, 4, 3, true), DrawnPhoto.Scene("e")), DrawnPhoto.Png(new PngKind(61, 47, 16, 6), DrawnPhoto.Scene("f")),
        ];
        var (read, refused) = (0, 0);
        for (var i = 0; i < Mutants; i++)
        {
            var file = Mutated(valid[i % valid.Length], random);
            var before = GC.GetAllocatedBytesForCurrentThread();
            var clock = Stopwatch.GetTimestamp();
            var (facts, fault) = Read(file);
            Assert.True(facts is null != fault is null);
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 450 << 20);
            Assert.InRange(Stopwatch.GetElapsedTime(clock).TotalSeconds, 0, 30);
            (read, refused) = facts is null ? (read, refused + 1) : (read + 1, refused);
        }

        Assert.True(read > Mutants / 50 && refused > Mutants / 3, $"{read} read, {refused} refused");
    }

    private static int Mutants => int.TryParse(Environment.GetEnvironmentVariable("COMMISSION_MUTANTS"), out var n) ? n : 900;

    internal static byte[] Mutated(byte[] valid, Random random)
    {
        var file = valid.ToList();
        for (var n = random.Next(1, 5); n > 0; n--)
        {
            // Half of them where the headers are.
            var at = random.Next(2) == 0 ? random.Next(Math.Min(700, file.Count)) : random.Next(file.Count);
            switch (random.Next(6))
            {
                case 0:
                    file[at] ^= (byte)(1 << random.Next(8));
                    break;
                case 1:
                    file[at] = (byte)random.Next(256);
                    break;
                case 2:
                    file[at] = random.Next(2) == 0 ? (byte)0xFF : (byte)0;
                    break;
                case 3:
                    file.RemoveRange(at, Math.Min(file.Count - at - 1, random.Next(1, 40)));
                    break;
                case 4:
                    file.InsertRange(at, file.GetRange(at, Math.Min(file.Count - at, random.Next(1, 200))));
                    break;
                default:
                    // A marker of a JPEG where none belongs.
                    file.InsertRange(at, [0xFF, (byte)random.Next(0xC0, 0x100)]);
                    break;
            }
        }

        var bytes = file.ToArray();
        return bytes[0] == 0x89 && random.Next(2) == 0 ? Summed(bytes) : bytes;
    }

    // The check sums of a PNG made right again, so that what lies behind them is reached.
    private static byte[] Summed(byte[] png)
    {
        List<byte> file = [.. png[..8]];
        for (var at = 8; at + 12 <= png.Length;)
        {
            var length = (int)Math.Min(System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at)), (uint)(png.Length - at - 12));
            file.AddRange(DrawnPhoto.Chunk(Encoding.Latin1.GetString(png, at + 4, 4).Select(c => c < 128 ? c : 'x').Aggregate("", (s, c) => s + c), png[(at + 8)..(at + 8 + length)]));
            at += length + 12;
        }

        return [.. file];
    }

    // Height and width in the frame header of a JPEG: ITU-T T.81 B.2.2.
    private static byte[] Resized(byte[] jpeg, int width, int height)
    {
        var file = (byte[])jpeg.Clone();
        var at = 2;
        while (file[at + 1] is not (0xC0 or 0xC2))
            at += 2 + (file[at + 2] << 8) + file[at + 3];
        (file[at + 5], file[at + 6], file[at + 7], file[at + 8]) = ((byte)(height >> 8), (byte)height, (byte)(width >> 8), (byte)width);
        return file;
    }

    // The last pass of a progressive JPEG again and again.
    private static byte[] ManyPasses(int count)
    {
        var file = DrawnPhoto.Of("x; size 16x16; progressive");
        var last = file.AsSpan().LastIndexOf<byte>([0xFF, 0xDA]);
        return [.. file[..^2], .. Enumerable.Repeat(file[last..^2], count).SelectMany(b => b), 0xFF, 0xD9];
    }

    private static PhotoReading Read(byte[] file) => PhotoReader.Read(new MemoryStream(file), Most);
}
