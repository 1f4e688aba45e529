using System.Globalization;
using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>States where a careless iteration finds another root, none, or the trivial one.</summary>
public sealed class HardCaseTests
{
    [Theory]
    [InlineData("R-407C", 213.15)]
    [InlineData("R-438A", 213.15)]
    [InlineData("R-448A", 213.15)]
    [InlineData("R-453A", 213.15)]
    [InlineData("R-464A", 213.15)]
    [InlineData("R-424A", 213.15)]
    [InlineData("R-442A", 213.15)]
    [InlineData("R-458A", 213.15)]
    public void Many_components_at_five_to_twenty_kilopascals(string designation, double around)
    {
        var fluid = Fluids.Get(designation);
        var last = 0.0;
        for (var p = 5000.0; p <= 20001; p += 1000)
        {
            SaturationState bubble = Fluids.Value(fluid.BubbleAtPressure(p)), dew = Fluids.Value(fluid.DewAtPressure(p));
            var where = string.Create(CultureInfo.InvariantCulture, $"{designation} at {p} Pa: {bubble.Temperature} … {dew.Temperature}");
            Assert.True(bubble.Temperature < dew.Temperature, where);
            Assert.True(bubble.Temperature > last && Math.Abs(dew.Temperature - around) < 40, where);
            Assert.True(bubble.LiquidDensity > 500 * bubble.VaporDensity, where);
            last = bubble.Temperature;
        }
    }

    [Theory]
    [InlineData("R-437A")]
    [InlineData("R-438A")]
    [InlineData("R-453A")]
    public void Near_13_bar_the_glide_of_blends_with_pentanes_does_not_vanish(string designation)
    {
        var fluid = Fluids.Get(designation);
        for (var p = 12e5; p <= 14e5; p += 0.1e5)
        {
            var glide = Fluids.Value(fluid.DewAtPressure(p)).Temperature - Fluids.Value(fluid.BubbleAtPressure(p)).Temperature;
            Assert.InRange(glide, 2, 12);
        }
    }

