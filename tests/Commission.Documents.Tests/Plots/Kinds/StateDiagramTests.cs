using Commission.Documents.Pictures;
using Commission.Documents.Plots;
using Commission.Documents.Tests.Pictures;
using Xunit;

namespace Commission.Documents.Tests.Plots.Kinds;

/// <summary>Charts of state and charts through time.</summary>
public class StateDiagramTests
{
    [Fact]
    public void Measured_states_stand_at_their_pressure_and_enthalpy()
    {
        var figure = FigureSamples.PressureEnthalpy();
        var picture = new SvgPicture(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)));
        double y500 = picture.Text("500").MiddleOfDigits, y5000 = picture.Text("5,000").MiddleOfDigits;
        double x200 = picture.Text("200").Anchor, x450 = picture.Text("450").Anchor;
        var x = x200 + (x450 - x200) * (428 - 200) / 250;
        var y = y500 + (y5000 - y500) * Math.Log10(902 / 500.0);
        var corner = picture.All("polyline").Where(line => line.Attribute("stroke")!.Value == Palette.Vermilion.Hex).SelectMany(SvgPicture.Points).Min(p => Math.Abs(p.X - x) + Math.Abs(p.Y - y));
        Assert.InRange(corner, 0, 0.1);
    }

    [Fact]
    public void The_psychrometric_chart_has_its_numbers_on_the_right()
    {
        var figure = FigureSamples.Psychrometric();
        var picture = new SvgPicture(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)));
        Assert.True(picture.Text("25").Left > picture.Width * 0.9);
        Assert.Contains(picture.Texts, text => text.Words == "return air");
        Assert.Contains(picture.Texts, text => text.Words == "supply air");
    }

    [Fact]
    public void Superheat_and_subcooling_with_their_own_tolerances_get_a_panel_each()
    {
        var two = new SvgPicture(PlotCatalogue.Draw(FigureSamples.ChargeTime(), PlotCatalogue.SizeFor(FigureSamples.ChargeTime())));
        Assert.Equal(2, two.Texts.Count(text => text.Words == "10"));
        var one = new SvgPicture(PlotCatalogue.Draw(FigureSamples.ChargeTimeWithLines(), PlotCatalogue.SizeFor(FigureSamples.ChargeTimeWithLines())));
        Assert.Single(one.Texts, text => text.Words == "10");
        Assert.Single(one.All("rect"), rect => rect.Attribute("fill")?.Value == Palette.Zone.Hex);
    }

    [Fact]
    public void Instruments_checked_at_one_temperature_stand_side_by_side()
    {
        var figure = FigureSamples.InstrumentResiduals();
        var picture = new SvgPicture(PlotCatalogue.Draw(figure, PlotCatalogue.SizeFor(figure)));
        var circle = picture.All("ellipse").Select(mark => SvgPicture.Number(mark, "cx")).Min();
        var square = picture.All("rect").Where(rect => rect.Attribute("fill")?.Value == Palette.Vermilion.Hex).Select(rect => SvgPicture.Number(rect, "x") + SvgPicture.Number(rect, "width") / 2).Min();
        Assert.Equal(5, square - circle, 0.05);
    }
}
