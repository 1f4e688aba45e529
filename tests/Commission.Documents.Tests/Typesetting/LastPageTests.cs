using Commission.Documents.Typesetting;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

public sealed class LastPageTests
{
    private const double Line = 10;
    private static readonly PageFormat Format = PageFormat.Letter;

    [Fact]
    public void No_page_is_begun_for_a_few_lines_that_a_smaller_figure_makes_room_for()
    {
        var placed = LastPage.Place(Flow(Format.TextHeight - (6 * Line) + 15, 6), Format, firstPage: 1);
        Assert.All(placed, slab => Assert.Equal(1, slab.Page));
        Assert.True(placed[0].Slab.Height < Format.TextHeight - (6 * Line) + 15);
    }

    [Fact]
    public void The_figure_gives_no_more_than_it_has_to()
    {
        var height = Format.TextHeight - (6 * Line) + 15;
        Assert.Equal(0.94 * height, LastPage.Place(Flow(height, 6), Format, firstPage: 1)[0].Slab.Height, 1e-9);
    }

    [Fact]
    public void A_page_that_is_begun_for_more_stays()
    {
        var placed = LastPage.Place(Flow(Format.TextHeight - 100, 30), Format, firstPage: 1);
        Assert.Equal(2, placed[^1].Page);
        Assert.Equal(Format.TextHeight - 100, placed[0].Slab.Height);
    }

    [Fact]
    public void Where_nothing_helps_figures_keep_their_size()
    {
        var lines = (int)(Format.TextHeight / Line) + 3;
        var placed = LastPage.Place(Flow(10, lines), Format, firstPage: 1);
        Assert.Equal(2, placed[^1].Page);
        Assert.Equal(10, placed[0].Slab.Height);
    }

    private static Func<double, IReadOnlyList<Slab>> Flow(double figure, int lines) =>
        scale => [new Block(figure * scale), .. Enumerable.Range(0, lines).Select(_ => new Block(Line))];

    private sealed class Block : Slab
    {
        public Block(double height) => Height = height;

        public override void Draw(Ink ink, double x, double y) => throw new NotSupportedException();
    }
}
