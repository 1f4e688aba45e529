namespace Commission.Documents.Typesetting;

/// <summary>Size of the paper and of the room for text, in points. The text is 7.1 in wide on both papers.</summary>
/// <param name="Width">Width of the paper.</param>
/// <param name="Height">Height of the paper.</param>
internal sealed record PageFormat(double Width, double Height)
{
    /// <summary>Width of the text.</summary>
    public const double TextWidth = 7.1 * 72;

    private const double FirstTop = 40;
    private const double LaterTop = 51;
    private const double Bottom = 47;

    public static PageFormat Letter { get; } = new(612, 792);

    public static PageFormat A4 { get; } = new(595.28, 841.89);

    /// <summary>Left edge of the text.</summary>
    public double Left => (Width - TextWidth) / 2;

    /// <summary>Lower edge of the text.</summary>
    public double Floor => Height - Bottom;

    /// <summary>Height of the text on a page that is not the first.</summary>
    public double TextHeight => Floor - LaterTop;

    public static PageFormat Of(string paper) => paper == "a4" ? A4 : Letter;

    /// <summary>Upper edge of the text; the first page has no running head.</summary>
    public static double Top(int page) => page == 0 ? FirstTop : LaterTop;
}
