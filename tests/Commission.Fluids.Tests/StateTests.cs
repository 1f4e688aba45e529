using System.Globalization;
using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>Identities of states: Clausius and Clapeyron, round trips, Maxwell relations, the reference state.</summary>
public sealed class StateTests
{
    public static TheoryData<string> Pure => [.. RefrigerantCatalogue.All.Where(i => !i.IsBlend).Select(i => i.Designation)];

    public static TheoryData<string> Some => ["R-32", "R-134a", "R-290", "R-744", "R-717", "R-1234yf", "R-410A", "R-454B", "R-407C", "R-455A", "R-448A", "R-513A"];

    [Theory]
    [MemberData(nameof(Pure))]
    public void Clausius_Clapeyron_gives_the_enthalpy_of_vaporisation_of_pure_fluids(string designation)
    {
        var fluid = Fluids.Get(designation);
        double low = fluid.LowestTemperature, critical = Fluids.Value(fluid.CriticalPoint).Temperature;
        low = Math.Max(low, 0.55 * critical);
        for (var i = 1; i <= 10; i++)
        {
            var t = low + (0.97 * critical - low) * i / 10.5;
            var s = Fluids.Value(fluid.BubbleAtTemperature(t));
            // The slope by differences of the pressure alone, independent of the entropies.
            var h = 1e-4 * t;
            var slope = (8 * (P(fluid, t + h) - P(fluid, t - h)) - (P(fluid, t + 2 * h) - P(fluid, t - 2 * h))) / (12 * h);
            var latent = t * slope * (1 / s.VaporDensity - 1 / s.LiquidDensity);
            var where = string.Create(CultureInfo.InvariantCulture, $"{designation} at {t:0.0} K: {latent} against {s.VaporEnthalpy - s.LiquidEnthalpy}");
            Assert.True(Math.Abs(latent / (s.VaporEnthalpy - s.LiquidEnthalpy) - 1) < 1e-4, where);
            Assert.True(Math.Abs(slope / s.PressureSlope - 1) < 1e-5, where);
        }
    }

    [Theory]
    [MemberData(nameof(Some))]
    public void The_slope_of_both_curves_is_that_of_differences(string designation)
    {
        var fluid = Fluids.Get(designation);
        foreach (var t in new[] { 240.0, 273.15, 295.0 })
        {
            var bubble = (Fluids.Value(fluid.BubbleAtTemperature(t + 0.01)).Pressure - Fluids.Value(fluid.BubbleAtTemperature(t - 0.01)).Pressure) / 0.02;
            var dew = (Fluids.Value(fluid.DewAtTemperature(t + 0.01)).Pressure - Fluids.Value(fluid.DewAtTemperature(t - 0.01)).Pressure) / 0.02;
            Assert.Equal(bubble, Fluids.Value(fluid.BubbleAtTemperature(t)).PressureSlope, 1e-5 * bubble);
            Assert.Equal(dew, Fluids.Value(fluid.DewAtTemperature(t)).PressureSlope, 1e-5 * dew);
        }
    }

    [Theory]
    [MemberData(nameof(Some))]
    public void The_reference_state_is_200_kJ_and_1_kJ_per_K_for_liquid_at_0_C(string designation)
    {
        var fluid = Fluids.Get(designation);
        var s = Fluids.Value(fluid.BubbleAtTemperature(273.15));
        Assert.Equal(200_000, s.LiquidEnthalpy, 1e-4);
        Assert.Equal(1000, s.LiquidEntropy, 1e-6);
        Assert.Contains("IIR", fluid.ReferenceState.Words(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Some))]
    public void Pressure_with_enthalpy_or_entropy_returns_the_state(string designation)
    {
        var fluid = Fluids.Get(designation);
        SaturationState dew = Fluids.Value(fluid.DewAtTemperature(280)), bubble = Fluids.Value(fluid.BubbleAtTemperature(280));
        FluidState[] states =
        [
            Fluids.Value(fluid.At(300, dew.Pressure, Phase.Vapor)),
            Fluids.Value(fluid.At(360, dew.Pressure, Phase.Vapor)),
            Fluids.Value(fluid.At(260, bubble.Pressure, Phase.Liquid)),
        ];
        foreach (var s in states)
        {
            FluidState h = Fluids.Value(fluid.AtPressureEnthalpy(s.Pressure, s.Enthalpy)), e = Fluids.Value(fluid.AtPressureEntropy(s.Pressure, s.Entropy));
            Assert.Equal(s.Temperature, h.Temperature, 1e-7);
            Assert.Equal(s.Temperature, e.Temperature, 1e-7);
            Assert.Equal(s.Density, e.Density, 1e-8 * s.Density);
            Assert.Equal(s.Phase is Phase.Supercritical ? Phase.Vapor : s.Phase, h.Phase);
        }
    }

