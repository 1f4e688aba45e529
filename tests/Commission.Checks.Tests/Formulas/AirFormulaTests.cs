using Commission.Checks.Formulas;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class AirFormulaTests
{
    private const double CubicFootPerMinute = 0.028316846592 / 60;

    // Pressure ratios of the standard atmosphere and the factors scaled by them, by an independent program [computed].
    [Theory]
    [InlineData(1000, 0.9644, 1.0415, 4.3397, 0.6558)]
    [InlineData(2000, 0.9298, 1.0042, 4.1841, 0.6323)]
    [InlineData(3000, 0.8962, 0.9679, 4.0331, 0.6094)]
    [InlineData(5000, 0.8321, 0.8986, 3.7442, 0.5658)]
    [InlineData(5280, 0.8234, 0.8892, 3.7052, 0.5599)]
    [InlineData(7000, 0.7716, 0.8334, 3.4724, 0.5247)]
    [InlineData(10000, 0.6877, 0.7427, 3.0947, 0.4676)]
    public void Factors_by_elevation(double feet, double ratio, double sensible, double total, double latent)
    {
        // US Standard Atmosphere 1976, written out here so that the product's own atmosphere is not its own witness.
        var pascals = 101325 * Math.Pow(1 - (2.25577e-5 * feet * 0.3048), 5.25588);
        var density = AirFactors.DensityRatio(pascals, null);
        Assert.Equal(ratio, density, 0.00006);
        Assert.Equal(sensible, AirFactors.Sensible(density), 0.00006);
        Assert.Equal(total, AirFactors.Total(density), 0.0002);
        Assert.Equal(latent, AirFactors.Latent(density), 0.00006);
    }

    [Fact]
    public void Factors_are_what_standard_air_makes_them()
    {
        Assert.Equal(60 * 0.075, AirFactors.Total(1), 12);
        Assert.Equal(4.5 * 0.24, AirFactors.Sensible(1), 12);
        Assert.Equal(4.5 * 1061 / 7000, AirFactors.Latent(1), 0.0025);
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
    public void Latent_capacity_of_1200_cfm_from_80_67_to_60_58_and_that_the_factors_do_not_close()
    {
        // Humidity ratios by the ASHRAE SI equation from saturation 0.011166 at 80/67 [computed] and at 60/58 worked out below.
        var wet = Humidity(60, 58);
        var latent = AirFactors.Latent(1) * 1200 * 7000 * (Humidity(80, 67) - wet);
        Assert.Equal(7773, latent, 1.0);
        Assert.Equal(33693, 25920 + latent, 1.0);
        Assert.InRange((34448 - (25920 + latent)) / 34448, 0.015, 0.03);
    }

    [Fact]
    public void Airflow_by_strip_heat()
    {
        // 240 V, 40 A, 30 °F rise: 1011 cfm [computed]; with 3.414 of a manual 1011.6.
        Assert.Equal(1011, HeatRiseAirflow.FromElectricHeat(240, 40, 30 / 1.8, 1) / CubicFootPerMinute, 0.5);
    }

    [Fact]
    public void Airflow_by_strip_heat_in_thin_air_is_larger_for_the_same_rise() =>
        Assert.Equal(1011 / 0.8234, HeatRiseAirflow.FromElectricHeat(240, 40, 30 / 1.8, 0.8234) / CubicFootPerMinute, 0.7);

    [Fact]
    public void Airflow_by_a_furnace_of_known_output()
    {
        // 60 000 Btu/h and 50 °F: 60000/(1.08·50) = 1111 cfm.
        Assert.Equal(1111.1, HeatRiseAirflow.FromHeat(60000 * 1055.05585262 / 3600, 50 / 1.8, 1) / CubicFootPerMinute, 0.05);
    }

    [Fact]
    public void Fan_laws_for_ten_percent_more_speed()
    {
        // 1000 cfm, 0.5 inwc, 300 W become 1100 cfm, 0.605 inwc, 399 W.
        Assert.Equal(1100, FanLaws.Flow(1000, 1.1), 9);
        Assert.Equal(0.605, FanLaws.Pressure(0.5, 1.1), 9);
        Assert.Equal(399, FanLaws.Power(300, 1.1), 0.5);
        Assert.Equal(1100, FanLaws.FlowAtPressure(1000, 1.21), 9);
    }

    // ASHRAE Fundamentals, perfect-gas relations in SI, saturation pressure of Hyland and Wexler [from memory].
    private static double Humidity(double dryBulbFahrenheit, double wetBulbFahrenheit)
    {
        var t = (dryBulbFahrenheit - 32) / 1.8;
        var wet = (wetBulbFahrenheit - 32) / 1.8;
        var kelvin = wet + 273.15;
        var saturation = Math.Exp((-5.8002206e3 / kelvin) + 1.3914993 - (4.8640239e-2 * kelvin) + (4.1764768e-5 * kelvin * kelvin) - (1.4452093e-8 * kelvin * kelvin * kelvin) + (6.5459673 * Math.Log(kelvin)));
        var saturated = 0.621945 * saturation / (101325 - saturation);
        return (((2501 - (2.326 * wet)) * saturated) - (1.006 * (t - wet))) / (2501 + (1.86 * t) - (4.186 * wet));
    }
}
