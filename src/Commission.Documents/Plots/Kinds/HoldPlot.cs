using System.Globalization;
using Commission.Documents.Pictures;
using Commission.Documents.Plots.Axes;
using Commission.Documents.Plots.Sheets;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>
/// The hold after isolation on a linear scale: readings, the models fitted to them with their bands, the level and the time that decide,
/// and below them what each model leaves over. Two readings alone (a hold written down by hand) are two marks and a thin line.
/// </summary>
internal sealed class HoldPlot : IPlot
{
    private const double Strip = 34;

    /// <inheritdoc/>
    public string Kind => "hold";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => (width < 360 ? 190 : 180) + (HasResiduals(data) ? Strip + 12 : 0);

    /// <inheritdoc/>
    public Picture Draw(FigureData data, PictureSize size)
    {
        var residuals = HasResiduals(data);
        var sheet = new XySheet(data, size, new SheetPlan
        {
            InMain = static curve => curve.Role != CurveRole.Residual,
            LowerPanel = residuals ? Strip : 0,
            Headroom = 0.09,
        });
        var main = data.Curves.Where(curve => curve.Role != CurveRole.Residual).Select(curve => (Curve: curve, Style: sheet.NextStyle(curve))).ToArray();
        var lower = residuals ? Residuals(sheet, data) : null;
        sheet.Main.BeginClip();
        foreach (var (curve, style) in main)
        {
            if (curve.Role != CurveRole.Measured)
                XySheet.Band(sheet.Main, curve, style);
        }

        sheet.Main.EndClip();
        sheet.Axes(lower);
        sheet.References();
        sheet.Flags(lower?.Area.Bottom);
        sheet.Main.BeginClip();
        foreach (var (curve, style) in main.OrderBy(pair => pair.Curve.Role == CurveRole.Measured ? 0 : 1))
        {
            // Many readings make a broad pale line, so that the model that follows them stays visible on top.
            if (curve.Role == CurveRole.Measured)
                XySheet.Readings(sheet.Main, curve, curve.X.Length > 60 ? style with { Stroke = new Stroke(Palette.Sky, 1.8) } : style);
            else
                XySheet.Line(sheet.Main, curve, style);
        }

        sheet.Main.EndClip();
        foreach (var (curve, style) in main)
        {
            if (curve.Role == CurveRole.Measured)
                sheet.OverRange(curve, style);
            sheet.Label(sheet.Main, curve, style, curve.Role == CurveRole.Measured ? 0.3 : 0.85);
            sheet.Hover(sheet.Main, curve);
        }

        return sheet.Finish();
    }

    private static bool HasResiduals(FigureData data) => data.Curves.Any(curve => curve.Role == CurveRole.Residual && curve.Y.Any(value => value is not null));

    private static Panel Residuals(XySheet sheet, FigureData data)
    {
        var extent = new Extent();
        foreach (var curve in data.Curves.Where(curve => curve.Role == CurveRole.Residual))
            extent.AddAll(curve.Y);
        var (_, round) = AxisTicks.RoundOutLog(1e-12, extent.IsEmpty ? 1 : Math.Max(Math.Max(Math.Abs(extent.Low), Math.Abs(extent.High)), 1e-9));
        var reach = round * 1.05;
        var decimals = Math.Max(0, -(int)Math.Floor(Math.Log10(round) + 1e-9));
        var curves = data.Curves.Where(curve => curve.Role == CurveRole.Residual).ToArray();
        var name = curves is [var only] ? only.Label : "";
        var panel = sheet.Lower(-reach, reach, string.Join(", ", new[] { name, data.Y.Unit }.Where(part => part.Length > 0)),
            [new Tick(-round, AxisTicks.Number(-round, decimals)), new Tick(0, "0"), new Tick(round, AxisTicks.Number(round, decimals))]);
        panel.BeginClip();
        foreach (var curve in curves)
        {
            var style = sheet.NextStyle(curve);
            XySheet.Readings(panel, curve, style with { Stroke = style.Stroke with { Width = 0.6 } }, joined: curve.X.Length > 60);
            sheet.Hover(panel, curve);
        }

        panel.EndClip();
        if (curves.Length > 1)
        {
            foreach (var curve in curves)
                sheet.Label(panel, curve, SeriesStyle.Of(CurveRole.Residual, Array.IndexOf(curves, curve)), 0.9, optional: true);
        }

        return panel;
    }
}
