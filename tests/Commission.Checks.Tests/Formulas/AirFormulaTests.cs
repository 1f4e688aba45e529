using Commission.Checks.Formulas;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class AirFormulaTests
{
    private const double CubicFootPerMinute = 0.028316846592 / 60;

    // Pressure ratios of the standard atmosphere and the factors scaled by them, by an independent program [computed].
    [Theory]
    [InlineData(1000, 0.9644, 1.0415, 4.3397)]
    [InlineData(2000, 0.9298, 1.0042, 4.1841)]
    [InlineData(3000, 0.8962, 0.9679, 4.0331)]
    [InlineData(5000, 0.8321, 0.8986, 3.7442)]
    [InlineData(5280, 0.8234, 0.8892, 3.7052)]
    [InlineData(7000, 0.7716, 0.8334, 3.4724)]
    [InlineData(10000, 0.6877, 0.7427, 3.0947)]
    public void Factors_by_elevation(double feet, double ratio, double sensible, double total)
    {
        // US Standard Atmosphere 1976, written out here so that the product's own atmosphere is not its own witness.
        var pascals = 101325 * Math.Pow(1 - (2.25577e-5 * feet * 0.3048), 5.25588);
        var density = AirFactors.DensityRatio(pascals, null);
        Assert.Equal(ratio, density, 0.00006);
        Assert.Equal(sensible, AirFactors.Sensible(density), 0.00006);
        Assert.Equal(total, AirFactors.Total(density), 0.0002);
    }

    [Fact]
    public void Factors_are_what_standard_air_makes_them()
    {
        Assert.Equal(60 * 0.075, AirFactors.Total(1), 12);
        Assert.Equal(4.5 * 0.24, AirFactors.Sensible(1), 12);
    }

    [Fact]
    public void Warmer_air_is_lighter()
    {
        // 530/(T + 460) of the trade, at 95 °F: 530/555.
        Assert.Equal(530.0 / 555, AirFactors.DensityRatio(101325, (95 + 459.67) / 1.8), 0.0002);
        Assert.Equal(1, AirFactors.DensityRatio(101325, (70 + 459.67) / 1.8), 12);
    }

    [Fact]
    public void Total_capacity_of_1200_cfm_from_75_63_to_57_55()
    {
        // Enthalpies 28.428 and 23.169 Btu/lb at 14.696 psia, by an independent program [computed].
        Assert.Equal(28397, AirFactors.Total(1) * 1200 * (28.428 - 23.169), 3.0); // printed enthalpies are rounded to 0.001
    }

    [Fact]
    public void Sensible_capacity_of_1200_cfm_from_80_to_60() =>
        Assert.Equal(25920, AirFactors.Sensible(1) * 1200 * (80 - 60), 6);

    [Fact]
    public void Airflow_by_a_furnace_of_known_output()
    {
        // 60 000 Btu/h and 50 °F: 60000/(1.08·50) = 1111 cfm.
        Assert.Equal(1111.1, HeatRiseAirflow.FromHeat(60000 * 1055.05585262 / 3600, 50 / 1.8, 1, 0) / CubicFootPerMinute, 0.05);
        // A blower of 0.365 W/cfm is 1.245 Btu/h for each cfm: 60000/(54 − 1.245) = 1137 cfm; 405.6 W of it are 1384 Btu/h, and 61384/54 is the same.
        Assert.Equal(1137.3, HeatRiseAirflow.FromHeat(60000 * 1055.05585262 / 3600, 50 / 1.8, 1, 0.365 / CubicFootPerMinute) / CubicFootPerMinute, 0.2);
    }

    [Fact]
    public void Fan_laws_for_ten_percent_more_speed()
    {
        // 0.5 inwc, 300 W become 0.605 inwc, 399 W.
        Assert.Equal(0.605, FanLaws.Pressure(0.5, 1.1), 9);
        Assert.Equal(399, FanLaws.Power(300, 1.1), 0.5);
    }
}
