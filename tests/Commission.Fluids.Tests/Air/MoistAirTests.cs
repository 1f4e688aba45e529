using System.Text.Json;
using Commission.Fluids.Air;
using Commission.Fluids.Data;
using Commission.Fluids.Helmholtz;
using Commission.Fluids.Mixtures;
using Xunit;

namespace Commission.Fluids.Tests.Air;

/// <summary>Moist air in the SI form of the handbook's perfect-gas relations.</summary>
public sealed class MoistAirTests
{
    // ASHRAE Handbook - Fundamentals, chapter 1, the example of the chart (40 °C, wet bulb 20 °C, 101.325 kPa): read from the chart
    // W 6.5 g/kg, h 56.7 kJ/kg, dew point 7 °C, RH 14 %, v 0.896 m³/kg (from memory).
    [Fact]
    public void Handbook_chart_example()
    {
        var s = Fluids.Value(MoistAir.FromWetBulb(313.15, 293.15, 101325));
        Assert.Equal(0.0065, s.HumidityRatio, 0.0001);
        Assert.Equal(56.7, s.Enthalpy / 1000, 0.05);
        Assert.Equal(7, s.DewPoint!.Value - 273.15, 0.5);
        Assert.Equal(0.14, s.RelativeHumidity, 0.005);
        Assert.Equal(0.896, s.SpecificVolume, 0.0005);
    }

    // The same from the printed equations, computed by an independent program.
    [Fact]
    public void Handbook_example_by_its_equations()
    {
        var s = Fluids.Value(MoistAir.FromWetBulb(313.15, 293.15, 101325));
        Assert.Equal(0.0064008, s.HumidityRatio, 5e-8);
        Assert.Equal(56.725, s.Enthalpy / 1000, 0.0005);
        Assert.Equal(7.434, s.DewPoint!.Value - 273.15, 0.0005);
        Assert.Equal(0.1398, s.RelativeHumidity, 0.00005);
        Assert.Equal(0.89625, s.SpecificVolume, 0.000005);
    }

    // Humidity ratio in the SI form at 14.696 psia: dry bulb °F, wet bulb °F, W, RH %, v ft³/lb, dew point °F.
    [Theory]
    [InlineData(100, 65, 0.0051807, 5e-8, 12.78, 14.227, 39.93)]
    [InlineData(80, 67, 0.011166, 5e-7, 51.09, 13.849, 60.31)]
    [InlineData(75, 63, 0.009529, 5e-7, 51.57, 13.686, 55.97)]
    [InlineData(95, 75, 0.014060, 5e-7, 39.80, 14.299, 66.75)]
    public void Humidity_from_wet_bulb_in_the_SI_form(double dry, double wet, double w, double half, double rh, double volume, double dew)
    {
        var s = Fluids.Value(MoistAir.FromWetBulb(Kelvin(dry), Kelvin(wet), 14.696 * 6894.757293168));
        Assert.Equal(w, s.HumidityRatio, half);
        Assert.Equal(rh, s.RelativeHumidity * 100, 0.0051);
        // The I-P gas constant of the handbook, 0.370486, rounds away from 0.287042 by up to 0.005 %.
        Assert.Equal(volume, s.SpecificVolume / 0.028316846592 * 0.45359237, 0.0015);
        Assert.Equal(dew, s.DewPoint!.Value * 1.8 - 459.67, 0.0051);
    }

    [Theory]
    [InlineData(80, 66, 0.010446, 47.85)]
    [InlineData(75, 62.5, 0.009197, 49.80)]
    public void Humidity_from_wet_bulb_more(double dry, double wet, double w, double rh)
    {
        var s = Fluids.Value(MoistAir.FromWetBulb(Kelvin(dry), Kelvin(wet), 14.696 * 6894.757293168));
        Assert.Equal(w, s.HumidityRatio, 5e-7);
        Assert.Equal(rh, s.RelativeHumidity * 100, 0.0051);
    }

    // Hyland and Wexler 1983 from the published coefficients.
    [Theory]
    [InlineData(20, 2338.80, 0.005)]
    [InlineData(40, 7383.46, 0.005)]
    [InlineData(0, 611.213, 0.0005)]
    public void Saturation_pressure_of_Hyland_and_Wexler(double celsius, double pascals, double half) =>
        Assert.Equal(pascals, Saturation(celsius + 273.15), half);

    [Fact]
    public void Hyland_and_Wexler_stay_near_IAPWS()
    {
        for (var t = 233.15; t < 373; t += 5)
        {
            var other = Fluids.Value(Commission.Fluids.Water.WaterVapor.SaturationPressure(t));
            Assert.Equal(other, Saturation(t), 1.5e-3 * other);
        }
    }

