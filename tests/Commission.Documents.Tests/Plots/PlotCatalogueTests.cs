using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Pictures;
using Commission.Documents.Plots;
using Commission.Documents.Tests.Pictures;
using Commission.Records.Series;
using Xunit;

namespace Commission.Documents.Tests.Plots;

/// <summary>What holds for every figure, whatever it shows.</summary>
public class PlotCatalogueTests
{
    public static TheoryData<string, double> Figures()
    {
        var rows = new TheoryData<string, double>();
        foreach (var figure in FigureSamples.All)
        {
            rows.Add(figure.Id, PictureSize.FullWidth);
            rows.Add(figure.Id, PictureSize.NarrowWidth);
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void No_label_leaves_the_figure_and_no_two_labels_touch(string id, double width)
    {
        var picture = new SvgPicture(Draw(id, width));
        Assert.NotEmpty(picture.Texts);
        foreach (var text in picture.Texts)
            Assert.True(text.Left >= -0.01 && text.Right <= picture.Width + 0.01 && text.Top >= 0 && text.Bottom <= picture.Height, $"{text} leaves {picture.Width} × {picture.Height}");
        for (var i = 0; i < picture.Texts.Count; i++)
        {
            for (var j = i + 1; j < picture.Texts.Count; j++)
                Assert.False(picture.Texts[i].Meets(picture.Texts[j]), $"{picture.Texts[i]} meets {picture.Texts[j]}");
        }
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void Only_the_elements_and_colours_that_both_pages_know_are_used(string id, double width)
    {
        string[] elements = ["svg", "g", "clipPath", "rect", "ellipse", "path", "line", "polyline", "text"];
        var picture = new SvgPicture(Draw(id, width));
        foreach (var element in picture.Root.DescendantsAndSelf())
        {
            Assert.Contains(element.Name.LocalName, elements);
            foreach (var colour in new[] { "fill", "stroke" }.Select(name => element.Attribute(name)?.Value).OfType<string>())
                Assert.True(colour == "none" || Palette.All.Any(known => known.Hex == colour), colour);
        }

        foreach (var path in picture.All("path"))
            Assert.Matches("^M[ML0-9 .-]*Z$", path.Attribute("d")!.Value);
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void The_same_data_gives_the_same_text_whatever_the_language_of_the_machine(string id, double width)
    {
        var first = SvgPicture.Written(Draw(id, width));
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(first, SvgPicture.Written(Draw(id, width)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void Type_is_large_enough_to_read(string id, double width)
        => Assert.All(new SvgPicture(Draw(id, width)).Texts, text => Assert.InRange(text.Size, 7, 8.5));

    [Theory]
    [MemberData(nameof(Figures))]
    public void Places_that_say_their_values_lie_in_the_figure(string id, double width)
    {
        var figure = Draw(id, width);
        Assert.NotEmpty(figure.Hover);
        Assert.All(figure.Hover, point =>
        {
            Assert.InRange(point.X, 0, figure.Size.Width);
            Assert.InRange(point.Y, 0, figure.Size.Height);
            Assert.Contains(": ", point.Text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Every_kind_has_a_sample_here()
        => Assert.Equal(PlotCatalogue.Kinds.Order(StringComparer.Ordinal), FigureSamples.All.Select(figure => figure.Plot).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void A_long_noisy_series_stays_small()
        => Assert.InRange(SvgPicture.Written(Draw("pull-down-crowded", PictureSize.FullWidth)).Length, 5_000, 40_000);

    [Fact]
    public void An_unknown_kind_is_named()
    {
        var thrown = Assert.Throws<ArgumentException>(() => PlotCatalogue.Draw(FigureSamples.Hold() with { Plot = "pie" }, new PictureSize(300, 200)));
        Assert.Contains("\"pie\"", thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(AxisScale.Linear)]
    [InlineData(AxisScale.Log10)]
    [InlineData(AxisScale.Minutes)]
    [InlineData(AxisScale.Clock)]
    public void Odd_data_draw_without_fault(AxisScale scale)
    {
        double?[][] oddities = [[], [null], [5], [5, 5, 5], [0, 0], [-3, -1], [null, 2, null], [1e-9, 1e12], [double.NaN, 1], [1e300, -1e300]];
        foreach (var kind in PlotCatalogue.Kinds)
        {
            foreach (var values in oddities)
            {
                foreach (var role in Enum.GetValues<CurveRole>())
                {
                    var figure = FigureSamples.Hold() with
                    {
                        Plot = kind,
                        X = new FigureAxis("x", "", scale == AxisScale.Log10 ? AxisScale.Linear : scale),
                        Y = new FigureAxis("y", "", scale == AxisScale.Log10 ? AxisScale.Log10 : AxisScale.Linear),
                        Curves = [new FigureCurve { Label = "odd", Role = role, X = [.. Enumerable.Range(0, values.Length).Select(i => (double)i)], Y = [.. values], YLow = [.. values], YHigh = [.. values] }],
                        Lines = [new FigureLine("nothing", 0, AxisName.Y, LineRole.Target), new FigureLine("far", 1e9, AxisName.Y, LineRole.Tolerance)],
                    };
                    var drawn = SvgPicture.Written(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)));
                    Assert.DoesNotContain("NaN", XDocument.Parse(drawn).ToString(), StringComparison.Ordinal);
                    Assert.DoesNotContain("∞", drawn, StringComparison.Ordinal);
                }
            }
        }
    }

    [Fact]
    public void Threads_may_draw_at_once()
    {
        var expected = FigureSamples.All.Select(figure => SvgPicture.Written(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)))).ToArray();
        Parallel.For(0, 4, _ => Assert.Equal(expected, FigureSamples.All.Select(figure => SvgPicture.Written(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure))))));
    }

    private static Picture Draw(string id, double width)
    {
        var figure = FigureSamples.All.Single(figure => figure.Id == id);
        return PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure, width));
    }
}
