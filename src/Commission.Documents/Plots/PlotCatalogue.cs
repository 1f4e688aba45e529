using System.Collections.Concurrent;
using System.Collections.Immutable;
using Commission.Documents.Pictures;
using Commission.Documents.Plots.Kinds;
using Commission.Records;
using Commission.Records.Series;

namespace Commission.Documents.Plots;

/// <summary>Every kind of figure a record can hold. A new kind is one file under <c>Kinds</c> and one line here.</summary>
internal static class PlotCatalogue
{
    private static readonly ImmutableArray<IPlot> All =
    [
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

/// <summary>
/// The figures of a record, each drawn once for each size, when it is first asked for. Several threads may ask: the page of one waits
/// for the figure that another is drawing, and what is drawn does not depend on who draws it.
/// </summary>
public sealed class FigureShelf
{
    private readonly Dictionary<string, FigureData> _data;
    private readonly ConcurrentDictionary<(string Id, double Width, double Height), Lazy<Picture>> _drawn = new();

    /// <summary>Takes the figures of a record; draws none.</summary>
    /// <param name="record">The record.</param>
    public FigureShelf(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        _data = record.Figures.ToDictionary(figure => figure.Id, StringComparer.Ordinal);
    }

    /// <summary>Draws ahead what a web page shows, for a program that has a processor to spare while the templates are rendered. Paper asks for sizes of its own.</summary>
    public void DrawForScreens()
    {
        foreach (var id in _data.Keys)
        {
            _ = Figure(id, PictureSize.FullWidth);
            _ = Figure(id, PictureSize.NarrowWidth);
        }
    }

    internal bool Has(string id) => _data.ContainsKey(id);

    internal FigureData Data(string id) => _data[id];

    /// <summary>The height that suits a figure at a width.</summary>
    internal double Height(string id, double width) => PlotCatalogue.SizeFor(_data[id], width).Height;

    internal Picture Figure(string id, double width) => Figure(id, width, Height(id, width));

    internal Picture Figure(string id, double width, double height) =>
        _drawn.GetOrAdd((id, width, height), static (key, data) => new Lazy<Picture>(() => PlotCatalogue.Draw(data[key.Id], new PictureSize(key.Width, key.Height))), _data).Value;
}