    [Theory]
    [InlineData(300, 290, 101325)]
    [InlineData(263.15, 261.15, 90000)]
    [InlineData(275.15, 272.15, 101325)]
    [InlineData(330, 300, 70000)]
    public void Wet_bulb_humidity_ratio_and_relative_humidity_lead_to_the_same_state(double dry, double wet, double pressure)
    {
        var s = Fluids.Value(MoistAir.FromWetBulb(dry, wet, pressure));
        foreach (var other in new[]
        {
            Fluids.Value(MoistAir.FromHumidityRatio(dry, s.HumidityRatio, pressure)),
            Fluids.Value(MoistAir.FromRelativeHumidity(dry, s.RelativeHumidity, pressure)),
        })
        {
            Assert.Equal(wet, other.WetBulb, 1e-8);
            Assert.Equal(s.HumidityRatio, other.HumidityRatio, 1e-12);
            Assert.Equal(s.Enthalpy, other.Enthalpy, 1e-6);
        }
    }

    [Fact]
    public void Dry_air_has_the_volume_of_its_real_gas_equation()
    {
        // E. W. Lemmon, R. T. Jacobsen, S. G. Penoncello and D. G. Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, as a pseudo-pure gas;
        // real dry air at 1 atm departs from the perfect gas by 0.04 %.
        using var file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "PseudoPure", "r-729.json")));
        var equation = FluidFile.Read(file.RootElement);
        MixturePhase phase = new(new MixtureModel([equation], [], [1]));
        phase.SetComposition([1]);
        phase.SetTemperature(293.15);
        var density = phase.SolveSupercritical(101325) * equation.MolarMass;
        Assert.Equal(1 / density, Fluids.Value(MoistAir.FromRelativeHumidity(293.15, 0, 101325)).SpecificVolume, 5e-4 / density);
        // cp of dry air at 20 °C: 1.006 kJ/(kg K).
        phase.Evaluate(density / equation.MolarMass);
        Assert.Equal(1006, CaloricProperties.Of(phase).Cp / equation.MolarMass, 0.5);
    }

    [Fact]
    public void Saturated_air_has_one_temperature()
    {
        var s = Fluids.Value(MoistAir.FromRelativeHumidity(295, 1, 101325));
        Assert.Equal(295, s.WetBulb, 1e-7);
        Assert.Equal(295, s.DewPoint!.Value, 1e-7);
    }

    [Fact]
    public void Impossible_states_have_a_reason()
    {
        Assert.Contains("cannot stand above", MoistAir.FromWetBulb(290, 295, 101325).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("even dry air", MoistAir.FromWetBulb(320, 280, 101325).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("saturated", MoistAir.FromHumidityRatio(283.15, 0.02, 101325).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("between 0 and 100", MoistAir.FromRelativeHumidity(290, 1.2, 101325).Reason.Words(), StringComparison.Ordinal);
    }

    // From the humidity ratio of saturated air, W = 0.621945 pw/(p - pw) (handbook, eq. 20).
    private static double Saturation(double kelvin)
    {
        const double pressure = 2e5;
        var w = Fluids.Value(MoistAir.FromRelativeHumidity(kelvin, 1, pressure)).HumidityRatio;
        return pressure * w / (0.621945 + w);
    }

    private static double Kelvin(double fahrenheit) => (fahrenheit + 459.67) / 1.8;

    // Between −0.4 and +0.5 °C air of 10 °C has a wet bulb over ice and one over water. Real moist air of the same state (relations of
    // ASHRAE RP-1485, ice at or below 0 °C) at 84 kPa and 10 %: 273.005 K; the perfect-gas relations agree to 0.03 K.
    [Fact]
    public void Where_ice_and_water_both_have_a_wet_bulb_the_wick_is_frozen()
    {
        Assert.Equal(273.005, Fluids.Value(MoistAir.FromRelativeHumidity(283.15, 0.10, 84_000)).WetBulb, 0.03);
        var last = 0.0;
        for (var rh = 0.05; rh < 0.2; rh += 0.0005)
        {
            var air = Fluids.Value(MoistAir.FromRelativeHumidity(283.15, rh, 84_000));
            Assert.True(air.WetBulb > last, $"{rh}");
            Assert.Equal(air.HumidityRatio, Fluids.Value(MoistAir.FromWetBulb(283.15, air.WetBulb, 84_000)).HumidityRatio, 1e-10);
            last = air.WetBulb;
        }
    }

    [Fact]
    public void A_wick_at_0_C_is_frozen()
    {
        // Handbook eq. 35 at t* = 0: W = (2830 Ws* − 1.006 t)/(2830 + 1.86 t), Ws* = 0.621945·611.15/(101325 − 611.15), the pressure over ice.
        var saturated = 0.621945 * 611.15 / (101_325 - 611.15);
        var w = (2830 * saturated - 1.006 * 5) / (2830 + 1.86 * 5);
        Assert.Equal(w, Fluids.Value(MoistAir.FromWetBulb(278.15, 273.15, 101_325)).HumidityRatio, 1e-6);
    }
}
