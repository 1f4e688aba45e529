using Commission.Checks.Air;
using Commission.Checks.AirReadings;
using Commission.Checks.Kernel;
using Commission.Records.Series;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>The psychrometric chart: made for the site's pressure, states inside its axes.</summary>
public sealed class PsychrometricFigureTests
{
    private const string Both = "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 57.0, supply wet bulb: 55.0";

    private static IReadOnlyList<FigureData> Of(string reading, string site = "station pressure: 14.696 psia +/- 0.005", string units = "us") =>
        [.. new PsychrometricFigure().Figures(JobText.Context(AirJobs.Yaml(readings: [reading], site: site, units: units)))];

    [Fact]
    public void States_saturation_and_humidity_lines()
    {
        var figure = Assert.Single(Of(Both));
        Assert.Equal("psychrometric", figure.Plot);
        Assert.Equal(["saturation", "20 % RH", "40 % RH", "60 % RH", "80 % RH", "return air", "supply air"], figure.Curves.Select(c => c.Label));
        var entering = figure.Curves[5];
        Assert.Equal(75.0, entering.X[0], 1e-9);
        // 0.009529 · 7000 = 66.70 gr/lb [computed].
        Assert.Equal(66.70, entering.Y[0]!.Value, 0.01);
        Assert.True(entering.YLow[0] < entering.Y[0] && entering.Y[0] < entering.YHigh[0]);
        Assert.All(figure.Curves, c => Assert.Equal(c.X.Length, c.Y.Length));
        Assert.All(figure.Curves, c => Assert.InRange(c.X.Length, 1, 2000));
        Assert.InRange(57.0, figure.X.Min!.Value, figure.X.Max!.Value);
        Assert.InRange(entering.YHigh[0]!.Value, 0, figure.Y.Max!.Value);
    }

    [Fact]
    public void The_saturation_line_belongs_to_the_site()
    {
        // At 60 °F p_s = 0.25638 psi: W_s = 0.621945·p_s/(p − p_s), 77.3 gr/lb at 14.696 and 94.2 at 12.100 psia.
        static double At60(IReadOnlyList<FigureData> figures)
        {
            var line = figures[0].Curves[0];
            var i = line.X.Select((x, at) => (x, at)).OrderBy(p => Math.Abs(p.x - 60)).First().at;
            var slope = (line.Y[i + 1]!.Value - line.Y[i - 1]!.Value) / (line.X[i + 1] - line.X[i - 1]);
            return line.Y[i]!.Value + (slope * (60 - line.X[i]));
        }

        Assert.Equal(77.3, At60(Of(Both)), 0.2);
        Assert.Equal(94.2, At60(Of(Both, "elevation: 5280 ft")), 0.3);
    }

    [Fact]
    public void In_SI_it_counts_grams()
    {
        var figure = Assert.Single(Of("return dry bulb: 24.0 °C, return wet bulb: 17.0 °C, supply dry bulb: 13.0 °C, supply wet bulb: 12.0 °C", units: "si", site: "elevation: 0 m"));
        Assert.Equal("g/kg", figure.Y.Unit);
        Assert.Equal(2, figure.Curves.Count(c => c.Role == CurveRole.State));
    }

    [Fact]
    public void One_state_alone_draws_nothing() => Assert.Empty(Of("return dry bulb: 24.0 °C, return wet bulb: 17.0 °C", units: "si", site: "elevation: 0 m"));

    [Fact]
    public void Dry_bulbs_alone_draw_nothing() => Assert.Empty(Of("return dry bulb: 75.0, supply dry bulb: 57.0"));
}
