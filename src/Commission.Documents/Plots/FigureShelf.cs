using System.Collections.Concurrent;
using Commission.Documents.Pictures;
using Commission.Records;
using Commission.Records.Series;

namespace Commission.Documents.Plots;

/// <summary>
/// The figures of a record, each drawn once for each width, when it is first asked for. Several threads may ask: the page of one waits
/// for the figure that another is drawing, and what is drawn does not depend on who draws it.
/// </summary>
public sealed class FigureShelf
{
    private readonly Dictionary<string, FigureData> _data;
    private readonly ConcurrentDictionary<(string Id, double Width), Lazy<Picture>> _drawn = new();

    /// <summary>Takes the figures of a record; draws none.</summary>
    /// <param name="record">The record.</param>
    public FigureShelf(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        _data = record.Figures.ToDictionary(figure => figure.Id, StringComparer.Ordinal);
    }

    /// <summary>Draws everything ahead, for a program that has a processor to spare while the templates are rendered.</summary>
    /// <param name="narrow">True to draw the variants for telephones too, which only a web page has.</param>
    public void Draw(bool narrow)
    {
        foreach (var id in _data.Keys)
            _ = Figure(id, PictureSize.FullWidth);
        if (!narrow)
            return;
        foreach (var id in _data.Keys)
            _ = Figure(id, PictureSize.NarrowWidth);
    }

    internal bool Has(string id) => _data.ContainsKey(id);

    internal FigureData Data(string id) => _data[id];

    internal Picture Figure(string id, double width) =>
        _drawn.GetOrAdd((id, width), static (key, shelf) => new Lazy<Picture>(() => shelf.Drawn(key.Id, key.Width)), this).Value;

    private Picture Drawn(string id, double width) => PlotCatalogue.Draw(_data[id], PlotCatalogue.SizeFor(_data[id], width));
}
