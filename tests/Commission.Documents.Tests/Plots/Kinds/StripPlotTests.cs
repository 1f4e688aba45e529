using Commission.Documents.Pictures;
using Commission.Documents.Plots;
using Commission.Documents.Tests.Pictures;
using Commission.Measurement.Decisions;
using Commission.Records.Series;
using Xunit;

namespace Commission.Documents.Tests.Plots.Kinds;

/// <summary>One row a check: word, mark and place agree.</summary>
public class StripPlotTests
{
    [Fact]
    public void Every_row_says_its_verdict_in_a_word()
    {
        var figure = FigureSamples.Strip();
        var words = Draw(figure).Texts.Select(text => text.Words).ToArray();
        Assert.Equal(figure.Rows.Count(row => row.Verdict == Verdict.Pass), words.Count(word => word == "pass"));
        Assert.Equal(figure.Rows.Count(row => row.Verdict == Verdict.Fail), words.Count(word => word == "fail"));
        Assert.Contains("conditional", words);
        foreach (var row in figure.Rows)
            Assert.Contains(row.Text, words);
    }

    [Fact]
    public void A_value_stands_between_the_edges_of_its_zone_in_proportion()
    {
        var figure = FigureSamples.Strip() with { Rows = [new FigureBar("split", 0.25, 0.05, 0.45, Verdict.Pass, "1 ± 1")] };
        var picture = Draw(figure);
        var zone = picture.All("rect").Single(rect => rect.Attribute("fill")!.Value == Palette.Zone.Hex);
        var left = SvgPicture.Number(zone, "x");
        var width = SvgPicture.Number(zone, "width");
        Assert.Equal(left + 0.25 * width, SvgPicture.Number(picture.All("ellipse").Single(), "cx"), 0.05);
        var bar = picture.All("line").Single(line => line.Attribute("stroke")!.Value == Palette.BlueText.Hex && SvgPicture.Number(line, "y1") == SvgPicture.Number(line, "y2"));
        Assert.Equal(left + 0.05 * width, SvgPicture.Number(bar, "x1"), 0.05);
        Assert.Equal(left + 0.45 * width, SvgPicture.Number(bar, "x2"), 0.05);
    }

    [Fact]
    public void A_value_far_outside_is_an_arrow_and_not_a_dot()
    {
        var figure = FigureSamples.Strip() with { Rows = [new FigureBar("far", 9, 8, 10, Verdict.Fail, "9 ± 1")] };
        Assert.Empty(Draw(figure).All("ellipse"));
    }

    [Fact]
    public void A_side_without_a_limit_has_no_edge()
    {
        var one = FigureSamples.Strip() with { Rows = [new FigureBar("at most", 0.4, 0.3, 0.5, Verdict.Pass, "4 ± 1", LowerIsLimit: false)] };
        var two = FigureSamples.Strip() with { Rows = [new FigureBar("within", 0.4, 0.3, 0.5, Verdict.Pass, "4 ± 1")] };
        Assert.Equal(1, Edges(one));
        Assert.Equal(2, Edges(two));

        static int Edges(FigureData figure) => Draw(figure).All("line").Count(line => line.Attribute("stroke")!.Value == Palette.ZoneEdge.Hex);
    }

    [Fact]
    public void A_limit_too_long_for_its_column_is_left_to_the_table_and_the_pointer()
    {
        var figure = FigureSamples.Strip() with { Rows = [new FigureBar("max", 0.5, 0.4, 0.6, Verdict.Pass, "440 ± 2 psig; at most 450 psig (rating of the indoor coil, maker)")] };
        Assert.Contains(Draw(figure).Texts, text => text.Words == "440 ± 2 psig");
        Assert.EndsWith("(rating of the indoor coil, maker), pass", PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)).Hover[0].Text, StringComparison.Ordinal);
        var brief = figure with { Rows = [figure.Rows[0] with { Text = "44 A; at most 50 A" }] };
        Assert.Contains(Draw(brief).Texts, text => text.Words == "44 A; at most 50 A");
    }

    [Fact]
    public void The_height_follows_the_number_of_rows()
    {
        var figure = FigureSamples.Strip();
        Assert.True(PlotCatalogue.SizeFor(figure).Height > PlotCatalogue.SizeFor(figure with { Rows = [figure.Rows[0]] }).Height);
    }

    private static SvgPicture Draw(FigureData figure) => new(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)));
}
