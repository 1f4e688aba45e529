using System.Runtime.CompilerServices;
using Commission.Jobs.Photos;
using Xunit;

namespace Commission.Jobs.Tests.Photos;

/// <summary>
/// How far apart prints lie: copies against other scenes. The method is the well-known perceptual hash by the cosine transform (Zauner, Implementation and
/// Benchmarking of Perceptual Image Hash Functions, 2010, from memory); its distances are measured here on drawn scenes.
/// </summary>
public sealed class PicturePrintTests(ITestOutputHelper output)
{
    private const int Scenes = 12;

    // What a near copy may differ in (evidence.photos); the check's own bound.
    private const int Near = 20;

    [Fact]
    public void Copies_lie_near_and_other_scenes_far()
    {
        var originals = new List<PicturePrint>();
        var copies = new List<int>();
        for (var i = 0; i < Scenes; i++)
        {
            var scene = DrawnPhoto.Scene($"scene {i}");
            var original = Print(DrawnPhoto.Jpeg(640, 480, scene, 90));
            originals.Add(original);
            foreach (var copy in new[]
            {
                DrawnPhoto.Jpeg(640, 480, scene, 30), DrawnPhoto.Jpeg(640, 480, scene, 60, progressive: true), DrawnPhoto.Jpeg(400, 300, scene, 75), DrawnPhoto.Jpeg(320, 240, scene, 50),
                DrawnPhoto.Jpeg(800, 600, scene, 85), DrawnPhoto.Png(new PngKind(640, 480, 8, 0), scene), DrawnPhoto.Jpeg(640, 480, (x, y) => Math.Min(255, (scene(x, y) * 1.1) + 6), 80),
            })
            {
                copies.Add(original.DistanceTo(Print(copy)));
            }
        }

        var others = (from i in Enumerable.Range(0, Scenes) from j in Enumerable.Range(0, i) select originals[i].DistanceTo(originals[j])).ToList();
        output.WriteLine($"copies {copies.Min()} to {copies.Max()}, mean {copies.Average():0.00}; other scenes {others.Min()} to {others.Max()}, mean {others.Average():0.0}");
        Assert.InRange(copies.Max(), 0, Near - 4);
        Assert.InRange(others.Min(), 4 * Near, PicturePrint.Bits);
        Assert.InRange(others.Average(), 118, 137);
    }

    // The gauge of the examples, photographed twice from one place with another reading: two pictures, no copy.
    [Fact]
    public void The_same_gauge_a_little_later_is_another_picture()
    {
        var pairs = Directory.GetDirectories(Examples()).Select(e => Path.Combine(e, "photos")).Where(p => File.Exists(Path.Combine(p, "gauge-isolated.png"))).ToList();
        var distances = pairs.ConvertAll(p => Print(File.ReadAllBytes(Path.Combine(p, "gauge-isolated.png"))).DistanceTo(Print(File.ReadAllBytes(Path.Combine(p, "gauge-end.png")))));
        output.WriteLine($"{distances.Count} pairs, {distances.Min()} to {distances.Max()}");
        Assert.InRange(distances.Count, 8, 100);
        Assert.InRange(distances.Min(), Near + 10, PicturePrint.Bits);
    }

    private static string Examples([CallerFilePath] string path = "") => Path.Combine(Path.GetDirectoryName(path)!, "..", "..", "..", "examples");

    [Fact]
    public void One_even_tone_has_no_print()
    {
        Assert.Null(PhotoReader.Read(new MemoryStream(DrawnPhoto.Jpeg(400, 300, (_, _) => 40)), 1 << 20).Facts!.Print);
        Assert.Null(PhotoReader.Read(new MemoryStream(DrawnPhoto.Jpeg(400, 300, (x, _) => 40 + (4 * x))), 1 << 20).Facts!.Print);
        Assert.NotNull(PhotoReader.Read(new MemoryStream(DrawnPhoto.Jpeg(400, 300, (x, _) => 40 + (20 * x))), 1 << 20).Facts!.Print);
    }

    // The mean of a grid is that of the picture, wherever the edges of its cells fall: a picture of two halves, worked by hand.
    [Theory]
    [InlineData(32, 32)]
    [InlineData(33, 47)]
    [InlineData(640, 480)]
    public void A_left_half_of_light_is_seen_as_one(int width, int height)
    {
        var grid = new BrightnessGrid(width, height);
        for (var y = 0; y < height; y++)
            grid.Add(y, [.. Enumerable.Range(0, width).Select(x => x < width / 2.0 ? (byte)200 : (byte)40)]);
        // Only waves across are there, and of them the odd ones: cos(π u (2 x + 1) / 64) summed over x = 0 to 15 is positive for u = 1 and 5, negative for 3 and 7.
        var bits = (ulong)(grid.Print(1)!.Value.Slow & ulong.MaxValue);
        Assert.Equal((true, false, true, false), ((bits & 1) != 0, (bits & 4) != 0, (bits & 16) != 0, (bits & 64) != 0));
    }

    private static PicturePrint Print(byte[] file) => PhotoReader.Read(new MemoryStream(file), 64 << 20).Facts!.Print!.Value;
}
