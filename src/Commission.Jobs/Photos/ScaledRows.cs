namespace Commission.Jobs.Photos;

/// <summary>
/// Makes a picture small enough for a box while its rows arrive, each pixel of the small one the mean of the area it covers; never larger. The sums are of
/// whole numbers and exact (a pixel counts by the area it covers, in units of one part in its picture's width times one in its height), so that the
/// result is the same on every machine and in whatever order the pixels come. Memory: that of the box.
/// </summary>
/// <param name="mostWidth">Width of the box in pixels, for the picture as it is to be seen.</param>
/// <param name="mostHeight">Height of the box in pixels.</param>
/// <param name="orientation">1 to 8: how the stored picture is turned to be seen.</param>
internal sealed class ScaledRows(int mostWidth, int mostHeight, int orientation) : IPhotoRows
{
    private int[] _row = [];
    private long[] _sums = [];
    private int _fromWidth;
    private int _fromHeight;
    private int _width;
    private int _height;
    private int _colors;

    public bool InColor => true;

    public PhotoSamples Samples { get; private set; }

    /// <summary>The size that a picture has in a box: the greatest that fits with the same proportions, at least one pixel, at most its own.</summary>
    public static (int Width, int Height) Fit(int width, int height, int mostWidth, int mostHeight)
    {
        if (width <= mostWidth && height <= mostHeight)
            return (width, height);
        return (long)width * mostHeight >= (long)height * mostWidth
            ? (mostWidth, Side(height, mostWidth, width))
            : (Side(width, mostHeight, height), mostHeight);
    }

    // The short side where the long one goes from whole to part, rounded.
    private static int Side(long side, long part, long whole) => (int)Math.Max(1, ((2 * side * part) + whole) / (2 * whole));

    public void Open(int width, int height, PhotoSamples samples)
    {
        Samples = samples;
        _colors = samples == PhotoSamples.Gray ? 1 : 3;
        (_fromWidth, _fromHeight) = (width, height);
        var (seenWidth, seenHeight) = PhotoOrientation.Seen(width, height, orientation);
        var fitting = Fit(seenWidth, seenHeight, mostWidth, mostHeight);
        // Turning by a quarter and turning back are the same for sizes.
        (_width, _height) = PhotoOrientation.Seen(fitting.Width, fitting.Height, orientation);
        _row = new int[_width * _colors];
        _sums = new long[_row.Length * _height];
    }

    public void Add(int y, ReadOnlySpan<byte> pixels, int first = 0, int step = 1)
    {
        AddAcross(pixels, first, step);
        var top = (long)y * _height;
        var at = (int)(top / _fromHeight);
        // How much of the row, which is as high as _height units, reaches into the next row of the small picture.
        var below = Math.Max(0, top + _height - ((at + 1L) * _fromHeight));
        var sums = _sums.AsSpan(at * _row.Length);
        for (var i = 0; i < _row.Length; i++)
            sums[i] += _row[i] * (_height - below);
        if (below == 0)
            return;
        sums = sums[_row.Length..];
        for (var i = 0; i < _row.Length; i++)
            sums[i] += _row[i] * below;
    }

    // A sum is at most 255 times the width of the picture, 65,500.
    private void AddAcross(ReadOnlySpan<byte> pixels, int first, int step)
    {
        Array.Clear(_row);
        var left = (long)first * _width;
        var cell = (int)(left / _fromWidth);
        var end = (cell + 1L) * _fromWidth;
        for (; !pixels.IsEmpty; pixels = pixels[_colors..])
        {
            for (; left >= end; end += _fromWidth)
                cell++;
            var beyond = (int)Math.Max(0, left + _width - end);
            var sums = _row.AsSpan(cell * _colors);
            for (var i = 0; i < _colors; i++)
            {
                sums[i] += pixels[i] * (_width - beyond);
                if (beyond > 0)
                    sums[_colors + i] += pixels[i] * beyond;
            }

            left += (long)step * _width;
        }
    }

    /// <summary>The small picture as it is to be seen; all pixels have come.</summary>
    /// <returns>Its rows from the top, the bytes of their pixels.</returns>
    public byte[][] Finish()
    {
        var area = (long)_fromWidth * _fromHeight;
        var (width, height) = PhotoOrientation.Seen(_width, _height, orientation);
        var rows = new byte[height][];
        for (var y = 0; y < height; y++)
            rows[y] = new byte[width * _colors];
        for (var y = 0; y < _height; y++)
        {
            for (var x = 0; x < _width; x++)
            {
                var (toX, toY) = PhotoOrientation.Place(x, y, _width, _height, orientation);
                for (var i = 0; i < _colors; i++)
                    rows[toY][(toX * _colors) + i] = (byte)((_sums[(((y * _width) + x) * _colors) + i] + (area / 2)) / area);
            }
        }

        return rows;
    }
}
