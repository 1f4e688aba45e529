using System.Buffers.Binary;
using System.Diagnostics;
using System.IO.Compression;
using System.Security.Cryptography;
using BitMiracle.LibJpeg.Classic;
using Commission.Jobs.Photos;
using Xunit;

namespace Commission.Jobs.Tests.Photos;

/// <summary>Photos made ready for a page: turned the right way, small enough, the right colors, and nothing in them but the picture.</summary>
public sealed class PhotoForPageTests
{
    // 47° 22' 36.84" as three fractions (EXIF 2.32, tag GPSLatitude, from memory).
    private static readonly byte[] Latitude = [0x2F, 0, 0, 0, 1, 0, 0, 0, 0x16, 0, 0, 0, 1, 0, 0, 0, 0x64, 0x0E, 0, 0, 0x64, 0, 0, 0];

    private static readonly string[] Notes = ["Exif", "JFXX", "http://ns.adobe.com/xap", "ICC_PROFILE", "maker's note", "a comment", "Photoshop", "thumbnail", "MPF", "behind", "between"];

    private static readonly byte[] Red = [220, 40, 40];
    private static readonly byte[] Green = [40, 180, 60];
    private static readonly byte[] Blue = [50, 60, 200];
    private static readonly byte[] Yellow = [230, 220, 60];

    // EXIF 2.32, tag 274, from memory: the side of the seen picture where row 0 of the stored one lies, then that of column 0.
    private static readonly (char Row, char Column)[] Sides = [('t', 'l'), ('t', 'r'), ('b', 'r'), ('b', 'l'), ('l', 't'), ('r', 't'), ('r', 'b'), ('l', 'b')];

    public static TheoryData<int> Orientations => [1, 2, 3, 4, 5, 6, 7, 8];

    [Theory]
    [MemberData(nameof(Orientations))]
    public void A_large_photo_is_turned_upright(int orientation)
    {
        var (width, height) = orientation > 4 ? (128, 192) : (192, 128);
        var exif = Exif(orientation);
        var chunk = DrawnPhoto.Chunk("eXIf", exif);
        int[] Stored(int x, int y) => Array.ConvertAll(Corners(orientation, x, y, 192, 128), c => (int)c);
        foreach (var file in new[]
        {
            ColorPicture.With(ColorPicture.Jpeg(width, height, (x, y) => Corners(orientation, x, y, 192, 128)), ExifSegment(exif)),
            ColorPicture.With(ColorPicture.Jpeg(width, height, (x, y) => Corners(orientation, x, y, 192, 128), progressive: true), ExifSegment(exif)),
            ColorPicture.Png((width, height, 8, 2), Stored, before: chunk),
            ColorPicture.Png((width, height, 8, 2), Stored, interlaced: true, after: chunk),
        })
        {
            var photo = Make(file, 96, 96);
            Assert.Equal((96, 64, 1, false), (photo.Width, photo.Height, photo.Orientation, photo.IsGray));
            AssertCorners(ColorPicture.Colors(photo.Jpeg), 96, 64);
        }
    }

    [Theory]
    [MemberData(nameof(Orientations))]
    public void A_small_jpeg_keeps_its_data_and_hands_its_orientation_on(int orientation)
    {
        var (width, height) = orientation > 4 ? (64, 96) : (96, 64);
        foreach (var progressive in new[] { false, true })
        {
            var bare = ColorPicture.Jpeg(width, height, (x, y) => Corners(orientation, x, y, 96, 64), progressive: progressive);
            var photo = Make(ColorPicture.With(bare, ExifSegment(Exif(orientation))), 96, 64);
            Assert.Equal((width, height, orientation, false), (photo.Width, photo.Height, photo.Orientation, photo.IsGray));
            Assert.Equal((96, 64), photo.Seen);
            Assert.Equal(bare, photo.Jpeg);

            // A browser turns it as its own small block says.
            var turning = photo.JpegThatTurnsItself();
            if (orientation == 1)
            {
                Assert.Same(photo.Jpeg, turning);
                continue;
            }

            var block = Assert.Single(ColorPicture.Segments(turning), s => s.Marker == 0xE1).Content;
            Assert.Equal((32, orientation), (block.Length, ExifReader.Read(block.AsSpan(6)).Orientation));
            Assert.Equal(0xE0, ColorPicture.Segments(turning)[0].Marker);
            Assert.Equal(photo.Jpeg.Length + 36, turning.Length);
            Assert.Equal(ColorPicture.ScanData(bare), ColorPicture.ScanData(turning));
            AssertCorners(ColorPicture.Colors(Make(turning, 95, 64).Jpeg), 95, 63);
        }
    }

