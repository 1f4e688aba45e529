namespace Commission.Documents.Pictures;

/// <summary>A place in a figure, pt from its top left corner.</summary>
/// <param name="X">Distance from the left edge.</param>
/// <param name="Y">Distance from the top edge.</param>
internal readonly record struct Point(double X, double Y);

/// <summary>An upright rectangle, pt from the top left corner of the figure.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Top">Top edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Bottom">Bottom edge.</param>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width, pt.</summary>
    public double Width => Right - Left;

    /// <summary>Height, pt.</summary>
    public double Height => Bottom - Top;

    /// <summary>Whether two rectangles share area.</summary>
    /// <param name="other">The other one.</param>
    /// <returns>True when they overlap.</returns>
    public bool Meets(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether another rectangle lies wholly inside.</summary>
    /// <param name="other">The other one.</param>
    /// <returns>True when it does.</returns>
    public bool Holds(Box other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    /// <summary>Grows (or with a negative number shrinks) every side.</summary>
    public Box Grow(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}
