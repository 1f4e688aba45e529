using Commission.Documents.Pictures;
using Commission.Documents.Typesetting;
using CsCheck;
using PdfSharp.Drawing;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

public sealed class PaginatorTests
{
    private static readonly PageFormat Format = PageFormat.Letter;

    private static readonly Gen<Block[]> Blocks = Gen.Select(Gen.Double[1, 400], Gen.Double[0, 20], Gen.Int[0, 9], (height, space, kind) => new Block(height, space, kind is 0 or 1, kind == 2)).Array[1, 60];

    [Fact]
    public void Slabs_follow_each_other_without_touching_and_stay_on_the_page()
    {
        Blocks.Sample(blocks =>
        {
            var slabs = Slabs(blocks);
            var placed = Paginator.Place(slabs, Format, firstPage: 0);
            Assert.Equal(slabs, placed.Select(place => place.Slab));
            for (var i = 0; i < placed.Count; i++)
            {
                Assert.True(placed[i].Y + placed[i].Slab.Height <= Format.Floor + 0.001);
                Assert.True(placed[i].Y >= PageFormat.Top(placed[i].Page) - 0.001);
                if (i == 0)
                    continue;
                Assert.True(placed[i].Page > placed[i - 1].Page || placed[i].Y >= placed[i - 1].Y + placed[i - 1].Slab.Height + Math.Max(placed[i - 1].Slab.SpaceAfter, placed[i].Slab.SpaceBefore) - 0.001);
                Assert.True(placed[i].Page - placed[i - 1].Page is 0 or 1);
            }
        });
    }

    [Fact]
    public void What_belongs_together_stays_together_when_a_page_can_hold_it()
    {
        Blocks.Sample(blocks =>
        {
            var placed = Paginator.Place(Slabs(blocks), Format, firstPage: 0);
            for (var first = 0; first < placed.Count;)
            {
                var last = first;
                while (last < placed.Count - 1 && placed[last].Slab.KeepWithNext && !placed[last + 1].Slab.BreakBefore)
                    last++;
                var group = placed.GetRange(first, last - first + 1);
                var height = 0.0;
                for (var i = 0; i < group.Count; i++)
                    height += group[i].Slab.Height + (i == 0 ? 0 : Math.Max(group[i - 1].Slab.SpaceAfter, group[i].Slab.SpaceBefore));
                if (height <= Format.TextHeight)
                    Assert.Single(group.Select(place => place.Page).Distinct());
                first = last + 1;
            }
        });
    }

    [Fact]
    public void A_break_begins_a_page()
    {
        Blocks.Sample(blocks =>
        {
            var placed = Paginator.Place(Slabs(blocks), Format, firstPage: 0);
            for (var i = 1; i < placed.Count; i++)
            {
                if (placed[i].Slab.BreakBefore)
                    Assert.True(placed[i].Page > placed[i - 1].Page);
            }
        });
    }

    [Fact]
    public void Rows_on_a_new_page_come_under_the_head_again()
    {
        var head = new TableHead();
        var headRow = new RowSlab([], 100, null, 0, padding: 6) { KeepWithNext = true };
        head.Rows.Add(headRow);
        var slabs = new List<Slab> { headRow };
        for (var i = 0; i < 100; i++)
            slabs.Add(new RowSlab([], 100, Palette.Ink, 0.4, padding: 10) { Head = head });
        var placed = Paginator.Place(slabs, Format, firstPage: 0);
        var firsts = placed.GroupBy(place => place.Page).Skip(1).Select(page => page.First()).ToList();
        Assert.True(firsts.Count >= 2);
        Assert.All(firsts, place =>
        {
            Assert.True(place.RepeatsHead);
            Assert.Equal(PageFormat.Top(place.Page) + head.Height, place.Y, 0.001);
        });
        Assert.Equal(firsts.Count, placed.Count(place => place.RepeatsHead));
    }

    // What is left of the page, what follows the heading and its figure, and the order that is expected.
    [Theory]
    [InlineData(100, 20, "heading text | figure")]
    [InlineData(100, 60, "heading text | figure")]
    [InlineData(100, 400, "heading figure text")]
    [InlineData(500, 30, "heading figure text")]
    public void A_figure_waits_but_never_passes_its_heading(double left, double textHeight, string expected)
    {
        const double Figure = 200;
        var filler = Format.Floor - PageFormat.Top(0) - left;
        var heading = new Bar(15) { KeepWithNext = true, Outline = new OutlineEntry(2, "heading") };
        var figure = new FigureSlab(new Picture(new PictureSize(300, Figure), [], []), "figure");
        var text = new Bar(textHeight);
        var end = new Bar(5) { Outline = new OutlineEntry(2, "end") };
        var placed = Paginator.Place([new Bar(filler), heading, figure, text, end], Format, firstPage: 0);
        var order = placed.Where(place => place.Slab == heading || place.Slab == figure || place.Slab == text)
            .Select(place => (Page: place.Page, Name: place.Slab == heading ? "heading" : place.Slab == figure ? "figure" : "text")).ToList();
        Assert.Equal(expected.Replace("| ", "", StringComparison.Ordinal).Trim(), string.Join(' ', order.Select(item => item.Name)));
        Assert.True(order.FindIndex(item => item.Name == "heading") == 0);
        Assert.Equal(end, placed[^1].Slab);
    }

    [Fact]
    public void A_slab_taller_than_a_page_still_gets_a_page()
    {
        var placed = Paginator.Place([new Bar(10), new Bar(5000), new Bar(10)], Format, firstPage: 0);
        Assert.Equal([0, 1, 2], placed.Select(place => place.Page));
    }

    private static List<Slab> Slabs(Block[] blocks) =>
        [.. blocks.Select(block => new Bar(block.Height) { SpaceBefore = block.Space, SpaceAfter = block.Space / 2, KeepWithNext = block.Keep, BreakBefore = block.Break })];

    private sealed record Block(double Height, double Space, bool Keep, bool Break);

    private sealed class Bar : Slab
    {
        public Bar(double height)
        {
            Height = height;
        }

        public override void Draw(Ink ink, double x, double y) => ink.Fill(new XRect(x, y, 10, Height), Palette.Quiet);
    }
}
