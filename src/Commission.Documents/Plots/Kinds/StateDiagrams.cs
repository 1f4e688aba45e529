using Commission.Documents.Pictures;
using Commission.Documents.Plots.Sheets;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>What the two charts of state have in common: saturation and guide lines behind, measured states with U in front.</summary>
internal static class StateDiagram
{
    /// <summary>Draws a chart of state.</summary>
    /// <param name="data">The figure.</param>
    /// <param name="size">Outer size.</param>
    /// <param name="axisOnRight">Where the vertical numbers stand.</param>
    /// <param name="domeLabelAt">Share of the way along the saturation line where its label reads best.</param>
    /// <returns>The drawing.</returns>
    public static Picture Draw(FigureData data, PictureSize size, bool axisOnRight, double domeLabelAt)
    {
        var sheet = new XySheet(data, size, new SheetPlan { AxisOnRight = axisOnRight, IsBackdrop = static curve => curve.Role is CurveRole.Isotherm });
        var curves = data.Curves.Select(curve => (Curve: curve, Style: sheet.NextStyle(curve))).ToArray();
        sheet.Axes();
        sheet.References();
        sheet.Flags();
        sheet.Main.BeginClip();
        foreach (var (curve, style) in curves.Where(pair => !IsState(pair.Curve)).OrderBy(pair => pair.Curve.Role == CurveRole.Isotherm ? 0 : 1))
        {
            XySheet.Band(sheet.Main, curve, style);
            XySheet.Line(sheet.Main, curve, style);
        }

        foreach (var (curve, style) in curves.Where(pair => IsState(pair.Curve)))
            XySheet.Readings(sheet.Main, curve, style);
        sheet.Main.EndClip();

        foreach (var (curve, style) in curves)
        {
            if (IsState(curve))
            {
                sheet.Label(sheet.Main, curve, style, 0.5, order: 2);
                sheet.Hover(sheet.Main, curve);
            }
            else if (curve.Role == CurveRole.Isotherm)
            {
                sheet.Label(sheet.Main, curve, style, axisOnRight ? 0.9 : 1.0, optional: true, order: 20);
            }
            else
            {
                sheet.Label(sheet.Main, curve, style, domeLabelAt, order: 6);
            }
        }

        return sheet.Finish();
    }

    private static bool IsState(FigureCurve curve) => curve.Role is CurveRole.State or CurveRole.Measured;
}

/// <summary>Pressure (logarithmic) over enthalpy: the saturation dome, lines of constant temperature, and the measured states of the cycle joined in order.</summary>
internal sealed class PressureEnthalpyPlot : IPlot
{
    /// <inheritdoc/>
    public string Kind => "pressure-enthalpy";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => width < 360 ? 220 : 230;

    /// <inheritdoc/>
    public Picture Draw(FigureData data, PictureSize size) => StateDiagram.Draw(data, size, axisOnRight: false, domeLabelAt: 0.15);
}

/// <summary>Humidity ratio over dry bulb, numbers on the right as psychrometric charts have them: saturation, lines of relative humidity, return and supply air.</summary>
internal sealed class PsychrometricPlot : IPlot
{
    /// <inheritdoc/>
    public string Kind => "psychrometric";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => width < 360 ? 210 : 215;

    /// <inheritdoc/>
    public Picture Draw(FigureData data, PictureSize size) => StateDiagram.Draw(data, size, axisOnRight: true, domeLabelAt: 0.6);
}
