using Commission.Documents.Fonts;
using Commission.Documents.Plots;
using Commission.Records;
using Commission.Records.Series;

namespace Commission.Documents.Typesetting;

/// <summary>
/// The figures of a record, drawn once at the width of the text by a thread of their own, so that they are ready when the flow
/// asks. What is drawn does not depend on when.
/// </summary>
internal sealed class FigureShelf
{
    private readonly Dictionary<string, FigureData> _data;
    private readonly Task<Dictionary<string, SvgFigure>> _drawn;

    private FigureShelf(CommissioningRecord record)
    {
        _data = record.Figures.ToDictionary(figure => figure.Id, StringComparer.Ordinal);
        _drawn = Task.Run(Draw);
    }

    /// <summary>Begins to draw.</summary>
    public static FigureShelf Begin(CommissioningRecord record) => new(record);

    /// <summary>The data of a figure.</summary>
    public FigureData Data(string id) => _data[id];

    /// <summary>A figure at a width.</summary>
    public SvgFigure Figure(string id, double width) => width == PageFormat.TextWidth ? _drawn.GetAwaiter().GetResult()[id] : Draw(_data[id], width);

    private Dictionary<string, SvgFigure> Draw()
    {
        EmbeddedFonts.Register();
        return _data.ToDictionary(entry => entry.Key, entry => Draw(entry.Value, PageFormat.TextWidth), StringComparer.Ordinal);
    }

    private static SvgFigure Draw(FigureData data, double width) => PlotCatalogue.Draw(data, PlotCatalogue.SizeFor(data, width));
}
