using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using Commission.Documents.Plots.Labels;
using CsCheck;
using Xunit;

namespace Commission.Documents.Tests.Plots.Labels;

/// <summary>Labels find free places, or none.</summary>
public class LabelPlacerTests
{
    private static readonly TextStyle Style = new(FontFace.Regular, 8, Palette.Ink);
    private static readonly Box Area = new(0, 0, 300, 200);

    [Fact]
    public void The_first_spot_is_taken_when_nothing_is_in_the_way()
    {
        var label = Assert.Single(Place(new InkMap(new PictureSize(300, 200)), [Request("free", new Point(100, 100))]));
        Assert.Equal(new LabelSpot(100, 96, TextAnchor.Start), label.Spot);
    }

    [Fact]
    public void A_curve_is_kept_clear_of()
    {
        var ink = new InkMap(new PictureSize(300, 200));
        ink.Line(new Point(0, 93), new Point(300, 93), 120);
        var label = Assert.Single(Place(ink, [Request("moved", new Point(100, 100))]));
        Assert.False(label.Box.Top < 93 && label.Box.Bottom > 93, $"{label.Box} lies on the line at 93");
    }

    // On the line costs at least 120; of the free places the liked one wins, wherever it stands in the list.
    [Fact]
    public void The_place_that_costs_least_wins_in_any_order()
    {
        LabelSpot onLine = new(100, 96, TextAnchor.Start), free = new(100, 160, TextAnchor.Start, 3), freer = new(100, 180, TextAnchor.Start, 2), onLineToo = new(200, 96, TextAnchor.Start, 1);
        foreach (var spots in new LabelSpot[][] { [onLine, free, freer, onLineToo], [onLineToo, freer, free, onLine], [free, onLineToo, onLine, freer] })
        {
            var ink = new InkMap(new PictureSize(300, 200));
            ink.Line(new Point(0, 93), new Point(300, 93), 120);
            Assert.Equal(freer, Assert.Single(Place(ink, [Request("x", new Point(100, 100)) with { Spots = spots }])).Spot);
        }
    }

    // Beside the thing named everything is full; the thin line ends at the point of it that lies nearest, and runs through no other label.
    [Fact]
    public void A_label_far_off_leads_to_the_nearest_point_and_through_no_other_label()
    {
        var ink = new InkMap(new PictureSize(300, 200));
        ink.Fill(new Box(0, 60, 300, 200), 120);
        Point[] along = [.. Enumerable.Range(0, 29).Select(i => new Point(10 + 10.0 * i, 120))];
        var request = Request("far from it", along[0]) with { Targets = along };
        var label = Assert.Single(Place(ink, [request]));
        var end = Assert.NotNull(label.LeadsTo);
        Assert.Equal(PlacedLabel.LeaderFrom(label.Box, end).X, end.X, 5.01);

        var other = new LabelRequest("in the way, and wide", Style, [new LabelSpot(4, 55, TextAnchor.Start)], Area);
        var both = Place(ink, [other, request with { Targets = [new Point(30, 120)] }]);
        var (from, to) = (PlacedLabel.LeaderFrom(both[1].Box, both[1].LeadsTo!.Value), both[1].LeadsTo!.Value);
        Assert.DoesNotContain(Enumerable.Range(0, 100).Select(i => new Point(from.X + (to.X - from.X) * i / 100, from.Y + (to.Y - from.Y) * i / 100)), at => both[0].Box.Meets(new Box(at.X, at.Y, at.X + 0.01, at.Y + 0.01)));
    }

    // Asked for first, but it has to go farther off anyway: it does not take the one place of another.
    [Fact]
    public void Who_can_stand_beside_its_thing_goes_first()
    {
        var ink = new InkMap(new PictureSize(300, 200));
        ink.Fill(new Box(0, 60, 300, 200), 120);
        var far = Request("farther off", new Point(250, 150)) with { Order = 1 };
        var beside = Request("beside", new Point(250, 50)) with { Spots = [new LabelSpot(250, 50, TextAnchor.Middle)] };
        Assert.Null(Place(ink, [far, beside])[1].LeadsTo);
        Assert.Equal(50, Place(ink, [far, beside])[1].Spot.Y);
    }

    [Fact]
    public void A_reserved_place_is_kept_free()
    {
        var placer = new LabelPlacer(new InkMap(new PictureSize(300, 200)));
        var title = new Box(90, 80, 200, 100);
        placer.Reserve(title);
        Assert.False(Assert.Single(placer.Place([Request("moved", new Point(100, 100))])).Box.Meets(title));
    }

    [Fact]
    public void An_optional_label_without_room_is_left_out()
    {
        var ink = new InkMap(new PictureSize(300, 200));
        ink.Fill(Area, 120);
        Assert.Empty(Place(ink, [Request("gone", new Point(100, 100)) with { Optional = true }]));
        Assert.Single(Place(ink, [Request("stays", new Point(100, 100))]));
    }

    // Counted by hand: a line of eleven cells and a square of two by two, of which the rectangle covers six and one.
    [Fact]
    public void Ink_under_a_rectangle_is_the_sum_of_its_cells()
    {
        var ink = new InkMap(new PictureSize(300, 200));
        ink.Line(new Point(10, 20), new Point(20, 20), 5);
        ink.Line(new Point(10, 20), new Point(20, 20), 3);
        ink.Fill(new Box(14, 21, 16, 23), 100);
        Assert.Equal(6 * 5 + 100, ink.Under(new Box(15, 20, 21, 22)));
        Assert.Equal(11 * 5 + 400, ink.Under(new Box(-50, -50, 1000, 1000)));
        Assert.Equal(0, ink.Under(new Box(0, 0, 10, 200)));
        Assert.Throws<InvalidOperationException>(() => ink.Line(new Point(0, 0), new Point(1, 1), 1));
    }

    [Fact]
    public void A_map_begins_empty_whatever_was_drawn_on_the_raster_before()
    {
        for (var i = 0; i < 3; i++)
        {
            var ink = new InkMap(new PictureSize(300, 200));
            Assert.Equal(0, ink.Under(Area));
            ink.Return();
            var used = new InkMap(new PictureSize(300, 200));
            used.Fill(Area, 120);
            Assert.Equal(300 * 200 * 120, used.Under(Area));
            used.Return();
        }
    }

    [Fact]
    public void Labels_never_meet()
        => Gen.Select(Gen.Double[0, 300], Gen.Double[0, 200], Gen.Int[1, 20]).Array[1, 14].Sample(items =>
        {
            var placed = Place(new InkMap(new PictureSize(300, 200)), [.. items.Select(item => Request(new string('x', item.Item3), new Point(item.Item1, item.Item2)))]);
            Assert.Equal(items.Length, placed.Count);
            for (var i = 0; i < placed.Count; i++)
            {
                Assert.True(Area.Grow(0.02).Holds(placed[i].Box));
                for (var j = i + 1; j < placed.Count; j++)
                    Assert.False(placed[i].Box.Meets(placed[j].Box));
            }
        }, iter: 200);

    private static IReadOnlyList<PlacedLabel> Place(InkMap ink, IReadOnlyList<LabelRequest> requests) => new LabelPlacer(ink).Place(requests);

    private static LabelRequest Request(string text, Point at)
        => new(text, Style, [new LabelSpot(at.X, at.Y - 4, TextAnchor.Start), new LabelSpot(at.X, at.Y + 10, TextAnchor.Start, 3)], Area) { Targets = [at] };
}
