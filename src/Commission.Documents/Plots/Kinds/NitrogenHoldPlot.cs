using Commission.Documents.Pictures;
using Commission.Documents.Plots.Sheets;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>The nitrogen hold: pressure as read, and the same referred to the temperature at the start, with the band within which no loss can be seen.</summary>
internal sealed class NitrogenHoldPlot : IPlot
{
    /// <inheritdoc/>
    public string Kind => "nitrogen-hold";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => width < 360 ? 185 : 165;

    /// <inheritdoc/>
    public Picture Draw(FigureData data, PictureSize size)
    {
        var sheet = new XySheet(data, size, new SheetPlan { IsBackdrop = static _ => false, Headroom = 0.08 });
        var curves = data.Curves.Select(curve => (Curve: curve, Style: sheet.NextStyle(curve))).ToArray();
        sheet.Zones();
        sheet.Main.BeginClip();
        foreach (var (curve, style) in curves)
        {
            if (!AsBars(curve))
                XySheet.Band(sheet.Main, curve, style);
        }

        sheet.Main.EndClip();
        sheet.Axes();
        sheet.References();
        sheet.Flags();
        sheet.Main.BeginClip();
        foreach (var (curve, style) in curves)
        {
            if (curve.Role == CurveRole.Limit)
                XySheet.Line(sheet.Main, curve, style);
            else
                XySheet.Readings(sheet.Main, AsBars(curve) ? curve : curve with { YLow = [], YHigh = [] }, style);
        }

        sheet.Main.EndClip();
        foreach (var (curve, style) in curves)
        {
            sheet.Label(sheet.Main, curve, style, 0.75);
            sheet.Hover(sheet.Main, curve);
        }

        return sheet.Finish();
    }

    // Two or three readings with a band would make a wedge that no one measured between them.
    private static bool AsBars(FigureCurve curve) => curve.X.Length <= 3 && curve.Role != CurveRole.Limit;
}
