using Commission.Documents.Pictures;
using Commission.Documents.Plots.Sheets;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>
/// The whole evacuation on a logarithmic scale: pressure, target, decay level, saturation of water at the coldest part, and what
/// happened when. A stretch without values is a gauge beyond its range: the line stops, and an arrow at the top says so.
/// </summary>
internal sealed class PullDownPlot : IPlot
{
    /// <inheritdoc/>
    public string Kind => "pull-down";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => width < 360 ? 210 : 215;

    /// <inheritdoc/>
    public Picture Draw(FigureData data, PictureSize size)
    {
        var sheet = new XySheet(data, size, new SheetPlan());
        var curves = data.Curves.Select(curve => (Curve: curve, Style: sheet.NextStyle(curve))).ToArray();
        sheet.Main.BeginClip();
        foreach (var (curve, style) in curves)
            XySheet.Band(sheet.Main, curve, style);
        sheet.Main.EndClip();
        sheet.Axes();
        sheet.References();
        sheet.Flags();
        sheet.Main.BeginClip();
        foreach (var (curve, style) in curves)
        {
            if (curve.Role is CurveRole.Measured)
                XySheet.Readings(sheet.Main, curve, style);
            else
                XySheet.Line(sheet.Main, curve, style);
        }

        sheet.Main.EndClip();
        foreach (var (curve, style) in curves)
        {
            sheet.OverRange(curve, style);
            sheet.Label(sheet.Main, curve, style, 0.35, optional: size.IsSmall && curve.Role == CurveRole.Model);
            sheet.Hover(sheet.Main, curve);
        }

        return sheet.Finish();
    }
}
