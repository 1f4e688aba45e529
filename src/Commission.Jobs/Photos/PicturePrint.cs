namespace Commission.Jobs.Photos;

/// <summary>
/// What a picture looks like, in 255 bits: the signs of its 255 slowest waves. A copy that was made smaller or compressed again keeps nearly all of
/// them, the same gauge a little later nine in ten, another scene about half.
/// </summary>
/// <param name="Slow">The 128 slower ones.</param>
/// <param name="Fast">The others.</param>
public readonly record struct PicturePrint(UInt128 Slow, UInt128 Fast)
{
    /// <summary>How many bits a print has.</summary>
    public const int Bits = 255;

    /// <summary>In how many bits two pictures differ.</summary>
    /// <param name="other">The other picture's.</param>
    /// <returns>0 to 255.</returns>
    public int DistanceTo(PicturePrint other) => (int)UInt128.PopCount(Slow ^ other.Slow) + (int)UInt128.PopCount(Fast ^ other.Fast);
}

/// <summary>Brings the rows of a picture that is being decoded into a grid.</summary>
internal sealed class BrightnessRows : IPhotoRows
{
    private BrightnessGrid? _grid;

    public bool InColor => false;

    public void Open(int width, int height, PhotoSamples samples) => _grid = new BrightnessGrid(width, height);

    public void Add(int y, ReadOnlySpan<byte> pixels, int first = 0, int step = 1) => _grid!.Add(y, pixels, first, step);

    /// <summary>The print of the picture as it is to be seen; null when it has none.</summary>
    /// <param name="orientation">1 to 8, as EXIF counts them.</param>
    public PicturePrint? Print(int orientation) => _grid?.Print(orientation);
}

/// <summary>
/// Brightness of a picture averaged over 32 × 32 cells, row by row while it is decoded. From it the print: the two-dimensional cosine
/// transform (DCT-II) of the cells, of it the 16 × 16 slowest waves without the mean, each compared with their median.
/// </summary>
internal sealed class BrightnessGrid
{
    private const int Cells = 32;
    private const int Waves = 16;

    // Rms of the cells around their mean, in steps of 255, below which only noise and vignetting would be compared.
    private const double EvenTone = 2;

    private static readonly double[] Cosines = [.. Enumerable.Range(0, Waves * Cells).Select(i => Math.Cos(Math.PI * (i / Cells) * ((2 * (i % Cells)) + 1) / (2 * Cells)))];

    private readonly double[] _cells = new double[Cells * Cells];
    private readonly double[] _row = new double[Cells];
    private readonly int _width;
    private readonly int _height;

    /// <summary>Opens a grid.</summary>
    /// <param name="width">Width of the rows that come, in pixels.</param>
    /// <param name="height">How many rows come.</param>
    public BrightnessGrid(int width, int height)
    {
        _width = width;
        _height = height;
        IsWide = width >= Cells && height >= Cells;
    }

    // A pixel wider than a cell would have to be shared by more than two of them.
    private bool IsWide { get; }

    /// <summary>Adds pixels of a row.</summary>
    /// <param name="y">The row.</param>
    /// <param name="brightness">Their brightness, 0 to 255.</param>
    /// <param name="first">Place of the first of them in the row.</param>
    /// <param name="step">Places from one to the next.</param>
    public void Add(int y, ReadOnlySpan<byte> brightness, int first = 0, int step = 1)
    {
        if (!IsWide)
            return;
        Array.Clear(_row);
        var x = (long)first * Cells;
        foreach (var value in brightness)
        {
            var cell = (int)(x / _width);
            // How much of the pixel, which is 32 cells wide in units of 1 / width, reaches into the next cell.
            var beyond = x + Cells - ((cell + 1L) * _width);
            if (beyond > 0 && cell + 1 < Cells)
            {
                _row[cell] += value * (double)(Cells - beyond);
                _row[cell + 1] += value * (double)beyond;
            }
            else
            {
                _row[cell] += value * (double)Cells;
            }

            x += (long)step * Cells;
        }

        var top = (long)y * Cells;
        var at = (int)(top / _height);
        var below = Math.Max(0, top + Cells - ((at + 1L) * _height));
        for (var i = 0; i < Cells; i++)
        {
            _cells[(at * Cells) + i] += _row[i] * (Cells - below);
            if (below > 0 && at + 1 < Cells)
                _cells[((at + 1) * Cells) + i] += _row[i] * below;
        }
    }

    /// <summary>The print of the picture as it is to be seen.</summary>
    /// <param name="orientation">1 to 8, as EXIF counts them: which corner the first pixel belongs to.</param>
    /// <returns>The print; null when the picture is one even tone or smaller than the grid.</returns>
    public PicturePrint? Print(int orientation)
    {
        if (!IsWide)
            return null;
        var area = (double)_width * _height;
        var cells = Array.ConvertAll(_cells, c => c / area);
        var mean = cells.Average();
        if (Math.Sqrt(cells.Sum(c => (c - mean) * (c - mean)) / cells.Length) < EvenTone)
            return null;
        var waves = Transform(Turned(cells, orientation)).Skip(1).ToArray();
        var median = waves.Order().ElementAt(waves.Length / 2);
        return new PicturePrint(Bits(waves.AsSpan(0, 128), median), Bits(waves.AsSpan(128), median));
    }

    private static UInt128 Bits(ReadOnlySpan<double> waves, double median)
    {
        var bits = UInt128.Zero;
        for (var i = 0; i < waves.Length; i++)
        {
            if (waves[i] > median)
                bits |= UInt128.One << i;
        }

        return bits;
    }

    // Rows of the waves down, in each the waves across, from the slowest on.
    private static double[] Transform(double[] cells)
    {
        var half = new double[Waves * Cells];
        for (var u = 0; u < Waves; u++)
        {
            for (var y = 0; y < Cells; y++)
            {
                for (var x = 0; x < Cells; x++)
                    half[(u * Cells) + y] += cells[(y * Cells) + x] * Cosines[(u * Cells) + x];
            }
        }

        var waves = new double[Waves * Waves];
        for (var v = 0; v < Waves; v++)
        {
            for (var u = 0; u < Waves; u++)
            {
                for (var y = 0; y < Cells; y++)
                    waves[(v * Waves) + u] += half[(u * Cells) + y] * Cosines[(v * Cells) + y];
            }
        }

        return waves;
    }

    private static double[] Turned(double[] cells, int orientation)
    {
        var turned = new double[cells.Length];
        for (var y = 0; y < Cells; y++)
        {
            for (var x = 0; x < Cells; x++)
            {
                var (toX, toY) = PhotoOrientation.Place(x, y, Cells, Cells, orientation);
                turned[(toY * Cells) + toX] = cells[(y * Cells) + x];
            }
        }

        return turned;
    }
}
