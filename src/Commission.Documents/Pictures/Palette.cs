namespace Commission.Documents.Pictures;

/// <summary>
/// Every colour a figure may use. Data colours are those of Okabe and Ito (Color Universal Design, 2008); text that belongs to a curve
/// takes a darker shade of the same hue so that small type keeps a contrast of at least 4.5 : 1 on paper. The web page maps exactly these
/// values to its light and dark schemes, so a colour not listed here would stay unreadable in the dark.
/// </summary>
internal static class Palette
{
    public static readonly Rgb Paper = new(0xffffff);
    public static readonly Rgb Ink = new(0x1a1a1a);
    public static readonly Rgb Quiet = new(0x595959);
    public static readonly Rgb Axis = new(0x8c8c8c);
    public static readonly Rgb Grid = new(0xe3e3e3);
    public static readonly Rgb Zone = new(0xe9f1ee);
    public static readonly Rgb ZoneEdge = new(0x7f9c92);

    public static readonly Rgb Blue = new(0x0072b2);
    public static readonly Rgb Vermilion = new(0xd55e00);
    public static readonly Rgb Green = new(0x009e73);
    public static readonly Rgb Purple = new(0xcc79a7);
    public static readonly Rgb Orange = new(0xe69f00);
    public static readonly Rgb Sky = new(0x56b4e9);

    public static readonly Rgb BlueText = new(0x005b8e);
    public static readonly Rgb VermilionText = new(0xa34700);
    public static readonly Rgb GreenText = new(0x00664a);
    public static readonly Rgb PurpleText = new(0x8a3f6b);
    public static readonly Rgb OrangeText = new(0x7d5600);

    public static readonly Rgb BlueTint = new(0xd6e7f2);
    public static readonly Rgb VermilionTint = new(0xf8e2d2);
    public static readonly Rgb GreenTint = new(0xd3ebe3);
    public static readonly Rgb PurpleTint = new(0xf3e1ea);

    /// <summary>All of them, in the order in which the style sheet names them.</summary>
    public static IReadOnlyList<Rgb> All { get; } =
    [
        Paper, Ink, Quiet, Axis, Grid, Zone, ZoneEdge,
        Blue, Vermilion, Green, Purple, Orange, Sky,
        BlueText, VermilionText, GreenText, PurpleText, OrangeText,
        BlueTint, VermilionTint, GreenTint, PurpleTint,
    ];
}