    [Theory]
    [MemberData(nameof(Some))]
    public void Inside_the_two_phase_region_the_phases_share_the_enthalpy(string designation)
    {
        var fluid = Fluids.Get(designation);
        var p = Fluids.Value(fluid.DewAtTemperature(275)).Pressure;
        SaturationState bubble = Fluids.Value(fluid.BubbleAtPressure(p)), dew = Fluids.Value(fluid.DewAtPressure(p));
        var last = -1.0;
        foreach (var share in new[] { 0.05, 0.3, 0.6, 0.95 })
        {
            var h = bubble.LiquidEnthalpy + share * (dew.VaporEnthalpy - bubble.LiquidEnthalpy);
            var s = Fluids.Value(fluid.AtPressureEnthalpy(p, h));
            Assert.Equal(Phase.TwoPhase, s.Phase);
            Assert.Equal(h, s.Enthalpy, 1e-3);
            Assert.True(s.Temperature >= bubble.Temperature - 1e-9 && s.Temperature <= dew.Temperature + 1e-9);
            Assert.True(s.VaporFraction > last);
            Assert.Null(s.IsobaricHeatCapacity);
            var again = Fluids.Value(fluid.AtPressureEntropy(p, s.Entropy));
            Assert.Equal(s.Temperature, again.Temperature, 1e-6);
            last = s.VaporFraction;
        }
    }

    // At 0.95 of the critical pressure substitution of equilibrium ratios does not end; the phase rule and the balance still hold.
    [Theory]
    [InlineData("R-407A")]
    [InlineData("R-407F")]
    [InlineData("R-407I")]
    [InlineData("R-409B")]
    [InlineData("R-419A")]
    [InlineData("R-425A")]
    [InlineData("R-427A")]
    [InlineData("R-427C")]
    [InlineData("R-436A")]
    [InlineData("R-436B")]
    [InlineData("R-467A")]
    public void Near_the_critical_pressure_a_blend_splits_too(string designation)
    {
        var fluid = Fluids.Get(designation);
        SharesAreFound(fluid, 0.95 * Fluids.Value(fluid.CriticalPoint).Pressure);
    }

    // Azeotropes with a glide of microkelvins: no temperature tells their states apart, the share of vapour does.
    [Theory]
    [InlineData("R-515B", 2.1e6)]
    [InlineData("R-514A", 7e4)]
    [InlineData("R-435A", 4.7e5)]
    [InlineData("R-512A", 3e5)]
    public void An_azeotrope_carries_the_enthalpy_that_was_asked(string designation, double pascals) => SharesAreFound(Fluids.Get(designation), pascals);

    private static void SharesAreFound(Refrigerant fluid, double pascals)
    {
        SaturationState bubble = Fluids.Value(fluid.BubbleAtPressure(pascals)), dew = Fluids.Value(fluid.DewAtPressure(pascals));
        var last = 0.0;
        foreach (var share in new[] { 0.001, 0.1, 0.5, 0.9, 0.999 })
        {
            var h = bubble.LiquidEnthalpy + share * (dew.VaporEnthalpy - bubble.LiquidEnthalpy);
            var s = Fluids.Value(fluid.AtPressureEnthalpy(pascals, h));
            Assert.Equal(h, s.Enthalpy, 1e-4);
            Assert.InRange(s.Temperature, bubble.Temperature - 1e-7, dew.Temperature + 1e-7);
            Assert.InRange(s.VaporFraction, last, 1);
            // T ds = dh − v dp: at one pressure the entropy answers for the same state.
            Assert.Equal(s.VaporFraction, Fluids.Value(fluid.AtPressureEntropy(pascals, s.Entropy)).VaporFraction, 1e-6);
            last = s.VaporFraction;
        }
    }

