using Commission.Documents.Pictures;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Sheets;

/// <summary>How a curve looks. Two curves of one role differ in colour, in line style and in the shape of their marks, so grey paper keeps them apart.</summary>
/// <param name="Stroke">The line.</param>
/// <param name="Text">Colour of its label: the same hue, dark enough for small type.</param>
/// <param name="Tint">Colour of its band.</param>
/// <param name="Shape">Shape of its marks.</param>
internal readonly record struct SeriesStyle(Stroke Stroke, Rgb Text, Rgb Tint, MarkerShape Shape)
{
    /// <summary>Dots of the line of an event.</summary>
    public static readonly Dash Fine = new(1, 1.5);

    /// <summary>Dots of a line in the middle of a tolerance.</summary>
    public static readonly Dash Sparse = new(1.2, 2);

    private static readonly Dash Dashed = new(5, 2);
    private static readonly Dash Dotted = new(1.2, 1.6);
    private static readonly Dash DashDot = new(6, 1.8, 1.2, 1.8);
    private static readonly Dash ShortDashes = new(3, 1.5);
    private static readonly Dash TargetDashes = new(7, 2);
    private static readonly Dash DecayDashes = new(2.5, 1.5);
    private static readonly Dash SaturationDashes = new(8, 1.8, 1.2, 1.8);
    private static readonly Dash EdgeDashes = new(4, 2);

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
        new(new Stroke(Palette.Orange, 1.1), Palette.OrangeText, Palette.Zone, MarkerShape.Circle),
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
        CurveRole.Isotherm => new(new Stroke(Palette.Axis, 0.5, ShortDashes), Palette.Quiet, Palette.Grid, MarkerShape.Circle),
        CurveRole.State => Readings[(index + 1) % Readings.Length] with { Stroke = new Stroke(Readings[(index + 1) % Readings.Length].Stroke.Color, 1.2) },
        _ => Readings[index % Readings.Length],
    };

    /// <summary>The style of a reference line.</summary>
    /// <param name="role">What it means.</param>
    /// <returns>Its stroke and the colour of its label.</returns>
    public static (Stroke Stroke, Rgb Text) Of(LineRole role) => role switch
    {
        LineRole.Target => (new Stroke(Palette.Green, 0.9, TargetDashes), Palette.GreenText),
        LineRole.DecayLimit => (new Stroke(Palette.Vermilion, 0.9, DecayDashes), Palette.VermilionText),
        LineRole.Saturation => (new Stroke(Palette.Purple, 0.9, SaturationDashes), Palette.PurpleText),
        _ => (new Stroke(Palette.ZoneEdge, 0.8, EdgeDashes), Palette.Quiet),
    };
}

/// <summary>Shapes that tell series apart without colour.</summary>
internal enum MarkerShape
{
    /// <summary>A disc.</summary>
    Circle,

    /// <summary>A square.</summary>
    Square,

    /// <summary>A square on its corner.</summary>
    Diamond,

    /// <summary>A triangle standing on its side.</summary>
    Triangle,
}

/// <summary>Draws marks of equal weight to the eye.</summary>
internal static class Marker
{
    /// <summary>Draws one mark.</summary>
    /// <param name="canvas">The figure.</param>
    /// <param name="at">Its middle.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="radius">Radius of the disc of the same weight, pt.</param>
    /// <param name="fill">Fill.</param>
    /// <param name="outline">Outline.</param>
    public static void Draw(Canvas canvas, Point at, MarkerShape shape, double radius, Rgb fill, Stroke outline)
    {
        switch (shape)
        {
            case MarkerShape.Square:
                var side = radius * 0.89;
                canvas.Rectangle(new Box(at.X - side, at.Y - side, at.X + side, at.Y + side), fill, outline);
                break;
            case MarkerShape.Diamond:
                var half = radius * 1.25;
                canvas.Polygon([new(at.X, at.Y - half), new(at.X + half, at.Y), new(at.X, at.Y + half), new(at.X - half, at.Y)], fill, outline);
                break;
            case MarkerShape.Triangle:
                var reach = radius * 1.35;
                canvas.Polygon([new(at.X, at.Y - reach), new(at.X + 0.866 * reach, at.Y + 0.5 * reach), new(at.X - 0.866 * reach, at.Y + 0.5 * reach)], fill, outline);
                break;
            default:
                canvas.Circle(at.X, at.Y, radius, fill, outline);
                break;
        }
    }
}
