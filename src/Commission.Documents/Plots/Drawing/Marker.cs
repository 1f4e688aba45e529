namespace Commission.Documents.Plots.Drawing;

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
    public static void Draw(SvgCanvas canvas, Point at, MarkerShape shape, double radius, string fill, Stroke outline)
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
