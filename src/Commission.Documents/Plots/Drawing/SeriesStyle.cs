using Commission.Records.Series;

namespace Commission.Documents.Plots.Drawing;

/// <summary>How a curve looks. Two curves of one role differ in colour, in line style and in the shape of their marks, so grey paper keeps them apart.</summary>
/// <param name="Stroke">The line.</param>
/// <param name="Text">Colour of its label: the same hue, dark enough for small type.</param>
/// <param name="Tint">Colour of its band.</param>
/// <param name="Shape">Shape of its marks.</param>
internal readonly record struct SeriesStyle(Stroke Stroke, string Text, string Tint, MarkerShape Shape)
{
    private const string Solid = "";
    private const string Dashed = "5 2";
    private const string Dotted = "1.2 1.6";
    private const string DashDot = "6 1.8 1.2 1.8";

    private static readonly SeriesStyle[] Readings =
    [
        new(new Stroke(Palette.Blue, 1.1), Palette.BlueText, Palette.BlueTint, MarkerShape.Circle),
        new(new Stroke(Palette.Vermilion, 1.1, DashDot), Palette.VermilionText, Palette.VermilionTint, MarkerShape.Square),
        new(new Stroke(Palette.Green, 1.1, Dashed), Palette.GreenText, Palette.GreenTint, MarkerShape.Diamond),
        new(new Stroke(Palette.Purple, 1.1, Dotted), Palette.PurpleText, Palette.PurpleTint, MarkerShape.Triangle),
    ];

    private static readonly SeriesStyle[] Models =
    [
        new(new Stroke(Palette.Vermilion, 1.1, Dashed), Palette.VermilionText, Palette.VermilionTint, MarkerShape.Square),
        new(new Stroke(Palette.Green, 1.1, DashDot), Palette.GreenText, Palette.GreenTint, MarkerShape.Diamond),
        new(new Stroke(Palette.Purple, 1.1, Dotted), Palette.PurpleText, Palette.PurpleTint, MarkerShape.Triangle),
        new(new Stroke(Palette.Orange, 1.1, Solid), Palette.OrangeText, Palette.Zone, MarkerShape.Circle),
    ];

    /// <summary>The style of a curve.</summary>
    /// <param name="role">What it means.</param>
    /// <param name="index">Which of its role it is, from 0; styles repeat after four.</param>
    /// <returns>The style.</returns>
    public static SeriesStyle Of(CurveRole role, int index) => role switch
    {
        CurveRole.Model => Models[index % Models.Length],
        CurveRole.Limit => Readings[index % Readings.Length] with { Stroke = new Stroke(Palette.ZoneEdge, 0.7, Dashed) },
        CurveRole.Dome => new(new Stroke(Palette.Ink, 1.0), Palette.Ink, Palette.Grid, MarkerShape.Circle),
        CurveRole.Isotherm => new(new Stroke(Palette.Axis, 0.5, "3 1.5"), Palette.Quiet, Palette.Grid, MarkerShape.Circle),
        CurveRole.State => Readings[(index + 1) % Readings.Length] with { Stroke = new Stroke(Readings[(index + 1) % Readings.Length].Stroke.Color, 1.2) },
        _ => Readings[index % Readings.Length],
    };

    /// <summary>The style of a reference line.</summary>
    /// <param name="role">What it means.</param>
    /// <returns>Its stroke and the colour of its label.</returns>
    public static (Stroke Stroke, string Text) Of(LineRole role) => role switch
    {
        LineRole.Target => (new Stroke(Palette.Green, 0.9, "7 2"), Palette.GreenText),
        LineRole.DecayLimit => (new Stroke(Palette.Vermilion, 0.9, "2.5 1.5"), Palette.VermilionText),
        LineRole.Saturation => (new Stroke(Palette.Purple, 0.9, "8 1.8 1.2 1.8"), Palette.PurpleText),
        _ => (new Stroke(Palette.ZoneEdge, 0.8, "4 2"), Palette.Quiet),
    };
}
