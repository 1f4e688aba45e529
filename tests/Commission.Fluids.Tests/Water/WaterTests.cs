using Commission.Fluids.Water;
using Xunit;

namespace Commission.Fluids.Tests.Water;

/// <summary>Vapour pressure of water and ice.</summary>
public sealed class WaterTests
{
    // IAPWS R6-95, table 8 (from memory of the release).
    [Theory]
    [InlineData(275, 698.451167, 5e-7)]
    [InlineData(450, 932203.564, 5e-4)]
    [InlineData(625, 16908269.3, 0.05)]
    public void IAPWS_R6_95_table_8_saturation_pressure(double kelvin, double pascals, double half) =>
        Assert.Equal(pascals, Fluids.Value(WaterSaturation.Pressure(kelvin)), half);

    // IAPWS-95 computed by an independent program, printed digits.
    [Theory]
    [InlineData(0.01, 611.655, 0.0005)]
    [InlineData(5, 872.575, 0.0005)]
    [InlineData(10, 1228.20, 0.005)]
    [InlineData(15, 1705.79, 0.005)]
    [InlineData(20, 2339.32, 0.005)]
    [InlineData(25, 3169.93, 0.005)]
    [InlineData(30, 4246.97, 0.005)]
    [InlineData(40, 7384.94, 0.005)]
    [InlineData(100, 101418.0, 0.05)]
    public void Vapor_pressure_of_liquid_water(double celsius, double pascals, double half) =>
        Assert.Equal(pascals, Fluids.Value(WaterSaturation.Pressure(celsius + 273.15)), half);

    [Fact]
    public void Seventy_degrees_Fahrenheit() =>
        Assert.Equal(2505.26, Fluids.Value(WaterSaturation.Pressure((70 + 459.67) / 1.8)), 0.005);

    // IAPWS R7-97 (IF97), table 35: another formulation, 0.006 % apart at 300 K and 0.011 % at 500 K.
    [Theory]
    [InlineData(300, 3536.58941, 7e-5)]
    [InlineData(500, 2638897.76, 1.2e-4)]
    public void IF97_table_35_is_met_within_the_difference_of_the_two_formulations(double kelvin, double pascals, double share) =>
        Assert.Equal(pascals, Fluids.Value(WaterSaturation.Pressure(kelvin)), share * pascals);

    [Fact]
    public void The_full_formulation_stays_within_the_stated_distance_of_the_explicit_equation()
    {
        // IAPWS SR1-86, W. Wagner and A. Pruß, J. Phys. Chem. Ref. Data 22 (1993) 783, give 0.025 % for the explicit equation; the two stay
        // within 0.01 % below 620 K.
        for (var t = 273.16; t < 620; t += 7.3)
        {
            var full = Fluids.Value(WaterSaturation.Pressure(t));
            var v = 1 - t / 647.096;
            var sum = -7.85951783 * v + 1.84408259 * Math.Pow(v, 1.5) - 11.7866497 * Math.Pow(v, 3)
                + 22.6807411 * Math.Pow(v, 3.5) - 15.9618719 * Math.Pow(v, 4) + 1.80122502 * Math.Pow(v, 7.5);
            Assert.Equal(22.064e6 * Math.Exp(647.096 / t * sum), full, 1e-4 * full);
        }
    }

    // IAPWS R14-08, check value of eq. 6.
    [Fact]
    public void IAPWS_R14_08_sublimation_pressure_at_230_K() =>
        Assert.Equal(8.94735, Fluids.Value(IceSublimation.Pressure(230)), 0.000005);

    [Theory]
    [InlineData(0, 611.153, 0.0005)]
    [InlineData(-5, 401.74, 0.005)]
    [InlineData(-10, 259.87, 0.005)]
    [InlineData(-20, 103.24, 0.005)]
    [InlineData(-25, 63.27, 0.005)]
    [InlineData(-30, 38.01, 0.005)]
    [InlineData(-40, 12.84, 0.005)]
    public void Vapor_pressure_of_ice(double celsius, double pascals, double half) =>
        Assert.Equal(pascals, Fluids.Value(IceSublimation.Pressure(celsius + 273.15)), half);

    // Micron readings and the temperature of ice or water with that vapour pressure (1 µm Hg = 0.133322387 Pa).
    [Theory]
    [InlineData(200, -33.36)]
    [InlineData(300, -29.51)]
    [InlineData(500, -24.48)]
    [InlineData(1000, -17.31)]
    [InlineData(2000, -9.71)]
    [InlineData(5000, 1.20)]
    [InlineData(10000, 11.23)]
    [InlineData(20000, 22.13)]
    [InlineData(25400, 26.11)]
    public void Temperature_of_ice_or_water_at_a_vacuum(double microns, double celsius) =>
        Assert.Equal(celsius, Fluids.Value(WaterVapor.SaturationTemperature(microns * 0.133322387415)) - 273.15, 0.0051);

    // Boiling point at the standard atmosphere of an elevation, from IAPWS-95.
    [Theory]
    [InlineData(101325.0, 99.97)]
    [InlineData(97772.6, 98.98)]
    [InlineData(95460.8, 98.31)]
    [InlineData(89874.6, 96.65)]
    [InlineData(84556.0, 94.98)]
    [InlineData(83427.6, 94.62)]
    [InlineData(79495.2, 93.32)]
    [InlineData(70108.5, 89.97)]
    [InlineData(54019.9, 83.26)]
    public void Boiling_point_at_site_pressure(double pascals, double celsius) =>
        Assert.Equal(celsius, Fluids.Value(WaterSaturation.Temperature(pascals)) - 273.15, 0.0051);

    [Fact]
    public void Inverses_return_the_temperature()
    {
        for (var t = 180.0; t < 273; t += 3.7)
            Assert.Equal(t, Fluids.Value(IceSublimation.Temperature(Fluids.Value(IceSublimation.Pressure(t)))), 1e-10 * t);
        for (var t = 273.17; t < 640; t += 11.3)
            Assert.Equal(t, Fluids.Value(WaterSaturation.Temperature(Fluids.Value(WaterSaturation.Pressure(t)))), 1e-9 * t);
    }

    [Fact]
    public void The_slope_of_ice_at_the_triple_point_follows_Clausius_and_Clapeyron()
    {
        // Enthalpy of sublimation at 0 °C: 2834.4 kJ/kg (from memory of ASHRAE tables), vapour taken as ideal within 0.1 %.
        var slope = (Fluids.Value(IceSublimation.Pressure(273.15)) - Fluids.Value(IceSublimation.Pressure(273.05))) / 0.1;
        var latent = slope * 461.52 * 273.1 * 273.1 / Fluids.Value(IceSublimation.Pressure(273.10));
        Assert.Equal(2834.4e3, latent, 0.003 * 2834.4e3);
    }

    [Fact]
    public void Outside_the_range_there_is_a_reason()
    {
        Assert.Contains("273.16", WaterSaturation.Pressure(260).Reason.Words().Replace("0.01 °C", "273.16", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("triple point", IceSublimation.Temperature(700).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("critical pressure", WaterSaturation.Temperature(30e6).Reason.Words(), StringComparison.Ordinal);
    }
}
