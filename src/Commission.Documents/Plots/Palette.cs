namespace Commission.Documents.Plots;

/// <summary>
/// Every colour a figure may use. Data colours are those of Okabe and Ito (Color Universal Design, 2008); text that belongs to a curve
/// takes a darker shade of the same hue so that small type keeps a contrast of at least 4.5 : 1 on paper. The web page maps exactly these
/// strings to its light and dark schemes, so a colour not listed here would stay unreadable in the dark.
/// </summary>
internal static class Palette
{
    public const string Paper = "#ffffff";
    public const string Ink = "#1a1a1a";
    public const string Quiet = "#595959";
    public const string Axis = "#8c8c8c";
    public const string Grid = "#e3e3e3";
    public const string Zone = "#e9f1ee";
    public const string ZoneEdge = "#7f9c92";

    public const string Blue = "#0072b2";
    public const string Vermilion = "#d55e00";
    public const string Green = "#009e73";
    public const string Purple = "#cc79a7";
    public const string Orange = "#e69f00";
    public const string Sky = "#56b4e9";

    public const string BlueText = "#005b8e";
    public const string VermilionText = "#a34700";
    public const string GreenText = "#00664a";
    public const string PurpleText = "#8a3f6b";
    public const string OrangeText = "#7d5600";

    public const string BlueTint = "#d6e7f2";
    public const string VermilionTint = "#f8e2d2";
    public const string GreenTint = "#d3ebe3";
    public const string PurpleTint = "#f3e1ea";

    /// <summary>All of them, in the order in which the style sheet names them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Paper, Ink, Quiet, Axis, Grid, Zone, ZoneEdge,
        Blue, Vermilion, Green, Purple, Orange, Sky,
        BlueText, VermilionText, GreenText, PurpleText, OrangeText,
        BlueTint, VermilionTint, GreenTint, PurpleTint,
    ];
}
