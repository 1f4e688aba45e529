using Commission.Documents.Pictures;
using Commission.Documents.Plots;
using Commission.Documents.Tests.Pictures;
using Commission.Records.Series;
using Xunit;

namespace Commission.Documents.Tests.Plots.Kinds;

/// <summary>The hold on its linear scale.</summary>
public class HoldPlotTests
{
    [Fact]
    public void Two_readings_are_two_marks_with_bars_at_their_values()
    {
        var picture = Draw(FigureSamples.HoldTwoReadings());
        var marks = picture.All("ellipse").ToArray();
        Assert.Equal(2, marks.Length);
        double y400 = picture.Text("400").MiddleOfDigits, y1000 = picture.Text("1,000").MiddleOfDigits;
        double x0 = picture.Text("0").Anchor, x14 = picture.Text("14").Anchor;
        Assert.Equal(y400 + (y1000 - y400) * 10 / 600, SvgPicture.Number(marks[0], "cy"), 0.05);
        Assert.Equal(y400 + (y1000 - y400) * 320 / 600, SvgPicture.Number(marks[1], "cy"), 0.05);
        Assert.Equal(x0, SvgPicture.Number(marks[0], "cx"), 0.05);
        Assert.Equal(x0 + (x14 - x0) * 15 / 14, SvgPicture.Number(marks[1], "cx"), 0.05);
    }

    [Fact]
    public void What_the_model_leaves_over_has_its_own_strip_below()
    {
        var with = FigureSamples.Hold();
        var without = with with { Curves = [.. with.Curves.Where(curve => curve.Role != CurveRole.Residual)] };
        Assert.Contains(Draw(with).Texts, text => text.Words == "Readings less source, micron");
        Assert.DoesNotContain(Draw(without).Texts, text => text.Words.StartsWith("Readings less", StringComparison.Ordinal));
        Assert.True(PlotCatalogue.SizeFor(with).Height > PlotCatalogue.SizeFor(without).Height);
    }

    // The line of an event goes down through both panels, and past the words between them.
    [Fact]
    public void No_line_runs_through_the_title_of_the_strip()
    {
        var picture = Draw(FigureSamples.Hold());
        var title = picture.Text("Readings less source, micron");
        Assert.Empty(picture.LinesThrough(title));
        var hold = FigureSamples.Hold();
        var longer = Draw(hold with { Curves = [.. hold.Curves.Select(curve => curve.Role == CurveRole.Residual ? curve with { Label = "Readings less a source that levels off after the first hour of the hold" } : curve)] });
        Assert.Empty(longer.LinesThrough(longer.Texts.Single(text => text.Words.StartsWith("Readings less a source", StringComparison.Ordinal))));
    }

    [Fact]
    public void Every_curve_and_the_limit_are_named_once()
    {
        var words = Draw(FigureSamples.Hold()).Texts.Select(text => text.Words).ToArray();
        foreach (var label in new[] { "measured", "source that levels off", "steady rise", "decay limit 1,000 micron", "judged at 10 min", "isolated", "end" })
            Assert.Single(words, label);
    }

    [Fact]
    public void A_band_that_opens_like_a_trumpet_does_not_flatten_the_readings()
    {
        var figure = FigureSamples.HoldTwoReadings();
        var wild = new FigureCurve { Label = "wild", Role = CurveRole.Model, X = [0, 15], Y = [410, 720], YLow = [410, -90_000], YHigh = [410, 90_000] };
        var picture = Draw(figure with { Curves = figure.Curves.Add(wild) });
        var marks = picture.All("ellipse").Select(mark => SvgPicture.Number(mark, "cy")).ToArray();
        Assert.True(marks[0] - marks[1] > 20, "the two readings are still well apart");
    }

    [Fact]
    public void A_limit_beyond_a_given_axis_is_named_at_the_edge()
    {
        var figure = FigureSamples.HoldTwoReadings() with { Y = new FigureAxis("Pressure", "micron", AxisScale.Linear, 300, 900) };
        Assert.Contains(Draw(figure).Texts, text => text.Words == "decay limit 1,000 micron ▲");
    }

    private static SvgPicture Draw(FigureData figure) => new(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)));
}