    [Fact]
    public void Carbon_dioxide_above_its_critical_temperature_is_transcritical()
    {
        var above = Fluids.Get("R-744").BubbleAtTemperature(273.15 + 31);
        Assert.False(above.Ok);
        Assert.Equal("R-744: 31.00 °C (87.8 °F) is not below the critical temperature, 30.98 °C (87.8 °F): transcritical, there is no saturation pressure.", above.Reason);
        Assert.True(Fluids.Get("R-744").BubbleAtTemperature(273.15 + 30.9).Ok);
        Assert.Contains("transcritical", Fluids.Get("R-744").DewAtPressure(9e6).Reason!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blend_above_its_critical_temperature_is_transcritical() =>
        Assert.Contains("transcritical", Fluids.Get("R-410A").BubbleAtTemperature(350).Reason!, StringComparison.Ordinal);

    [Fact]
    public void Below_the_lower_limit_there_is_a_reason()
    {
        Assert.Contains("triple point", Fluids.Get("R-744").BubbleAtTemperature(210).Reason!, StringComparison.Ordinal);
        Assert.Contains("lowest temperature", Fluids.Get("R-410A").DewAtTemperature(100).Reason!, StringComparison.Ordinal);
        Assert.Contains("outside what the equations can answer", Fluids.Get("R-744").BubbleAtPressure(4e5).Reason!, StringComparison.Ordinal);
        Assert.False(Fluids.Get("R-32").BubbleAtTemperature(double.NaN).Ok);
        Assert.False(Fluids.Get("R-32").BubbleAtPressure(-1).Ok);
        Assert.False(Fluids.Get("R-454B").DewAtPressure(0).Ok);
        Assert.False(Fluids.Get("R-454B").DewAtPressure(double.PositiveInfinity).Ok);
    }

    [Fact]
    public void A_liquid_that_would_split_says_so() =>
        Assert.Contains("two liquids", Fluids.Get("R-504").BubbleAtTemperature(200).Reason!, StringComparison.Ordinal);

    // At 315 K R-472A (mostly carbon dioxide) has a second pair of equal fugacities inside the unstable region.
    [Theory]
    [InlineData("R-472A", 315)]
    [InlineData("R-472B", 322.33)]
    public void An_unstable_phase_is_never_an_answer(string designation, double kelvin)
    {
        var fluid = Fluids.Get(designation);
        var p = Fluids.Value(fluid.DewAtTemperature(kelvin)).Pressure;
        Assert.Equal(kelvin, Fluids.Value(fluid.DewAtPressure(p)).Temperature, 1e-6);
    }

    // Azeotropes of the ASHRAE list keep their name: next to no glide at 1 atm.
    [Theory]
    [InlineData("R-500")]
    [InlineData("R-502")]
    [InlineData("R-503")]
    [InlineData("R-507A")]
    [InlineData("R-508A")]
    [InlineData("R-508B")]
    [InlineData("R-510A")]
    [InlineData("R-512A")]
    [InlineData("R-513A")]
    [InlineData("R-514A")]
    [InlineData("R-515A")]
    [InlineData("R-515B")]
    [InlineData("R-516A")]
    public void Azeotropes_have_next_to_no_glide(string designation)
    {
        var fluid = Fluids.Get(designation);
        var glide = Fluids.Value(fluid.DewAtPressure(101325)).Temperature - Fluids.Value(fluid.BubbleAtPressure(101325)).Temperature;
        Assert.InRange(glide, -1e-9, 0.5);
    }

    [Fact]
    public void The_wrong_curve_costs_what_the_table_says()
    {
        // R-454B at 118.34 psig: 42.3 °F on the bubble curve, 45.0 °F on the dew curve.
        var fluid = Fluids.Get("R-454B");
        var p = (118.34 + 14.69595) * 6894.757293168;
        Assert.Equal(42.3, Fluids.Value(fluid.BubbleAtPressure(p)).Temperature * 1.8 - 459.67, 0.051);
        Assert.Equal(45.0, Fluids.Value(fluid.DewAtPressure(p)).Temperature * 1.8 - 459.67, 0.051);
    }

    // A printed R-410A chart of a generic manual, psig at °F; it lies 0.3 to 0.6 psi below the dew curve of the equations up to 50 °F:
    // compared at ±1 psi as a paper chart of another age.
    [Theory]
    [InlineData(32, 100.8)]
    [InlineData(40, 118.0)]
    [InlineData(45, 129.7)]
    [InlineData(50, 142.2)]
    [InlineData(70, 200.6)]
    [InlineData(95, 295.1)]
    [InlineData(100, 317.2)]
    [InlineData(105, 340.5)]
    [InlineData(110, 365.0)]
    [InlineData(120, 417.7)]
    public void A_printed_R410A_chart(double fahrenheit, double psig) =>
        Assert.Equal(psig, Fluids.Value(Fluids.Get("R-410A").DewAtTemperature((fahrenheit + 459.67) / 1.8)).Pressure / 6894.757293168 - 14.69595, 1.0);

    // Static head of a liquid column, psi per foot at 105 °F bubble.
    [Theory]
    [InlineData("R-22", 0.488)]
    [InlineData("R-32", 0.386)]
    [InlineData("R-134a", 0.496)]
    [InlineData("R-290", 0.202)]
    [InlineData("R-410A", 0.421)]
    [InlineData("R-407C", 0.462)]
    [InlineData("R-454B", 0.396)]
    [InlineData("R-404A", 0.417)]
    public void Liquid_head_at_105_F(string designation, double psiPerFoot) =>
        Assert.Equal(psiPerFoot, Head(designation, 105), 0.00051);

    // The same at 110 °F (four digits).
    [Theory]
    [InlineData("R-22", 0.4828)]
    [InlineData("R-134a", 0.4909)]
    [InlineData("R-404A", 0.4094)]
    [InlineData("R-407C", 0.4554)]
    [InlineData("R-410A", 0.4136)]
    [InlineData("R-32", 0.3798)]
    [InlineData("R-454B", 0.3899)]
    [InlineData("R-290", 0.2001)]
    public void Liquid_head_at_110_F(string designation, double psiPerFoot) =>
        Assert.Equal(psiPerFoot, Head(designation, 110), 0.000051);

    private static double Head(string designation, double fahrenheit) =>
        Fluids.Value(Fluids.Get(designation).BubbleAtTemperature((fahrenheit + 459.67) / 1.8)).LiquidDensity * 9.80665 * 0.3048 / 6894.757293168;
}
