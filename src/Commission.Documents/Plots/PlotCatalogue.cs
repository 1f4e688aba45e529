using System.Collections.Immutable;
using Commission.Documents.Pictures;
using Commission.Documents.Plots.Kinds;
using Commission.Records.Series;

namespace Commission.Documents.Plots;

/// <summary>Every kind of figure a record can hold. A new kind is one file under <c>Kinds</c> and one line here.</summary>
internal static class PlotCatalogue
{
    private static readonly ImmutableArray<IPlot> All =
    [
        new StripPlot(),
        new InstrumentResidualsPlot(),
        new NitrogenHoldPlot(),
        new PullDownPlot(),
        new HoldPlot(),
        new ChargeTimePlot(),
        new PressureEnthalpyPlot(),
        new PsychrometricPlot(),
    ];

    /// <summary>The kinds, in the order of the pages.</summary>
    public static ImmutableArray<string> Kinds { get; } = [.. All.Select(plot => plot.Kind)];

    /// <summary>The size that suits a figure.</summary>
    /// <param name="data">The figure.</param>
    /// <param name="width">Width, pt.</param>
    /// <returns>That width with the height the kind and the amount of data ask for.</returns>
    /// <exception cref="ArgumentException">No plot draws this kind: the record was not made by this program.</exception>
    public static PictureSize SizeFor(FigureData data, double width = PictureSize.FullWidth)
        => new(width, Of(data).HeightFor(data, width));

    /// <summary>Draws a figure.</summary>
    /// <param name="data">The figure.</param>
    /// <param name="size">Outer size.</param>
    /// <returns>The drawing; the same data and size give the same drawing.</returns>
    /// <exception cref="ArgumentException">No plot draws this kind: the record was not made by this program.</exception>
    public static Picture Draw(FigureData data, PictureSize size) => Of(data).Draw(data, size);

    private static IPlot Of(FigureData data)
    {
        ArgumentNullException.ThrowIfNull(data);
        foreach (var plot in All)
        {
            if (string.Equals(plot.Kind, data.Plot, StringComparison.Ordinal))
                return plot;
        }

        throw new ArgumentException($"No plot draws figures of kind \"{data.Plot}\"; there are {string.Join(", ", Kinds)}.", nameof(data));
    }
}
