using Commission.Documents.Plots.Drawing;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>Humidity ratio over dry bulb, numbers on the right as psychrometric charts have them: saturation, lines of relative humidity, return and supply air.</summary>
internal sealed class PsychrometricPlot : IPlot
{
    /// <inheritdoc/>
    public string Kind => "psychrometric";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => width < 360 ? 210 : 215;

    /// <inheritdoc/>
    public SvgFigure Draw(FigureData data, PlotSize size) => StateDiagram.Draw(data, size, axisOnRight: true, domeLabelAt: 0.6);
}
