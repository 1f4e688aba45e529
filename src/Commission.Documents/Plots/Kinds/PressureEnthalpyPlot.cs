using Commission.Documents.Plots.Drawing;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>Pressure (logarithmic) over enthalpy: the saturation dome, lines of constant temperature, and the measured states of the cycle joined in order.</summary>
internal sealed class PressureEnthalpyPlot : IPlot
{
    /// <inheritdoc/>
    public string Kind => "pressure-enthalpy";

    /// <inheritdoc/>
    public double HeightFor(FigureData data, double width) => width < 360 ? 220 : 230;

    /// <inheritdoc/>
    public SvgFigure Draw(FigureData data, PlotSize size) => StateDiagram.Draw(data, size, axisOnRight: false, domeLabelAt: 0.15);
}
