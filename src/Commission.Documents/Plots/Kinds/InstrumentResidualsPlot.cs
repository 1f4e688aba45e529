using Commission.Documents.Pictures;
using Commission.Documents.Plots.Sheets;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>What each instrument showed less what was known, with U, between the edges of its tolerance.</summary>
internal sealed class InstrumentResidualsPlot : IPlot
{
    private const double Apart = 5;

    /// <inheritdoc/>
    public string Kind => "instrument-residuals";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => width < 360 ? 180 : 150;

    /// <inheritdoc/>
    public Picture Draw(FigureData data, PictureSize size)
    {
        var sheet = new XySheet(data, size, new SheetPlan { IsBackdrop = static _ => false, MustShow = [0] });
        var curves = data.Curves.Select(curve => (Curve: curve, Style: sheet.NextStyle(curve))).ToArray();
        sheet.Zones();
        sheet.Main.BeginClip();
        foreach (var (curve, style) in curves)
        {
            if (curve.Role == CurveRole.Limit)
            {
                XySheet.Band(sheet.Main, curve, style with { Tint = Palette.Zone });
                XySheet.Line(sheet.Main, curve, style);
            }
        }

        sheet.Main.EndClip();
        sheet.Axes();
        sheet.Main.Horizontal(0, new Stroke(Palette.Axis, 0.6));
        sheet.References();
        sheet.Flags();
        var readings = curves.Where(pair => pair.Curve.Role != CurveRole.Limit).ToArray();
        for (var i = 0; i < readings.Length; i++)
            XySheet.Readings(sheet.Main, readings[i].Curve, readings[i].Style, joined: readings[i].Curve.Role == CurveRole.Model, Shift(i, readings.Length));

        for (var i = 0; i < readings.Length; i++)
        {
            sheet.Label(sheet.Main, readings[i].Curve, readings[i].Style, 0.5, order: 4, shift: Shift(i, readings.Length));
            sheet.Hover(sheet.Main, readings[i].Curve);
        }

        foreach (var (curve, style) in curves.Where(pair => pair.Curve.Role == CurveRole.Limit))
            sheet.Label(sheet.Main, curve, style, 0.95);

        return sheet.Finish();
    }

    // Instruments share the ice bath: their bars stand side by side.
    private static double Shift(int index, int count) => Apart * (index - (count - 1) / 2.0);
}