    // The box is one for the photo as it is seen.
    [Fact]
    public void Whether_it_fits_is_seen_upright()
    {
        var jpeg = DrawnPhoto.Of("plate; size 80x60; orientation 6");
        Assert.Equal((80, 60, 6), Shape(Make(jpeg, 60, 80)));
        Assert.Equal((45, 60, 1), Shape(Make(jpeg, 80, 60)));
        var png = DrawnPhoto.Of("plate; size 80x60; orientation 6; png");
        Assert.Equal((60, 80, 1), Shape(Make(png, 60, 80)));
        Assert.Equal((45, 60, 1), Shape(Make(png, 80, 60)));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Nothing_goes_along_but_the_picture(bool progressive)
    {
        var bare = ColorPicture.Jpeg(96, 64, (x, y) => Corners(1, x, y, 96, 64), progressive: progressive);
        var noted = Noted(bare);
        foreach (var note in Notes)
            Assert.True(Holds(noted, note), note);

        var kept = Make(noted, 96, 64);
        Assert.Equal(bare, kept.Jpeg);
        var small = Make(noted, 48, 48);
        Assert.Equal([0xE0, 0xDB, 0xDB, 0xC0, 0xC4, 0xC4, 0xC4, 0xC4, 0xDA], ColorPicture.Segments(small.Jpeg).Select(s => s.Marker));
        foreach (var photo in new[] { kept, small })
        {
            Assert.All(Notes, note => Assert.False(Holds(photo.Jpeg, note), note));
            Assert.Equal(-1, photo.Jpeg.AsSpan().IndexOf(Latitude));
        }

        var png = Make(ColorPicture.Png((96, 64, 8, 0), (x, _) => [x], before: [.. DrawnPhoto.Chunk("eXIf", Exif(3)), .. DrawnPhoto.Chunk("tEXt", "Comment\0a comment"u8.ToArray())]), 96, 64);
        Assert.All(Notes, note => Assert.False(Holds(png.Jpeg, note), note));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void With_the_location_its_segments_stay(bool progressive)
    {
        var noted = Noted(ColorPicture.Jpeg(96, 64, (x, y) => Corners(1, x, y, 96, 64), progressive: progressive), 6);
        var kept = Make(noted, 96, 96, keepLocation: true);
        Assert.Equal((96, 64, 6), Shape(kept));
        // All but what lies between segments and behind the picture.
        Assert.All(Notes.Except(["behind", "between"]), note => Assert.True(Holds(kept.Jpeg, note), note));
        Assert.NotEqual(-1, kept.Jpeg.AsSpan().IndexOf(Latitude));
        Assert.True(kept.Jpeg.AsSpan().EndsWith(noted.AsSpan()[noted.AsSpan().IndexOf<byte>([0xFF, 0xDA])..^"behind".Length]));
        Assert.Same(kept.Jpeg, kept.JpegThatTurnsItself());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void With_the_location_the_block_of_a_turned_photo_says_upright(bool little)
    {
        var exif = Exif(6, little);
        foreach (var file in new[] { Noted(DrawnPhoto.Jpeg(96, 64, DrawnPhoto.Scene("x")), 6, little), ColorPicture.Png((96, 64, 8, 0), (x, _) => [x], after: DrawnPhoto.Chunk("eXIf", exif)) })
        {
            var photo = Make(file, 30, 48, keepLocation: true);
            Assert.Equal((30, 45, 1), Shape(photo));
            var block = Assert.Single(ColorPicture.Segments(photo.Jpeg), s => s.Marker == 0xE1).Content;
            Assert.True(block.AsSpan().StartsWith("Exif\0\0"u8));
            Assert.Equal(ExifReader.Read(exif) with { Orientation = 1 }, ExifReader.Read(block.AsSpan(6)));
            // One byte of the block is another.
            Assert.Equal(exif.Length, block.Length - 6);
            Assert.Equal(1, exif.Zip(block.Skip(6)).Count(b => b.First != b.Second));
            Assert.NotEqual(-1, block.AsSpan().IndexOf(Latitude));
        }
    }

    // A second entry of the tag, one of another type, and a block that claims more than it has.
    [Fact]
    public void No_reader_of_the_block_turns_the_photo_again()
    {
        byte[] block = [.. "II*\0"u8, 8, 0, 0, 0, 3, 0, .. Entry(3, 6), .. Entry(4, 8), .. Entry(3, 3)];
        Assert.Equal([.. block[..10], .. Entry(3, 1), .. Entry(3, 1), .. Entry(3, 1)], ExifWriter.Upright(block));
        Assert.Equal([.. block[..10], .. Entry(3, 1), .. block[22..33]], ExifWriter.Upright(block.AsSpan(0, 33)));
        foreach (var odd in new byte[][] { [], [.. "II*\0"u8], [.. "MM\0*"u8, 0xFF, 0xFF, 0xFF, 0xFF], [.. "MM\0*"u8, 0, 0, 0, 6] })
            Assert.Equal(odd, ExifWriter.Upright(odd));

        static byte[] Entry(byte type, byte value) => [0x12, 1, type, 0, 1, 0, 0, 0, value, 0, 0, 0];
    }

    // A block as long as a PNG may hold one, longer than a segment of a JPEG.
    [Fact]
    public void A_block_too_long_for_a_jpeg_is_left_out()
    {
        foreach (var (length, stays) in new[] { (65_527, true), (65_528, false) })
        {
            byte[] exif = [.. Exif(1), .. new byte[length - Exif(1).Length]];
            var photo = Make(ColorPicture.Png((9, 9, 8, 0), (x, _) => [x], before: DrawnPhoto.Chunk("eXIf", exif)), 9, 9, keepLocation: true);
            Assert.Equal(stays, Holds(photo.Jpeg, "Exif"));
        }
    }

    // ISO/IEC 15948 table 11.1, each kind with and without passes; a patch of a color is 16 pixels wide. What alpha lets through is white.
    [Theory]
    [MemberData(nameof(PhotoReaderTests.KindsOfPng), MemberType = typeof(PhotoReaderTests))]
    public void Each_kind_of_png_shows_its_colors(int color, int depth)
    {
        var most = (1 << depth) - 1;
        // Four patches: at half of the full sample 200, 100, 50 and 0 in 255, alpha 255, 255, 0 and 128.
        int[][] palette = [[200, 100, 50], [10, 200, 90], [0, 0, 0], [90, 10, 250]];
        int[] alphas = [255, 255, 0, 128];
        int Of(int value) => ((value * most) + 127) / 255;
        int[] Samples(int x, int y)
        {
            var patch = (x / 16) + (y / 16 * 2);
            var c = palette[patch];
            return color switch { 0 => [Of(c[0])], 2 => [.. c.Select(Of)], 3 => [patch & most], 4 => [Of(c[0]), Of(alphas[patch])], _ => [.. c.Select(Of), Of(alphas[patch])] };
        }

        byte[] chunks = color == 3 ? [.. DrawnPhoto.Chunk("PLTE", [.. palette.SelectMany(c => c).Select(c => (byte)c)]), .. DrawnPhoto.Chunk("tRNS", [255, 255, 0])] : [];
        foreach (var interlaced in new[] { false, true })
        {
            var photo = Make(ColorPicture.Png((32, 32, depth, color), Samples, interlaced, chunks), 32, 32);
            Assert.Equal((32, 32, 1), Shape(photo));
            Assert.Equal(color is 0 or 4, photo.IsGray);
            var seen = ColorPicture.Colors(photo.Jpeg);
            for (var patch = 0; patch < 4; patch++)
            {
                var stored = Samples(patch % 2 * 16, patch / 2 * 16);
                var alpha = color switch { 3 => (stored[0] == 2 ? 0 : 255), 4 or 6 => alphas[patch], _ => 255 };
                var wanted = (color switch { 3 => palette[stored[0]], 2 or 6 => palette[patch], _ => Enumerable.Repeat(stored[0] * 255 / most, 3) }).Select(c => 255 + ((c - 255) * alpha / 255)).ToArray();
                AssertNear((wanted[0], wanted[1], wanted[2]), seen((patch % 2 * 16) + 8, (patch / 2 * 16) + 8));
            }
        }
    }

    // ISO/IEC 15948 clause 11.3.2.1: one color without alpha is transparent, to its last bit.
    [Theory]
    [InlineData(0, 4, 5, 6)]
    [InlineData(0, 8, 50, 51)]
    [InlineData(0, 16, 0x3200, 0x3201)]
    [InlineData(2, 8, 50, 51)]
    [InlineData(2, 16, 0x3200, 0x3201)]
    public void One_color_may_be_transparent(int color, int depth, int clear, int near)
    {
        int[] Pixel(int value) => color == 0 ? [value] : [10, value, 10];
        byte[] key = [.. Pixel(clear).SelectMany(s => new[] { (byte)(s >> 8), (byte)s })];
        var photo = Make(ColorPicture.Png((32, 16, depth, color), (x, _) => Pixel(x < 16 ? clear : near), before: DrawnPhoto.Chunk("tRNS", key)), 32, 16);
        var seen = ColorPicture.Colors(photo.Jpeg);
        AssertNear((255, 255, 255), seen(5, 8));
        Assert.True(seen(26, 8).Green < 120);
    }

    // Light of 3 in 4 pixels, and colors that lie beside each other: the mean of each 2 × 2.
    [Fact]
    public void Means_are_seen_in_the_jpeg()
    {
        byte[] Checked(int x, int y) => (x % 2, y % 2) switch { (0, 0) => [0, 200, 40], (1, 0) => [100, 200, 80], (0, 1) => [100, 0, 40], _ => [200, 0, 80] };
        var png = Make(ColorPicture.Png((64, 32, 8, 2), (x, y) => Array.ConvertAll(Checked(x, y), c => (int)c)), 32, 32);
        Assert.Equal((32, 16, 1), Shape(png));
        var jpeg = Make(ColorPicture.Jpeg(64, 32, Checked, quality: 100), 32, 32);
        foreach (var photo in new[] { png, jpeg })
        {
            var seen = ColorPicture.Colors(photo.Jpeg);
            for (var y = 0; y < 16; y++)
            {
                for (var x = 0; x < 32; x++)
                    AssertNear((100, 100, 60), seen(x, y), 4);
            }
        }
    }

    [Fact]
    public void A_panorama_has_at_least_a_row()
    {
        var photo = Make(ColorPicture.Png((10_000, 3, 8, 0), (x, _) => [x * 255 / 10_000]), 450, 450);
        Assert.Equal((450, 1, 1), Shape(photo));
        Assert.Equal((450, 1), (PhotoReader.Read(new MemoryStream(photo.Jpeg), 1 << 20).Facts!.Width, PhotoReader.Read(new MemoryStream(photo.Jpeg), 1 << 20).Facts!.Height));
        AssertNear((128, 128, 128), ColorPicture.Colors(photo.Jpeg)(225, 0), 5);
    }

    // Inks of red, green, blue and half black. With Adobe's segment the values are light; without, ink (ITU-T T.872 and usage, from memory).
    [Theory]
    [InlineData(J_COLOR_SPACE.JCS_CMYK, true)]
    [InlineData(J_COLOR_SPACE.JCS_YCCK, true)]
    [InlineData(J_COLOR_SPACE.JCS_CMYK, false)]
    public void Inks_become_colors(J_COLOR_SPACE stored, bool adobe)
    {
        byte[][] inks = [[0, 255, 255, 0], [255, 0, 255, 0], [255, 255, 0, 0], [0, 0, 0, 127]];
        (int, int, int)[] wanted = [(255, 0, 0), (0, 255, 0), (0, 0, 255), (128, 128, 128)];
        var file = ColorPicture.Jpeg(64, 16, (x, _) => adobe ? Array.ConvertAll(inks[x / 16], i => (byte)(255 - i)) : inks[x / 16], stored, adobe);
        foreach (var keepLocation in new[] { false, true })
        {
            var photo = Make(file, 64, 64, keepLocation);
            Assert.Equal((64, 16, 1), Shape(photo));
            Assert.DoesNotContain(ColorPicture.Segments(photo.Jpeg), s => s.Marker == 0xEE);
            var seen = ColorPicture.Colors(photo.Jpeg);
            for (var i = 0; i < 4; i++)
                AssertNear(wanted[i], seen((16 * i) + 8, 8), 12);
        }
    }

    // Colors as they are, told by Adobe's segment: kept with it, and read by it where the components bear the names of brightness and differences.
    [Fact]
    public void Adobes_segment_stays_where_it_tells_the_colors()
    {
        var rgb = ColorPicture.Jpeg(96, 64, (x, y) => Corners(1, x, y, 96, 64), J_COLOR_SPACE.JCS_RGB);
        foreach (var file in new[] { rgb, Renamed(rgb) })
        {
            var kept = Make(ColorPicture.With(file, ColorPicture.Segment(0xFE, 1, 2, 3)), 96, 64);
            Assert.Equal(file, kept.Jpeg);
            AssertCorners(ColorPicture.Colors(kept.Jpeg), 96, 64);
            AssertCorners(ColorPicture.Colors(Make(file, 48, 48).Jpeg), 48, 32);
        }

        // One segment says that they are red, green and blue, another that they are not.
        var jfif = ColorPicture.Segment(0xE0, [.. "JFIF\0"u8, 1, 1, 0, 0, 1, 0, 1, 0, 0]);
        Assert.DoesNotContain(ColorPicture.Segments(Make(ColorPicture.With(rgb, jfif), 96, 64).Jpeg), s => s.Marker == 0xEE);

        // Notes in the segment behind what it is for.
        var adobe = ColorPicture.Segments(rgb)[0];
        Assert.Equal(0xEE, adobe.Marker);
        byte[] longer = [.. rgb[..2], .. ColorPicture.Segment(0xEE, [.. adobe.Content, .. "a comment"u8]), .. rgb[(2 + adobe.Content.Length + 4)..]];
        Assert.Equal(rgb, Make(longer, 96, 64).Jpeg);
    }

    // Colors told by the names of the components alone, two components, arithmetic coding: viewers do not agree on them.
    [Fact]
    public void What_viewers_do_not_agree_on_is_compressed_anew()
    {
        var photo = Make(ColorPicture.Jpeg(96, 64, (x, y) => Corners(1, x, y, 96, 64), J_COLOR_SPACE.JCS_RGB, adobe: false), 96, 64, keepLocation: true);
        Assert.Equal([0xE0, 0xDB, 0xDB, 0xC0], ColorPicture.Segments(photo.Jpeg).Take(4).Select(s => s.Marker));
        AssertCorners(ColorPicture.Colors(photo.Jpeg), 96, 64);

        var two = Make(ColorPicture.Jpeg(32, 32, (_, _) => [100, 200]), 32, 32);
        Assert.True(two.IsGray);
        AssertNear((150, 150, 150), ColorPicture.Colors(two.Jpeg)(16, 16));

        var huffman = DrawnPhoto.Of("x; size 16x16");
        foreach (var (frame, isKept) in new[] { (0xC0, true), (0xC2, true), (0xC9, false), (0xCA, false), (0xC3, false), (0xF8, false) })
        {
            var file = (byte[])huffman.Clone();
            file[file.AsSpan().IndexOf<byte>([0xFF, 0xC0]) + 1] = (byte)frame;
            using var source = new PhotoSource(new MemoryStream(file), 1 << 20);
            Assert.Equal(isKept, JpegSegments.Copy(source, keepAll: true) is not null);
        }
    }

    // Samples of the three components across and down: as cameras write them, turned by a quarter, and as no camera does.
    [Theory]
    [InlineData(1, 1, 1, 1)]
    [InlineData(2, 1, 1, 1)]
    [InlineData(1, 2, 1, 1)]
    [InlineData(2, 2, 1, 1)]
    [InlineData(4, 1, 1, 1)]
    [InlineData(1, 4, 1, 1)]
    [InlineData(4, 2, 1, 1)]
    [InlineData(2, 4, 1, 1)]
    [InlineData(3, 1, 1, 1)]
    [InlineData(2, 2, 2, 1)]
    [InlineData(2, 2, 1, 2)]
    [InlineData(3, 2, 2, 1)]
    [InlineData(1, 1, 2, 2)]
    public void Colors_stay_where_they_are_however_few_samples_they_have(int across, int down, int chromaAcross, int chromaDown)
    {
        foreach (var (width, height) in new[] { (96, 64), (193, 127) })
        {
            var photo = Make(ColorPicture.Sampled(width, height, (x, y) => Corners(1, x, y, width, height), (across, down), (chromaAcross, chromaDown)), 48, 48);
            var seen = ColorPicture.Colors(photo.Jpeg);
            AssertCorners(seen, photo.Width, photo.Height);
            // The edges of color lie where those of brightness do.
            AssertNear((Red[0], Red[1], Red[2]), seen(19, 4), 30);
            AssertNear((Green[0], Green[1], Green[2]), seen(28, 4), 30);
            AssertNear((Red[0], Red[1], Red[2]), seen(6, 11), 30);
            AssertNear((Blue[0], Blue[1], Blue[2]), seen(6, 20), 30);
        }
    }

    [Fact]
    public void Gray_stays_gray()
    {
        var gray = ColorPicture.Jpeg(64, 64, (x, _) => [(byte)(4 * x)]);
        var kept = Make(gray, 64, 64);
        Assert.Equal(gray, kept.Jpeg);
        Assert.True(kept.IsGray);
        var small = Make(gray, 32, 32);
        Assert.True(small.IsGray);
        AssertNear((122, 122, 122), ColorPicture.Colors(small.Jpeg)(15, 15), 5);
    }

    // With whole numbers only, the same bytes on every machine: their hash is written here. Another version of the library may write others.
    [Fact]
    public void The_same_photo_gives_the_same_bytes()
    {
        byte[][] files = [DrawnPhoto.Jpeg(333, 251, (x, y) => (x * 200) + (y * 50)), ColorPicture.Png((90, 70, 8, 2), (x, y) => [x, 2 * y, 255 - x])];
        var hashes = new List<string>();
        foreach (var file in files)
        {
            var photo = Make(file, 60, 60);
            Assert.Equal(photo.Jpeg, Make(file, 60, 60).Jpeg);
            hashes.Add(Convert.ToHexStringLower(SHA256.HashData(photo.Jpeg))[..16]);
        }

        Assert.Equal(["b4aae2022c614130", "988bcf95ce8da035"], hashes);
    }

    [Theory]
    [InlineData("plate; size 60x45")]
    [InlineData("plate; size 60x45; progressive")]
    [InlineData("plate; size 60x45; png")]
    public void A_file_that_was_cut_gives_none(string words)
    {
        var whole = DrawnPhoto.Of(words);
        foreach (var box in new[] { 60, 30 })
        {
            Assert.NotNull(Of(whole, box, box));
            for (var part = 0; part < 30; part++)
                Assert.Null(Of(whole[..((whole.Length - 1) * part / 30)], box, box));
        }

        Assert.Null(Of("a text"u8.ToArray(), 60, 60));
    }

    [Fact]
    public void The_file_itself_may_fail()
    {
        Assert.Throws<FileNotFoundException>(() => PhotoForPage.Make(() => throw new FileNotFoundException("x"), 60, 60, false));
        Assert.Throws<IOException>(() => PhotoForPage.Make(() => new Failing(DrawnPhoto.Of("plate")), 60, 60, false));
        Assert.Throws<IOException>(() => PhotoForPage.Make(() => new Failing(DrawnPhoto.Of("plate")), 400, 300, false));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of([], 0, 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of([], 60, PhotoForPage.MostSide + 1));
    }

    // A file that is another each time it is opened: what comes is a photo or none.
    [Fact]
    public void A_file_that_changes_meanwhile_brings_nothing_down()
    {
        byte[][] files = [DrawnPhoto.Of("a; size 60x45"), DrawnPhoto.Of("b; size 400x300; progressive"), DrawnPhoto.Of("c; size 50x90; png"), [], DrawnPhoto.Of("d; size 99x12; orientation 8")];
        for (var i = 0; i < 125; i++)
        {
            var (n, opened) = (i, new List<MemoryStream>());
            var photo = PhotoForPage.Make(Next, 60, 60, i % 2 == 0);
            Assert.All(opened, s => Assert.False(s.CanRead));
            if (photo is not null)
                Assert.Null(PhotoReader.Read(new MemoryStream(photo.Jpeg), 1 << 20).Fault);

            Stream Next()
            {
                opened.Add(new MemoryStream(files[n % 5]));
                n /= 5;
                return opened[^1];
            }
        }
    }

    // 25 million pixels of nothing in 25 kB, straight and in passes.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_large_picture_needs_the_memory_of_its_box(bool interlaced)
    {
        using var data = new MemoryStream();
        using (var packed = new ZLibStream(data, CompressionLevel.Fastest, leaveOpen: true))
        {
            for (var row = 0; row < (interlaced ? 5_000 : 1_250); row++)
                packed.Write(new byte[20_001]);
        }

        var png = DrawnPhoto.Of("x; size 16x16; png");
        byte[] bomb = [.. png[..8], .. DrawnPhoto.Chunk("IHDR", [0, 0, 0x4E, 0x20, 0, 0, 0x04, 0xE2, 8, 0, 0, 0, (byte)(interlaced ? 1 : 0)]), .. DrawnPhoto.Chunk("IDAT", data.ToArray()), .. DrawnPhoto.Chunk("IEND", [])];
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal((450, 28, 1), Shape(Make(bomb, 450, 450)));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 3 << 20);
    }

    [Fact]
    public void Mutated_files_are_photos_or_none()
    {
        var random = new Random(20261201);
        byte[][] valid =
        [
            DrawnPhoto.Of("a; size 96x72"), DrawnPhoto.Of("b; size 96x72; progressive; orientation 7"), DrawnPhoto.Jpeg(96, 72, DrawnPhoto.Scene("c"), exif: Exif(6), restart: 4),
            Noted(ColorPicture.Jpeg(60, 40, (x, y) => Corners(1, x, y, 60, 40), progressive: true)), ColorPicture.Jpeg(40, 30, (x, y) => [(byte)x, (byte)y, 3, 200], J_COLOR_SPACE.JCS_YCCK),
            DrawnPhoto.Of("d; size 96x72; png; orientation 5"), DrawnPhoto.Png(new PngKind(61, 47, 4, 3, true), DrawnPhoto.Scene("e")), DrawnPhoto.Png(new PngKind(61, 47, 16, 6), DrawnPhoto.Scene("f")),
        ];
        var (made, none, disagreeing) = (0, 0, 0);
        for (var i = 0; i < 640; i++)
        {
            var file = PhotoReaderTests.Mutated(valid[i % valid.Length], random);
            var clock = Stopwatch.GetTimestamp();
            var photo = Of(file, random.Next(2) == 0 ? 97 : 31, 96, random.Next(2) == 0);
            Assert.InRange(Stopwatch.GetElapsedTime(clock).TotalSeconds, 0, 30);
            (made, none) = photo is null ? (made, none + 1) : (made + 1, none);
            if (photo is null != PhotoReader.Read(new MemoryStream(file), 1 << 24).Facts is null)
                disagreeing++;
            if (photo is null)
                continue;
            using var source = new PhotoSource(new MemoryStream(photo.Jpeg), 1 << 24);
            var stored = PhotoReader.Decode(source, new BrightnessRows()).Photo!;
            Assert.Equal((stored.Width, stored.Height), (photo.Width, photo.Height));
        }

        Assert.True(made > 30 && none > 200, $"{made} made, {none} none");
        Assert.Equal(0, disagreeing);
    }

    private static PagePhoto? Of(byte[] file, int width, int height, bool keepLocation = false) => PhotoForPage.Make(() => new MemoryStream(file, writable: false), width, height, keepLocation);

    private static PagePhoto Make(byte[] file, int width, int height, bool keepLocation = false) => Of(file, width, height, keepLocation)!;

    private static (int Width, int Height, int Orientation) Shape(PagePhoto photo) => (photo.Width, photo.Height, photo.Orientation);

    private static bool Holds(byte[] file, string words) => file.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(words)) >= 0;

    // Stored pixel of a picture that is seen with red, green, blue and yellow in its corners from the upper left on.
    private static byte[] Corners(int orientation, int x, int y, int width, int height)
    {
        var (row, column) = Sides[orientation - 1];
        int Down(char side, int by) => side == 't' ? by : height - 1 - by;
        int Right(char side, int by) => side == 'l' ? by : width - 1 - by;
        var (seenX, seenY) = row is 't' or 'b' ? (Right(column, x), Down(row, y)) : (Right(row, y), Down(column, x));
        return (seenX < width / 2, seenY < height / 2) switch { (true, true) => Red, (false, true) => Green, (true, false) => Blue, _ => Yellow };
    }

    private static void AssertCorners(Func<int, int, (int, int, int)> seen, int width, int height)
    {
        byte[][] wanted = [Red, Green, Blue, Yellow];
        for (var i = 0; i < 4; i++)
            AssertNear((wanted[i][0], wanted[i][1], wanted[i][2]), seen(i % 2 == 0 ? width / 6 : width * 5 / 6, i < 2 ? height / 6 : height * 5 / 6), 8);
    }

    private static void AssertNear((int Red, int Green, int Blue) wanted, (int Red, int Green, int Blue) seen, int within = 6)
    {
        var off = Math.Max(Math.Abs(wanted.Red - seen.Red), Math.Max(Math.Abs(wanted.Green - seen.Green), Math.Abs(wanted.Blue - seen.Blue)));
        Assert.True(off <= within, $"{seen} instead of {wanted}");
    }

    private static byte[] Exif(int orientation, bool little = true) => [.. DrawnPhoto.Exif("2026:06:18 10:36:05", "-06:00", orientation, little)!, .. Latitude, .. "maker's note"u8];

    private static byte[] ExifSegment(byte[] exif) => ColorPicture.Segment(0xE1, [.. "Exif\0\0"u8, .. exif]);

    // A JPEG with all that cameras and programs write beside a picture, and with notes where none belong.
    private static byte[] Noted(byte[] bare, int orientation = 1, bool little = true)
    {
        var scan = bare.AsSpan().IndexOf<byte>([0xFF, 0xDA]);
        var last = bare.AsSpan().LastIndexOf<byte>([0xFF, 0xC4]);
        var comment = ColorPicture.Segment(0xFE, "a comment"u8.ToArray());
        return
        [
            .. bare[..2], .. ColorPicture.Segment(0xE0, [.. "JFIF\0"u8, 1, 2, 1, 0, 72, 0, 72, 1, 3, .. "thumbnail"u8]), .. ColorPicture.Segment(0xE0, [.. "JFXX\0"u8, 0x10, .. "thumbnail"u8]),
            .. ExifSegment(Exif(orientation, little)), .. ColorPicture.Segment(0xE1, "http://ns.adobe.com/xap/1.0/\0<x/>"u8.ToArray()), .. ColorPicture.Segment(0xE2, "ICC_PROFILE\0"u8.ToArray()),
            .. ColorPicture.Segment(0xE2, "MPF\0"u8.ToArray()), .. "between"u8, .. ColorPicture.Segment(0xED, "Photoshop 3.0\0"u8.ToArray()), .. comment,
            .. ColorPicture.Segment(0xDC, "a comment"u8.ToArray()), 0xFF, 0xFF, .. bare[20..scan], .. ColorPicture.Segment(0xEF, "a comment"u8.ToArray()), .. bare[scan..(last > scan ? last : scan)], .. last > scan ? comment : [], .. bare[(last > scan ? last : scan)..], .. "behind"u8,
        ];
    }

    // A JPEG of red, green and blue whose components are named 1, 2 and 3.
    private static byte[] Renamed(byte[] rgb)
    {
        var file = (byte[])rgb.Clone();
        foreach (var (marker, first, step) in new[] { (0xC0, 10, 3), (0xDA, 5, 2) })
        {
            var at = file.AsSpan().IndexOf<byte>([0xFF, (byte)marker]);
            Assert.Equal(('R', 'G', 'B'), ((char)file[at + first], (char)file[at + first + step], (char)file[at + first + (2 * step)]));
            for (var i = 0; i < 3; i++)
                file[at + first + (i * step)] = (byte)(i + 1);
        }

        return file;
    }

    private sealed class Failing(byte[] file) : MemoryStream(file)
    {
        public override int Read(byte[] buffer, int offset, int count) => Position > 100 ? throw new IOException("gone") : base.Read(buffer, offset, Math.Min(count, 64));
    }
}
