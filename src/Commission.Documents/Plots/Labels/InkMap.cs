using Commission.Documents.Plots.Drawing;

namespace Commission.Documents.Plots.Labels;

/// <summary>
/// Remembers, on a raster of one point, where a figure already has ink, so that a label can ask how much it would cover. Sums over
/// rectangles come from a summed-area table: asking costs the same for any size.
/// </summary>
internal sealed class InkMap
{
    private readonly int _width;
    private readonly int _height;
    private readonly int[] _ink;
    private long[]? _sums;

    /// <summary>An empty map.</summary>
    /// <param name="size">Size of the figure, pt.</param>
    public InkMap(PlotSize size)
    {
        _width = (int)Math.Ceiling(size.Width) + 1;
        _height = (int)Math.Ceiling(size.Height) + 1;
        _ink = new int[_width * _height];
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
    public long Under(Box box)
    {
        _sums ??= Sum();
        var left = Math.Clamp((int)Math.Floor(box.Left), 0, _width);
        var right = Math.Clamp((int)Math.Ceiling(box.Right), 0, _width);
        var top = Math.Clamp((int)Math.Floor(box.Top), 0, _height);
        var bottom = Math.Clamp((int)Math.Ceiling(box.Bottom), 0, _height);
        var stride = _width + 1;
        return _sums[bottom * stride + right] - _sums[top * stride + right] - _sums[bottom * stride + left] + _sums[top * stride + left];
    }

    private void Mark(double x, double y, int weight)
    {
        int column = (int)Math.Floor(x), row = (int)Math.Floor(y);
        if (column < 0 || column >= _width || row < 0 || row >= _height)
            return;
        // The heaviest thing counts once: a line crossing itself is no worse to cover than a line.
        ref var cell = ref _ink[row * _width + column];
        cell = Math.Max(cell, weight);
        _sums = null;
    }

    private long[] Sum()
    {
        var stride = _width + 1;
        var sums = new long[stride * (_height + 1)];
        for (var y = 0; y < _height; y++)
        {
            long row = 0;
            for (var x = 0; x < _width; x++)
            {
                row += _ink[y * _width + x];
                sums[(y + 1) * stride + x + 1] = sums[y * stride + x + 1] + row;
            }
        }

        return sums;
    }
}