    // Cp of the ideal gas in the paper's own form: Younglove and McLinden, J. Phys. Chem. Ref. Data 23 (1994) 731: c_i in T/456.831 K.
    [Theory]
    [InlineData(250)]
    [InlineData(298.15)]
    [InlineData(400)]
    public void The_ideal_gas_of_R123_is_reduced_by_the_critical_temperature_of_its_paper(double kelvin)
    {
        var r = kelvin / 456.831;
        var expected = 2.046009 + 22.231991 * r - 11.658491 * r * r + 2.691665 * r * r * r;
        Assert.Equal(expected, 1 - Fluids.Model("R-123").Components[0].IdealAt(kelvin).TT, 1e-9 * expected);
    }

    [Theory]
    [MemberData(nameof(Some))]
    public void Heat_capacities_and_sound_speed_are_those_of_differences(string designation)
    {
        var fluid = Fluids.Get(designation);
        var p = 0.5 * Fluids.Value(fluid.DewAtTemperature(290)).Pressure;
        FluidState s = Fluids.Value(fluid.At(300, p, Phase.Vapor)), warm = Fluids.Value(fluid.At(300.01, p, Phase.Vapor)), cold = Fluids.Value(fluid.At(299.99, p, Phase.Vapor));
        Assert.Equal((warm.Enthalpy - cold.Enthalpy) / 0.02, s.IsobaricHeatCapacity!.Value, 1e-5 * s.IsobaricHeatCapacity.Value);
        Assert.Equal((warm.Entropy - cold.Entropy) / 0.02 * 300, s.IsobaricHeatCapacity.Value, 1e-5 * s.IsobaricHeatCapacity.Value);
        // w² = (∂p/∂ρ) at constant entropy.
        FluidState up = Fluids.Value(fluid.AtPressureEntropy(p * 1.001, s.Entropy)), down = Fluids.Value(fluid.AtPressureEntropy(p * 0.999, s.Entropy));
        Assert.Equal(Math.Sqrt((up.Pressure - down.Pressure) / (up.Density - down.Density)), s.SpeedOfSound!.Value, 1e-5 * s.SpeedOfSound.Value);
        Assert.True(s.IsobaricHeatCapacity > s.IsochoricHeatCapacity);
    }

    [Fact]
    public void Above_the_critical_temperature_there_is_one_fluid()
    {
        var s = Fluids.Value(Fluids.Get("R-744").At(320, 9e6, Phase.Vapor));
        Assert.Equal(Phase.Supercritical, s.Phase);
        var back = Fluids.Value(Fluids.Get("R-744").AtPressureEnthalpy(9e6, s.Enthalpy));
        Assert.Equal(320, back.Temperature, 1e-6);
        Assert.Equal(s.Density, Fluids.Value(Fluids.Get("R-744").At(320, 9e6, Phase.Liquid)).Density);
    }

    [Fact]
    public void A_state_that_does_not_exist_has_a_reason()
    {
        var fluid = Fluids.Get("R-134a");
        Assert.Contains("no vapor", fluid.At(280, 2e6, Phase.Vapor).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("outside the range", fluid.At(900, 1e5, Phase.Vapor).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("outside the range", fluid.At(300, -1, Phase.Vapor).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("say which", fluid.At(300, 1e5, Phase.TwoPhase).Reason.Words(), StringComparison.Ordinal);
        Assert.False(fluid.AtPressureEnthalpy(1e5, 5e9).Ok);
        Assert.False(fluid.AtPressureEnthalpy(1e5, double.NaN).Ok);
    }

    [Fact]
    public void Threads_do_not_disturb_one_another()
    {
        var fluid = Fluids.Get("R-448A");
        double[] expected = [.. Enumerable.Range(0, 64).Select(i => Fluids.Value(fluid.DewAtTemperature(250 + i)).Pressure)];
        Parallel.For(0, 64 * 20, i => Assert.Equal(expected[i % 64], fluid.DewAtTemperature(250 + i % 64).Value.Pressure));
    }

    private static double P(Refrigerant fluid, double kelvin) => Fluids.Value(fluid.BubbleAtTemperature(kelvin)).Pressure;
}
