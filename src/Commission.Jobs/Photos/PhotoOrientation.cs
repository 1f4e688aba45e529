namespace Commission.Jobs.Photos;

/// <summary>
/// How a stored picture is turned to be seen. EXIF 2.32, tag 274, says on which sides of the picture row 0 and column 0 of the stored one lie: 1 top and left,
/// 2 top and right, 3 bottom and right, 4 bottom and left, 5 left and top, 6 right and top, 7 right and bottom, 8 left and bottom.
/// </summary>
internal static class PhotoOrientation
{
    public const int Upright = 1;

    private const int FirstQuarterTurn = 5;

    /// <summary>Size of the picture as it is to be seen.</summary>
    public static (int Width, int Height) Seen(int width, int height, int orientation) => orientation >= FirstQuarterTurn ? (height, width) : (width, height);

    /// <summary>Where a pixel of the stored picture is seen.</summary>
    /// <param name="x">Its column as stored.</param>
    /// <param name="y">Its row as stored.</param>
    /// <param name="width">Width of the stored picture.</param>
    /// <param name="height">Height of the stored picture.</param>
    /// <param name="orientation">1 to 8.</param>
    public static (int X, int Y) Place(int x, int y, int width, int height, int orientation) => orientation switch
    {
        2 => (width - 1 - x, y),
        3 => (width - 1 - x, height - 1 - y),
        4 => (x, height - 1 - y),
        5 => (y, x),
        6 => (height - 1 - y, x),
        7 => (height - 1 - y, width - 1 - x),
        8 => (y, width - 1 - x),
        _ => (x, y),
    };
}
