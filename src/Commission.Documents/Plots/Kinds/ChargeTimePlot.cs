using Commission.Documents.Pictures;
using Commission.Documents.Plots.Sheets;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>
/// Superheat and subcooling through the charging, each reading with its U, over the tolerance it is judged by. Two quantities with
/// tolerances of their own get a panel each: their bands would lie upon each other.
/// </summary>
internal sealed class ChargeTimePlot : IPlot
{
    /// <inheritdoc/>
    public string Kind => "charge-time";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => Split(data) is null ? 185 : 220;

    /// <inheritdoc/>
    public Picture Draw(FigureData data, PictureSize size) => Split(data) is { } second ? DrawTwo(data, size, second) : DrawOne(data, size);

    private static Picture DrawOne(FigureData data, PictureSize size)
    {
        var sheet = new XySheet(data, size, new SheetPlan { IsBackdrop = static curve => curve.Role == CurveRole.Model });
        var curves = Styled(data, sheet);
        sheet.Zones();
        Bands(sheet.Main, curves);
        sheet.Axes();
        sheet.References();
        sheet.Flags();
        Curves(sheet, sheet.Main, curves);
        Labels(sheet, sheet.Main, curves);
        return sheet.Finish();
    }

    private static Picture DrawTwo(FigureData data, PictureSize size, string second)
    {
        var sheet = new XySheet(data, size, new SheetPlan
        {
            InMain = curve => !BelongsTo(curve, second),
            IsBackdrop = static curve => curve.Role == CurveRole.Model,
            LowerPanel = (size.Height - 60) / 2,
        });
        var curves = Styled(data, sheet);
        var upper = curves.Where(pair => !BelongsTo(pair.Curve, second)).ToArray();
        var below = curves.Where(pair => BelongsTo(pair.Curve, second)).ToArray();
        var extent = new Extent();
        foreach (var (curve, _) in below)
        {
            extent.AddAll(curve.Y);
            extent.AddAll(curve.YLow);
            extent.AddAll(curve.YHigh);
        }

        if (extent.IsEmpty)
            extent.AddAll([0, 1]);
        var pad = Math.Max(0.5, 0.06 * (extent.High - extent.Low));
        var lower = sheet.Lower(extent.Low - pad, extent.High + pad, "");
        Bands(sheet.Main, upper);
        Bands(lower, below);
        sheet.Axes(lower);
        sheet.References();
        sheet.Flags(lower.Area.Bottom);
        Curves(sheet, sheet.Main, upper);
        Curves(sheet, lower, below);
        Labels(sheet, sheet.Main, upper);
        Labels(sheet, lower, below);
        return sheet.Finish();
    }

    // The label of the second quantity, when there are two quantities and each has a tolerance that names it by its first word.
    private static string? Split(FigureData data)
    {
        var readings = data.Curves.Where(curve => curve.Role == CurveRole.Measured).ToArray();
        if (readings.Length != 2 || data.Lines.Any(line => line.Axis == AxisName.Y))
            return null;
        var limits = data.Curves.Where(curve => curve.Role == CurveRole.Limit).ToArray();
        var apart = Array.TrueForAll(readings, reading => limits.Count(limit => BelongsTo(limit, reading.Label)) == 1)
            && Array.TrueForAll(limits, limit => Array.Exists(readings, reading => BelongsTo(limit, reading.Label)));
        return apart ? readings[1].Label : null;
    }

    private static bool BelongsTo(FigureCurve curve, string quantity) => string.Equals(FirstWord(curve.Label), FirstWord(quantity), StringComparison.OrdinalIgnoreCase);

    private static string FirstWord(string label) => label.Split(' ', 2)[0];

    private static (FigureCurve Curve, SeriesStyle Style)[] Styled(FigureData data, XySheet sheet)
    {
        var readings = data.Curves.Where(curve => curve.Role != CurveRole.Limit).Select(curve => (Curve: curve, Style: sheet.NextStyle(curve))).ToArray();
        return
        [
            .. data.Curves.Where(curve => curve.Role == CurveRole.Limit).Select(curve => (curve, LimitStyle(sheet.NextStyle(curve), curve, readings))),
            .. readings,
        ];
    }

    private static SeriesStyle LimitStyle(SeriesStyle own, FigureCurve limit, (FigureCurve Curve, SeriesStyle Style)[] readings)
    {
        foreach (var (curve, style) in readings)
        {
            if (BelongsTo(limit, curve.Label))
                return own with { Stroke = own.Stroke with { Color = style.Stroke.Color, Width = 0.6 }, Tint = style.Tint, Text = style.Text };
        }

        return own;
    }

    private static void Bands(Panel panel, (FigureCurve Curve, SeriesStyle Style)[] curves)
    {
        panel.BeginClip();
        foreach (var (curve, style) in curves.Where(pair => pair.Curve.Role == CurveRole.Limit))
            XySheet.Band(panel, curve, style);
        panel.EndClip();
    }

    private static void Curves(XySheet sheet, Panel panel, (FigureCurve Curve, SeriesStyle Style)[] curves)
    {
        panel.BeginClip();
        foreach (var (curve, style) in curves)
        {
            if (curve.Role != CurveRole.Limit)
            {
                XySheet.Readings(panel, curve, style);
                sheet.Hover(panel, curve);
                continue;
            }

            XySheet.Line(panel, curve, style with { Stroke = style.Stroke with { Dash = SeriesStyle.Sparse } });
            if (XySheet.HasSpread(curve))
            {
                XySheet.Line(panel, curve with { Y = curve.YLow }, style);
                XySheet.Line(panel, curve with { Y = curve.YHigh }, style);
            }
        }

        panel.EndClip();
    }

    private static void Labels(XySheet sheet, Panel panel, (FigureCurve Curve, SeriesStyle Style)[] curves)
    {
        foreach (var (curve, style) in curves)
        {
            if (curve.Role != CurveRole.Limit)
                sheet.Label(panel, curve, style, 0.1, order: 3);
            else
                sheet.Label(panel, XySheet.HasSpread(curve) ? curve with { Y = curve.YHigh } : curve, style, 1.0);
        }
    }
}
