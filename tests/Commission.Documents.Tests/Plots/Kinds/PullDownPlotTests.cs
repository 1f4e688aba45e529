using Commission.Documents.Pictures;
using Commission.Documents.Plots;
using Commission.Documents.Tests.Pictures;
using Commission.Records.Series;
using Xunit;

namespace Commission.Documents.Tests.Plots.Kinds;

/// <summary>Where values stand on the logarithmic scale, measured against the numbers printed beside it.</summary>
public class PullDownPlotTests
{
    [Fact]
    public void Reference_lines_stand_at_their_value()
    {
        var picture = Draw();
        double hundred = picture.Text("100").MiddleOfDigits, million = picture.Text("1,000,000").MiddleOfDigits;
        double Height(double micron) => hundred + (million - hundred) * Math.Log10(micron / 100) / 4;

        var heights = picture.All("line").Where(line => line.Attribute("stroke-dasharray") is not null && SvgPicture.Number(line, "y1") == SvgPicture.Number(line, "y2"))
            .Select(line => SvgPicture.Number(line, "y1")).ToArray();
        foreach (var level in new[] { 500.0, 1000, 16_330 })
            Assert.Contains(heights, y => Math.Abs(y - Height(level)) < 0.05);
    }

    [Fact]
    public void The_curve_passes_where_the_readings_are()
    {
        var picture = Draw();
        double hundred = picture.Text("100").MiddleOfDigits, million = picture.Text("1,000,000").MiddleOfDigits;
        double zero = picture.Text("0").Anchor, ninety = picture.Text("90").Anchor;
        // At 71 min the figure says 342 µm + nothing yet: 342 by construction of the sample.
        var x = zero + (ninety - zero) * 71.333333 / 90;
        var y = hundred + (million - hundred) * Math.Log10((342 + 178 * (1 - Math.Exp(-0.333333 / 9))) / 100) / 4;
        var nearest = picture.All("polyline").SelectMany(SvgPicture.Points).Min(p => Math.Abs(p.X - x) + Math.Abs(p.Y - y));
        Assert.InRange(nearest, 0, 0.1);
    }

    [Fact]
    public void A_gap_breaks_the_line_and_is_named()
    {
        var picture = Draw();
        var curves = picture.All("polyline").Where(line => line.Attribute("stroke")!.Value == Palette.Blue.Hex).ToArray();
        Assert.Equal(2, curves.Length);
        double zero = picture.Text("0").Anchor, ninety = picture.Text("90").Anchor;
        double X(double minute) => zero + (ninety - zero) * minute / 90;
        Assert.Equal(X(24), SvgPicture.Points(curves[0])[^1].X, 0.05);
        Assert.Equal(X(27), SvgPicture.Points(curves[1])[0].X, 0.05);
        Assert.NotNull(picture.Text("over range"));
    }

    [Fact]
    public void Events_are_named_over_their_line()
    {
        var picture = Draw();
        double zero = picture.Text("0").Anchor, ninety = picture.Text("90").Anchor;
        Assert.Equal(zero + (ninety - zero) * 24 / 90, picture.Text("nitrogen break").Left - 2.5, 0.05);
        Assert.Contains(picture.Texts, text => text.Words == "isolated");
    }

    // As page 1 has it. What is named stands free of every line; what only explains is left out before it is written over one.
    [Theory]
    [InlineData(128)]
    [InlineData(104)]
    public void In_a_small_figure_no_line_runs_through_a_word(double height)
    {
        var sample = FigureSamples.PullDown();
        var measured = sample.Curves[0];
        var figure = sample with
        {
            Curves = [measured, new FigureCurve { Label = "expected by pump and hose", Role = CurveRole.Model, X = [0, 1, 2], Y = [900_000, 20_000, 500] }],
        };
        var picture = new SvgPicture(PlotCatalogue.Draw(figure, new PictureSize(248, height)));
        Assert.All(new[] { "measured", "target 500 micron", "decay limit 1,000 micron" }, label => Assert.NotNull(picture.Text(label)));
        Assert.Empty(picture.Texts.SelectMany(text => picture.LinesThrough(text).Select(line => $"{line} through {text}")));
    }

    // The smaller the figure, the less is told: the two that only explain never stand on a line, the limits stay whatever it costs.
    [Theory]
    [InlineData(128)]
    [InlineData(92)]
    [InlineData(80)]
    public void What_only_explains_is_left_out_before_a_line_runs_through_it(double height)
    {
        var sample = FigureSamples.PullDown();
        var figure = sample with
        {
            Curves =
            [
                sample.Curves[0] with { Y = [.. sample.Curves[0].X.Select((x, i) => x is < 4 or (> 24 and < 35) ? null : sample.Curves[0].Y[i])] },
                new FigureCurve { Label = "expected by pump and hose", Role = CurveRole.Model, X = [35, 36, 37], Y = [900_000, 20_000, 200] },
            ],
        };
        var picture = new SvgPicture(PlotCatalogue.Draw(figure, new PictureSize(248, height)));
        Assert.All(new[] { "measured", "target 500 micron", "decay limit 1,000 micron" }, label => Assert.NotNull(picture.Text(label)));
        foreach (var text in picture.Texts.Where(text => text.Words is "over range" or "expected by pump and hose"))
            Assert.Empty(picture.LinesThrough(text));
    }

    private static SvgPicture Draw()
    {
        var figure = FigureSamples.PullDown();
        return new SvgPicture(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)));
    }
}
