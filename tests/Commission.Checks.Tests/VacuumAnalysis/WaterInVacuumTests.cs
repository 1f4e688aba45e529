using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;
using Commission.Fluids;
using Commission.Fluids.Water;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

public sealed class WaterInVacuumTests
{
    private const double Micron = 101_325.0 / 760_000;

    /// <summary>Ice hides below this (inverse of IAPWS R14-08 sublimation, computed): 1000 µm −17.31 °C, 500 µm −24.48 °C, 200 µm −33.36 °C.</summary>
    [Theory]
    [InlineData(1000, -17.31)]
    [InlineData(500, -24.48)]
    [InlineData(200, -33.36)]
    public void Ice_hides(double microns, double celsius)
    {
        var water = Read(microns * Micron, 20, thermal: false)!;
        Assert.Equal(celsius, water.HiddenBelow - 273.15, 0.005);
        Assert.Equal(water.HiddenBelow, water.HiddenBelowAtMost);
    }

    [Fact]
    public void Humidity_is_the_share_of_saturation()
    {
        // 20 °C: 2339.32 Pa = 17,546 µm (IAPWS-95, computed).
        var water = Read(1000 * Micron, 20, thermal: false)!;
        Assert.Equal(1000 / 17_546.0, water.HumidityHigh, 2e-6);
        Assert.Equal(water.HumidityLow, water.HumidityHigh);
        Assert.True(water.ExcludesFreeWater());
    }

    [Fact]
    public void A_thermal_gauge_gives_a_band()
    {
        // In water vapour the true pressure is 0.5 to 1 of what it shows (from memory).
        var water = Read(1000 * Micron, -20, thermal: true)!;
        Assert.Equal(1000 / 774.4, water.HumidityHigh, 0.001);
        Assert.Equal(water.HumidityHigh / 2, water.HumidityLow, 1e-12);
        Assert.False(water.ExcludesFreeWater());
        Assert.Equal(-24.48, water.HiddenBelow - 273.15, 0.005);
        Assert.Equal(-17.31, water.HiddenBelowAtMost - 273.15, 0.005);
    }

    [Fact]
    public void Outside_the_functions_there_is_nothing() => Assert.Null(Read(60, -300, thermal: false));

    private static WaterInVacuum? Read(double pressure, double celsius, bool thermal) => WaterInVacuum.Read(
        pressure, 273.15 + celsius, thermal, t => Number(WaterVapor.SaturationPressure(t)), p => Number(WaterVapor.SaturationTemperature(p)));

    private static double? Number(FluidResult<double> result) => result.Ok ? result.Value : null;
}
