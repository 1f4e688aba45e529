using Commission.Jobs.Photos;
using Xunit;

namespace Commission.Jobs.Tests.Photos;

/// <summary>Making a picture smaller: sizes worked by hand, means held against sums over a raster fine enough for both pictures.</summary>
public sealed class ScaledRowsTests
{
    [Theory]
    [InlineData(4000, 3000, 450, 450, 450, 338)]
    [InlineData(3000, 4000, 450, 450, 338, 450)]
    [InlineData(4000, 3000, 450, 300, 400, 300)]
    [InlineData(450, 450, 450, 450, 450, 450)]
    [InlineData(451, 450, 450, 450, 450, 449)]
    [InlineData(10, 20, 450, 450, 10, 20)]
    [InlineData(10000, 3, 450, 450, 450, 1)]
    [InlineData(3, 10000, 450, 450, 1, 450)]
    [InlineData(10000, 34, 450, 450, 450, 2)]
    [InlineData(65500, 65500, 2048, 1, 1, 1)]
    [InlineData(65500, 1, 2048, 1, 2048, 1)]
    [InlineData(100, 100, 1, 1, 1, 1)]
    public void Sizes_fit_and_keep_their_proportions(int width, int height, int mostWidth, int mostHeight, int toWidth, int toHeight) =>
        Assert.Equal((toWidth, toHeight), ScaledRows.Fit(width, height, mostWidth, mostHeight));

    [Fact]
    public void Two_by_two_pixels_become_their_mean()
    {
        var rows = new ScaledRows(2, 1, 1);
        rows.Open(4, 2, PhotoSamples.Gray);
        rows.Add(0, [0, 10, 255, 255]);
        rows.Add(1, [20, 31, 255, 253]);
        // 15.25 and 254.5; a half goes up.
        Assert.Equal([15, 255], Assert.Single(rows.Finish()));
    }

    [Theory]
    [InlineData(7, 5, 3, 2)]
    [InlineData(7, 5, 5, 4)]
    [InlineData(13, 11, 12, 10)]
    [InlineData(31, 9, 4, 1)]
    [InlineData(5, 4, 5, 4)]
    public void Means_are_exact(int width, int height, int toWidth, int toHeight)
    {
        var random = new Random(20261201);
        var picture = Enumerable.Range(0, height).Select(_ => Enumerable.Range(0, width * 3).Select(_ => (byte)random.Next(256)).ToArray()).ToArray();
        var rows = new ScaledRows(toWidth, toHeight, 1);
        rows.Open(width, height, PhotoSamples.Rgb);
        for (var y = 0; y < height; y++)
            rows.Add(y, picture[y]);
        var small = rows.Finish();
        var (w, h) = ScaledRows.Fit(width, height, toWidth, toHeight);
        Assert.Equal((w * 3, h), (small[0].Length, small.Length));
        for (var y = 0; y < h; y++)
        {
            for (var i = 0; i < w * 3; i++)
            {
                // Every pixel as w × h grains, of which a pixel of the small picture covers width × height.
                var grains = from gy in Enumerable.Range(y * height, height) from gx in Enumerable.Range(i / 3 * width, width) select (decimal)picture[gy / h][(gx / w * 3) + (i % 3)];
                Assert.Equal((int)Math.Round(grains.Sum() / (width * height), MidpointRounding.AwayFromZero), small[y][i]);
            }
        }
    }

    // The passes of an interlaced picture bring its pixels in another order and in pieces.
    [Fact]
    public void The_order_of_pixels_does_not_matter()
    {
        var random = new Random(7);
        var picture = Enumerable.Range(0, 21).Select(_ => Enumerable.Range(0, 33).Select(_ => (byte)random.Next(256)).ToArray()).ToArray();
        var (straight, pieces) = (new ScaledRows(10, 10, 6), new ScaledRows(10, 10, 6));
        straight.Open(33, 21, PhotoSamples.Gray);
        pieces.Open(33, 21, PhotoSamples.Gray);
        for (var y = 0; y < 21; y++)
            straight.Add(y, picture[y]);
        foreach (var (first, step) in new[] { (1, 2), (4, 8), (0, 8), (2, 4) })
        {
            for (var y = 20; y >= 0; y--)
                pieces.Add(y, [.. picture[y].Where((_, x) => x >= first && (x - first) % step == 0)], first, step);
        }

        Assert.Equal(straight.Finish(), pieces.Finish());
    }

    // The largest picture that is read: sums of 65,500 pixels of light in a row.
    [Fact]
    public void Sums_of_the_widest_picture_do_not_overflow()
    {
        var rows = new ScaledRows(2048, 1, 1);
        rows.Open(65_500, 400, PhotoSamples.Gray);
        var light = new byte[65_500];
        Array.Fill(light, (byte)255);
        for (var y = 0; y < 400; y++)
            rows.Add(y, light);
        Assert.All(rows.Finish(), row => Assert.All(row, value => Assert.Equal(255, value)));
    }
}
