using Commission.Documents.Pictures;
using Commission.Records.Series;

namespace Commission.Documents.Plots.Kinds;

/// <summary>One kind of figure. A plot turns the record's figure data into positions on paper and computes nothing else.</summary>
internal interface IPlot
{
    /// <summary>The word that <see cref="FigureData.Plot"/> and <c>figure data-plot</c> use.</summary>
    string Kind { get; }

    /// <summary>The height that suits the data at a width.</summary>
    double HeightFor(FigureData data, double width);

    /// <summary>Draws the figure.</summary>
    Picture Draw(FigureData data, PictureSize size);
}
