using Commission.Documents.Pictures;
using Commission.Documents.Plots;
using Commission.Documents.Tests.Pictures;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Documents.Tests.Plots;

/// <summary>Figures that several pages share.</summary>
public sealed class FigureShelfTests
{
    [Fact]
    public void A_figure_is_drawn_once_for_each_size_whoever_asks()
    {
        var record = SampleRecord.Full;
        var shelf = new FigureShelf(record);
        var id = record.Figures[0].Id;
        var seen = new Picture[8];
        Parallel.For(0, seen.Length, i => seen[i] = shelf.Figure(id, i % 2 == 0 ? PictureSize.FullWidth : PictureSize.NarrowWidth));
        shelf.DrawForScreens();
        for (var i = 0; i < seen.Length; i++)
            Assert.Same(seen[i % 2], seen[i]);
        Assert.Same(seen[0], shelf.Figure(id, PictureSize.FullWidth));
        Assert.Equal(PictureSize.FullWidth, seen[0].Size.Width);
        Assert.Equal(PictureSize.NarrowWidth, seen[1].Size.Width);
    }

    [Fact]
    public void It_draws_what_the_catalogue_draws()
    {
        var record = SampleRecord.Full;
        var shelf = new FigureShelf(record);
        Assert.All(record.Figures, figure =>
            Assert.Equal(SvgPicture.Written(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure))), SvgPicture.Written(shelf.Figure(figure.Id, PictureSize.FullWidth))));
    }
}
