using System.Buffers;
using Commission.Documents.Pictures;

namespace Commission.Documents.Plots.Labels;

/// <summary>
/// Remembers, on a raster of one point, where a figure already has ink, so that a label can ask how much it would cover. The first
/// question turns the raster into a summed-area table, in place: from then on asking costs the same for any size, and nothing more can
/// be drawn. The raster is borrowed from the pool of arrays.
/// </summary>
internal sealed class InkMap
{
    private readonly int _width;
    private readonly int _height;
    private readonly int _stride;

    // One row above and one column to the left stay empty, as the sums want it.
    private readonly int[] _cells;
    private bool _isSummed;

    /// <summary>An empty map.</summary>
    /// <param name="size">Size of the figure, pt.</param>
    public InkMap(PictureSize size)
    {
        _width = (int)Math.Ceiling(size.Width) + 1;
        _height = (int)Math.Ceiling(size.Height) + 1;
        _stride = _width + 1;
        var cells = _stride * (_height + 1);
        _cells = ArrayPool<int>.Shared.Rent(cells);
        Array.Clear(_cells, 0, cells);
    }

    /// <summary>Adds a line.</summary>
    /// <param name="a">One end.</param>
    /// <param name="b">Other end.</param>
    /// <param name="weight">How unwelcome a label on it is, per point of length.</param>
    public void Line(Point a, Point b, int weight)
    {
        if (!(double.IsFinite(a.X) && double.IsFinite(a.Y) && double.IsFinite(b.X) && double.IsFinite(b.Y)))
            return;
        var steps = (int)Math.Clamp(Math.Ceiling(Math.Max(Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y))), 1, 4 * (_width + _height));
        for (var i = 0; i <= steps; i++)
        {
            var share = (double)i / steps;
            Mark(a.X + (b.X - a.X) * share, a.Y + (b.Y - a.Y) * share, weight);
        }
    }

    /// <summary>Adds a line through points.</summary>
    /// <param name="points">The points.</param>
    /// <param name="weight">Weight per point of length.</param>
    public void Polyline(IReadOnlyList<Point> points, int weight)
    {
        for (var i = 1; i < points.Count; i++)
            Line(points[i - 1], points[i], weight);
    }

    /// <summary>Adds a filled rectangle.</summary>
    /// <param name="box">The rectangle.</param>
    /// <param name="weight">Weight per square point.</param>
    public void Fill(Box box, int weight)
    {
        for (var y = (int)Math.Floor(box.Top); y < box.Bottom; y++)
        {
            for (var x = (int)Math.Floor(box.Left); x < box.Right; x++)
                Mark(x, y, weight);
        }
    }

    /// <summary>How much ink a rectangle would cover.</summary>
    /// <param name="box">The rectangle.</param>
    /// <returns>The sum of the weights inside; ink outside the figure does not exist.</returns>
    public int Under(Box box)
    {
        if (!_isSummed)
            Sum();
        var left = Math.Clamp((int)Math.Floor(box.Left), 0, _width);
        var right = Math.Clamp((int)Math.Ceiling(box.Right), 0, _width);
        var top = Math.Clamp((int)Math.Floor(box.Top), 0, _height);
        var bottom = Math.Clamp((int)Math.Ceiling(box.Bottom), 0, _height);
        return _cells[bottom * _stride + right] - _cells[top * _stride + right] - _cells[bottom * _stride + left] + _cells[top * _stride + left];
    }

    /// <summary>Gives the raster back; the map must not be used any more.</summary>
    public void Return() => ArrayPool<int>.Shared.Return(_cells);

    private void Mark(double x, double y, int weight)
    {
        if (_isSummed)
            throw new InvalidOperationException("A figure drew after its labels had been placed.");
        int column = (int)Math.Floor(x), row = (int)Math.Floor(y);
        if (column < 0 || column >= _width || row < 0 || row >= _height)
            return;
        // The heaviest thing counts once: a line crossing itself is no worse to cover than a line.
        ref var cell = ref _cells[(row + 1) * _stride + column + 1];
        cell = Math.Max(cell, weight);
    }

    private void Sum()
    {
        for (var y = 1; y <= _height; y++)
        {
            var row = 0;
            for (var x = 1; x <= _width; x++)
            {
                row += _cells[y * _stride + x];
                _cells[y * _stride + x] = _cells[(y - 1) * _stride + x] + row;
            }
        }

        _isSummed = true;
    }
}
