using System.Globalization;
using Commission.Fluids.Mixtures;
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
        Assert.Equal("R-744: 31.00 °C (87.8 °F) is not below the critical temperature, 30.98 °C (87.8 °F): transcritical, there is no saturation pressure", above.Reason.Words());
        Assert.True(Fluids.Get("R-744").BubbleAtTemperature(273.15 + 30.9).Ok);
        Assert.Contains("transcritical", Fluids.Get("R-744").DewAtPressure(9e6).Reason.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_blend_above_its_critical_temperature_is_transcritical() =>
        Assert.Contains("transcritical", Fluids.Get("R-410A").BubbleAtTemperature(350).Reason.Words(), StringComparison.Ordinal);

    [Fact]
    public void Below_the_lower_limit_there_is_a_reason()
    {
        Assert.Contains("triple point", Fluids.Get("R-744").BubbleAtTemperature(210).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("lowest temperature", Fluids.Get("R-410A").DewAtTemperature(100).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("outside what the equations can answer", Fluids.Get("R-744").BubbleAtPressure(4e5).Reason.Words(), StringComparison.Ordinal);
        Assert.False(Fluids.Get("R-32").BubbleAtTemperature(double.NaN).Ok);
        Assert.False(Fluids.Get("R-32").BubbleAtPressure(-1).Ok);
        Assert.False(Fluids.Get("R-454B").DewAtPressure(0).Ok);
        Assert.False(Fluids.Get("R-454B").DewAtPressure(double.PositiveInfinity).Ok);
    }

    [Fact]
    public void A_liquid_that_would_split_says_so() =>
        Assert.Contains("two liquids", Fluids.Get("R-504").BubbleAtTemperature(200).Reason.Words(), StringComparison.Ordinal);

    [Theory]
    [InlineData("R-504", 6e4)]
    [InlineData("R-430A", 2e3)]
    [InlineData("R-509A", 8e3)]
    public void A_liquid_that_would_split_says_so_at_a_pressure_too(string designation, double pascals)
    {
        var reason = Fluids.Get(designation).BubbleAtPressure(pascals).Reason.Words();
        Assert.Contains("two liquids below", reason, StringComparison.Ordinal);
        Assert.DoesNotContain("outside what the equations", reason, StringComparison.Ordinal);
    }

    // Locally stable and still metastable: the tangent plane of Gibbs energy decides (Baker, Pierce and Luks, SPE J. 22 (1982) 731), here
    // by looking at every composition of the two.
    [Theory]
    [InlineData("R-504", 218, true)]
    [InlineData("R-504", 223, false)]
    [InlineData("R-514A", 238, true)]
    [InlineData("R-514A", 243, false)]
    public void A_cold_liquid_is_answered_only_where_no_other_liquid_lies_below(string designation, double kelvin, bool splits)
    {
        var fluid = Fluids.Get(designation);
        BlendSaturation saturation = new(Fluids.Model(designation));
        MixturePhase trial = new(Fluids.Model(designation));
        saturation.Liquid.SetComposition(Fluids.Model(designation).Composition);
        Assert.True(saturation.AtTemperature(SaturationCurve.Bubble, kelvin));
        var lowest = 0.0;
        for (var x = 0.002; x < 1; x += 0.002)
        {
            trial.SetComposition([x, 1 - x]);
            trial.SetTemperature(kelvin);
            var rho = trial.SolveLiquid(saturation.Pressure, 2.9 * trial.ReducingDensity);
            if (double.IsNaN(rho))
                continue;
            trial.Evaluate(rho);
            trial.EvaluateFugacity();
            lowest = Math.Min(lowest, x * (trial.LnFugacity[0] - saturation.Liquid.LnFugacity[0]) + (1 - x) * (trial.LnFugacity[1] - saturation.Liquid.LnFugacity[1]));
        }
        Assert.Equal(splits, lowest < -1e-6);
        var answer = fluid.BubbleAtTemperature(kelvin);
        Assert.Equal(!splits, answer.Ok);
        if (splits)
            Assert.Contains("two liquids below", answer.Reason.Words(), StringComparison.Ordinal);
    }

    // Blends that the local test alone let through at these temperatures.
    [Theory]
    [InlineData("R-417A", 187)]
    [InlineData("R-422D", 180.5)]
    [InlineData("R-438A", 181)]
    [InlineData("R-446A", 187)]
    [InlineData("R-462A", 185)]
    [InlineData("R-439A", 194)]
    [InlineData("R-431A", 188)]
    [InlineData("R-430A", 205)]
    public void Cold_metastable_liquids_are_refused(string designation, double kelvin)
    {
        Assert.Contains("two liquids below", Fluids.Get(designation).BubbleAtTemperature(kelvin).Reason.Words(), StringComparison.Ordinal);
        Assert.True(Fluids.Get(designation).BubbleAtTemperature(233.15).Ok);
    }

    // At the last temperature of its equations a blend is one liquid, whatever the rounding of that temperature on the way.
    [Theory]
    [InlineData("R-400")]
    [InlineData("R-405A")]
    [InlineData("R-474A")]
    [InlineData("R-454B")]
    [InlineData("R-410A")]
    public void At_its_lowest_temperature_a_blend_answers(string designation)
    {
        var fluid = Fluids.Get(designation);
        Assert.True(fluid.BubbleAtTemperature(fluid.LowestTemperature).Ok, fluid.BubbleAtTemperature(fluid.LowestTemperature).Reason?.Words());
    }

    // Retrograde condensation: dew points lie above the critical temperature.
    [Theory]
    [InlineData("R-441A")]
    [InlineData("R-470A")]
    [InlineData("R-470B")]
    [InlineData("R-472A")]
    public void A_retrograde_dew_point_is_called_so(string designation)
    {
        var fluid = Fluids.Get(designation);
        var reason = fluid.DewAtPressure(0.98 * Fluids.Value(fluid.CriticalPoint).Pressure).Reason.Words();
        Assert.Contains("retrograde", reason, StringComparison.Ordinal);
        Assert.DoesNotContain("there is no saturation pressure", reason, StringComparison.Ordinal);
    }

    // Lower limits of the equations: R-114 at 273.15 K (Platzer, Polt and Maurer 1990), carbon dioxide at its triple point, 216.592 K (Span
    // and Wagner 1996), R-1132(E) at 240 K. None of the papers publishes an extrapolation below.
    [Theory]
    [InlineData("R-400", "R-114 ends, 0.00 °C")]
    [InlineData("R-469A", "R-744 ends, -56.56 °C")]
    [InlineData("R-470B", "R-744 ends, -56.56 °C")]
    [InlineData("R-472A", "R-744 ends, -56.56 °C")]
    [InlineData("R-472B", "R-744 ends, -56.56 °C")]
    [InlineData("R-473A", "R-744 ends, -56.56 °C")]
    [InlineData("R-474A", "R-1132(E) ends, -33.15 °C")]
    public void A_blend_without_its_own_boiling_point_names_the_equation_that_ends(string designation, string end) =>
        Assert.Contains(end, Fluids.Get(designation).BubbleAtPressure(101_325).Reason.Words(), StringComparison.Ordinal);

    // Where a mean of limits decides no component is blamed: R-410A's lies between R-32 (136.34 K) and R-125 (172.52 K), both a fifth or more.
    [Fact]
    public void A_limit_that_is_a_mean_blames_nobody()
    {
        Assert.Contains("where that of R-125 ends", Fluids.Get("R-410A").DewAtTemperature(150).Reason.Words(), StringComparison.Ordinal);
        var means = RefrigerantCatalogue.All.Where(i => i is { IsBlend: true, IsComputable: true }).Select(i => Fluids.Get(i.Designation))
            .Where(f => f.BubbleAtTemperature(60).Reason.Words().Contains("blend's equations, -", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(means);
    }

    // R-134a's equation (Tillner-Roth and Baehr 1994) has a loop with rising pressure between 1.06 and 1.48 of the critical density.
    [Theory]
    [InlineData(280)]
    [InlineData(305)]
    [InlineData(323)]
    public void A_loop_inside_the_two_phase_region_is_no_liquid(double kelvin)
    {
        MixturePhase phase = new(Fluids.Model("R-134a"));
        phase.SetComposition([1]);
        phase.SetTemperature(kelvin);
        phase.EvaluateVolume(6200);
        Assert.True(phase.PressureByDensity > 0);
        Assert.True(double.IsNaN(phase.SolveLiquid(phase.Pressure, 6200)));
        Assert.False(double.IsNaN(phase.SolveLiquid(2e6, 14_000)));
    }

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
